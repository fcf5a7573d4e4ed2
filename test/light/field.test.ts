import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import * as v from 'valibot';
import type { Lamp } from '../../core/plan/equipment.ts';
import { lampOf } from '../../core/plan/parts.ts';
import { placeSchema } from '../../core/plan/schema.ts';
import type { Place } from '../../core/plan/schema.ts';
import { lampLight, lampPhotons, parallelFactor, placeField, rectangleAt } from '../../core/light/index.ts';
import {
  allPlaces,
  coldFrame,
  house,
  leanTo,
  listed,
  samplePlace,
  shelf,
  tent,
  tunnel,
  windowBay,
} from '../fabric/sample-places.ts';

const lamp: Lamp = lampOf({
  id: 'lamp',
  name: 'Lamp',
  technology: 'led-white',
  watts: 75,
  efficacy: 2.7,
  count: 1,
  height: 0.3,
  length: 0.45,
  width: 0.3,
  on: '08:00',
  off: '20:00',
});

const upperShelf = { height: 0.6, plants: 0.1, length: 0.8, width: 0.4, side: 'back' };
const twoLevels = samplePlace({
  covering: 'tent-fabric',
  growingArea: 0.9,
  wallReflectance: 0.88,
  room: { kind: 'constant', temperature: 18 },
  shape: { kind: 'tent', length: 0.8, width: 0.8, height: 1.6 },
  upperShelf,
});
const changed = (place: Place, parts: object) => v.parse(placeSchema, { ...place, ...parts });

function ends(place: Place, lamps: readonly Lamp[]) {
  const field = placeField(place, { lamps });
  const { absorbed, inWalls, inCeiling, lost, emitted } = field;
  return { field, total: (absorbed + inWalls + inCeiling + lost) / emitted };
}

describe('lamps of a place together', () => {
  it.each(allPlaces.map((place) => [place.shape.kind, place] as const))('%s: light adds up', (_, place) => {
    const { field, total } = ends(place, [lamp, { ...lamp, id: 'b', count: 2, height: 0.2, along: 0.1 }]);
    expect(Math.abs(total - 1)).toBeLessThan(1e-6);
    expect(Math.abs(total - 1 - field.closure)).toBeLessThan(1e-9);
    expect(field.average).toBeGreaterThan(0);
    expect(field.levels.map((level) => level.shelf)).toEqual(['lower']);
  });

  it('is the sum of its lamps, one by one', () => {
    const other = { ...lamp, id: 'b', height: 0.5, across: 0.1, dimming: 0.6 };
    const both = placeField(tent, { lamps: [lamp, other] });
    const single = [lampLight(tent, lamp), lampLight(tent, other)];
    expect(both.average).toBeCloseTo(single[0].average + single[1].average, 9);
    both.levels[0].map.forEach((value, k) =>
      expect(value).toBeCloseTo(single[0].map[k] + single[1].map[k], 9),
    );
  });

  it('is none, but with its levels, where no lamp hangs', () => {
    const field = placeField(twoLevels, { lamps: [] });
    expect([field.average, field.emitted, field.closure]).toEqual([0, 0, 0]);
    expect(field.levels.map(({ evenness, most }) => [evenness, most])).toEqual([
      [0, 0],
      [0, 0],
    ]);
  });

  it('gives maps of its own each time, which a caller may hand on', () => {
    placeField(tent, { lamps: [lamp] }).levels[0].map.fill(0);
    expect(placeField(tent, { lamps: [lamp] }).levels[0].least).toBeGreaterThan(0);
  });

  it('keeps its answers apart: another wall, ceiling, bench, beam, place of the lamp gives another field', () => {
    const first = placeField(tent, { lamps: [lamp] }).average;
    const others = [
      placeField({ ...tent, wallReflectance: 0.5 }, { lamps: [lamp] }),
      placeField({ ...tent, ceilingReflectance: 0.1 }, { lamps: [lamp] }),
      placeField({ ...tent, benchReflectance: 0.5 }, { lamps: [lamp] }),
      placeField(tent, { lamps: [{ ...lamp, beam: { kind: 'cosine-power', power: 4 } }] }),
      placeField(tent, { lamps: [{ ...lamp, arrangement: 'bulbs' }] }),
      placeField(tent, { lamps: [{ ...lamp, along: 0.1 }] }),
      placeField(tent, { lamps: [{ ...lamp, height: 0.31 }] }),
    ].map(({ average }) => average);
    expect(new Set([first, ...others]).size).toBe(others.length + 1);
    expect(placeField(tent, { lamps: [lamp] }).average).toBe(first);
  });
});

