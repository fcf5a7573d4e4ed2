import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import {
  areaOfRectangle,
  lampField,
  parallelFactor,
  pointFactor,
  rectangleAt,
} from '../../core/light/index.ts';
import type { LampArray, Reflectances } from '../../core/light/index.ts';
import { lightFalling } from '../../core/light/box-solve.ts';
import { exchangeOf } from '../../core/light/box-exchange.ts';
import type { BoxSide } from '../../core/light/box-parts.ts';
import { lampFaces } from '../../core/light/field-layout.ts';

const panel: LampArray = { length: 0.5, width: 0.3, photonFlux: 1000 };
const black: Reflectances = { walls: 0, ceiling: 0, floor: 0 };
const even = { kind: 'even' as const };
const power = (n: number) => ({ kind: 'cosine-power' as const, power: n });

describe('closed boxes', () => {
  it.each([
    ['even face at the ceiling', { ...panel }, 1.4, 1.4],
    ['even face half-way down', { ...panel, count: 3 }, 0.7, 1.4],
    ['bars', { ...panel, length: 1, width: 0.03, count: 5, arrangement: 'bars' as const }, 0.4, 1.6],
    ['narrow beam', { ...panel, beam: power(12) }, 0.8, 1.4],
  ])('perfect walls and ceiling bring every photon to a black floor: %s', (_, lamps, height, ceiling) => {
    const field = lampField(
      { length: 1.2, width: 0.8 },
      height,
      lamps,
      { walls: 1, ceiling: 1, floor: 0 },
      { ceiling },
    );
    const share = lamps.beam === undefined ? 1e-8 : 0.005;
    expect(Math.abs(field.utilisation - 1)).toBeLessThan(share);
    expect(Math.abs((field.average * 0.96) / 1000 - 1)).toBeLessThan(share);
    expect(Math.abs(field.inWalls)).toBeLessThan(1e-6);
  });

  it('black walls give the direct integral: mean by the factor of two rectangles, each cell by its points', () => {
    const field = lampField({ length: 1.2, width: 0.8 }, 0.4, panel, black, { ceiling: 1.5 });
    const face = rectangleAt(0, 0, 0.5, 0.3);
    const floor = rectangleAt(0, 0, 1.2, 0.8);
    expect(field.average).toBeCloseTo((1000 * parallelFactor(face, floor, 0.4)) / 0.96, 9);
    for (const [column, row] of [
      [0, 0],
      [7, 8],
      [15, 3],
    ]) {
      let sum = 0;
      for (let k = 0; k < 400; k++) {
        const x = -0.6 + (1.2 * (column + ((k % 20) + 0.5) / 20)) / 16;
        const y = -0.4 + (0.8 * (row + (Math.floor(k / 20) + 0.5) / 20)) / 16;
        sum += (1000 / areaOfRectangle(face)) * pointFactor(x, y, face, 0.4);
      }
      expect(Math.abs(field.map[row * 16 + column] / (sum / 400) - 1)).toBeLessThan(1e-4);
    }
  });

  // A cavity with the same reflectance all round: what has been thrown back at least once lies on it about evenly,
  // E = ρ Φ / (A (1 − ρ)) (integrating sphere, first order), on top of the direct light.
  it.each([
    [0.8, 0.5],
    [0.8, 1],
    [0.9, 0.5],
    [0.9, 1],
    [0.95, 0.5],
    [0.95, 1],
    [0.97, 1],
  ])(
    'metre cube of reflectance %d, lamp at %d m: floor within 2 % of the integrating cavity',
    (rho, height) => {
      const lamps = { length: 0.1, width: 0.1, photonFlux: 1000 };
      const size = { length: 1, width: 1 };
      const field = lampField(size, height, lamps, { walls: rho, ceiling: rho, floor: rho }, { ceiling: 1 });
      const direct = lampField(size, height, lamps, black, { ceiling: 1 });
      const cavity = direct.average + (rho * 1000) / (6 * (1 - rho));
      expect(Math.abs(field.average / cavity - 1)).toBeLessThan(0.02);
    },
  );

  it('settles as the mesh is refined: mean, least and most of the map', () => {
    const at = (fineness: number) =>
      lampField(
        { length: 0.8, width: 0.8 },
        0.45,
        { length: 0.45, width: 0.45, photonFlux: 200 },
        { walls: 0.88, ceiling: 0.88, floor: 0.08 },
        { ceiling: 1.6, fineness },
      );
    const finest = at(18);
    // The darkest cell lies in a corner, where the walls' light changes fastest: it settles last.
    for (const [of, most] of [
      ['average', 0.006],
      ['most', 0.006],
      ['least', 0.025],
    ] as const) {
      const error = (fineness: number) => Math.abs(at(fineness)[of] / finest[of] - 1);
      expect(error(7)).toBeLessThan(most);
      expect(error(12)).toBeLessThan(error(7));
    }
  });

  it('conjugate gradients solve what Gauss–Seidel by hand solves', () => {
    const side = (reflectance: number): BoxSide => ({ reflectance, rest: 'kept' });
    const walls = [side(0.9), side(0.5), side(0), side(0.7)] as const;
    const box = { length: 1, width: 0.7, height: 1.3, ceiling: side(0.6), walls, shelf: null, fineness: 3 };
    const { mesh, matrix } = exchangeOf(box);
    const n = mesh.patches;
    const reflectance = new Float64Array(n);
    mesh.parts.forEach(({ first }, p) => reflectance.fill([0.1, 0.6, 0.9, 0.5, 0, 0.7][p], first));
    const direct = Float64Array.from({ length: n }, (_, i) => (i % 7) / 7);
    const falling = new Float64Array(direct);
    for (let round = 0; round < 400; round++) {
      for (let i = 0; i < n; i++) {
        let sum = direct[i];
        for (let j = 0; j < n; j++) sum += (matrix[i * n + j] / mesh.areas[j]) * reflectance[j] * falling[j];
        falling[i] = sum;
      }
    }
    const solved = lightFalling(matrix, mesh.areas, reflectance, direct);
    for (let i = 0; i < n; i++) expect(Math.abs(solved[i] - falling[i])).toBeLessThan(1e-8);
  });
});

