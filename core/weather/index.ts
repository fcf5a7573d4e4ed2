/** Outdoor weather: years from files or normals, nights, even steps, ground, humid air, the sky's long-wave. */
export {
  hoursOfYear,
  monthStarts,
  nominalStart,
  type WeatherProblem,
  type WeatherReading,
  type WeatherYear,
} from './year.ts';
export { readEpw, readEpwBytes } from './epw.ts';
export { readTmy3 } from './tmy3.ts';
export { emptySteps, type GardenOffset, type OutdoorSteps, type StepOptions } from './outdoor.ts';
export { fillSun, outdoorSteps } from './steps.ts';
export { chillShare } from './frost-hollow.ts';
export { groundFromWeather, groundTemperature, usualDiffusivity, type GroundWave } from './ground.ts';
export { randomStream, type RandomStream } from './random.ts';
export * from './humidity.ts';
export * from './sky.ts';
export { weatherFromNormals } from './from-normals.ts';
export { type ClimateNormals, type MonthNormalsInput } from './normals.ts';
export { dailyFromMonthly } from './monthly.ts';
export {
  daytime,
  diurnalTemperature,
  nighttime,
  partonLogan,
  type DiurnalDay,
  type DiurnalShape,
} from './diurnal.ts';
export { hourlyShare } from './hourly-radiation.ts';
export { nightWeather, type NightForecast, type NightOptions } from './night.ts';
export { planeSteps, type PlaneStepOptions, type PlaneSteps } from './plane-steps.ts';
export { wintersOf, type SeededNormals, type Winters } from './winters.ts';
export { normalsOfYear } from './file-normals.ts';
