import { describe, expect, it } from 'vitest';
import { demonstrationPlan, lampTechnologies, parsePlan } from '../../core/index.ts';
import type { LampComparison } from '../../core/index.ts';
import {
  coarse,
  draftOf,
  firstDrafts,
  freeId,
  hoursOf,
  lampOf,
  optionsOf,
  usualPrice,
  withTechnology,
} from '../../renderer/lamps/options.ts';

const tent = demonstrationPlan.places.find((place) => place.id === 'bright-tent')!;
const tunnel = demonstrationPlan.places.find((place) => place.id === 'tunnel')!;

describe('an option', () => {
  it('is a lamp that a plan accepts, for each technology and through midnight', () => {
    for (const { id } of lampTechnologies) {
      const draft = {
        ...withTechnology(draftOf(tent.lamps[0], 'option-2'), id),
        onMinutes: 20 * 60,
        hours: 11.5,
      };
      const places = demonstrationPlan.places.map((one) =>
        one.id === tent.id ? { ...one, lamps: [lampOf(draft)] } : one,
      );
      expect(parsePlan({ ...demonstrationPlan, places })).toMatchObject({ ok: true });
    }
  });
  it('keeps its hours through a lamp and back, midnight and the whole day included', () => {
    const draft = draftOf(tent.lamps[0], 'option-2');
    for (const hours of [0.25, 9, 14.5, 23.75, 24]) {
      expect(draftOf(lampOf({ ...draft, hours }), 'option-2').hours).toBe(hours);
    }
    expect(hoursOf({ on: '22:00', off: '06:30' })).toBe(8.5);
  });
  it('folds the dimming of the lamp there into its watts', () => {
    expect(draftOf({ ...tent.lamps[0], dimming: 0.5 }, 'option-2').watts).toBe(37.5);
  });
  it('takes its usual price from the catalogue’s price a watt', () => {
    expect(usualPrice({ technology: 'led-white', watts: 50, count: 2 })).toBe(120);
  });
});

describe('the options', () => {
  it('start with what is there, already paid for', () => {
    const options = optionsOf(tent, firstDrafts(tent));
    expect(options).toHaveLength(3);
    expect(options[0].name).toBe('What is there');
    expect(options[0].lamps[0]).toEqual({ ...tent.lamps[0], price: 0 });
  });
  it('start with no lamp where there is none', () => {
    const options = optionsOf(tunnel, firstDrafts(tunnel));
    expect(options[0]).toEqual({ name: 'No lamp, as now', lamps: [] });
    const [{ watts, count }] = options[1].lamps;
    expect(count).toBe(12); // one for about 0.6 m² of the tunnel's 7 m²
    expect(Math.abs((watts * count) / tunnel.growingArea - 75)).toBeLessThan(4); // 75 W m⁻², rounded to 5 W a lamp
  });
  it('never share an identifier', () => {
    const drafts = firstDrafts(tent);
    expect(drafts.map((draft) => draft.id)).not.toContain(freeId(drafts));
    expect(freeId(drafts.slice(1))).not.toBe(drafts[1].id);
  });
});

describe('the numbers on the map', () => {
  it('are means of their cells and keep the mean of the whole', () => {
    const map = Float64Array.from({ length: 24 }, (_, index) => index);
    const comparison = { map, columns: 6, rows: 4 } as unknown as LampComparison;
    const cells = coarse(comparison, 3, 2);
    expect(cells.map((cell) => cell.value)).toEqual([3.5, 5.5, 7.5, 15.5, 17.5, 19.5]);
    expect(cells.reduce((sum, cell) => sum + cell.value, 0) / 6).toBeCloseTo(11.5, 12);
  });
});
