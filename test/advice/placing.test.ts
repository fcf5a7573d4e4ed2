import { describe, expect, it } from 'vitest';
import {
  burningHours,
  compareLamps,
  createSeasonCache,
  dailyLight,
  demonstrationPlan,
  lampChart,
  lampOf,
  lampWatts,
  placeLampHours,
  runSeason,
  weatherFromPlan,
  lotOf,
} from '../../core/index.ts';
import type { Lamp, Plan, WeatherYear } from '../../core/index.ts';

const cache = createSeasonCache();
const weather = weatherFromPlan(demonstrationPlan) as WeatherYear;
const panel: Lamp = lampOf({
  ...{
    id: 'panel',
    name: 'LED panel',
    technology: 'led-white',
    watts: 75,
    efficacy: 2.6,
    count: 2,
    height: 0.8,
  },
  ...{ length: 0.5, width: 0.5, on: '08:00', off: '20:00' },
});

/** The demonstration with a lamp hung in its heated lean-to, at a night price or without. */
function planWith(lamp: Lamp, nightPrice: number | null): Plan {
  return {
    ...demonstrationPlan,
    tariff: { ...demonstrationPlan.tariff, dayPrice: 0.3, nightPrice },
    places: demonstrationPlan.places.map((place) =>
      place.id === 'lean-to' ? { ...place, lamps: [lamp] } : place,
    ),
  };
}

describe('hours a clock lets a lamp burn', () => {
  it.each([
    ['07:00', '19:00', null, 12],
    ['22:00', '06:30', null, 8.5],
    ['00:00', '24:00', null, 24],
    ['07:00', '10:00', { on: '09:00', off: '12:00' }, 5],
    ['07:00', '10:00', { on: '20:00', off: '01:00' }, 8],
  ])('%s to %s and %j: %d h', (on, off, second, hours) => {
    expect(burningHours({ on, off, second })).toBe(hours);
  });
});

describe('placing the hours of a lamp', () => {
  const plan = planWith(panel, 0.3);
  const { now, placings, proposed } = placeLampHours(plan, weather, 'lean-to', 'panel', { cache });

  it('keeps the hours, so the lamp takes the same; what changes is the heater', () => {
    for (const each of placings) {
      expect(burningHours(each.lamp)).toBe(12);
      // Clock changes move one hour in or out of the year.
      expect(Math.abs(each.lampKwh - now.lampKwh)).toBeLessThan(0.5);
      expect(each.savesKwh).toBeCloseTo(now.lampKwh + now.heaterKwh - each.lampKwh - each.heaterKwh, 9);
    }
  });

  it('without a night price the heater alone decides: night hours spare it more than afternoon hours', () => {
    const heater = (on: string) => placings.find((each) => each.on === on)!.heaterKwh;
    expect(heater('22:00')).toBeLessThan(heater('12:00') - 10);
    expect(heater('22:00')).toBeLessThan(now.heaterKwh);
  });

  it('what it says is what the season says with the hours so placed', () => {
    const best = placings[0];
    const season = runSeason(planWith(best.lamp, 0.3), weather, cache);
    const place = season.places.find(({ placeId }) => placeId === 'lean-to')!;
    expect(best.cost).toBeCloseTo(place.totals.cost, 9);
    expect(best.saves).toBeCloseTo(now.cost - place.totals.cost, 9);
  });

  it('proposes only what has nothing against it, the cheapest first', () => {
    const clean = placings.filter((each) => each.against === null);
    expect(proposed).toBe(clean[0]);
    for (let at = 1; at < clean.length; at++)
      expect(clean[at].saves).toBeLessThanOrEqual(clean[at - 1].saves);
    for (const each of placings) {
      if (each.longestDay > 18 && each.longestDay > now.longestDay) expect(each.against).toMatch(/dark/);
    }
  });

  it('a cheap night pulls the hours into the night; the saving is at least the tariff on the hours moved', () => {
    const cheap = placeLampHours(planWith(panel, 0.1), weather, 'lean-to', 'panel', { cache });
    expect(cheap.proposed).not.toBeNull();
    const { proposed: best } = cheap;
    const tariff = cheap.now.lampCost - best!.lampCost;
    expect(tariff).toBeGreaterThan(0);
    expect(best!.saves).toBeGreaterThanOrEqual(tariff - 1);
    expect(cheap.placings.some((each) => each.second !== null)).toBe(true);
  });

  it('a group that flowers in short days is spared a longer one', () => {
    const short: Plan = {
      ...planWith({ ...panel, on: '11:00', off: '15:00' }, 0.1),
      lots: [lotOf({ id: 'kalanchoes', name: 'Kalanchoes', group: 'kalanchoe', place: 'lean-to', area: 1 })],
    };
    const { placings: found } = placeLampHours(short, weather, 'lean-to', 'panel', { cache });
    expect(found.find((each) => each.on === '18:00')!.against).toMatch(/Kalanchoes flower in short days/);
    // Under the noon sun the lamp lengthens no day.
    expect(found.find((each) => each.on === '10:00')!.against ?? '').not.toMatch(/short days/);
  });

  it('a lamp that lengthens the day is tried at dawn, at dusk and at both', () => {
    const extending = { ...panel, control: { kind: 'extend', hours: 13, end: 'dusk' } as const };
    const { placings: found } = placeLampHours(planWith(extending, 0.1), weather, 'lean-to', 'panel', {
      cache,
    });
    expect(found.map((each) => each.end).sort()).toEqual(['both', 'dawn']);
  });
});

