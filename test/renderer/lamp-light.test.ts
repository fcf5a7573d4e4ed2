import { describe, expect, it } from 'vitest';
import { demonstrationPlan, placeField, placeOf, sectionOf } from '../../core/index.ts';
import type { Lamp } from '../../core/index.ts';
import { halfAngle, strengthOf } from '../../renderer/lamps/beam.ts';
import { halfRays, lightAreas, lightLines, lightSection } from '../../renderer/lamps/beam-section.ts';
import { drawnSection } from '../../renderer/lamps/beam-view.ts';
import { fittingsOf } from '../../renderer/lamps/fittings.ts';
import { chartHeights, heightRange, tooHigh } from '../../renderer/lamps/height-range.ts';
import { scaleTop, scaleWords } from '../../renderer/lamps/result-words.ts';
import type { LampComparison } from '../../core/index.ts';

const tent = demonstrationPlan.places.find((place) => place.id === 'bright-tent')!;
const panel = tent.lamps[0];
/** The same lamp over an open shelf: only the light straight from it falls on the plants. */
const shelf = placeOf({
  ...tent,
  id: 'shelf',
  shape: { kind: 'shelf', length: 1.2, width: 0.5, height: 0.9 },
  growingArea: 0.6,
  fan: null,
  benchReflectance: 0,
  lamps: [],
});

const beams: readonly Lamp['beam'][] = [
  { kind: 'even' },
  { kind: 'cosine-power', power: 6 },
  {
    kind: 'file',
    turned: 0,
    photometry: {
      name: 'Narrow across',
      vertical: [0, 30, 60, 90],
      planes: [0, 90],
      candela: [900, 800, 400, 0, 900, 500, 60, 0],
    },
  },
];

describe('the drawn beam', () => {
  it('is half as strong at 60° for an even face, at acos 0.5^(1/n) for a power of the cosine', () => {
    expect(halfAngle(strengthOf({ kind: 'even' }), 90)).toBe(60);
    const power = halfAngle(strengthOf({ kind: 'cosine-power', power: 10 }), 0);
    expect(Math.abs(power - (Math.acos(0.5 ** 0.1) * 180) / Math.PI)).toBeLessThan(0.5); // steps of half a degree
    const [left, right] = halfRays({ ...panel, height: 0.5 }, { x: 0, y: 0.1, length: 0.5, width: 0.2 });
    expect(left[0]).toEqual([0, 0.5]);
    expect(right[1][0]).toBeCloseTo(0.2 + 0.5 * Math.tan(Math.PI / 3), 9);
  });

  it('lights the plants in the section as the light field has it', () => {
    let worst = 0;
    for (const beam of beams)
      for (const count of [1, 4]) {
        const lamp = { ...panel, beam, count, height: 0.45, length: 0.25, width: 0.2 };
        const { levels } = placeField(shelf, { lamps: [lamp], cells: [25, 25] });
        const [level] = levels;
        const middle = Array.from({ length: 25 }, (_, row) => level.map[row * 25 + 12]);
        const cell = level.width / 25;
        const edge = (level.width - cell) / 2;
        const section = lightSection(
          lamp,
          fittingsOf(shelf, lamp),
          { from: -edge, to: edge, low: 0, high: 0.4 },
          [25, 5],
        );
        const mean = middle.reduce((sum, value) => sum + value, 0) / 25;
        for (const [row, value] of middle.entries())
          worst = Math.max(worst, Math.abs(section.values[row] - value) / mean);
      }
    // Points for a face and values at a middle against exact faces and means of cells: 5.1 % of the mean at most,
    // under the narrowest of the beams.
    expect(worst).toBeLessThan(0.055);
  });

  it('is drawn in areas that double, none finer than its points can show', () => {
    const lamp = { ...panel, height: 0.4 };
    const section = lightSection(lamp, fittingsOf(tent, lamp), { from: -0.4, to: 0.4, low: 0, high: 0.4 });
    const areas = lightAreas(section);
    const levels = areas.map((area) => area.level);
    expect(levels).toEqual(lightLines.slice(0, levels.length));
    expect(levels.length).toBeGreaterThan(3);
    for (const [, height] of areas.at(-1)!.rings.flat()) expect(height).toBeLessThan(0.41);
  });

  it('fits on the paper with both levels of plants', () => {
    const two = {
      ...shelf,
      upperShelf: { height: 0.4, plants: 0.1, length: 1, width: 0.3, side: 'back' as const },
    };
    const lamp = { ...panel, shelf: 'upper' as const, height: 0.3 };
    const { levels } = placeField(two, { lamps: [lamp] });
    const view = drawnSection(two, sectionOf(two), levels, lamp);
    expect(view.rows.map((row) => row.shelf)).toEqual(['lower', 'upper']);
    const [lower, upper] = view.rows;
    expect(upper.board - lower.tops).toBeCloseTo(0.4, 9);
    expect([upper.from, upper.to].map((x) => Math.round(100 * x))).toEqual([20, 50]);
    const top = view.z(upper.tops + lamp.height);
    expect(top).toBeGreaterThan(0);
    expect(view.z(0)).toBeLessThan(view.height);
  });
});

describe('heights', () => {
  it('go up to the top of the place, to the boards of a shelf, and further where the lamp hangs higher', () => {
    const { height } = sectionOf(tent);
    const { least, most } = heightRange(tent, panel);
    expect(least).toBe(0.05);
    expect(most).toBeGreaterThan(0.5 * height);
    expect(most).toBeLessThan(height);
    expect(heightRange(tent, { ...panel, height: 3 }).most).toBe(3);
    const upperShelf = { height: 0.5, plants: 0.1, length: 0.6, width: 0.4, side: 'middle' as const };
    const two = { ...tent, upperShelf };
    expect(heightRange(two, panel).most).toBe(0.5);
    const units = { temperature: 'C', length: 'm' } as const;
    expect(tooHigh(two, { ...panel, height: 0.5 }, units)).toBe('');
    expect(tooHigh(tent, { ...panel, height: most }, units)).toBe('');
    expect(tooHigh(two, { ...panel, height: 0.6 }, units)).toContain(
      'the boards above, which are 0.50\u00a0m',
    );
    expect(tooHigh(tent, { ...panel, height: 3 }, units)).toContain('the cover, which is');
    expect(heightRange(two, { ...panel, shelf: 'upper' }).most).toBeCloseTo(most - 0.6, 2);
  });
  it('of the chart are round, rising and within what the hand can reach', () => {
    for (const place of [...demonstrationPlan.places, shelf]) {
      const heights = chartHeights(place, panel);
      expect(heights.length).toBeGreaterThan(1);
      expect([...heights].sort((a, b) => a - b)).toEqual(heights);
      expect(heights.at(-1)!).toBeLessThanOrEqual(heightRange(place, panel).most);
    }
  });
});

describe('words and scales', () => {
  it('say what a view has done to an option', () => {
    const one = (scale: number, watts = 40) => ({ scale, watts }) as LampComparison;
    expect(scaleWords(one(1.4), 'equal-light')).toBe('× 1.40 watts for the same light');
    expect(scaleWords(one(0.05), 'equal-watts')).toBe('× 0.050 watts for the same watts');
    expect(scaleWords(one(1), 'equal-light')).toBe('as given');
    expect(scaleWords(one(1.4), 'as-given')).toBe('');
    expect(scaleWords(one(1, 0), 'equal-light')).toBe('');
  });
  it('end the scale of the maps at a round figure above the strongest light', () => {
    expect([0, 12, 95, 341, 671, 2310].map(scaleTop)).toEqual([50, 20, 100, 360, 700, 2400]);
  });
});
