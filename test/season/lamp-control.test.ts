import { getTimes } from 'suncalc';
import { describe, expect, it } from 'vitest';
import { demonstrationPlan, lampOf, runSeason, weatherFromPlan } from '../../core/index.ts';
import type { Lamp, Plan, WeatherYear } from '../../core/index.ts';
import { lampOn } from '../../core/season/lamp-control.ts';
import { prepareSiteYear } from '../../core/season/site-year.ts';
import type { SiteYear } from '../../core/season/site-year.ts';

const perDay = 96;

function yearAt(latitude: number, longitude = -7.4, timeZone = 'Europe/Dublin'): SiteYear {
  const site = { ...demonstrationPlan.site, latitude, longitude, timeZone };
  const plan: Plan = { ...demonstrationPlan, site };
  return prepareSiteYear(plan, weatherFromPlan(plan) as WeatherYear, `at ${latitude} ${longitude}`);
}

const home = yearAt(54.1);
const lampWith = (part: Partial<Lamp>): Lamp =>
  lampOf({
    ...{ id: 'lamp', name: 'Lamp', technology: 'led-white', watts: 50, efficacy: 2.5, count: 1, height: 0.4 },
    ...{ length: 0.5, width: 0.5, on: '07:00', off: '19:00' },
    ...part,
  });
const dark = (year: SiteYear) => ({ benchPhotons: new Float64Array(year.clock.n), seesDay: false });
const bright = (year: SiteYear) => ({
  benchPhotons: year.steps.globalHorizontal.map((watts) => watts * 2),
  seesDay: true,
});
const hoursOf = (flags: Float64Array, day: number) =>
  flags.subarray(day * perDay, (day + 1) * perDay).reduce((sum, on) => sum + on, 0) / 4;
const days = Array.from({ length: 365 }, (_, day) => day);

describe('two blocks of a clock', () => {
  const flags = lampOn(
    lampWith({ on: '23:30', off: '03:00', second: { on: '02:00', off: '06:15' } }),
    home,
    dark(home),
  );

  it('burn every minute of either once, through midnight: 23:30 to 06:15 is 6 h 45', () => {
    // The weather year keeps standard time: the days on which the clocks change hold an hour more or less.
    const usual = days.filter((day) => hoursOf(flags, day) === 6.75).length;
    expect(usual).toBeGreaterThanOrEqual(361);
    expect(flags.reduce((sum, on) => sum + on, 0) / 4 / 365).toBeCloseTo(6.75, 1);
  });

  it('follow the civil clock: an hour earlier by standard time in summer', () => {
    const first = (day: number) => flags.subarray(day * perDay + 48, (day + 1) * perDay).indexOf(1) / 4 + 12;
    expect(first(15)).toBe(23.5);
    expect(first(190)).toBe(22.5);
  });
});

describe('a clock that switches between the quarters of an hour', () => {
  it.each([
    ['06:10', '18:20', null, 730],
    ['23:55', '00:05', null, 10],
    ['21:58', '06:01', null, 483],
    ['06:10', '06:13', { on: '06:20', off: '06:24' }, 7],
    ['00:00', '24:00', null, 1440],
  ])('burns to the minute: %s to %s and %j is %d min a day', (on, off, second, minutes) => {
    for (const year of [home, yearAt(28, 77, 'Asia/Kolkata'), yearAt(-44, -176.5, 'Pacific/Chatham')]) {
      const flags = lampOn(lampWith({ on, off, second }), year, dark(year));
      const usual = days.filter((day) => Math.abs(60 * hoursOf(flags, day) - minutes) < 1e-9).length;
      expect(usual).toBeGreaterThanOrEqual(361);
      expect(flags.every((share) => share >= 0 && share <= 1)).toBe(true);
    }
  });

  it('is paid for and lights as long: 730 min a day in the winter of a tent', () => {
    const lamp = lampWith({ on: '06:10', off: '18:20' });
    const tent = { ...demonstrationPlan.places[2], lamps: [lamp] };
    const plan: Plan = { ...demonstrationPlan, places: [tent], lots: [] };
    const season = runSeason(plan, weatherFromPlan(plan) as WeatherYear);
    const [{ daily, totals }] = season.places;
    expect(daily.lampElectricity[150]).toBeCloseTo((0.05 * 730) / 60, 9);
    expect(daily.lampLight[150]).toBeCloseTo((totals.lampPpfd * 730 * 60) / 1e6, 9);
    expect(daily.photoperiod[150]).toBeCloseTo(730 / 60, 9);
    expect(totals.peakWatts).toBeGreaterThanOrEqual(50);
  });
});