describe('places', () => {
  it('an open shelf gets the direct light of the face, by the factor of two rectangles', () => {
    const open = { ...shelf, benchReflectance: 0 };
    const factor = parallelFactor(rectangleAt(0, 0, 0.45, 0.3), rectangleAt(0, 0, 1, 0.4), 0.3);
    const field = placeField(open, { lamps: [lamp] });
    expect(field.average).toBeCloseTo((75 * 2.7 * factor) / 0.4, 9);
    expect(field.inWalls).toBe(0);
  });

  it('light lost past an open shelf falls as the lamp comes down, and a white board over it helps', () => {
    const lost = [0.05, 0.1, 0.2, 0.3, 0.45].map((height) => {
      const field = placeField(shelf, { lamps: [{ ...lamp, height }] });
      return field.lost / field.emitted;
    });
    for (let k = 1; k < lost.length; k++) expect(lost[k]).toBeGreaterThan(lost[k - 1]);
    const average = (ceilingReflectance: number | null) =>
      placeField({ ...shelf, ceilingReflectance, benchReflectance: 0.3 }, { lamps: [lamp] }).average;
    expect(average(0.8)).toBeGreaterThan(average(null));
  });

  it('a lamp that hangs out over the edge of an open shelf loses what it sends past', () => {
    const over = ends(shelf, [{ ...lamp, along: 0.6 }]);
    expect(over.field.average).toBeLessThan(0.7 * placeField(shelf, { lamps: [lamp] }).average);
    expect(Math.abs(over.total - 1)).toBeLessThan(1e-6);
  });

  it('a lamp wider than a tent, or off its middle, is kept within its walls', () => {
    const wide = ends(tent, [{ ...lamp, length: 1.5, along: 2 }]);
    expect(wide.field.lost / wide.field.emitted).toBeLessThan(0.2);
    expect(Math.abs(wide.total - 1)).toBeLessThan(1e-6);
    const [left, right] = [0, 15].map(
      (column) => placeField(tent, { lamps: [{ ...lamp, along: 2 }] }).levels[0].map[128 + column],
    );
    expect(right).toBeGreaterThan(1.5 * left);
  });

  it('higher lamps are more even and fall short by more, in every place', () => {
    for (const place of [tent, shelf, house, tunnel, leanTo, windowBay, listed, coldFrame]) {
      const fields = [0.15, 0.25, 0.35].map((height) => lampLight(place, { ...lamp, height }));
      for (let k = 1; k < fields.length; k++) {
        expect(fields[k].evenness).toBeGreaterThan(fields[k - 1].evenness);
        expect(fields[k].average).toBeLessThan(fields[k - 1].average);
      }
    }
  });

  it('an opaque back wall throws back more than glass by night', () => {
    const back = (wallReflectance: number) =>
      placeField({ ...leanTo, wallReflectance }, { lamps: [{ ...lamp, across: 0.7 }] });
    expect(back(0.9).average).toBeGreaterThan(back(0.1).average);
    expect(back(0.9).inWalls).toBeGreaterThan(0);
    expect(placeField({ ...house, wallReflectance: 0.9 }, { lamps: [lamp] }).average).toBe(
      placeField({ ...house, wallReflectance: 0.1 }, { lamps: [lamp] }).average,
    );
  });

  it('the front of the map is the first row: a lamp moved to the front lights it more', () => {
    const { map, rows, columns } = placeField(house, { lamps: [{ ...lamp, across: -0.6 }] }).levels[0];
    const row = (r: number) => map.subarray(r * columns, (r + 1) * columns).reduce((a, b) => a + b, 0);
    expect(row(0)).toBeGreaterThan(2 * row(rows - 1));
  });

  it('bars side by side light more evenly than one panel as large as all of them in the middle', () => {
    const one = { ...lamp, length: 0.7, width: 0.16 };
    const bars = placeField(tent, {
      lamps: [{ ...one, watts: 25, count: 4, width: 0.04, arrangement: 'bars' }],
    });
    expect(bars.levels[0].evenness).toBeGreaterThan(placeField(tent, { lamps: [one] }).levels[0].evenness);
  });

  it('takes the light of a photometric file: turned by 90° it throws its long way across', () => {
    const photometry = {
      name: 'Invented',
      vertical: [0, 30, 60, 90],
      planes: [0, 90],
      candela: [100, 95, 70, 0, 100, 40, 5, 0],
    };
    const give = (turned: number) =>
      placeField(house, { lamps: [{ ...lamp, height: 0.6, beam: { kind: 'file', photometry, turned } }] });
    const cells = (field: ReturnType<typeof placeField>) => {
      const { map, columns, rows } = field.levels[0];
      return { side: map[(rows / 2) * columns], front: map[columns / 2] };
    };
    const [along, across] = [cells(give(0)), cells(give(90))];
    expect(along.side / along.front).toBeGreaterThan(1.5 * (across.side / across.front));
    expect(Math.abs(give(0).closure)).toBeLessThan(0.005);
    const other = { ...photometry, candela: [100, 95, 70, 0, 100, 41, 5, 0] };
    const light = (file: typeof photometry) =>
      placeField(house, { lamps: [{ ...lamp, beam: { kind: 'file', photometry: file, turned: 0 } }] })
        .average;
    expect(light(structuredClone(photometry))).toBe(light(photometry));
    expect(light(other)).not.toBe(light(photometry));
  });
});

