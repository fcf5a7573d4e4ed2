export type { Crossing } from './crossing.ts';
export type { PlantDays } from './day.ts';
export { constantDays, dayCount, seasonMonth } from './day.ts';
export type { FlowerCue, FlowerOutlook } from './flowering.ts';
export { flowerCue, flowerOutlook, flowersTogether } from './flowering.ts';
export { coldLimitAt, coldLimits, hardeningTarget } from './hardening.ts';
export type { HarmDays, HarmPast, HarmSummary } from './harm.ts';
export { chillLoads, harmDoses, harmTotals, summariseHarm } from './harm.ts';
export type { Injury, InjuryDegree } from './injury.ts';
export {
  chillInjury,
  declineShare,
  frostInjury,
  frostMarks,
  frostSerious,
  heatInjury,
  wetColdInjury,
} from './injury.ts';
export type { Watering } from './mind.ts';
export { isDryMonth } from './mind.ts';
export { repotDays, rootWarmth } from './repot.ts';
export {
  carbonNightResponse,
  carbonResponse,
  lightResponse,
  optimumOf,
  softnessOf,
  temperatureAt,
  temperatureResponse,
  wangEngel,
  yanHunt,
} from './response.ts';
export type { StretchDegree } from './photothermal.ts';
export { photothermalLimits, photothermalRatio, stretchDegree } from './photothermal.ts';
export { settleDays } from './settle.ts';
export type { PlantOptions, PlantResult, PlantTransition } from './state.ts';
export { runPlants } from './state.ts';
export type { Thresholds } from './thresholds.ts';
export { coolEnoughFor, lightNeeded, thresholdsOf } from './thresholds.ts';
export type { Spread, SpreadKind } from './spread.ts';
export { drawNumbers, spreadKind, spreadOf } from './spread.ts';
export type { WaterAdvice, WaterAnswer } from './water.ts';
export { restsMoist, waterAdvice, waterings } from './water.ts';
export type { PlantWeek } from './week.ts';
export { weeklyStates } from './week.ts';
export type { LimitingFactor, LimitingId, PlantState, PlantStateId } from './words.ts';
export { limitingFactors, limitingWords, plantHarms, plantStates } from './words.ts';