describe('a lamp that lengthens the day', () => {
  it.each(['dawn', 'dusk', 'both'] as const)(
    'to 14 h at %s: what civil daylight lacks, to a quarter hour',
    (end) => {
      const flags = lampOn(lampWith({ control: { kind: 'extend', hours: 14, end } }), home, bright(home));
      for (const day of [5, 60, 100, 172, 250, 300, 350]) {
        const noon = home.steps.startMs + (day + 0.5) * 86_400_000;
        // Civil dawn and dusk by a short algorithm of other authors (the suncalc library), good to 2 min here.
        const { dawn, dusk } = getTimes(new Date(noon), 54.1, -7.4);
        const lacking = Math.max(0, 14 - (dusk!.getTime() - dawn!.getTime()) / 3_600_000);
        expect(Math.abs(hoursOf(flags, day) - lacking), `day ${day}`).toBeLessThanOrEqual(0.5);
      }
    },
  );

  it('adjoins daylight at the end it is told', () => {
    const at = (end: 'dawn' | 'dusk') =>
      lampOn(lampWith({ control: { kind: 'extend', hours: 14, end } }), home, bright(home));
    const [dawn, dusk] = [at('dawn'), at('dusk')];
    for (const day of [0, 30, 330]) {
      const from = day * perDay;
      const light = home.clock.twilight.subarray(from, from + perDay);
      const first = light.indexOf(1);
      const last = light.lastIndexOf(1);
      expect(Math.abs(dawn.subarray(from, from + perDay).lastIndexOf(1) + 1 - first)).toBeLessThanOrEqual(1);
      expect(Math.abs(dusk.subarray(from, from + perDay).indexOf(1) - 1 - last)).toBeLessThanOrEqual(1);
      expect(dawn[from + 52]).toBe(0);
    }
  });

  it('burns all its hours in polar night and none in polar day', () => {
    const north = yearAt(78, 16, 'Arctic/Longyearbyen');
    const flags = lampOn(
      lampWith({ control: { kind: 'extend', hours: 12, end: 'both' } }),
      north,
      bright(north),
    );
    expect(hoursOf(flags, 355)).toBe(12);
    expect(hoursOf(flags, 172)).toBe(0);
  });
});

describe('a lamp that waits for dim days', () => {
  const deadTime = 60;
  const light = bright(home);
  const lamp = lampWith({ control: { kind: 'daylight', below: 200, deadTime } });
  const flags = lampOn(lamp, home, light);
  const clocked = lampOn(lampWith({}), home, light);

  it('burns less than by the clock, and in June less than in December', () => {
    const month = (from: number) =>
      days.slice(from, from + 30).reduce((sum, day) => sum + hoursOf(flags, day), 0);
    expect(flags.every((on, k) => on <= clocked[k])).toBe(true);
    expect(month(335)).toBeGreaterThan(2 * month(152));
    expect(month(335)).toBeLessThanOrEqual(30 * 12);
  });

  it('keeps each state for the dead time while its clock hours last', () => {
    for (const day of days) {
      let run = 0;
      const from = day * perDay;
      for (let k = from + 1; k < from + perDay; k++) {
        if (clocked[k] === 0 || clocked[k - 1] === 0) run = 0;
        else if (flags[k] !== flags[k - 1]) {
          expect(run + 1, `day ${day}, step ${k - from}`).toBeGreaterThanOrEqual(deadTime / 15);
          run = 0;
        } else run += 1;
      }
    }
  });

  it('without a dead time is on exactly where the daylight is under the threshold', () => {
    const quick = lampOn(lampWith({ control: { kind: 'daylight', below: 200, deadTime: 0 } }), home, light);
    quick.forEach((on, k) => expect(on).toBe(clocked[k] === 1 && light.benchPhotons[k] < 200 ? 1 : 0));
  });
});

describe('a longest day for plants that flower in short ones', () => {
  const long = lampWith({ on: '05:00', off: '23:00', mostDay: 10 });

  it('where no daylight comes: so many hours from switching on', () => {
    const flags = lampOn(long, home, dark(home));
    expect(hoursOf(flags, 15)).toBe(10);
    expect(flags[15 * perDay + 20]).toBe(1);
    expect(flags[15 * perDay + 60]).toBe(0);
  });

  it('where it comes: lamp and twilight together are no longer, in summer not longer than nature has it', () => {
    const flags = lampOn(long, home, bright(home));
    for (const day of [0, 30, 80, 172, 300, 355]) {
      let hours = 0;
      let natural = 0;
      for (let k = day * perDay; k < (day + 1) * perDay; k++) {
        hours += (flags[k] | home.clock.twilight[k]) / 4;
        natural += home.clock.twilight[k] / 4;
      }
      expect(hours).toBeLessThanOrEqual(Math.max(10, natural) + 0.5);
      expect(hours).toBeGreaterThanOrEqual(Math.max(10, natural) - 0.5);
    }
  });
});
