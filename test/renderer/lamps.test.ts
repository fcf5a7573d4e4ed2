import { describe, expect, it } from 'vitest';
import {
  burningHours,
  demonstrationPlan,
  lampChart,
  lampOf,
  lampTechnologies,
  parsePlan,
} from '../../core/index.ts';
import type { Lamp, LampComparison, Place } from '../../core/index.ts';
import { asBurnt, burntHours } from '../../renderer/lamps/burnt-hours.ts';
import {
  cheapStretches,
  coldStretches,
  fromNoon,
  hoursWords,
  litStretches,
  namedHours,
  withHours,
} from '../../renderer/lamps/hours.ts';
import { inputRows } from '../../renderer/lamps/input-rows.ts';
import { partOfFile, withoutFile } from '../../renderer/lamps/light-file.ts';
import { coarse } from '../../renderer/shared/light-map.ts';
import {
  draftOf,
  firstDrafts,
  freeId,
  optionsOf,
  placeWith,
  planWith,
  usualPrice,
  withName,
  withPart,
  withTechnology,
} from '../../renderer/lamps/options.ts';

const tent = demonstrationPlan.places.find((place) => place.id === 'bright-tent')!;
const tunnel = demonstrationPlan.places.find((place) => place.id === 'tunnel')!;
const panel = tent.lamps[0];
const planOf = (place: Place) => parsePlan(planWith(demonstrationPlan, place));

/** A lamp with every field set to something else than is usual. */
const rich: Lamp = lampOf({
  id: 'rich',
  name: 'Everything set',
  technology: 'led-red-blue',
  watts: 60,
  efficacy: 2.8,
  light: { kind: 'reading', value: 9000, unit: 'lux', distance: 0.3, luxPerMicromole: 9 },
  beam: { kind: 'cosine-power', power: 4 },
  count: 3,
  arrangement: 'bars',
  height: 0.35,
  shelf: 'lower',
  along: 0.05,
  across: -0.04,
  length: 0.5,
  width: 0.05,
  on: '23:30',
  off: '04:15',
  second: { on: '16:00', off: '18:20' },
  control: { kind: 'daylight', below: 120, deadTime: 20 },
  mostDay: 13,
  dimming: 0.8,
  wattsAtHalf: 33,
  driver: 'outside',
  burnt: 4000,
  life: 25000,
  price: 230,
});

describe('an option', () => {
  it('is a lamp that a plan accepts, for each technology and through midnight', () => {
    for (const { id } of lampTechnologies) {
      const draft = withTechnology(draftOf(panel, 'option-2'), id);
      const late = withPart(draft, withHours({ ...draft.lamp, on: '20:00' }, 11.5));
      expect(burningHours(late.lamp)).toBe(11.5);
      expect(planOf(placeWith(tent, late))).toMatchObject({ ok: true });
    }
  });
  it('carries every field of its lamp into the plan', () => {
    const place = placeWith(tunnel, draftOf(rich, 'option-2'));
    expect(place.lamps).toEqual([{ ...rich, id: 'lamp' }]);
    expect(planOf(place)).toMatchObject({ ok: true });
  });
  it('leaves the lamps of the other shelf hanging, bought already', () => {
    const two = {
      ...tent,
      lamps: [
        { ...panel, shelf: 'upper' as const },
        { ...panel, id: 'lamp' },
      ],
    };
    const draft = draftOf(two.lamps[1], 'option-2');
    expect(placeWith(two, draft).lamps.map(({ id, shelf }) => [id, shelf])).toEqual([
      ['lamp', 'lower'],
      ['panel', 'upper'],
    ]);
    const over = draftOf(two.lamps[0], 'option-3');
    expect(placeWith(two, over).lamps.map((lamp) => lamp.id)).toEqual(['lamp-2', 'lamp']);
    expect(optionsOf(two, [draft])[1].lamps.map((lamp) => lamp.price)).toEqual([110, 0]);
  });
  it('takes its usual price from the catalogue’s price a watt until the user gives one', () => {
    expect(usualPrice({ technology: 'led-white', watts: 50, count: 2 })).toBe(120);
    const usual = withTechnology(draftOf(panel, 'option-2'), 'led-white');
    expect(withPart(usual, { watts: 100 }).lamp.price).toBe(120);
    expect(withPart(withPart(usual, { price: 65 }), { watts: 100 }).lamp.price).toBe(65);
  });
  it('keeps the proportion of its watts at half light, which a plan wants below those at full', () => {
    const draft = withPart(draftOf(rich, 'option-2'), { watts: 20 });
    expect(draft.lamp.wattsAtHalf).toBeCloseTo(11, 9);
    expect(withPart(draft, { watts: 30, wattsAtHalf: 12 }).lamp.wattsAtHalf).toBe(12);
  });
  it('is named after its kind unless the user has named it', () => {
    const draft = draftOf(panel, 'option-2');
    expect(withTechnology(draft, 't5-fluorescent').lamp.name).toBe('T5 fluorescent');
    expect(withTechnology(withName(draft, '  Mine '), 't5-fluorescent').lamp.name).toBe('Mine');
    expect(withName(draft, '   ')).toBe(draft);
  });
  it('gives back in each row what is put into it', () => {
    const given: Record<string, number> = {
      watts: 41.5,
      count: 4,
      height: 0.55,
      hours: 9.5,
      dimming: 65,
      price: 12,
    };
    for (const row of inputRows({ temperature: 'C', length: 'm' }, 'EUR')) {
      const lamp = { ...panel, ...row.part(panel, given[row.id]) };
      expect(row.value(lamp), row.id).toBeCloseTo(given[row.id], 9);
      expect(planOf({ ...tent, lamps: [lamp] }), row.id).toMatchObject({ ok: true });
    }
  });
});

