export {
  assemblyOptics,
  assemblyTransmittance,
  coverAbsorptance,
  coverTransmittance,
  diffuseOptics,
  diffuseTransmittance,
  solarAbsorptance,
} from './cover.ts';
export type { Band } from './cover.ts';
export { layersOf } from './openings.ts';
export { daylightSeries } from './daylight.ts';
export type { DaylightOptions, DaylightSeries } from './daylight-series.ts';
export { spotDaylight, spotLampShare } from './spot.ts';
export { dirtDays, dirtLoss } from './dirt.ts';
export { wetCoverLoss } from './wet.ts';
export {
  clearnessIndex,
  photonsPerClearJoule,
  photonsPerJouleOfSky,
  photonsPerOvercastJoule,
} from './photons.ts';
export { beamPatch, beamPatches } from './window-patch.ts';
export type { BeamPatch, SunAt } from './window-patch.ts';
export { windowSkyFactor, windowStripFactor } from './window-factor.ts';
export { planeSeries, levelHorizon } from './plane-series.ts';
export type { PlaneSeries, Skyline } from './plane-series.ts';
export { sharedSkySeries, skySeries } from './sky-series.ts';
export type { SkySeries } from './sky-series.ts';
export {
  dailyLight,
  dailyLightOfRadiation,
  energyPerMole,
  footCandlesOf,
  luxOf,
  luxOfFootCandles,
  luxPerFootCandle,
  photonsPerParJoule,
  photonsPerSolarJoule,
  ppfdForDailyLight,
  ppfdOfLux,
  sunLuxPerMicromole,
} from './daily-light.ts';
export type { FieldLevel } from './field-level.ts';
export { burnRisk, nearestDistance } from './burn.ts';
export type { BurnInput, BurnRisk, LitPlants } from './burn.ts';
export { leafLoad, leafOverAir } from './burn-leaf.ts';
export { readMeter, readMeterOverDay, sumOfReadings } from './meter.ts';
export { skyStates } from './meter-reading.ts';
export type {
  Band as MeterBand,
  DaylightReading,
  LampLight,
  MeterError,
  MeterKind,
  MeterPlace,
  MeterReading,
  MeterResult,
  SkyState,
} from './meter-reading.ts';
export { blackBody, photonsPerJouleAt, spectralFactors } from './spectrum.ts';
export type { SpectralFactors, Spectrum } from './spectrum.ts';
export { readSpectrum } from './spectrum-text.ts';
export type { SpectrumText } from './spectrum-text.ts';
export { lampField } from './lamp-field.ts';
export type { FieldOptions, LampArray, LampField, Reflectances } from './lamp-field.ts';
export { areaOfRectangle, cornerFactor, parallelFactor, pointFactor, rectangleAt } from './rectangles.ts';
export type { Rectangle } from './rectangles.ts';
export { lampLight, lampPhotons, lampPpfd, lampWatts, lightLeft } from './lamps.ts';
export { placeField } from './field-all.ts';
export type { PlaceField, PlaceFieldOptions } from './field-all.ts';
export { boxOfPlace } from './field-place.ts';
export { lampFaces } from './field-layout.ts';
export { beamShape } from './beam.ts';
export type { BeamShape } from './beam.ts';
export { mostFileLength, readPhotometricFile } from './photometric-file.ts';
export type { PhotometricFile, PhotometricReading } from './photometric-file.ts';
