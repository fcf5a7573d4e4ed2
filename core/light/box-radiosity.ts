import type { Rectangle } from './rectangles.ts';
import { areaOfRectangle, parallelFactor } from './rectangles.ts';

/**
 * Interreflection in an upright box whose walls are divided into level bands. Each of floor, bands and ceiling
 * is taken as evenly bright; view factors follow exactly from those of the level openings between the bands by
 * closure and reciprocity (Siegel & Howell, Thermal Radiation Heat Transfer, ch. 6), so no light is lost.
 */
export interface BoxLight {
  /** Light falling on floor, bands from the floor up, and ceiling [µmol s⁻¹]. */
  readonly falling: Float64Array;
  /** Light leaving each again [µmol s⁻¹]. */
  readonly leaving: Float64Array;
}

/** View factor from part `i` to part `j` of the box: 0 floor, 1…bands, bands+1 ceiling. */
export function boxFactors(floor: Rectangle, height: number, bands: number): Float64Array {
  const parts = bands + 2;
  const opening = new Float64Array(bands + 1);
  for (let k = 0; k <= bands; k++)
    opening[k] = k === 0 ? 1 : parallelFactor(floor, floor, (height * k) / bands);
  const floorArea = areaOfRectangle(floor);
  const bandArea = (2 * (floor.x2 - floor.x1 + floor.y2 - floor.y1) * height) / bands;
  const toBand = floorArea / bandArea;
  const factors = new Float64Array(parts * parts);
  const set = (i: number, j: number, value: number) => {
    factors[i * parts + j] = value;
  };
  const top = parts - 1;
  set(0, top, opening[bands]);
  set(top, 0, opening[bands]);
  for (let b = 1; b <= bands; b++) {
    const fromFloor = opening[b - 1] - opening[b];
    const fromTop = opening[bands - b] - opening[bands - b + 1];
    set(0, b, fromFloor);
    set(b, 0, fromFloor * toBand);
    set(top, b, fromTop);
    set(b, top, fromTop * toBand);
    for (let c = 1; c <= bands; c++) {
      const gap = Math.abs(c - b);
      const value =
        gap === 0
          ? 1 - 2 * toBand * (1 - opening[1])
          : toBand * (opening[gap - 1] - 2 * opening[gap] + opening[gap + 1]);
      set(b, c, value);
    }
  }
  return factors;
}

/** Follows light that first falls as `direct` [µmol s⁻¹] on each part until all is absorbed (Gauss–Seidel). */
export function boxLight(factors: Float64Array, reflectance: Float64Array, direct: Float64Array): BoxLight {
  const parts = direct.length;
  const leaving = new Float64Array(parts);
  const falling = new Float64Array(direct);
  let largest = 0;
  for (const value of direct) largest = Math.max(largest, value);
  for (let round = 0; round < 5000; round++) {
    let change = 0;
    for (let i = 0; i < parts; i++) {
      let sum = direct[i];
      for (let j = 0; j < parts; j++) sum += leaving[j] * factors[j * parts + i];
      falling[i] = sum;
      const next = reflectance[i] * sum;
      change = Math.max(change, Math.abs(next - leaving[i]));
      leaving[i] = next;
    }
    if (change <= 1e-10 * largest) return { falling, leaving };
  }
  throw new Error(`expected reflectances below 1, got ${Array.from(reflectance).join(' ')}`);
}
