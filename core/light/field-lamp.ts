import type { Lamp, Photometry } from '../plan/lamp.ts';
import { beamShape } from './beam.ts';
import type { Box } from './box-parts.ts';
import { kept } from './field-cache.ts';
import type { HungFace } from './field-direct.ts';
import { hungInside } from './field-direct.ts';
import { lampFaces } from './field-layout.ts';
import type { PlaceBox, PlaceLevel } from './field-place.ts';
import type { LevelCells, UnitField } from './field-unit.ts';
import { unitField } from './field-unit.ts';
import { lines } from './patch-grid.ts';
import type { Rectangle } from './rectangles.ts';

/** Room over a lamp that throws light upwards as well [m]. */
const overLamp = 0.05;

const fields = kept<UnitField>(96);

/**
 * Where 1 µmol s⁻¹ of a lamp entry goes in a place's box; watts, dimming and hours do not matter to it. Kept for
 * what was asked of late.
 */
export function lampUnit(setting: PlaceBox, lamp: Lamp, cells: readonly [number, number]): UnitField {
  const { arrangement, height, length, width, along, across, count, shelf, beam } = lamp;
  const thrown = beam.kind === 'file' ? [markOf(beam.photometry), beam.turned] : beam;
  const key = [setting, cells, arrangement, height, length, width, along, across, count, shelf, thrown];
  return fields(JSON.stringify(key), () => made(setting, lamp, cells));
}

const marks = new WeakMap<Photometry, string>();

/** A mark of a photometric file's numbers, the same for equal files wherever they were read; kept for the object. */
function markOf(photometry: Photometry): string {
  const known = marks.get(photometry);
  if (known !== undefined) return known;
  const { vertical, planes, candela } = photometry;
  const words = new Uint32Array(
    Float64Array.from([vertical.length, ...vertical, ...planes, ...candela]).buffer,
  );
  const mark = `${words.length} ${hashed(words, 0x811c9dc5)} ${hashed(words, 0x2f0b4c27)}`;
  marks.set(photometry, mark);
  return mark;
}

/** FNV-1a over words in place of bytes (Fowler, Noll & Vo), with a last mixing of the bits. */
function hashed(words: Uint32Array, start: number): number {
  let hash = start;
  for (const word of words) {
    hash = Math.imul(hash ^ word, 0x01000193);
    hash ^= hash >>> 15;
  }
  return hash >>> 0;
}

function made(setting: PlaceBox, lamp: Lamp, cells: readonly [number, number]): UnitField {
  const { levels } = setting;
  const level = levels.find(({ shelf }) => shelf === lamp.shelf) ?? levels[0];
  const beam = beamShape(lamp.beam);
  const highest = level.base + lamp.height + (beam.downward ? 0 : overLamp);
  const box: Box = { ...setting.box, height: Math.max(setting.box.height, highest) };
  return unitField(
    box,
    setting.plantReflectance,
    levels.map((each) => cellsOf(each, cells)),
    hungFaces(box, level, lamp),
    beam,
  );
}

export function cellsOf(
  { shelf, base, plants }: PlaceLevel,
  [columns, rows]: readonly [number, number],
): LevelCells {
  const u = lines(plants.x1, plants.x2, columns);
  const v = lines(plants.y1, plants.y2, rows);
  return { on: shelf === 'lower' ? 'floor' : 'top', cells: { axis: 2, facing: 1, at: base, u, v } };
}

function hungFaces(box: Box, level: PlaceLevel, lamp: Lamp): HungFace[] {
  const rank = { ...lamp, count: Math.max(1, Math.round(lamp.count)) };
  return lampFaces(level.lamps, rank).map(({ face, share }) => {
    const moved: Rectangle = {
      x1: face.x1 + lamp.along,
      x2: face.x2 + lamp.along,
      y1: face.y1 + lamp.across,
      y2: face.y2 + lamp.across,
    };
    const hung = hungInside(moved, box);
    const z = underBoard(box, hung, level.base + lamp.height);
    return { face: hung, z, share, height: Math.max(0.01, z - level.base) };
  });
}

/** A lamp that would hang in the board of the shelf or its plants hangs right under the board. */
function underBoard({ shelf }: Box, face: Rectangle, z: number): number {
  if (shelf === null || z < shelf.under || z >= shelf.top) return z;
  const over = face.x2 > shelf.x1 && face.x1 < shelf.x2 && face.y2 > shelf.y1 && face.y1 < shelf.y2;
  return over ? shelf.under : z;
}
