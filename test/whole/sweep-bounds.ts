import type { Place, Plan, SeasonCache, SeasonResult, WeatherYear } from '../../core/index.ts';
import { createSeasonCache, runSeason } from '../../core/index.ts';
import { prepareSiteYear, roomTemperatures, siteYear } from '../../core/season/index.ts';
import type { SiteYear } from '../../core/season/index.ts';
import { yearOf } from '../support/climates.ts';

const caches = new Map<string, SeasonCache>();

/** A cache that knows the years of a plan's climate and nothing of any place. */
function freshCache(plan: Plan): SeasonCache {
  const known = caches.get(plan.name) ?? createSeasonCache();
  caches.set(plan.name, known);
  return { ...createSeasonCache(), weatherIds: known.weatherIds, years: known.years };
}

export const seasonOf = (plan: Plan): SeasonResult => runSeason(plan, yearOf(plan), freshCache(plan));

/** The year of a plan's site as the season ran through it. */
export const siteYearOf = (plan: Plan): SiteYear => siteYear(plan, yearOf(plan), freshCache(plan));

const others = new Map<string, SiteYear>();

/** A season in another year than the plan's own: other weather, or another step. */
export function seasonIn(plan: Plan, key: string, weather: WeatherYear, stepMinutes: number): SeasonResult {
  const name = `${plan.name}, ${key}`;
  const year = others.get(name) ?? prepareSiteYear(plan, weather, name, stepMinutes);
  others.set(name, year);
  const years: SeasonCache['years'] = { get: () => year, size: 1 };
  return runSeason(plan, weather, { ...createSeasonCache(), years });
}

/** Days for which masses may carry on what was colder (a week: the slowest node a place has of its own). */
const memoryDays = 7;

/**
 * Coldest thing around a place over the last days, for each day of its season [°C]. Places in a room that no outdoor
 * air or sky reaches have the room alone; the others the air, the sky, the ground and the room behind a wall.
 */
export function coldestAround(plan: Plan, place: Place): Float64Array {
  const year = siteYearOf(plan);
  const { clock, steps } = year;
  const perDay = 1440 / clock.stepMinutes;
  const first = year.startDay * perDay;
  const room = roomTemperatures(place.room, clock);
  const { kind } = place.shape;
  const inRoom = (kind === 'tent' || kind === 'shelf') && place.fan?.draws !== 'outdoors';
  const daily = new Float64Array(clock.n / perDay).fill(Infinity);
  for (let index = 0; index < clock.n; index++) {
    const k = (first + index) % clock.n;
    const day = Math.floor(index / perDay);
    let least = room === null ? Infinity : room[k];
    if (!inRoom) {
      least = Math.min(
        least,
        steps.dryBulb[k],
        year.skyTemperature[k],
        year.deepGround[Math.floor(k / perDay)],
      );
    }
    daily[day] = Math.min(daily[day], least);
  }
  return daily.map((_, day) => {
    let least = Infinity;
    for (let back = 0; back <= memoryDays; back++)
      least = Math.min(least, daily[(day - back + daily.length) % daily.length]);
    return least;
  });
}

/** Stefan–Boltzmann constant [W m⁻² K⁻⁴]. */
const boltzmann = 5.670374419e-8;

/** The same year with air, dew point and sky warmer by as many kelvin: relative humidity stays about as it is. */
export function shifted(weather: WeatherYear, kelvin: number): WeatherYear {
  const shift = (values: Float64Array) => values.map((value) => value + kelvin);
  const sky = weather.skyLongWave.map((value) => boltzmann * ((value / boltzmann) ** 0.25 + kelvin) ** 4);
  return { ...weather, dryBulb: shift(weather.dryBulb), dewPoint: shift(weather.dewPoint), skyLongWave: sky };
}

/** Places edited alike. */
export const edited = (plan: Plan, change: (place: Place) => Place): Plan => ({
  ...plan,
  places: plan.places.map(change),
});
