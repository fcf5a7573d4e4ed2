/** The sun: position, day length, clear sky, beam and diffuse, light on planes, skylines. */
export { sunPosition, solarConstant, type SunPlace, type SunPosition } from './position.ts';
export { daylight, solarNoon, sunriseElevation, civilElevation, type Daylight } from './daylight.ts';
export { solarCoordinates, localSun, separation, type SolarCoordinates, type LocalSun } from './ephemeris.ts';
export { civilInstant, civilOffset, dateMs, dayOfYear, standardOffsetHours } from './civil.ts';
export { deltaT, julianDay } from './julian.ts';
export { refraction, standardPressure } from './refraction.ts';
export { airMass, absoluteAirMass } from './air-mass.ts';
export {
  declinationOfDay,
  extraterrestrialHorizontalDaily,
  extraterrestrialNormalOfDay,
  sunsetHourAngle,
} from './extraterrestrial.ts';
export * from './fao.ts';
export {
  clearSky,
  cloudTransmission,
  coverFromTransmission,
  haurwitz,
  ineichen,
  usualTurbidity,
  type SkyLight,
  type SunAbove,
} from './clear-sky.ts';
export { erbsDiffuseShare, lowestBeamZenith, splitGlobal, type BeamAndDiffuse } from './split.ts';
export {
  groundShare,
  incidenceCosine,
  irradianceOnPlane,
  lowSunZenith,
  perezSkyRatio,
  skyShare,
  type Plane,
  type PlaneIrradiance,
  type PlaneOptions,
  type PlaneSky,
  type PlaneSun,
  type SkyModel,
} from './plane.ts';
export {
  hiddenPart,
  horizonElevation,
  horizonFromTable,
  horizonPasses,
  horizonTable,
  skylineShare,
  skyViewCut,
  sunClearsHorizon,
  type HorizonPoint,
} from './horizon.ts';
