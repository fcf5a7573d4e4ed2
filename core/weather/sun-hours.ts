import { clearSky, dayOfYear, lowestBeamZenith, splitGlobal, sunPosition } from '../sun/index.ts';

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
  /** Cloudless global radiation, mean over the hour [W m⁻²]. */
  readonly clearGlobal: number;
}

const parts = 6;

/** The sun over the hour that begins at `beginMs` [epoch ms UTC], by six looks ten minutes apart. */
export function sunHour(beginMs: number, station: Station): SunHour {
  let lit = 0;
  let sine = 0;
  let clearGlobal = 0;
  for (let k = 0; k < parts; k++) {
    const sun = sunPosition(beginMs + ((k + 0.5) / parts) * 3_600_000, station);
    if (!(sun.apparentZenith < 90)) continue;
    lit++;
    sine += Math.cos((sun.apparentZenith * Math.PI) / 180);
    clearGlobal += clearSky(sun, station).globalHorizontal;
  }
  const zenith = lit === 0 ? 90 : (Math.acos(sine / lit) * 180) / Math.PI;
  return { lit: lit / parts, zenith, clearGlobal: clearGlobal / parts };
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
  if (!(global > 0) || sun.lit === 0 || !(sun.zenith < lowestBeamZenith))
    return { beam: 0, diffuse: Math.max(0, global) };
  const split = splitGlobal(global / sun.lit, sun.zenith, dayOfYear(beginMs));
  return { beam: split.beamNormal * sun.lit, diffuse: split.diffuseHorizontal * sun.lit };
}
