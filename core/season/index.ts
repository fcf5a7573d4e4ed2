export type * from './result.ts';
export {
  coldestNightOf,
  createSeasonCache,
  lightOf,
  outdoorDaily,
  runSeason,
  siteYear,
  wetnessOf,
} from './season.ts';
export type { SeasonCache } from './season.ts';
export { prepareSiteYear, seasonStepMinutes } from './site-year.ts';
export type { SiteYear } from './site-year.ts';
export { isoDate, monthOfSeasonDay, seasonStartDay, winterSpan, within } from './calendar.ts';
export { clockOf } from './clock.ts';
export type { SeasonClock } from './clock.ts';
export { preparePlaceRun, runPlaceHeat, setDrive } from './place-heat.ts';
export type { PlaceRun } from './place-heat.ts';
export { placeLight } from './place-light.ts';
export { lampRuns } from './lamps.ts';
export { humidityRatios, roomTemperatures, skyTemperatures } from './surroundings.ts';
