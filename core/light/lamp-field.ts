import { boxFactors, boxLight } from './box-radiosity.ts';
import type { Rectangle } from './rectangles.ts';
import { areaOfRectangle, overlap, parallelFactor, pointFactor, rectangleAt } from './rectangles.ts';

/** Lamps of one kind over an area: an even Lambertian face each, spread evenly. */
export interface LampArray {
  /** Size of the light-giving face of one lamp [m]. */
  readonly length: number;
  readonly width: number;
  /** Photons of all lamps together, 400–700 nm [µmol s⁻¹]. */
  readonly photonFlux: number;
  readonly count?: number;
}

/** Shares of the light thrown back by walls, ceiling (at the lamps' height) and plants, 0–1. */
export interface Reflectances {
  readonly walls: number;
  readonly ceiling: number;
  readonly floor: number;
}

export interface FieldOptions {
  /** Part of the area plants stand on, in its middle [m]; the whole where not given. */
  readonly target?: { readonly length: number; readonly width: number };
  /** Cells of the map along length and width, and level bands of the walls. */
  readonly cells?: readonly [number, number];
  readonly bands?: number;
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
  /** Photon flux density by cell of the target, `map[row * columns + column]`, columns along its length. */
  readonly map: Float64Array;
  readonly columns: number;
  readonly rows: number;
  readonly target: { readonly length: number; readonly width: number };
  /** Where the light ends [µmol s⁻¹]: on the plants' level, in walls and ceiling, past the area. They add up to `emitted`. */
  readonly emitted: number;
  readonly absorbed: number;
  readonly inWalls: number;
  readonly lost: number;
}

/**
 * Light field of a box: `area` lit by lamps `height` above the plants' level. Direct light by closed-form
 * configuration factors of rectangles; reflected light by radiosity over wall bands (see `box-radiosity.ts`).
 */
export function lampField(
  area: { readonly length: number; readonly width: number },
  height: number,
  lamps: LampArray,
  reflectances: Reflectances,
  options: FieldOptions = {},
): LampField {
  checkPositive({ length: area.length, width: area.width, height });
  const floor = rectangleAt(0, 0, area.length, area.width);
  const faces = lampFaces(area, lamps);
  const perLamp = lamps.photonFlux / faces.length;
  const bands = options.bands ?? 8;
  const direct = directLight(floor, faces, perLamp, height, bands);
  const reflectance = new Float64Array(bands + 2).fill(reflectances.walls);
  reflectance[0] = reflectances.floor;
  reflectance[bands + 1] = reflectances.ceiling;
  const light = boxLight(boxFactors(floor, height, bands), reflectance, direct);
  const inside = direct.reduce((sum, value) => sum + value, 0);
  const target = options.target ?? area;
  const [columns, rows] = options.cells ?? [16, 16];
  const glow = wallGlow(floor, height, light.leaving);
  const map = new Float64Array(columns * rows);
  const spot = rectangleAt(0, 0, target.length, target.width);
  let indirect = 0;
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++) {
      const x = spot.x1 + ((c + 0.5) * target.length) / columns;
      const y = spot.y1 + ((r + 0.5) * target.width) / rows;
      const reflected = glow(x, y);
      indirect += reflected;
      map[r * columns + c] = directAt(x, y, faces, perLamp, height) + reflected;
    }
  }
  const toTarget = faces.reduce((sum, face) => sum + perLamp * parallelFactor(face, spot, height), 0);
  const average = toTarget / areaOfRectangle(spot) + indirect / map.length;
  const least = map.reduce((a, b) => Math.min(a, b), Infinity);
  return {
    average,
    least,
    most: map.reduce((a, b) => Math.max(a, b), 0),
    evenness: average > 0 ? least / average : 0,
    utilisation: lamps.photonFlux > 0 ? light.falling[0] / lamps.photonFlux : 0,
    map,
    columns,
    rows,
    target,
    emitted: lamps.photonFlux,
    absorbed: light.falling[0] - light.leaving[0],
    inWalls: light.falling.slice(1).reduce((sum, value, i) => sum + value - light.leaving[i + 1], 0),
    lost: lamps.photonFlux - inside,
  };
}

/** Lamps spread evenly over the area in rows along its length; a lamp's long side lies along the area's long side. */
function lampFaces(area: { length: number; width: number }, lamps: LampArray): Rectangle[] {
  const count = lamps.count ?? 1;
  checkPositive({ 'lamp length': lamps.length, 'lamp width': lamps.width, count });
  const long = Math.max(lamps.length, lamps.width);
  const short = Math.min(lamps.length, lamps.width);
  const [alongX, alongY] = area.length >= area.width ? [long, short] : [short, long];
  const rows = Math.max(1, Math.min(count, Math.round(Math.sqrt((count * area.width) / area.length))));
  const faces: Rectangle[] = [];
  for (let r = 0; r < rows; r++) {
    const inRow = Math.floor(count / rows) + (r < count % rows ? 1 : 0);
    const y = area.width * ((r + 0.5) / rows - 0.5);
    for (let c = 0; c < inRow; c++)
      faces.push(rectangleAt(area.length * ((c + 0.5) / inRow - 0.5), y, alongX, alongY));
  }
  return faces;
}

/** Light that first falls on floor, bands and ceiling [µmol s⁻¹]; what a lamp sends past the box is left out. */
function directLight(
  floor: Rectangle,
  faces: readonly Rectangle[],
  perLamp: number,
  height: number,
  bands: number,
): Float64Array {
  const direct = new Float64Array(bands + 2);
  for (const face of faces) {
    let above = overlap(face, floor);
    for (let b = bands; b >= 1; b--) {
      const below = Math.min(above, parallelFactor(face, floor, (height * (bands + 1 - b)) / bands));
      direct[b] += perLamp * (above - below);
      above = below;
    }
    direct[0] += perLamp * above;
  }
  return direct;
}

function directAt(
  x: number,
  y: number,
  faces: readonly Rectangle[],
  perLamp: number,
  height: number,
): number {
  let sum = 0;
  for (const face of faces) sum += (perLamp / areaOfRectangle(face)) * pointFactor(x, y, face, height);
  return sum;
}

/** Reflected light at a point of the floor from the bands and the ceiling [µmol m⁻² s⁻¹]. */
function wallGlow(floor: Rectangle, height: number, leaving: Float64Array): (x: number, y: number) => number {
  const bands = leaving.length - 2;
  const bandArea = (2 * (floor.x2 - floor.x1 + floor.y2 - floor.y1) * height) / bands;
  const ceiling = leaving[bands + 1] / areaOfRectangle(floor);
  return (x, y) => {
    let below = 1;
    let sum = 0;
    for (let b = 1; b <= bands; b++) {
      const above = pointFactor(x, y, floor, (height * b) / bands);
      sum += (leaving[b] / bandArea) * (below - above);
      below = above;
    }
    return sum + ceiling * below;
  };
}

function checkPositive(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (!(value > 0)) throw new Error(`expected ${name} above 0, got ${value}`);
  }
}
