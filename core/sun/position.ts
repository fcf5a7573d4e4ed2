import { localSun, solarCoordinates } from './ephemeris.ts';
import { refraction, standardPressure } from './refraction.ts';

/** Solar constant [W m⁻²] (WMO; Kopp & Lean 2011 measured 1360.8). Older tables use 1366.1 or 1367. */
export const solarConstant = 1361;

/** Where sunlight is asked for; `pressure` [Pa] and `temperature` [°C] serve refraction alone. */
export interface SunPlace {
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation: number;
  readonly pressure?: number;
  readonly temperature?: number;
}

/** The sun at an instant. Angles [degrees]; azimuth clockwise from north. */
export interface SunPosition {
  /** Angle from the vertical without refraction, and as seen through the air. */
  readonly zenith: number;
  readonly apparentZenith: number;
  readonly azimuth: number;
  readonly declination: number;
  /** Apparent minus mean solar time [min]. */
  readonly equationOfTime: number;
  /** Sunlight on a plane facing the sun above the air [W m⁻²]. */
  readonly extraterrestrialNormal: number;
}

/** Mean temperature of the air used for refraction where none is given [°C] (common practice, no source). */
const usualTemperature = 12;

/**
 * Position of the sun. Meeus, Astronomical Algorithms, ch. 25, with the larger planetary terms; parallax and
 * refraction as in the NREL Solar Position Algorithm. Stays within 0.02° of that algorithm from 1950 to 2100.
 */
export function sunPosition(epochMs: number, place: SunPlace): SunPosition {
  if (!Number.isFinite(epochMs)) throw new TypeError(`expected a finite instant in epoch ms, got ${epochMs}`);
  checkPlace(place);
  const sun = solarCoordinates(epochMs);
  const local = localSun(sun, place.latitude, place.longitude);
  const lift = refraction(
    local.elevation,
    place.pressure ?? standardPressure(place.elevation),
    place.temperature ?? usualTemperature,
  );
  return {
    zenith: 90 - local.elevation,
    apparentZenith: 90 - local.elevation - lift,
    azimuth: local.azimuth,
    declination: sun.declination,
    equationOfTime: sun.equationOfTime,
    extraterrestrialNormal: solarConstant / (sun.distance * sun.distance),
  };
}

/** Throws where latitude, longitude or elevation is not a number in its range. */
export function checkPlace(place: SunPlace): void {
  const { latitude, longitude, elevation } = place;
  if (!(latitude >= -90 && latitude <= 90))
    throw new RangeError(`expected latitude −90 to 90, got ${latitude}`);
  if (!(longitude >= -180 && longitude <= 360)) {
    throw new RangeError(`expected longitude −180 to 180, got ${longitude}`);
  }
  if (!(elevation >= -1000 && elevation <= 10000)) {
    throw new RangeError(`expected elevation −1000 to 10000 m, got ${elevation}`);
  }
}