describe('sources', () => {
  it('inverse square within 1 % from five times the size of the source across (a disc is 1/(1 + 0.1²) of it, derived)', () => {
    // Over a floor so small that its cell is a point.
    const under = (lamps: Partial<LampArray>, height: number) =>
      lampField({ length: 100, width: 100 }, height, { ...panel, ...lamps }, black, {
        target: { length: 0.01, width: 0.01 },
        cells: [1, 1],
      }).average;
    for (const [size, lamps] of [
      [0.2, { length: 0.2, width: 0.2, arrangement: 'bulbs' as const }],
      [0.2, { length: 0.2, width: 0.1 }],
    ] as const) {
      const point = 1000 / Math.PI / (5 * size) ** 2;
      expect(Math.abs(under(lamps, 5 * size) / point - 1)).toBeLessThan(0.01);
      expect(under(lamps, size) / (1000 / Math.PI / size ** 2)).toBeLessThan(0.9);
    }
  });

  // M R² / (R² + h²), derived; strips or a square of the same area stand for the disc.
  it.each([
    [0.5, 0.5, 636.6],
    [0.25, 0.5, 1018.6],
    [0.25, 1.25, 195.9],
    [0.25, 2.5, 50.43],
    [0.1, 0.5, 1224.3],
  ])('disc of radius %d m at %d m: %d under its middle, within 0.5 %', (radius, height, expected) => {
    const lamps = { length: 2 * radius, width: 0.1, count: 1, arrangement: 'bulbs' as const, height };
    const faces = lampFaces(rectangleAt(0, 0, 1, 1), lamps);
    const sum = faces.reduce(
      (total, { face, share }) =>
        total + (1000 * share * pointFactor(0, 0, face, height)) / areaOfRectangle(face),
      0,
    );
    expect(Math.abs(sum / expected - 1)).toBeLessThan(0.005);
    expect(faces.reduce((total, { share }) => total + share, 0)).toBeCloseTo(1, 12);
  });

  it('a cosine power of 1 is the even face, by quadrature as by closed form', () => {
    const give = (beam: LampArray['beam']) =>
      lampField(
        { length: 1.2, width: 0.8 },
        0.3,
        { ...panel, beam },
        { walls: 0.7, ceiling: 0.7, floor: 0.1 },
        { ceiling: 1.2, cells: [8, 8] },
      );
    const exact = give(even);
    const near = give(power(1.000001));
    expect(Math.abs(near.average / exact.average - 1)).toBeLessThan(0.003);
    near.map.forEach((value, k) => expect(Math.abs(value / exact.map[k] - 1)).toBeLessThan(0.02));
  });

  it('cosine powers under a small lamp: (n + 1) / 2π · Φ / h² on axis, cosⁿ⁺³ away from it (derived)', () => {
    for (const n of [0, 2, 10, 40]) {
      const field = lampField(
        { length: 20, width: 20 },
        1,
        { length: 0.01, width: 0.01, photonFlux: 1000, beam: power(n) },
        black,
        { target: { length: 1.01, width: 0.01 }, cells: [101, 1] },
      );
      const peak = ((n + 1) / (2 * Math.PI)) * 1000;
      expect(Math.abs(field.map[50] / peak - 1)).toBeLessThan(1e-3);
      const cos = 1 / Math.sqrt(1 + 0.5 ** 2);
      expect(Math.abs(field.map[100] / (peak * cos ** (n + 3)) - 1)).toBeLessThan(0.005);
    }
  });

  it('a narrower beam puts more of its light on the plants and less evenly', () => {
    const give = (n: number) =>
      lampField(
        { length: 1, width: 1 },
        0.8,
        { ...panel, beam: power(n) },
        { walls: 0.3, ceiling: 0.3, floor: 0.1 },
      );
    for (const [wide, narrow] of [
      [1, 3],
      [3, 10],
    ]) {
      expect(give(narrow).average).toBeGreaterThan(give(wide).average);
      expect(give(narrow).evenness).toBeLessThan(give(wide).evenness);
    }
  });
});

