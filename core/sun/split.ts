import { extraterrestrialNormalOfDay } from './extraterrestrial.ts';
import { solarConstant } from './position.ts';
import { radians } from './angle.ts';

/** Beam on a plane facing the sun and diffuse on the horizontal [W m⁻²]. */
export interface BeamAndDiffuse {
  readonly beamNormal: number;
  readonly diffuseHorizontal: number;
}

/** Zenith beyond which all of the global radiation is taken as diffuse [degrees]: the beam's share is lost in the noise there. */
export const lowestBeamZenith = 87;

/** Diffuse share of hourly global radiation from the clearness index: Erbs, Klein & Duffie 1982 (Solar Energy 28, 293–302). */
export function erbsDiffuseShare(clearness: number): number {
  const k = Math.max(0, clearness);
  if (k <= 0.22) return 1 - 0.09 * k;
  if (k <= 0.8) return 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336)));
  return 0.165;
}

/**
 * Global radiation on the horizontal [W m⁻²] split into beam and diffuse by the clearness index (Erbs et al. 1982).
 * `zenith` [degrees] of the middle of the hour's sunlit part; `constant` the solar constant [W m⁻²].
 */
export function splitGlobal(
  globalHorizontal: number,
  zenith: number,
  dayOfYear: number,
  constant = solarConstant,
): BeamAndDiffuse {
  if (!(globalHorizontal >= 0))
    throw new RangeError(`expected global radiation of 0 or more, got ${globalHorizontal}`);
  if (!(dayOfYear >= 1 && dayOfYear <= 366))
    throw new RangeError(`expected a day 1 to 366, got ${dayOfYear}`);
  if (!(zenith < lowestBeamZenith)) return { beamNormal: 0, diffuseHorizontal: globalHorizontal };
  const cosine = Math.cos(zenith * radians);
  // Below 86.3° of zenith the index is held as if the sun stood there, or it would run past one at a glance of light.
  const above = extraterrestrialNormalOfDay(dayOfYear, constant) * Math.max(0.065, cosine);
  const diffuseHorizontal = globalHorizontal * erbsDiffuseShare(globalHorizontal / above);
  return { beamNormal: (globalHorizontal - diffuseHorizontal) / cosine, diffuseHorizontal };
}
