import { describe, expect, it } from 'vitest';
import { cornerFactor, parallelFactor, pointFactor, rectangleAt } from '../../core/light/index.ts';
import { boxFactors } from '../../core/light/box-radiosity.ts';

describe('view factors of rectangles', () => {
  // Aligned parallel rectangles, X = a/c, Y = b/c; values from the closed form in heat-transfer handbooks, derived.
  it.each([
    [1, 1, 0.1998],
    [2, 2, 0.4153],
    [0.5, 0.5, 0.0686],
    [1, 2, 0.2859],
    [4, 4, 0.632],
  ])('X %d, Y %d see each other %d', (x, y, expected) => {
    const r = rectangleAt(0, 0, x, y);
    expect(Math.abs(parallelFactor(r, r, 1) - expected)).toBeLessThan(6e-5);
  });

  it('cube: two neighbouring faces see 0.2000 of each other (handbook value)', () => {
    expect(Math.abs(cornerFactor(1, 1, 1) - 0.20004)).toBeLessThan(2e-5);
  });

  it('six faces of a box take up all the light of one', () => {
    const [h, w, l] = [0.7, 1.3, 2.1];
    const face = rectangleAt(0, 0, w, l);
    const all = parallelFactor(face, face, h) + 2 * cornerFactor(w, h, l) + 2 * cornerFactor(l, h, w);
    expect(Math.abs(all - 1)).toBeLessThan(1e-12);
  });

  it('obeys reciprocity for rectangles of different size and place', () => {
    const a = rectangleAt(0.3, -0.2, 0.5, 1.1);
    const b = rectangleAt(-0.4, 0.6, 2, 0.7);
    expect(0.5 * 1.1 * parallelFactor(a, b, 0.8)).toBeCloseTo(2 * 0.7 * parallelFactor(b, a, 0.8), 12);
  });

  it('a rectangle’s factor is the mean of its points’ factors', () => {
    const a = rectangleAt(0.3, -0.2, 0.5, 1.1);
    const b = rectangleAt(-0.4, 0.6, 2, 0.7);
    const n = 60;
    let sum = 0;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        sum += pointFactor(a.x1 + ((i + 0.5) * 0.5) / n, a.y1 + ((j + 0.5) * 1.1) / n, b, 0.8);
      }
    }
    expect(Math.abs(sum / (n * n) - parallelFactor(a, b, 0.8))).toBeLessThan(1e-5);
  });

  it.each([1, 3, 8])('a box of %d wall bands is closed: every row of factors adds to one', (bands) => {
    const factors = boxFactors(rectangleAt(0, 0, 1.2, 0.8), 1.5, bands);
    const parts = bands + 2;
    for (let i = 0; i < parts; i++) {
      let row = 0;
      for (let j = 0; j < parts; j++) row += factors[i * parts + j];
      expect(Math.abs(row - 1)).toBeLessThan(1e-12);
    }
  });
});
