import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lampFaces } from '../../core/light/field-layout.ts';
import type { Rectangle } from '../../core/index.ts';
import { rectangleAt } from '../../core/index.ts';

/** Area two rectangles share [m²]. */
const shared = (a: Rectangle, b: Rectangle) =>
  Math.max(0, Math.min(a.x2, b.x2) - Math.max(a.x1, b.x1)) *
  Math.max(0, Math.min(a.y2, b.y2) - Math.max(a.y1, b.y1));

function overlap(faces: readonly Rectangle[]): number {
  let most = 0;
  faces.forEach((a, i) => faces.slice(i + 1).forEach((b) => (most = Math.max(most, shared(a, b)))));
  return most;
}

describe('a grid of lamps over an area', () => {
  it('two tubes longer than half a square tent hang side by side, not one over the other', () => {
    const tubes = { count: 2, arrangement: 'panel', length: 0.55, width: 0.04, height: 0.4 } as const;
    const faces = lampFaces(rectangleAt(0, 0, 0.8, 0.8), tubes).map(({ face }) => face);
    expect(overlap(faces)).toBe(0);
    expect(faces.map(({ x1, x2 }) => x1 + x2)).toEqual([0, 0]);
    expect(faces[1].y1 - faces[0].y1).toBeCloseTo(0.4, 9);
  });

  it('lamps made to fit some rows and columns never overlap nor hang out, and share the light alike', () => {
    const part = fc.double({ min: 0.3, max: 1, noNaN: true });
    const side = fc.double({ min: 0.4, max: 4, noNaN: true });
    const most = fc.integer({ min: 1, max: 6 });
    fc.assert(
      fc.property(side, side, most, most, part, part, (length, width, columns, rows, a, b) => {
        const [wide, deep] = [(a * length) / columns, (b * width) / rows];
        // A lamp's long side lies along the area's.
        fc.pre(length >= width === wide >= deep);
        const lamps = { count: columns * rows, arrangement: 'panel', height: 0.5 } as const;
        const faces = lampFaces(rectangleAt(0, 0, length, width), { ...lamps, length: wide, width: deep });
        expect(faces).toHaveLength(columns * rows);
        expect(overlap(faces.map(({ face }) => face))).toBeLessThan(1e-9);
        for (const { face, share } of faces) {
          expect(share).toBeCloseTo(1 / (columns * rows), 12);
          expect(Math.abs(face.x1 + face.x2) / 2 + wide / 2).toBeLessThan(length / 2 + 1e-9);
          expect(Math.abs(face.y1 + face.y2) / 2 + deep / 2).toBeLessThan(width / 2 + 1e-9);
        }
      }),
    );
  });
});
