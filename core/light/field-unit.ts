import type { BeamShape } from './beam.ts';
import { exchangeOf, sightOf } from './box-exchange.ts';
import type { Box, BoxPart } from './box-parts.ts';
import { sideOf } from './box-parts.ts';
import { lightFalling } from './box-solve.ts';
import type { HungFace } from './field-direct.ts';
import { addDirect, hangsOut } from './field-direct.ts';
import type { PatchGrid } from './patch-grid.ts';
import { patchesOf } from './patch-grid.ts';

/** The part of the floor or of the shelf's top that plants stand on, divided into the cells of the map. */
export interface LevelCells {
  readonly on: 'floor' | 'top';
  readonly cells: PatchGrid;
}

/** Where 1 µmol s⁻¹ of some lamps goes in a box. */
export interface UnitField {
  /** Light falling on each cell of each level [µmol s⁻¹]. */
  readonly cells: readonly Float64Array[];
  /** Falling on the whole floor and on the shelf's top [µmol s⁻¹]. */
  readonly onFloor: number;
  /** Taken up by plants, kept in walls, kept in ceiling and board, gone past or out [µmol s⁻¹]. */
  readonly absorbed: number;
  readonly inWalls: number;
  readonly inCeiling: number;
  readonly lost: number;
  /** What the four add up to less what was given, as a share of it: error of the integration. */
  readonly closure: number;
}

/** Light of faces that give 1 µmol s⁻¹ together, straight and thrown back, with plants of reflectance `plants`. */
export function unitField(
  box: Box,
  plants: number,
  levels: readonly LevelCells[],
  faces: readonly HungFace[],
  beam: BeamShape,
): UnitField {
  const { mesh, matrix } = exchangeOf(box);
  const direct = new Float64Array(mesh.patches);
  const reflectance = new Float64Array(mesh.patches);
  for (const { role, grid, first } of mesh.parts) {
    reflectance.fill(sideOf(box, role, plants).reflectance, first, first + patchesOf(grid));
  }
  const outside = straightOnto(box, mesh.parts, faces, beam, direct);
  const falling = lightFalling(matrix, mesh.areas, reflectance, direct);
  const radiosity = falling.map((light, i) => (reflectance[i] * light) / mesh.areas[i]);
  const cells = levels.map(({ cells: grid }) => {
    const light = new Float64Array(patchesOf(grid));
    for (const hung of faces) addDirect(hung, beam, box, grid, light);
    addSeen(sightOf(box, grid), radiosity, light);
    return light;
  });
  return { cells, ...ends(box, plants, mesh.parts, levels, cells, falling, outside) };
}

/** Direct light on all patches; gives what faces that hang out over an open side send past the box. */
function straightOnto(
  box: Box,
  parts: readonly BoxPart[],
  faces: readonly HungFace[],
  beam: BeamShape,
  direct: Float64Array,
): number {
  let outside = 0;
  for (const hung of faces) {
    let inside = 0;
    for (const { grid, first } of parts) {
      const light = new Float64Array(patchesOf(grid));
      addDirect(hung, beam, box, grid, light);
      for (let k = 0; k < light.length; k++) {
        direct[first + k] += light[k];
        inside += light[k];
      }
    }
    if (hangsOut(hung.face, box)) outside += Math.max(0, hung.share - inside);
  }
  return outside;
}

function addSeen(sight: Float64Array, radiosity: Float64Array, light: Float64Array): void {
  const n = radiosity.length;
  for (let c = 0; c < light.length; c++) {
    let sum = 0;
    for (let j = 0, at = c * n; j < n; j++, at++) sum += sight[at] * radiosity[j];
    light[c] += sum;
  }
}

function ends(
  box: Box,
  plants: number,
  parts: readonly BoxPart[],
  levels: readonly LevelCells[],
  cells: readonly Float64Array[],
  falling: Float64Array,
  outside: number,
): Omit<UnitField, 'cells'> {
  const end = { onFloor: 0, absorbed: 0, inWalls: 0, inCeiling: 0, lost: outside };
  let total = outside;
  for (const { role, grid, first } of parts) {
    const { reflectance, rest } = sideOf(box, role, plants);
    const light = sum(falling.subarray(first, first + patchesOf(grid)));
    const taken = (1 - reflectance) * light;
    total += taken;
    if (role === 'floor') {
      const level = levels.findIndex(({ on }) => on === 'floor');
      const onPlants = level < 0 ? 0 : Math.min(taken, (1 - reflectance) * sum(cells[level]));
      end.onFloor += light;
      end.absorbed += onPlants;
      end.lost += taken - onPlants;
    } else if (role === 'top' || role === 'edge') {
      if (role === 'top') end.onFloor += light;
      end.absorbed += taken;
    } else if (rest === 'out') end.lost += taken;
    else if (role === 'ceiling' || role === 'board') end.inCeiling += taken;
    else end.inWalls += taken;
  }
  return { ...end, closure: total - 1 };
}

function sum(values: Float64Array): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}
