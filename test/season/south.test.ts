import { describe, expect, it } from 'vitest';
import { demonstrationPlan, plantStates, runSeason, weatherFromPlan } from '../../core/index.ts';
import type { Plan } from '../../core/index.ts';
import { bareHouse, planOf } from '../support/plans.ts';

const north = planOf(bareHouse, [{ group: 'crassula', name: 'Jade' }]);
const { climate } = demonstrationPlan;
if (climate.kind !== 'normals') throw new Error('expected typed normals');

/** The same climate half a year round and the same latitude south. */
const south: Plan = {
  ...north,
  site: { ...north.site, latitude: -north.site.latitude, longitude: 170, timeZone: 'Pacific/Auckland' },
  climate: { ...climate, months: [...climate.months.slice(6), ...climate.months.slice(0, 6)] },
};

const run = (plan: Plan) => {
  const weather = weatherFromPlan(plan);
  if (weather === null) throw new Error('expected typed normals');
  return runSeason(plan, weather);
};

describe('a season south of the equator', () => {
  const season = run(south);

  it('begins on 1 February; its winter is April to September', () => {
    expect(season.startDate.slice(5)).toBe('02-01');
    const date = (day: number) =>
      new Date(Date.parse(season.startDate) + day * 86_400_000).toISOString().slice(5, 10);
    expect(date(season.winterFrom)).toBe('04-01');
    expect(date(season.winterTo)).toBe('09-30');
  });

  it('rests from cold in its own winter, about as long as the same climate does in the north', () => {
    const cold = plantStates.findIndex((state) => state.id === 'resting-cold');
    const here = season.places[0].lots[0].stateDays[cold];
    const there = run(north).places[0].lots[0].stateDays[cold];
    expect(here).toBeGreaterThan(60);
    expect(Math.abs(here - there)).toBeLessThan(35);
    const middle = season.places[0].lots[0].state.subarray(season.winterFrom + 75, season.winterTo - 75);
    expect([...middle].every((state) => state === cold)).toBe(true);
  });
});
