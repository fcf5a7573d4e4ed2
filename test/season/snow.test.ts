import { describe, expect, it } from 'vitest';
import { demonstrationPlan, runSeason, weatherFromPlan } from '../../core/index.ts';
import type { WeatherYear } from '../../core/index.ts';
import { placeLight, prepareSiteYear } from '../../core/season/index.ts';
import { placeSchedules } from '../../core/season/schedules.ts';
import { bareHouse, planOf } from '../support/plans.ts';

const site = { ...demonstrationPlan.site, snow: { depth: 0.1, from: '12-01', to: '03-01' } };
const plans = (['cleared', 'left'] as const).map((snow) => planOf({ ...bareHouse, snow }, [], { site }));
const weather = weatherFromPlan(plans[0]) as WeatherYear;
const [cleared, left] = plans.map((plan) => runSeason(plan, weather).places[0]);
const year = prepareSiteYear(plans[1], weather, 'snow');
const depth = placeSchedules(plans[1].places[0], year).snowDepth as Float64Array;
const perDay = 1440 / year.clock.stepMinutes;

/** Depths of a day of the season, which begins on 1 August (day 212). */
const depths = (day: number) => {
  const from = ((day + 212) % 365) * perDay;
  return depth.subarray(from, from + perDay);
};
const days = Array.from({ length: 365 }, (_, day) => day);
const under = days.filter((day) => depths(day).every((value) => value === 0.1));
const free = days.filter((day) => depths(day).every((value) => value === 0));

describe('snow left on the roof', () => {
  it('dims the light of days it lies on to what the roof’s share and its depth leave, and no other day’s', () => {
    const { snowShare } = placeLight(plans[1].places[0], year);
    expect(snowShare).toBeGreaterThan(0.4);
    expect(snowShare).toBeLessThan(0.95);
    expect(under.length).toBeGreaterThan(3);
    expect(free.length).toBeGreaterThan(250);
    const dimmed = 1 - snowShare * (1 - Math.exp(-0.1 / 0.06));
    // Under snow the cover sweats at other hours, and drops on glass take 3.6 % of the light while they are there.
    const drops = 0.036;
    const share = (day: number) => left.daily.daylight[day] / cleared.daily.daylight[day];
    for (const day of under) {
      expect(share(day)).toBeGreaterThan(dimmed * (1 - drops));
      expect(share(day)).toBeLessThan(dimmed / (1 - drops));
    }
    for (const day of free) expect(Math.abs(share(day) - 1)).toBeLessThan(drops);
  });

  it('keeps the nights it lies on warmer', () => {
    const warmer = under.map((day) => left.daily.airLeast[day] - cleared.daily.airLeast[day]);
    const mean = warmer.reduce((sum, value) => sum + value, 0) / warmer.length;
    expect(mean).toBeGreaterThan(0.3);
  });
});
