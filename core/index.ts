/**
 * The engine of Winterbench: a plan and a year of weather go in, a season comes out.
 * Everything outside `core/` imports from here alone. SI units inside: °C, W, m, µmol m⁻² s⁻¹, mol m⁻² d⁻¹,
 * degrees, azimuth clockwise from north, epoch milliseconds UTC.
 */
export { parsePlan } from './plan/parse.ts';
export type { PlanReading, Problem } from './plan/parse.ts';
export { planJsonSchema } from './plan/json-schema.ts';
export { outdoors, planSchema, planSchemaVersion } from './plan/schema.ts';
export type { Climate, Lot, MonthNormals, Move, OwnGroup, Place, Plan, Spot, Tariff } from './plan/schema.ts';
export { leakages, leakagesFor } from './plan/leakages.ts';
export type { Leakage } from './plan/leakages.ts';
export { mouldRule, mouldRules } from './plan/mould.ts';
export type { MouldRule } from './plan/mould.ts';
export { fleeceOf, heaterOf, lampOf, lotOf, placeOf, screenOf, waterOf } from './plan/parts.ts';
export type { PlanSite, Site } from './plan/site.ts';
export type {
  Circulation,
  Door,
  Fan,
  Fleece,
  Heater,
  Lamp,
  Room,
  Screen,
  SecondSkin,
  ShadeCloth,
  Sheer,
  UpperShelf,
  Vent,
  WaterStore,
} from './plan/equipment.ts';
export type { Shape, ShapeKind, ShapeOf } from './plan/shapes.ts';
export { demonstrationPlan } from './plan/demonstration.ts';
export { needsRoom } from './plan/references.ts';
export { daylightReaches } from './plan/daylit.ts';
export { holdsAtNoTime, hoursOverlap } from './plan/hours.ts';
export { covering, coverings, coveringsFor } from './plan/coverings.ts';
export type { Covering, CoveringUse } from './plan/coverings.ts';
export type { Beam, LampControl, LightSource, Photometry } from './plan/lamp.ts';
export { lampTechnologies, lampTechnology } from './plan/lamps.ts';
export type { LampTechnology } from './plan/lamps.ts';
export * from './plan/groups.ts';
export { visits } from './plan/visits.ts';
export { editedNames, planEdits, planGroup, planGroups, planNumbers } from './plan/plan-groups.ts';
export * from './sun/index.ts';
export * from './weather/index.ts';
export * from './fabric/index.ts';
export * from './light/index.ts';
export {
  buildNetwork,
  emptyDrive,
  handbookLoss,
  initialState,
  leakageFactor,
  proportionalOpening,
  steadyPower,
  stepHeat,
  ventFlow,
} from './heat/index.ts';
export type { Drive, HeatState, Network } from './heat/index.ts';
export * from './plants/index.ts';
export { dailyCost, heatPrice, spanHours } from './cost/index.ts';
export {
  benchTaken,
  createSeasonCache,
  isWhole,
  isoDate,
  judgeLot,
  placeOn,
  runSeason,
  seasonSetting,
  staysOf,
} from './season/index.ts';
export type { PlantClimate, SeasonSetting, Stay } from './season/index.ts';
export type * from './season/result.ts';
export type { SeasonCache } from './season/index.ts';
export { weatherFromPlan } from './season/weather-from-plan.ts';
export { runNight } from './night/index.ts';
export type * from './night/result.ts';
export {
  applyChange,
  applyDampChange,
  beginCertainty,
  burningHours,
  calendarOf,
  compareLamps,
  dampChoices,
  dampFigures,
  cardYears,
  findWays,
  growCertainty,
  lampChart,
  longDays,
  placeLampHours,
  rankGroups,
  rankPlaces,
  scaledLamp,
  hardinessRatings,
  hardinessZone,
  ratingFor,
  shiftsOf,
  siteCard,
  strengthOf,
} from './advice/index.ts';
export { applyFlowerWay, flowerTogether } from './advice/index.ts';
export type { FlowerOptions } from './advice/index.ts';
export type { CertaintyOptions, CertaintyRun, GrowOptions } from './advice/index.ts';
export type { ChartRange, LongDay, PlacingOptions } from './advice/index.ts';
export type { HardinessRating } from './advice/index.ts';
export type { DampAdvice, DampChangeId, DampChoice, DampFigures } from './advice/index.ts';
export type * from './advice/result.ts';
export { balanceOf, coldestNightDay, explain, heatBalance, heatOf, spanWords } from './explain/index.ts';
export type { HeatAmount, HeatBalance, HeatSpan } from './explain/index.ts';
export type * from './explain/subject.ts';