describe('hours', () => {
  it('end later or sooner and keep the second block', () => {
    for (const hours of [0.25, 9, 14.5, 23.75]) expect(burningHours(withHours(panel, hours))).toBe(hours);
    expect(withHours(panel, 24)).toMatchObject({ on: '00:00', off: '24:00' });
    const two = { ...panel, on: '06:00', off: '08:00', second: { on: '16:00', off: '20:00' } };
    expect(withHours(two, 7)).toMatchObject({ on: '06:00', off: '09:00', second: two.second });
    // Longer than reaches to the second block, the whole day but a little: one block is left.
    expect(withHours(two, 15)).toMatchObject({ on: '06:00', off: '21:00', second: null });
    // Fewer hours than the second block alone: one block is left.
    expect(withHours(two, 3)).toMatchObject({ on: '06:00', off: '09:00', second: null });
  });
  it('of a lamp that lengthens the day are those of the day', () => {
    const lamp: Lamp = { ...panel, control: { kind: 'extend', hours: 14, end: 'dusk' } };
    expect(namedHours(lamp)).toBe(14);
    expect(withHours(lamp, 12.5).control).toEqual({ kind: 'extend', hours: 12.5, end: 'dusk' });
    // No longer than the longest day allowed, which a plan would refuse.
    expect(withHours({ ...lamp, mostDay: 15 }, 18).control).toMatchObject({ hours: 15 });
    expect(namedHours(firstDrafts({ ...tent, lamps: [lamp] })[0].lamp)).toBe(16);
    expect(hoursWords(lamp)).toBe('day made 14\u00a0h long, after dusk');
  });
  it('lie on the day in stretches cut at midnight', () => {
    expect(litStretches(rich)).toEqual([
      { from: 1410, to: 1440 },
      { from: 0, to: 255 },
      { from: 960, to: 1100 },
    ]);
    expect(litStretches({ on: '00:00', off: '24:00', second: null })).toEqual([{ from: 0, to: 1440 }]);
    expect(litStretches({ on: '07:00', off: '07:00', second: null })).toEqual([]);
    const tariff = { ...demonstrationPlan.tariff, nightPrice: 0.1, nightFrom: '23:00', nightTo: '07:00' };
    expect(cheapStretches(tariff)).toEqual([
      { from: 1380, to: 1440 },
      { from: 0, to: 420 },
    ]);
    expect(cheapStretches({ ...tariff, nightPrice: null })).toEqual([]);
  });
  it('of a night are whole in a day from noon to noon', () => {
    expect(fromNoon(litStretches({ on: '20:00', off: '08:00', second: null }))).toEqual([
      { from: 480, to: 1200 },
    ]);
    expect(fromNoon(litStretches({ on: '07:00', off: '19:00', second: null }))).toEqual([
      { from: 0, to: 420 },
      { from: 1140, to: 1440 },
    ]);
  });
  it('of the coldest third are found from the mean of each hour', () => {
    const mean = Array.from({ length: 24 }, (_, hour) => 5 - 4 * Math.cos(((hour - 4.5) * Math.PI) / 12));
    expect(coldStretches(mean)).toEqual([{ from: 60, to: 540 }]);
  });
});

