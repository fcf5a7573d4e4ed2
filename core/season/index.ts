export type * from './result.ts';
export {
  coldestNightOf,
  lightOf,
  outdoorDaily,
  runSeason,
  seasonSetting,
  siteYear,
  wetnessOf,
} from './season.ts';
export { createSeasonCache } from './cache.ts';
export type { SeasonCache } from './cache.ts';
export { prepareSiteYear, seasonStepMinutes } from './site-year.ts';
export type { SiteYear } from './site-year.ts';
export { isoDate, leastSwing, monthNames, monthOfSeasonDay, seasonSpan, tropic, within } from './calendar.ts';
export type { SeasonSpan } from './calendar.ts';
export { judgeLot } from './setting.ts';
export type { SeasonSetting } from './setting.ts';
export { benchTaken, placeOn, shareOfSeason, staysOf } from './stays.ts';
export type { Stay } from './stays.ts';
export { isWhole } from './plant-climate.ts';
export type { PlantClimate } from './plant-climate.ts';
export { clockOf } from './clock.ts';
export type { SeasonClock } from './clock.ts';
export { preparePlaceRun, runPlaceHeat, setDrive } from './place-heat.ts';
export type { PlaceRun } from './place-heat.ts';
export { placeLight } from './place-light.ts';
export { lampRuns } from './lamps.ts';
export { humidityRatios, roomTemperatures, skyTemperatures } from './surroundings.ts';
