import { solarConstant } from './position.ts';
import { radians } from './angle.ts';

/**
 * Extraterrestrial radiation on a plane facing the sun by day of the year [W m⁻²]: Spencer 1971's series for the
 * earth–sun distance (Search 2(5), 172; as in Duffie & Beckman eq. 1.4.1b). `constant` is the solar constant [W m⁻²].
 */
export function extraterrestrialNormalOfDay(dayOfYear: number, constant = solarConstant): number {
  const angle = ((dayOfYear - 1) * 2 * Math.PI) / 365;
  const factor =
    1.00011 +
    0.034221 * Math.cos(angle) +
    0.00128 * Math.sin(angle) +
    0.000719 * Math.cos(2 * angle) +
    0.000077 * Math.sin(2 * angle);
  return constant * factor;
}

/** Declination by Cooper 1969 as in Duffie & Beckman eq. 1.6.1a [degrees]; within 0.5° and for handbook sums only. */
export function declinationOfDay(dayOfYear: number): number {
  return 23.45 * Math.sin(((284 + dayOfYear) / 365) * 2 * Math.PI);
}

/** Sunset hour angle of the sun's centre without refraction [degrees], 0 in polar night and 180 in polar day. */
export function sunsetHourAngle(latitude: number, declination: number): number {
  const cosine = -Math.tan(latitude * radians) * Math.tan(declination * radians);
  return Math.acos(Math.max(-1, Math.min(1, cosine))) / radians;
}

/**
 * Extraterrestrial radiation of a day on the horizontal [MJ m⁻² d⁻¹], Duffie & Beckman eq. 1.10.3.
 * The declination may be given where a finer one than Cooper's is known.
 */
export function extraterrestrialHorizontalDaily(
  latitude: number,
  dayOfYear: number,
  constant = solarConstant,
  declination = declinationOfDay(dayOfYear),
): number {
  const sunset = sunsetHourAngle(latitude, declination) * radians;
  const phi = latitude * radians;
  const delta = declination * radians;
  const normal = constant * (1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365));
  const integral =
    Math.cos(phi) * Math.cos(delta) * Math.sin(sunset) + sunset * Math.sin(phi) * Math.sin(delta);
  return Math.max(0, ((86400 * normal) / Math.PI) * integral) / 1e6;
}
