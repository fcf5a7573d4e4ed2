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
