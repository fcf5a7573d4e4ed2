/** When covers are drawn, doors open, fans and heaters run and snow lies; rooms by a measured series. */
import { describe, expect, it } from 'vitest';
import { demonstrationPlan, heaterOf, screenOf, weatherFromPlan } from '../../core/index.ts';
import type { Place, WeatherYear } from '../../core/index.ts';
import { prepareSiteYear, roomTemperatures } from '../../core/season/index.ts';
import { lightUnderSnow, placeSchedules } from '../../core/season/schedules.ts';
import { bareHouse, planOf } from '../support/plans.ts';

const snow = { depth: 0.12, from: '12-01', to: '03-15' };
const plan = { ...demonstrationPlan, site: { ...demonstrationPlan.site, snow } };
const year = prepareSiteYear(plan, weatherFromPlan(plan) as WeatherYear, 'schedules');
const { clock, steps } = year;
const [house] = planOf(bareHouse).places;
const schedules = (changes: Partial<Place>) => placeSchedules({ ...house, ...changes }, year);

/** Holds in every step of the year that a flag is what a rule says; returns how often it is set. */
function follows(flags: Uint8Array | null, rule: (k: number) => boolean): number {
  if (flags === null) throw new Error('expected flags, got none');
  expect(flags.findIndex((flag, k) => (flag === 1) !== rule(k))).toBe(-1);
  return flags.reduce((sum, flag) => sum + flag, 0);
}

/** Civil minutes of the day, clock changes included, in which the hours hold. */
const late = (k: number) => clock.civil[k] >= 16 * 60 || clock.civil[k] < 7 * 60;

describe('screens and curtains', () => {
  it('by hours follow the civil clock, past midnight, summer time included', () => {
    const screen = screenOf({ covering: 'woven-screen', closedWhen: 'hours', from: '16:00', to: '07:00' });
    // 15 of 24 hours on each day of the year; a clock change takes or gives four quarters.
    expect(Math.abs(follows(schedules({ screen }).screenClosed, late) - 365 * 60)).toBeLessThanOrEqual(4);
    follows(schedules({ curtain: screen }).curtainClosed, late);
  });

  it('by night follow the sun at 5°, and cold nights the low that was forecast', () => {
    const low = (k: number) => steps.sunElevation[k] < 5;
    const screen = (closedWhen: 'night' | 'cold-night') =>
      schedules({ screen: screenOf({ covering: 'woven-screen', closedWhen, below: 2 }) }).screenClosed;
    const night = follows(screen('night'), low);
    const cold = follows(screen('cold-night'), (k) => low(k) && clock.nightLow[k] < 2);
    expect(cold).toBeGreaterThan(0.1 * night);
    expect(cold).toBeLessThan(0.7 * night);
  });

  it('are none where there is none', () => {
    const none = schedules({});
    expect([none.screenClosed, none.curtainClosed, none.fleeceLaid, none.doorOpen, none.circulating]).toEqual(
      Array(5).fill(null),
    );
  });
});

describe('a door', () => {
  const door = { area: 1.6, height: 2, from: '09:00', to: '17:30', above: null };
  const hours = (k: number) => clock.civil[k] >= 540 && clock.civil[k] < 1050;

  it('stands open in its hours, and on warm enough days only where it says so', () => {
    const all = follows(schedules({ door }).doorOpen, hours);
    expect(all).toBe(365 * 34);
    const warm = follows(
      schedules({ door: { ...door, above: 12 } }).doorOpen,
      (k) => hours(k) && steps.dryBulb[k] >= 12,
    );
    expect(warm).toBeGreaterThan(0.2 * all);
    expect(warm).toBeLessThan(0.9 * all);
  });
});

