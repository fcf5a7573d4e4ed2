import { describe, expect, it } from 'vitest';
import { createSeasonCache, daylight, isoDate, runNight, runSeason } from '../../core/index.ts';
import type { NightInput, Plan, SeasonResult } from '../../core/index.ts';
import { firstNotFinite } from './difference.ts';
import { arctic, highArctic, movedTo, weatherOf, withStones } from './site-climates.ts';

const sites = [
  { name: '69.7° north', site: arctic },
  { name: '78.2° north', site: highArctic },
].map(({ name, site }) => {
  const plan = movedTo(withStones, site);
  const weather = weatherOf(plan);
  const cache = createSeasonCache();
  return { name, site, plan, weather, cache, season: runSeason(plan, weather, cache) };
});

/** Day of the season of a date `MM-DD` (both sites lie an hour east of Greenwich). */
function dayOn(season: SeasonResult, monthDay: string): number {
  for (let day = 0; day < season.days; day++)
    if (isoDate(season.startMs, 1, day).slice(5) === monthDay) return day;
  throw new RangeError(`expected a day of the season, got ${monthDay}`);
}

const placeOf = (season: SeasonResult, id: string) => {
  const found = season.places.find(({ placeId }) => placeId === id);
  if (found === undefined) throw new Error(`expected the place ${id}, got none`);
  return found;
};

describe.each(sites)('a season at $name', ({ site, season }) => {
  it('is finite in every number', () => {
    expect(firstNotFinite(season)).toBeNull();
  });

  it('has its winter from October to March', () => {
    expect(dayOn(season, '08-01')).toBe(0);
    expect(dayOn(season, '10-01')).toBe(season.winterFrom);
    expect(dayOn(season, '03-31')).toBe(season.winterTo);
  });

  it('has no day in December and nothing but day in June, and the plants count it so', () => {
    const [midwinter, midsummer] = [dayOn(season, '12-21'), dayOn(season, '06-21')];
    expect(season.outdoor.dayLength[midwinter]).toBe(0);
    expect(season.outdoor.dayLength[midsummer]).toBe(24);
    expect(season.outdoor.daylight[midwinter]).toBeLessThan(0.2);
    expect(season.outdoor.daylight[midsummer]).toBeGreaterThan(20);
    const { photoperiod } = placeOf(season, 'tunnel').daily;
    expect(photoperiod[midsummer]).toBe(24);
    expect(season.outdoors.lived.photoperiod[midsummer]).toBe(24);
    // Plants count civil twilight: hours of it at 70° north, none where the sun stays 11° down at noon.
    const twilight = daylight('2025-12-21', { ...site, elevation: 0 }).civilHours;
    expect(Math.abs(photoperiod[midwinter] - twilight)).toBeLessThan(0.3);
    if (site.latitude > 75) expect(twilight).toBe(0);
    else expect(twilight).toBeGreaterThan(3);
  });

  it('has its first and last sunrise where the sun says, to two days', () => {
    const days = [...season.outdoor.dayLength];
    const first = days.findIndex((hours) => hours === 0);
    const last = days.findLastIndex((hours) => hours === 0);
    const dark = (day: number) =>
      daylight(`2025-${isoDate(season.startMs, 1, day).slice(5)}`, { ...site, elevation: 0 }).hours === 0;
    expect(dark(first - 3)).toBe(false);
    expect(dark(first + 3)).toBe(true);
    expect(dark(last - 3)).toBe(true);
    expect(dark(last + 3)).toBe(false);
    for (let day = first + 3; day < last - 3; day++) expect(days[day]).toBe(0);
  });

  it('a lamp alone lights the dark months by its hours; without one there is no light', () => {
    const midwinter = dayOn(season, '12-21');
    const tent = placeOf(season, 'bright-tent').daily;
    expect(tent.lampLight[midwinter]).toBeGreaterThan(5);
    expect(tent.photoperiod[midwinter]).toBeGreaterThan(8);
    const tunnel = placeOf(season, 'tunnel').daily;
    expect(tunnel.daylight[midwinter]).toBeLessThan(0.1);
    // Growing area without a lamp rests or waits: nothing grows in the dark.
    for (const { state } of placeOf(season, 'tunnel').lots) expect(state[midwinter]).not.toBe(0);
  });

  it('a pan kept dry in winter is dry in the dark and watered in the light', () => {
    const stones = season.lots.find(({ lotId }) => lotId === 'stones');
    expect(stones?.waterIndex[dayOn(season, '12-21')]).toBeLessThan(0.2);
    expect(stones?.waterIndex[dayOn(season, '06-21')]).toBe(1);
  });
});

describe.each(sites)('tonight at $name', ({ plan, weather, cache }) => {
  const input: NightInput = {
    dateISO: '2026-01-05',
    duskTemperature: -8,
    low: -14,
    cloudOktas: 2,
    wind: 2,
    band: 2,
  };
  const tonight = (dateISO: string, of: Plan = plan) => runNight(of, { ...input, dateISO }, weather, cache);

  it('in the polar night and in the polar day is a night all the same', () => {
    for (const date of ['2026-01-05', '2026-06-21', '2026-03-20']) {
      const night = tonight(date);
      expect(firstNotFinite(night.places.map((place) => [place.air, place.leaf, place.least]))).toBeNull();
      expect(night.places).toHaveLength(plan.places.length);
      for (const { air } of night.places) expect(air.length).toBeGreaterThan(12 * 6);
    }
  });
});
