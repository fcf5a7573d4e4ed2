import {
  clearSky,
  dayOfYear,
  extraterrestrialNormalOfDay,
  localSun,
  lowestBeamZenith,
  refraction,
  solarCoordinates,
  splitGlobal,
} from '../sun/index.ts';

/** Where a file's hours are, for its sun. */
export interface Station {
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation: number;
}

/** What a file's header says. */
export interface FileHeader extends Station {
  readonly name: string;
  readonly origin: 'epw' | 'tmy3';
  readonly utcOffsetHours: number;
  /** Middle of the time the radiation stands for, minus the middle of the labelled hour [min]. */
  readonly radiationShiftMinutes: number;
}

/** The sun over one hour, as a mean over its sunlit part. */
export interface SunHour {
  /** Share of the hour in which the sun is up, 0–1. */
  readonly lit: number;
  /** Apparent zenith of the mean sine of elevation over the sunlit part [degrees]. */
  readonly zenith: number;
}

const parts = 6;

/** The sun over the hour that begins at `beginMs` [epoch ms UTC], by six looks ten minutes apart. */
export function sunHour(beginMs: number, station: Station): SunHour {
  let lit = 0;
  let sine = 0;
  // Declination and equation of time hardly move within the hour: one ephemeris serves it.
  const sun = solarCoordinates(beginMs + 1_800_000);
  for (let k = 0; k < parts; k++) {
    const turned = station.longitude + ((k + 0.5) / parts - 0.5) * 15;
    const bare = localSun(sun, station.latitude, turned).elevation;
    const elevation = bare + refraction(bare, 101325, 10);
    if (!(elevation > 0)) continue;
    lit++;
    sine += Math.sin((elevation * Math.PI) / 180);
  }
  const zenith = lit === 0 ? 90 : (Math.acos(sine / lit) * 180) / Math.PI;
  return { lit: lit / parts, zenith };
}

/** Cloudless global radiation, mean over the hour that begins at `beginMs` [W m⁻²]. */
export function clearHour(beginMs: number, station: Station): number {
  const sun = sunHour(beginMs, station);
  if (sun.lit === 0) return 0;
  const extraterrestrialNormal = extraterrestrialNormalOfDay(dayOfYear(beginMs));
  return clearSky({ apparentZenith: sun.zenith, extraterrestrialNormal }, station).globalHorizontal * sun.lit;
}

/**
 * Global radiation of an hour split into beam and diffuse by Erbs et al. 1982 over the sunlit part of the hour,
 * given back as means over the whole hour [W m⁻²].
 */
export function splitHour(
  global: number,
  beginMs: number,
  station: Station,
): { beam: number; diffuse: number } {
  const sun = sunHour(beginMs, station);
  if (!(global > 0) || sun.lit === 0 || !(sun.zenith < lowestBeamZenith)) {
    return { beam: 0, diffuse: Math.max(0, global) };
  }
  const split = splitGlobal(global / sun.lit, sun.zenith, dayOfYear(beginMs));
  return { beam: split.beamNormal * sun.lit, diffuse: split.diffuseHorizontal * sun.lit };
}
