import { beamShape } from './beam.ts';
import type { Box, BoxSide } from './box-parts.ts';
import type { HungFace } from './field-direct.ts';
import { lampFaces } from './field-layout.ts';
import { unitField } from './field-unit.ts';
import { hungInside } from './field-direct.ts';
import { lines } from './patch-grid.ts';
import { rectangleAt } from './rectangles.ts';
import type { Beam } from '../plan/lamp.ts';

/** Lamps of one kind over an area, spread evenly. */
export interface LampArray {
  /** Size of the light-giving face of one lamp [m]. */
  readonly length: number;
  readonly width: number;
  /** Photons of all lamps together, 400–700 nm [µmol s⁻¹]. */
  readonly photonFlux: number;
  readonly count?: number;
  readonly arrangement?: 'panel' | 'bars' | 'bulbs';
  /** An even face where not given. */
  readonly beam?: Beam;
}

/** Shares of the light thrown back by walls, ceiling and plants, 0–1. */
export interface Reflectances {
  readonly walls: number;
  readonly ceiling: number;
  readonly floor: number;
}

export interface FieldOptions {
  /** Part of the area plants stand on, in its middle [m]; the whole where not given. */
  readonly target?: { readonly length: number; readonly width: number };
  /** Height of the ceiling [m]; at the lamps' height where not given. */
  readonly ceiling?: number;
  /** Cells of the map along length and width, and patches along a side of usual length. */
  readonly cells?: readonly [number, number];
  readonly fineness?: number;
}

/** Light of lamps on the plants' level. */
export interface LampField {
  /** Photon flux density over the target: mean, least, most [µmol m⁻² s⁻¹]; least over mean. */
  readonly average: number;
  readonly least: number;
  readonly most: number;
  readonly evenness: number;
  /** Share of the emitted light that falls on the whole level (reflected light included), 0–1. */
  readonly utilisation: number;
  /** Mean photon flux density of each cell of the target, `map[row * columns + column]`, columns along its length. */
  readonly map: Float64Array;
  readonly columns: number;
  readonly rows: number;
  readonly target: { readonly length: number; readonly width: number };
  /** Where the light ends [µmol s⁻¹]: in the plants, in walls and ceiling, past the plants. They add up to `emitted`. */
  readonly emitted: number;
  readonly absorbed: number;
  readonly inWalls: number;
  readonly lost: number;
  /** What the ends add up to less `emitted`, as a share of it. */
  readonly closure: number;
}

/**
 * Light field of a closed box: `area` lit by lamps `height` above the plants' level. Direct light of even faces by
 * closed-form configuration factors, of other beams by quadrature; reflected light by radiosity (`field-unit.ts`).
 */
export function lampField(
  area: { readonly length: number; readonly width: number },
  height: number,
  lamps: LampArray,
  reflectances: Reflectances,
  options: FieldOptions = {},
): LampField {
  const { length, width } = area;
  const count = lamps.count ?? 1;
  checkPositive({ length, width, height, 'lamp length': lamps.length, 'lamp width': lamps.width, count });
  const side = (reflectance: number): BoxSide => ({ reflectance, rest: 'kept' });
  const wall = side(reflectances.walls);
  const box: Box = {
    length,
    width,
    height: Math.max(height, options.ceiling ?? height),
    ceiling: side(reflectances.ceiling),
    walls: [wall, wall, wall, wall],
    shelf: null,
    ...(options.fineness === undefined ? {} : { fineness: options.fineness }),
  };
  const target = options.target ?? area;
  const [columns, rows] = options.cells ?? [16, 16];
  const u = lines(-target.length / 2, target.length / 2, columns);
  const v = lines(-target.width / 2, target.width / 2, rows);
  const rank = { ...lamps, count, height, arrangement: lamps.arrangement ?? 'panel' };
  const faces: HungFace[] = lampFaces(rectangleAt(0, 0, length, width), rank).map(({ face, share }) => ({
    face: hungInside(face, box),
    z: height,
    share,
    height,
  }));
  const field = unitField(
    box,
    reflectances.floor,
    [{ on: 'floor', cells: { axis: 2, facing: 1, at: 0, u, v } }],
    faces,
    beamShape(lamps.beam ?? { kind: 'even' }),
  );
  const cell = (target.length * target.width) / (columns * rows);
  const map = field.cells[0].map((light) => (light * lamps.photonFlux) / cell);
  return {
    ...spread(map),
    utilisation: field.onFloor,
    map,
    columns,
    rows,
    target: { length: target.length, width: target.width },
    emitted: lamps.photonFlux,
    absorbed: field.absorbed * lamps.photonFlux,
    inWalls: (field.inWalls + field.inCeiling) * lamps.photonFlux,
    lost: field.lost * lamps.photonFlux,
    closure: field.closure,
  };
}

/** Mean, least and most of a map, and least over mean. */
export function spread(map: Float64Array): {
  average: number;
  least: number;
  most: number;
  evenness: number;
} {
  let least = Infinity;
  let most = 0;
  let total = 0;
  for (const value of map) {
    least = Math.min(least, value);
    most = Math.max(most, value);
    total += value;
  }
  const average = total / map.length;
  return { average, least, most, evenness: average > 0 ? least / average : 0 };
}

function checkPositive(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!(value > 0)) throw new Error(`expected ${name} above 0, got ${value}`);
  }
}
