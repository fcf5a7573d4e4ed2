import type { GroundWave, OutdoorSteps, WeatherYear } from '../weather/index.ts';
import { groundFromWeather, groundTemperature, outdoorSteps } from '../weather/index.ts';
import type { Plan } from '../plan/schema.ts';
import type { PlanSite } from '../plan/site.ts';
import { standardPressure } from '../sun/index.ts';
import { seasonSpan } from './calendar.ts';
import { seasonClock } from './clock.ts';
import type { SeasonClock } from './clock.ts';
import { humidityRatios, skyTemperatures } from './surroundings.ts';

/** Everything that depends on site, weather and tariff alone: computed once, shared by all places and changes. */
export interface SiteYear {
  readonly key: string;
  /** The season's first day as day of a common year (0 = 1 January), and the half-year of it that is winter. */
  readonly startDay: number;
  readonly winter: { readonly from: number; readonly to: number };
  readonly site: PlanSite;
  readonly steps: OutdoorSteps;
  readonly clock: SeasonClock;
  readonly skyTemperature: Float64Array;
  readonly humidity: Float64Array;
  /** Ground temperature at 1 m for each day of the year [°C]. */
  readonly deepGround: Float64Array;
  readonly ground: GroundWave;
  readonly pressure: number;
  /** Minutes from 1 January 00:00 standard time to the first step. */
  readonly beginMinutes: number;
  /** Where the weather came from: a file's least temperature stands for its design low, typed normals have their own. */
  readonly origin: WeatherYear['origin'];
  readonly notes: readonly string[];
}

/** Length of a season's step [min]. */
export const seasonStepMinutes = 15;

/** Depth at which the ground under a place is taken as undisturbed [m]. */
export const deepGroundDepth = 1;

export function prepareSiteYear(
  plan: Plan,
  weather: WeatherYear,
  key: string,
  stepMinutes = seasonStepMinutes,
): SiteYear {
  const { site, notes } = siteFor(plan, weather);
  const steps = outdoorSteps(weather, site, { stepMinutes });
  const clock = seasonClock(steps, site.timeZone, plan.tariff);
  const span = seasonSpan(site.latitude, steps);
  const ground = groundFromWeather(weather);
  const deepGround = new Float64Array(366);
  for (let day = 0; day < 366; day++) deepGround[day] = groundTemperature(deepGroundDepth, day + 1, ground);
  return {
    key,
    startDay: span.startDay,
    winter: { from: span.winterFrom, to: span.winterTo },
    site,
    steps,
    clock,
    skyTemperature: skyTemperatures(steps.skyLongWave),
    humidity: humidityRatios(steps),
    deepGround,
    ground,
    origin: weather.origin,
    pressure: standardPressure(site.elevation),
    beginMinutes: 0,
    notes: [...weather.notes, ...notes],
  };
}

/**
 * The plan's site, or the file's where the weather was taken more than 3° away: the sun must stand where the
 * weather was measured, and the civil day is then the file's standard time.
 */
function siteFor(plan: Plan, weather: WeatherYear): { site: PlanSite; notes: string[] } {
  const far =
    Math.abs(weather.latitude - plan.site.latitude) > 3 ||
    Math.abs(weather.longitude - plan.site.longitude) > 3;
  if (weather.origin === 'normals' || !far) return { site: plan.site, notes: [] };
  const site = {
    ...plan.site,
    latitude: weather.latitude,
    longitude: weather.longitude,
    elevation: weather.elevation,
    timeZone: fixedZone(weather.utcOffsetHours),
  };
  return {
    site,
    notes: ['The weather comes from far off: sun and clock are those of the weather, not of the plan.'],
  };
}

/** A fixed offset as the runtime names it, such as `+05:30`. */
function fixedZone(offsetHours: number): string {
  const minutes = Math.round(Math.abs(offsetHours) * 60);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${offsetHours < 0 ? '-' : '+'}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}
