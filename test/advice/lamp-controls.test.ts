import { describe, expect, it } from 'vitest';
import {
  compareLamps,
  createSeasonCache,
  demonstrationPlan,
  lampOf,
  lampTechnology,
  placeLampHours,
  placeOf,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Lamp, Plan, WeatherYear } from '../../core/index.ts';
import { lampRuns } from '../../core/season/lamps.ts';

const plan = demonstrationPlan;
const weather = weatherFromPlan(plan) as WeatherYear;
const cache = createSeasonCache();
const lampWith = (part: Partial<Lamp>): Lamp =>
  lampOf({
    ...{ id: 'lamp', name: 'Lamp', technology: 'led-white', watts: 50, efficacy: 2.5, count: 1, height: 0.4 },
    ...{ length: 0.5, width: 0.5, on: '07:00', off: '19:00' },
    ...part,
  });
const compare = (placeId: string, parts: readonly Partial<Lamp>[]) =>
  compareLamps(
    parts.map((part) => ({ name: 'x', lamps: [lampWith(part)] })),
    { plan, weather, placeId, cache },
  );

describe('lamps that something else than the clock switches', () => {
  it('cost what the tariff says of the hours they burn: a tunnel without heaters pays for lamps alone', () => {
    const rows = compare('tunnel', [
      { control: { kind: 'daylight', below: 60, deadTime: 30 }, on: '05:00', off: '23:30' },
      { control: { kind: 'extend', hours: 14, end: 'dusk' } },
      { on: '03:00', off: '23:00', mostDay: 9 },
    ]);
    for (const row of rows) {
      expect(row.costWinter).toBeGreaterThan(1);
      expect(row.heaterCostWinter).toBeCloseTo(0, 9);
      for (const month of row.months) expect(month.heaterCost, `month ${month.month}`).toBeCloseTo(0, 9);
    }
  });

  it('lengthening the day, their clock times say nothing of what the brightest leaf gets', () => {
    const control = { kind: 'extend', hours: 13, end: 'both' } as const;
    const bright = { control, watts: 900, height: 0.3 };
    const [short, long] = compare('tunnel', [
      { ...bright, on: '12:00', off: '12:15' },
      { ...bright, on: '00:00', off: '24:00' },
    ]);
    expect(short.burn).toEqual(long.burn);
    expect(short.burn.words).toMatch(/mol a day/);
  });
});

it('the day a grower has written for a short-day group is the one a placing is held against', () => {
  const places = plan.places.map((each) =>
    each.id === 'lean-to' ? { ...each, lamps: [lampWith({ on: '11:00', off: '15:00' })] } : each,
  );
  const lot = { ...plan.lots[0], id: 'kalanchoes', name: 'Kalanchoes', group: 'kalanchoe', place: 'lean-to' };
  const against = (groupEdits: Plan['groupEdits']) => {
    const { placings } = placeLampHours(
      { ...plan, places, lots: [lot], groupEdits },
      weather,
      'lean-to',
      'lamp',
      { cache },
    );
    return placings.map((each) => each.against ?? '').filter((words) => /short days/.test(words));
  };
  expect(against({}).length).toBeGreaterThan(0);
  expect(against({ kalanchoe: { criticalDayLength: 24 } })).toEqual([]);
});

it('over a bright bench leaves and pots take up no more light than the lamp gives', () => {
  const lamp = lampWith({});
  const tent = placeOf({ ...plan.places[2], benchReflectance: 0.85, wallReflectance: 0.95, lamps: [lamp] });
  const [run] = lampRuns(tent);
  const technology = lampTechnology(lamp.technology);
  const light = (lamp.watts * lamp.efficacy) / technology.photonsPerJoule.value;
  const infrared = lamp.watts * technology.infraredShare.value;
  expect(run.leafHeat + run.potHeat).toBeLessThan(light + infrared);
  expect(run.airHeat + run.leafHeat + run.potHeat).toBeCloseTo(lamp.watts, 9);
});