describe('two levels of plants', () => {
  it('has a map of each; the average is over the growing area', () => {
    const field = placeField(twoLevels, { lamps: [lamp, { ...lamp, id: 'u', shelf: 'upper' }] });
    const [lower, upper] = field.levels;
    expect([lower.shelf, upper.shelf]).toEqual(['lower', 'upper']);
    expect(upper.area).toBeCloseTo(0.32, 12);
    expect(lower.area).toBeCloseTo(0.58, 12);
    expect(upper.height).toBeCloseTo(0.7, 12);
    expect(upper.across).toBeCloseTo(0.2, 12);
    expect(field.average).toBeCloseTo((lower.average * lower.area + upper.average * upper.area) / 0.9, 9);
    expect(lampLight(twoLevels, lamp).map).toHaveLength(256);
  });

  it('a lamp hangs over the level it is meant for', () => {
    const [low] = placeField(twoLevels, { lamps: [lamp] }).levels;
    const high = placeField(twoLevels, { lamps: [{ ...lamp, shelf: 'upper' }] }).levels[1];
    const other = placeField(twoLevels, { lamps: [lamp] }).levels[1];
    expect(low.average).toBeGreaterThan(5 * other.average);
    expect(high.average).toBeGreaterThan(
      2 * placeField(twoLevels, { lamps: [{ ...lamp, shelf: 'upper' }] }).levels[0].average,
    );
  });

  it('the board shades what lies under it from a lamp over it', () => {
    const high = { ...lamp, height: 1.2, beam: { kind: 'cosine-power' as const, power: 1 } };
    const dark = changed(twoLevels, {
      wallReflectance: 0,
      ceilingReflectance: 0,
      benchReflectance: 0,
      growingArea: 0.96,
    });
    const { map, columns } = placeField(dark, { lamps: [high] }).levels[0];
    // Of the lower level's rows the front ones see the whole lamp, those at the back none of it.
    expect(map[15 * columns + 8]).toBe(0);
    expect(map[8]).toBeGreaterThan(10);
    const free = placeField(changed(dark, { upperShelf: null }), { lamps: [high] }).levels[0];
    expect(free.map[15 * columns + 8]).toBeGreaterThan(10);
  });

  it('a board over the whole of an open shelf parts it into two that know nothing of each other', () => {
    const whole = changed(shelf, {
      shape: { kind: 'shelf', length: 1, width: 0.4, height: 1 },
      upperShelf: { height: 0.5, plants: 0.1, length: 1, width: 0.4 },
      growingArea: 0.8,
      benchReflectance: 0,
    });
    const [lower, upper] = placeField(whole, { lamps: [lamp] }).levels;
    expect(upper.most).toBe(0);
    expect(lower.average).toBeCloseTo(
      placeField({ ...shelf, benchReflectance: 0 }, { lamps: [lamp] }).average,
      9,
    );
  });

  it('light adds up within 0.5 % with shelves, lamps and beams at random, and no cell is below nothing', () => {
    const metre = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({
          height: metre(0.2, 0.9),
          plants: metre(0.05, 0.3),
          length: metre(0.3, 1),
          width: metre(0.2, 0.8),
          side: fc.constantFrom('middle', 'front', 'back'),
        }),
        fc.boolean(),
        metre(0, 0.95),
        fc.record({
          height: metre(0.05, 1.2),
          shelf: fc.constantFrom<'lower' | 'upper'>('lower', 'upper'),
          along: metre(-0.4, 0.4),
          across: metre(-0.4, 0.4),
          count: fc.integer({ min: 1, max: 3 }),
          beam: fc.constantFrom<Lamp['beam']>(
            { kind: 'even' },
            { kind: 'cosine-power', power: 3 },
            { kind: 'cosine-power', power: 20 },
          ),
        }),
        (board, closed, reflectance, parts) => {
          const place = changed(twoLevels, {
            shape: { kind: closed ? 'tent' : 'shelf', length: 1, width: 0.8, height: 1.5 },
            wallReflectance: reflectance,
            ceilingReflectance: reflectance,
            growingArea: 0.9,
            upperShelf: board,
          });
          const { field, total } = ends(place, [{ ...lamp, ...parts }]);
          expect(Math.abs(field.closure)).toBeLessThan(0.005);
          expect(Math.abs(total - 1 - field.closure)).toBeLessThan(1e-6);
          for (const level of field.levels) expect(level.least).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: 25, seed: 13 },
    );
  });
});

