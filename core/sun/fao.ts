import { sunsetHourAngle } from './extraterrestrial.ts';
import { radians } from './angle.ts';

/** FAO-56's solar constant, 0.0820 MJ m⁻² min⁻¹, in W m⁻². All formulas here: Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56. */
export const faoSolarConstant = 0.082e6 / 60;

/** Inverse relative distance earth–sun, eq. 23. */
export function inverseDistance(dayOfYear: number): number {
  return 1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365);
}

/** Declination [degrees], eq. 24. */
export function faoDeclination(dayOfYear: number): number {
  return (0.409 * Math.sin((2 * Math.PI * dayOfYear) / 365 - 1.39)) / radians;
}

/** Extraterrestrial radiation Ra of a day [MJ m⁻² d⁻¹], eq. 21. */
export function faoExtraterrestrial(latitude: number, dayOfYear: number): number {
  const delta = faoDeclination(dayOfYear) * radians;
  const phi = latitude * radians;
  const sunset = sunsetHourAngle(latitude, delta / radians) * radians;
  const integral =
    sunset * Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.sin(sunset);
  return Math.max(0, ((24 * 60) / Math.PI) * 0.082 * inverseDistance(dayOfYear) * integral);
}

/** Longest possible sunshine N of a day [h], eq. 34: the sun's centre, no refraction. */
export function faoDaylightHours(latitude: number, dayOfYear: number): number {
  return (24 / 180) * sunsetHourAngle(latitude, faoDeclination(dayOfYear));
}

/** Global radiation from sunshine (Ångström–Prescott), eq. 35 [MJ m⁻² d⁻¹]; a and b default to FAO-56's 0.25 and 0.50. */
export function radiationFromSunshine(
  sunshineHours: number,
  daylightHours: number,
  extraterrestrial: number,
  a = 0.25,
  b = 0.5,
): number {
  if (daylightHours === 0) return 0;
  return (a + b * Math.min(1, sunshineHours / daylightHours)) * extraterrestrial;
}

/** Global radiation from the temperature range (Hargreaves–Samani), eq. 50 [MJ m⁻² d⁻¹]; `coefficient` 0.16 inland, 0.19 at coasts [K⁻⁰·⁵]. */
export function radiationFromRange(
  minimum: number,
  maximum: number,
  extraterrestrial: number,
  coefficient = 0.16,
): number {
  return Math.min(0.8, coefficient * Math.sqrt(Math.max(0, maximum - minimum))) * extraterrestrial;
}

/** Global radiation of a cloudless day, eq. 37 [MJ m⁻² d⁻¹]; `elevation` [m]. */
export function clearDayRadiation(extraterrestrial: number, elevation: number): number {
  return (0.75 + 2e-5 * elevation) * extraterrestrial;
}

/** Net outgoing long-wave of a day, eq. 39 [MJ m⁻² d⁻¹]: temperatures [°C], vapour pressure [kPa], `relative` Rs/Rso. */
export function netLongWave(
  minimum: number,
  maximum: number,
  vapourPressure: number,
  relative: number,
): number {
  const fourth = (t: number): number => (t + 273.16) ** 4;
  const radiation = (4.903e-9 * (fourth(minimum) + fourth(maximum))) / 2;
  return radiation * (0.34 - 0.14 * Math.sqrt(vapourPressure)) * (1.35 * Math.min(1, relative) - 0.35);
}