describe('circulation fans and heaters', () => {
  it.each([
    ['always', () => true],
    ['day', (k: number) => clock.sunUp[k] === 1],
    ['night', (k: number) => clock.sunUp[k] === 0],
  ] as const)('a fan that runs %s', (runs, rule) => {
    follows(schedules({ circulation: { watts: 20, airSpeed: 0.5, runs } }).circulating, rule);
  });

  it('a heater holds in its hours; one without hours holds all day', () => {
    const heater = {
      id: 'h',
      name: 'H',
      kind: 'fan',
      power: 1000,
      setPointDay: 5,
      setPointNight: 5,
    } as const;
    const heaters = [
      heaterOf(heater),
      heaterOf({ ...heater, id: 'g', hours: { from: '16:00', to: '07:00' } }),
    ];
    const { heaterOn } = schedules({ heaters });
    expect(heaterOn[0]).toBeNull();
    follows(heaterOn[1], late);
  });
});

describe('snow', () => {
  const depth = schedules({ snow: 'left' }).snowDepth as Float64Array;
  const perDay = 1440 / clock.stepMinutes;

  it('lies at its depth in cold weather within its season, nowhere outside it but to melt', () => {
    let [lying, bare] = [0, 0];
    depth.forEach((value, k) => {
      const day = Math.floor(k / perDay);
      const inSeason = day >= 334 || day <= 73;
      if (inSeason && clock.dayMean[k] <= 1) {
        expect(value).toBe(0.12);
        lying++;
      } else if (value === 0) bare++;
      // Melting by 3 mm of water a day and kelvin, 12 cm of snow are gone within a fortnight at 1 °C.
      else
        expect(clock.dayMean.subarray(Math.max(0, k - 14 * perDay), k).some((mean) => mean <= 1)).toBe(true);
    });
    expect(lying).toBeGreaterThan(perDay);
    expect(bare).toBeGreaterThan(200 * perDay);
  });

  it('swept off, or where none lies, is none', () => {
    expect(schedules({ snow: 'cleared' }).snowDepth).toBeNull();
    const mild = { ...year, site: { ...year.site, snow: null } };
    expect(placeSchedules({ ...house, snow: 'left' }, mild).snowDepth).toBeNull();
  });

  it('dims what comes through the roof to 1/e by 6 cm, and leaves the walls’ share', () => {
    expect(lightUnderSnow(0.06, 1)).toBeCloseTo(Math.exp(-1), 12);
    expect(lightUnderSnow(0.06, 0)).toBe(1);
    expect(lightUnderSnow(10, 0.7)).toBeCloseTo(0.3, 12);
    expect(lightUnderSnow(0, 0.7)).toBe(1);
  });
});

describe('a room by a measured series', () => {
  const room = { kind: 'series', from: '01-10', stepHours: 1, values: [10, 14, 12], otherwise: 7 } as const;
  const values = roomTemperatures({ ...room, values: [...room.values] }, clock) as Float64Array;
  const at = (day: number, hour: number) => values[(day * 1440 + hour * 60) / clock.stepMinutes];

  it('runs straight between readings, an hour apart from 00:00 of 10 January', () => {
    expect([0, 0.25, 0.5, 0.75, 1, 1.5, 1.75].map((hour) => at(9, hour))).toEqual([
      10, 11, 12, 13, 14, 13, 12.5,
    ]);
  });

  it('is at `otherwise` before and after', () => {
    expect([at(8, 23.75), at(9, 2), at(9, 12), at(200, 0)]).toEqual([7, 7, 7, 7]);
    expect(values.filter((value) => value !== 7)).toHaveLength(8);
  });

  it('goes on over the turn of the year', () => {
    const long = {
      kind: 'series',
      from: '12-31',
      stepHours: 12,
      values: [0, 12, 24, 36],
      otherwise: 7,
    } as const;
    const turn = roomTemperatures({ ...long, values: [...long.values] }, clock) as Float64Array;
    const perHour = 60 / clock.stepMinutes;
    expect([turn[364 * 24 * perHour], turn[(364 * 24 + 18) * perHour], turn[0], turn[6 * perHour]]).toEqual([
      0, 18, 24, 30,
    ]);
  });

  it('on a shorter clock of its own begins where that clock does', () => {
    const evening = { ...clock, n: 8 };
    const part = roomTemperatures({ ...room, values: [...room.values] }, evening, 9 * 1440) as Float64Array;
    expect([...part]).toEqual([10, 11, 12, 13, 14, 13.5, 13, 12.5]);
  });
});