describe('views of a comparison', () => {
  const setting = { plan: demonstrationPlan, weather, placeId: 'bright-tent', cache };
  const tent = demonstrationPlan.places[2];
  const like = (part: Partial<Lamp>) => ({ name: 'x', lamps: [{ ...tent.lamps[0], ...part }] });
  const options = [
    like({}),
    like({ efficacy: 1.3 }),
    like({ height: 0.7, off: '15:00' }),
    { name: 'none', lamps: [] },
  ];

  it('at equal light every lit option gives the first one’s daily light', () => {
    const rows = compareLamps(options, setting, 'equal-light');
    expect(rows.map((row) => row.scale)[1]).toBeCloseTo(2, 6);
    for (const row of rows.slice(0, 3)) expect(row.dailyLight / rows[0].dailyLight).toBeCloseTo(1, 6);
    expect(rows[3]).toMatchObject({ scale: 1, dailyLight: 0, watts: 0 });
  });

  it('at equal watts every lit option draws the first one’s watts, and light follows efficacy', () => {
    const rows = compareLamps(options, setting, 'equal-watts');
    for (const row of rows.slice(0, 3)) expect(row.watts).toBeCloseTo(rows[0].watts, 6);
    expect(rows[1].dailyLight / rows[0].dailyLight).toBeCloseTo(0.5, 6);
  });

  it('months add up to the winter', () => {
    const [row] = compareLamps(options, setting);
    expect(row.months.map((each) => each.month)).toEqual([10, 11, 12, 1, 2, 3]);
    const total = (of: (month: (typeof row.months)[number]) => number) =>
      row.months.reduce((sum, each) => sum + of(each), 0);
    expect(total((each) => each.kwh)).toBeCloseTo(row.kwhWinter, 9);
    expect(total((each) => each.cost + each.heaterCost)).toBeCloseTo(
      row.costWinter + row.heaterCostWinter,
      9,
    );
  });
});

describe('the chart of daily light against cost', () => {
  const tent = demonstrationPlan.places[2];
  const lamp = tent.lamps[0];
  const { tariff } = demonstrationPlan;
  const chart = lampChart(tent, lamp, tariff, { heights: [0.3, 0.4, 0.6], dimmings: [0.5, 1] });

  it('lower lamps give more light at the same cost; half the light at half dimming', () => {
    const at = (height: number, dimming: number) =>
      chart.find((point) => point.height === height && point.dimming === dimming)!;
    expect(at(0.3, 1).dailyLight).toBeGreaterThan(at(0.4, 1).dailyLight);
    expect(at(0.3, 1).evenness).toBeLessThan(at(0.6, 1).evenness);
    expect(at(0.3, 1).costMonth).toBe(at(0.6, 1).costMonth);
    expect(at(0.4, 0.5).dailyLight).toBeCloseTo(at(0.4, 1).dailyLight / 2, 12);
    expect(at(0.4, 1).kwhMonth).toBeCloseTo((lampWatts(lamp) * 12 * 30) / 1000, 9);
  });

  it.each([
    ['00:00', '24:00', '23:00', '07:00', 8],
    ['00:00', '24:00', '00:00', '24:00', 24],
    ['22:00', '08:00', '23:00', '07:00', 8],
  ])(
    'a lamp from %s to %s under a night price from %s to %s burns %d h of it',
    (on, off, from, to, cheap) => {
      const night = { ...tariff, dayPrice: 0.3, nightPrice: 0.1, nightFrom: from, nightTo: to };
      const [point] = lampChart(tent, { ...lamp, on, off }, night, { heights: [0.4], dimmings: [1] });
      const hours = burningHours({ on, off, second: null });
      const daily = (lampWatts(lamp) / 1000) * (0.1 * cheap + 0.3 * (hours - cheap));
      expect(point.costMonth).toBeCloseTo(30 * daily, 9);
    },
  );

  it('its point at the lamp’s own height and output is the season’s daily light', () => {
    const [row] = compareLamps([{ name: 'x', lamps: [lamp] }], {
      plan: demonstrationPlan,
      weather,
      placeId: 'bright-tent',
      cache,
    });
    const point = chart.find(({ height, dimming }) => height === lamp.height && dimming === 1)!;
    expect(point.dailyLight / row.dailyLight).toBeCloseTo(1, 2);
    expect(point.dailyLight).toBeCloseTo(dailyLight(row.average, 12), 9);
  });
});
