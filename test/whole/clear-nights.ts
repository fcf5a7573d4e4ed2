/** Unheated places through a winter of real weather, read at the end of its clear still nights. */
import { readFileSync } from 'node:fs';
import { createSeasonCache, readEpwBytes } from '../../core/index.ts';
import type { Place, Plan, SeasonCache, WeatherYear } from '../../core/index.ts';
import {
  lampRuns,
  lightOf,
  preparePlaceRun,
  roomTemperatures,
  runPlaceHeat,
  siteYear,
  wetnessOf,
} from '../../core/season/index.ts';
import type { SiteYear } from '../../core/season/index.ts';
import { AIR, LEAF } from '../../core/heat/index.ts';
import { planOf } from '../support/plans.ts';

/**
 * A night counts where the hours before dawn are clear and still: their mean cloud 0–1 and station wind [m s⁻¹]. Cloud
 * is the file's own, not turned back from its long-wave: the long-wave of most files is itself computed from cloud, by
 * Clark & Allen, whose clear sky is a third of the way to an overcast one by Berdahl & Martin.
 */
export const clearBelow = 0.2;
export const stillBelow = 2.5;
const hoursBeforeDawn = 6;

/** Last dark step of a clear still night: index in the season, and the outdoors then [°C, °C, m s⁻¹ at 10 m]. */
export interface Dawn {
  readonly index: number;
  readonly outdoor: number;
  readonly sky: number;
  readonly wind: number;
}

/** A site's winter: its year and the ends of its clear still nights. */
export interface Winter {
  readonly plan: Plan;
  readonly weather: WeatherYear;
  readonly year: SiteYear;
  readonly cache: SeasonCache;
  readonly dawns: readonly Dawn[];
}

/** Nothing but the station's own air: no frost hollow; half the station's wind, as in a garden. */
const garden = { frostHollow: 0, windShare: 0.5, albedo: 0.2, snow: null };

export function winterOf(file: string, place: object): Winter {
  const reading = readEpwBytes(readFileSync(file));
  if (!reading.ok) throw new Error(reading.problems.map((each) => each.message).join('\n'));
  const { weather } = reading;
  const { latitude, longitude, elevation } = weather;
  const zone = weather.utcOffsetHours;
  const timeZone = `${zone < 0 ? '-' : '+'}${String(Math.abs(Math.trunc(zone))).padStart(2, '0')}:00`;
  const site = { name: 'Garden', latitude, longitude, elevation, timeZone, horizon: [], ...garden };
  const plan = planOf(place, [], { site });
  const cache = createSeasonCache();
  const year = siteYear(plan, weather, cache);
  return { plan, weather, year, cache, dawns: dawnsOf(year) };
}

/** Ends of the clear still nights of the winter half-year. */
function dawnsOf(year: SiteYear): Dawn[] {
  const { steps, clock } = year;
  const { n } = clock;
  const perHour = 60 / clock.stepMinutes;
  const first = year.startDay * 24 * perHour;
  const { from, to } = year.winter;
  const dawns: Dawn[] = [];
  for (let index = from * 24 * perHour; index < (to + 1) * 24 * perHour; index++) {
    const k = (first + index) % n;
    if (clock.sunUp[k] !== 0 || clock.sunUp[(k + 1) % n] !== 1) continue;
    let cloud = 0;
    let wind = 0;
    const count = hoursBeforeDawn * perHour;
    for (let back = 0; back < count; back++) {
      const j = (k - back + n) % n;
      cloud += steps.cloudCover[j] / count;
      wind += steps.windSpeed[j] / count;
    }
    if (!(cloud <= clearBelow && wind <= stillBelow)) continue;
    dawns.push({ index, outdoor: steps.dryBulb[k], sky: year.skyTemperature[k], wind: steps.windSpeed[k] });
  }
  return dawns;
}

/** Inside air and leaf [°C] of a place full of plants watered by the season, at each of the winter's dawns. */
export function atDawns(winter: Winter, part: object): { air: number[]; leaf: number[] } {
  const { plan, year, cache, dawns } = winter;
  const area = (part as Place).growingArea;
  const planted = planOf(part, [{ group: 'crassula', area, watering: 'by-season' }], { site: plan.site });
  const [place] = planted.places;
  const run = preparePlaceRun(
    place,
    year,
    lightOf(place, year, cache),
    lampRuns(place),
    roomTemperatures(place.room, year.clock),
    wetnessOf(place, planted.lots),
  );
  const at = new Set(dawns.map((dawn) => dawn.index));
  const [air, leaf]: number[][] = [[], []];
  runPlaceHeat(run, year, year.startDay, (index, _, state) => {
    if (!at.has(index)) return;
    air.push(state.temperature[AIR]);
    leaf.push(state.temperature[LEAF]);
  });
  return { air, leaf };
}

/** Median, and the values below which 5 and 95 of a hundred lie. */
export function spreadOf(values: readonly number[]): { median: number; low: number; high: number } {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))];
  return { median: at(0.5), low: at(0.05), high: at(0.95) };
}
