import { absoluteAirMass } from './air-mass.ts';
import { radians } from './angle.ts';

/** Sunlight on the ground [W m⁻²]: on the horizontal, from the sun's disc on a plane facing it, from the sky on the horizontal. */
export interface SkyLight {
  readonly globalHorizontal: number;
  readonly beamNormal: number;
  readonly diffuseHorizontal: number;
}

/** What the clear-sky models need to know of the sun. */
export interface SunAbove {
  readonly apparentZenith: number;
  readonly extraterrestrialNormal: number;
}

/** Linke turbidity of clean mid-latitude air (from memory; 2 very clear and cold, 5 hazy). */
export const usualTurbidity = 3;

const dark: SkyLight = { globalHorizontal: 0, beamNormal: 0, diffuseHorizontal: 0 };

/**
 * Cloudless sky by Ineichen & Perez 2002 (Solar Energy 73, 151–157), with Perez et al.'s bound on the beam.
 * `turbidity` is the Linke turbidity at air mass 2.
 */
export function clearSky(
  sun: SunAbove,
  site: { readonly elevation: number },
  turbidity = usualTurbidity,
): SkyLight {
  if (!(turbidity >= 1)) throw new RangeError(`expected a Linke turbidity of at least 1, got ${turbidity}`);
  if (!(sun.apparentZenith < 90)) return dark;
  return ineichen(
    sun.apparentZenith,
    absoluteAirMass(sun.apparentZenith, site.elevation),
    turbidity,
    site.elevation,
    sun.extraterrestrialNormal,
  );
}

/** The model itself, with the air mass given: apparent zenith [degrees], height [m], extraterrestrial normal [W m⁻²]. */
export function ineichen(
  zenith: number,
  mass: number,
  turbidity: number,
  elevation: number,
  normal: number,
): SkyLight {
  const cosine = Math.max(0, Math.cos(zenith * radians));
  const low = Math.exp(-elevation / 8000);
  const high = Math.exp(-elevation / 1250);
  const scale = 5.09e-5 * elevation + 0.868;
  const rate = 3.92e-5 * elevation + 0.0387;
  const globalHorizontal = scale * normal * cosine * Math.exp(-rate * mass * (low + high * (turbidity - 1)));
  const beam = normal * (0.664 + 0.163 / low) * Math.exp(-0.09 * mass * (turbidity - 1));
  const share = 1 - (0.1 - 0.2 * Math.exp(-turbidity)) / (0.1 + 0.882 / low);
  const bound = cosine > 0 ? (globalHorizontal * Math.max(0, share)) / cosine : 0;
  const beamNormal = Math.min(beam, bound);
  return { globalHorizontal, beamNormal, diffuseHorizontal: globalHorizontal - beamNormal * cosine };
}

/** Cloudless global radiation by Haurwitz 1945 [W m⁻²], with 0.059 in the exponent (some texts print 0.057). */
export function haurwitz(apparentZenith: number): number {
  const cosine = Math.cos(apparentZenith * radians);
  if (!(cosine > 0)) return 0;
  return 1098 * cosine * Math.exp(-0.059 / cosine);
}

/**
 * Share of the cloudless global radiation that comes through a cloud cover of 0–1:
 * Kasten & Czeplak 1980 (Solar Energy 24, 177–189), 1 − 0.75·c³·⁴.
 */
export function cloudTransmission(cover: number): number {
  return 1 - 0.75 * Math.max(0, Math.min(1, cover)) ** 3.4;
}

/** Cloud cover 0–1 that leaves a share of the cloudless radiation; the inverse of `cloudTransmission`. */
export function coverFromTransmission(share: number): number {
  return Math.max(0, Math.min(1, (1 - share) / 0.75)) ** (1 / 3.4);
}