describe('light adds up to what is given, within 0.5 %', () => {
  it('in random boxes with random lamps and beams; exactly for even faces', () => {
    const size = fc.double({ min: 0.3, max: 3, noNaN: true });
    const share = fc.double({ min: 0, max: 0.97, noNaN: true });
    fc.assert(
      fc.property(
        fc.tuple(size, size),
        fc.double({ min: 0.05, max: 1.5, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.tuple(share, share, share),
        fc.tuple(
          fc.double({ min: 0.02, max: 1, noNaN: true }),
          fc.double({ min: 0.02, max: 0.5, noNaN: true }),
        ),
        fc.integer({ min: 1, max: 6 }),
        fc.constantFrom<'panel' | 'bars' | 'bulbs'>('panel', 'bars', 'bulbs'),
        fc.constantFrom(even, power(0), power(2), power(9), power(60)),
        ([length, width], height, over, [walls, ceiling, floor], [long, short], count, arrangement, beam) => {
          const field = lampField(
            { length, width },
            height,
            { length: long, width: short, photonFlux: 500, count, arrangement, beam },
            { walls, ceiling, floor },
            { ceiling: height + over, cells: [4, 4] },
          );
          const most = beam.kind === 'even' ? 1e-8 : 0.005;
          expect(Math.abs(field.closure)).toBeLessThan(most);
          const ends = field.absorbed + field.inWalls + field.lost;
          expect(Math.abs(ends / 500 - 1 - field.closure)).toBeLessThan(1e-9);
          expect(Math.min(...field.map)).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: 60, seed: 12 },
    );
  });
});