describe('hours burnt', () => {
  const held = { ...panel, mostDay: 11 };
  const [point] = lampChart(tent, held, demonstrationPlan.tariff, { heights: [0.4], dimmings: [1] });
  // Eleven hours of 75 W over 182 days at 0.2 a kilowatt-hour.
  const run = { watts: 75, hours: 11, kwhWinter: 150.15, costWinter: 30.03 } as LampComparison;
  it('are the clock’s at once, else the winter’s, where one lamp alone has burnt', () => {
    expect(burntHours(tunnel, panel, null, false)).toBe(12);
    expect(burntHours(tunnel, held, null, true)).toBeNull();
    expect(burntHours(tunnel, held, run, false)).toBeNull();
    expect(burntHours(tunnel, held, { ...run, hours: 11.6 }, true)).toBe(11.6);
    // In a tent no day is longer than the lamp's.
    expect(burntHours(tent, held, null, false)).toBe(11);
    expect(burntHours(tent, { ...held, mostDay: 16 }, null, false)).toBe(12);
  });
  it('bring the chart, which counts clock hours, to what the winter had', () => {
    const [brought] = asBurnt([point], held, 11, run);
    expect(brought.dailyLight).toBeCloseTo((point.dailyLight * 11) / 12, 9);
    expect(brought.kwhMonth).toBeCloseTo(0.075 * 11 * 30, 9);
    expect(brought.costMonth).toBeCloseTo(0.075 * 11 * 30 * 0.2, 9);
    expect(asBurnt([point], held, 11, null)[0].costMonth).toBeCloseTo((point.costMonth * 11) / 12, 9);
    expect(asBurnt([point], panel, 12, run)).toEqual([point]);
  });
  it('are said with the longest day that holds them', () => {
    expect(hoursWords(held)).toBe('07:00 to 19:00, no day over 11\u00a0h');
  });
});

describe('the options', () => {
  it('start with what is there, already paid for', () => {
    const options = optionsOf(tent, firstDrafts(tent));
    expect(options).toHaveLength(3);
    expect(options[0].name).toBe('What is there');
    expect(options[0].lamps[0]).toEqual({ ...panel, price: 0 });
    expect(burningHours(options[1].lamps[0])).toBe(14);
    expect(options[2].lamps[0].watts).toBe(150);
  });
  it('start with no lamp where there is none', () => {
    const options = optionsOf(tunnel, firstDrafts(tunnel));
    expect(options[0]).toEqual({ name: 'No lamp, as now', lamps: [] });
    const [{ watts, count }] = options[1].lamps;
    expect(count).toBe(12); // one for about 0.6 m² of the tunnel's 7 m²
    expect(Math.abs((watts * count) / tunnel.growingArea - 75)).toBeLessThan(4); // 75 W m⁻², rounded to 5 W a lamp
  });
  it('are lamps a plan accepts in every place, from the largest house to the longest name', () => {
    const long = { ...panel, name: 'x'.repeat(60), watts: 5000 };
    for (const place of [
      ...demonstrationPlan.places,
      { ...tent, lamps: [long] },
      { ...tunnel, growingArea: 9000 },
    ])
      for (const draft of firstDrafts(place))
        expect(
          planOf({ ...placeWith(place, draft), growingArea: Math.min(place.growingArea, 20) }),
        ).toMatchObject({
          ok: true,
        });
  });
  it('never share an identifier', () => {
    const drafts = firstDrafts(tent);
    expect(drafts.map((draft) => draft.id)).not.toContain(freeId(drafts));
    expect(freeId(drafts.slice(1))).not.toBe(drafts[1].id);
  });
});

describe('a photometric file', () => {
  const photometry = { name: 'Bar', vertical: [0, 90], planes: [0], candela: [100, 0] };
  it('gives beam, watts, light and size of the face, as far as a lamp may have them', () => {
    const file = { photometry, watts: 18, lengthMetres: 0.6, widthMetres: 0 };
    expect(partOfFile(file, true)).toEqual({
      beam: { kind: 'file', photometry, turned: 0 },
      light: { kind: 'file', luxPerMicromole: null },
      watts: 18,
      length: 0.6,
    });
    expect(Object.keys(partOfFile({ ...file, watts: 0 }, true))).not.toContain('watts');
    expect(Object.keys(partOfFile(file, false)).sort()).toEqual(['beam', 'length']);
    expect(planOf({ ...tent, lamps: [{ ...panel, ...partOfFile(file, true) }] })).toMatchObject({ ok: true });
  });
  it('taken away takes the light summed from it along, and no other', () => {
    const part = partOfFile({ photometry, watts: 18, lengthMetres: 0, widthMetres: 0 }, true);
    expect(withoutFile({ ...panel, ...part })).toEqual({
      beam: { kind: 'even' },
      light: { kind: 'efficacy' },
    });
    expect(withoutFile({ ...rich, beam: part.beam! })).toEqual({ beam: { kind: 'even' } });
  });
});

describe('the numbers on the map', () => {
  it('are means of their cells and keep the mean of the whole', () => {
    const map = Float64Array.from({ length: 24 }, (_, index) => index);
    const cells = coarse({ map, columns: 6, rows: 4 }, 3, 2);
    expect(cells.map((cell) => cell.value)).toEqual([3.5, 5.5, 7.5, 15.5, 17.5, 19.5]);
    expect(cells.reduce((sum, cell) => sum + cell.value, 0) / 6).toBeCloseTo(11.5, 12);
  });
});
