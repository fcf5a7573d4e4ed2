import { describe, expect, it } from 'vitest';
import { cornerFactor, parallelFactor, pointFactor, rectangleAt } from '../../core/light/index.ts';
import { exchangeOf } from '../../core/light/box-exchange.ts';
import type { Box } from '../../core/light/box-parts.ts';
import { exchangeBlock } from '../../core/light/patch-exchange.ts';
import { lines } from '../../core/light/patch-grid.ts';
import type { PatchGrid } from '../../core/light/patch-grid.ts';

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

  it('rectangles at right angles, anywhere: the closed form is the integral of cos β₁ cos β₂ / π r²', () => {
    const level: PatchGrid = { axis: 2, facing: 1, at: 0, u: lines(0.1, 0.8, 1), v: lines(0.3, 0.9, 1) };
    const upright: PatchGrid = { axis: 1, facing: 1, at: 0, u: lines(-0.4, 0.5, 1), v: lines(0.2, 1.1, 1) };
    const n = 24;
    let sum = 0;
    for (let k = 0; k < n ** 4; k++) {
      const at = (power: number) => ((Math.floor(k / n ** power) % n) + 0.5) / n;
      const dx = 0.1 + 0.7 * at(0) - (-0.4 + 0.9 * at(1));
      const y = 0.3 + 0.6 * at(2);
      const z = 0.2 + 0.9 * at(3);
      sum += (y * z) / (Math.PI * (dx * dx + y * y + z * z) ** 2);
    }
    const sampled = (sum / n ** 4) * 0.7 * 0.6 * 0.9 * 0.9;
    expect(Math.abs(exchangeBlock(level, upright)[0] / sampled - 1)).toBeLessThan(1e-3);
    expect(exchangeBlock(upright, level)[0]).toBeCloseTo(exchangeBlock(level, upright)[0], 14);
  });

  it('cuts off what lies behind the other: a lamp in the middle of a wall lights only what is below it', () => {
    const wall: PatchGrid = { axis: 0, facing: 1, at: 0, u: lines(0, 1, 1), v: lines(0, 1, 2) };
    const lamp: PatchGrid = { axis: 2, facing: -1, at: 0.5, u: lines(0.2, 0.6, 1), v: lines(0.3, 0.7, 1) };
    const [below, above] = exchangeBlock(lamp, wall);
    expect(below).toBeGreaterThan(0.01);
    expect(Math.abs(above)).toBeLessThan(1e-14);
  });

  const side = { reflectance: 0.5, rest: 'kept' as const };
  const plain: Box = {
    length: 1.2,
    width: 0.8,
    height: 1.5,
    ceiling: side,
    walls: [side, side, side, side],
    shelf: null,
  };

  function worstRow(box: Box): number {
    const { mesh, matrix } = exchangeOf(box);
    let worst = 0;
    for (let i = 0; i < mesh.patches; i++) {
      let row = 0;
      for (let j = 0; j < mesh.patches; j++) row += matrix[i * mesh.patches + j];
      // Wall right behind a shelf that stands against it sees nothing.
      if (row > 0) worst = Math.max(worst, Math.abs(row / mesh.areas[i] - 1));
    }
    return worst;
  }

  it.each([1, 3, 6.5, 9])(
    'a box of fineness %d is closed: the factors of every patch add to one',
    (fineness) => {
      expect(worstRow({ ...plain, fineness })).toBeLessThan(1e-12);
    },
  );

  it('a box with a shelf in it is closed too, and what two patches exchange is equal both ways', () => {
    const shelf = { x1: -0.4, x2: 0.4, y1: 0, y2: 0.4, under: 0.6, top: 0.75 };
    const box: Box = { ...plain, shelf };
    expect(worstRow(box)).toBeLessThan(2e-6);
    const { mesh, matrix } = exchangeOf(box);
    for (let i = 0; i < mesh.patches; i++) {
      for (let j = 0; j < i; j++) expect(matrix[i * mesh.patches + j]).toBe(matrix[j * mesh.patches + i]);
    }
  });
});