describe('what a lamp gives', () => {
  const photons = (parts: Partial<Lamp>) => lampPhotons({ ...lamp, ...parts });

  it('by a reading under it is what the field under it says: the reading comes back', () => {
    const dark = changed(shelf, {
      benchReflectance: 0,
      shape: { kind: 'shelf', length: 1, width: 0.4, height: 2 },
      growingArea: 1e-2,
    });
    for (const beam of [{ kind: 'even' }, { kind: 'cosine-power', power: 6 }] as const) {
      const read = {
        ...lamp,
        beam,
        height: 0.5,
        light: {
          kind: 'reading' as const,
          value: 200,
          unit: 'ppfd' as const,
          distance: 0.5,
          luxPerMicromole: null,
        },
      };
      const { map } = placeField(dark, { lamps: [read], cells: [25, 25] }).levels[0];
      // The field's lamp is made of fewer points than the reading's: 1.4 % apart for the narrower beam.
      expect(Math.abs(map[312] / 200 - 1)).toBeLessThan(beam.kind === 'even' ? 0.001 : 0.015);
      const lux = { ...read, light: { ...read.light, value: 200 * 68, unit: 'lux' as const } };
      expect(lampPhotons(lux)).toBeCloseTo(lampPhotons(read), 6);
    }
  });

  it('by lumens and the lux for a micromole: 1,000 W sodium of 130 klm gives 1,585 µmol/s at 82 (derived)', () => {
    const light = { kind: 'lumens' as const, lumens: 130000, luxPerMicromole: null };
    expect(photons({ technology: 'hps-electronic', light })).toBeCloseTo(1585.4, 1);
    expect(photons({ technology: 'hps-electronic', light: { ...light, luxPerMicromole: 71 } })).toBeCloseTo(
      1831,
      1,
    );
  });

  it('falls with the hours burnt to the technology’s maintenance and stays there; a reading is of the lamp as it is', () => {
    expect(photons({ burnt: 25000 }) / photons({})).toBeCloseTo(0.95, 9);
    expect(photons({ burnt: 50000 }) / photons({})).toBeCloseTo(0.9, 9);
    expect(photons({ burnt: 90000 }) / photons({})).toBeCloseTo(0.9, 9);
    const light = {
      kind: 'reading' as const,
      value: 100,
      unit: 'ppfd' as const,
      distance: 0.4,
      luxPerMicromole: null,
    };
    expect(photons({ light, burnt: 50000 })).toBe(photons({ light }));
  });

  it('by its photometric file: zonal lumens ÷ lux for a micromole', () => {
    const vertical = Array.from({ length: 19 }, (_, k) => 5 * k);
    const candela = vertical.map((angle) => 318.31 * Math.max(0, Math.cos((angle * Math.PI) / 180)));
    const photometry = { name: 'Lambertian', vertical, planes: [0], candela };
    const light = { kind: 'file' as const, luxPerMicromole: 50 };
    expect(photons({ light, beam: { kind: 'file', photometry, turned: 0 } })).toBeCloseTo(20, 2);
  });
});
