import { acosd, cosd, radians, sind } from './angle.ts';
import { airMass } from './air-mass.ts';
import { perezClearness, perezCoefficient, perezFloor } from './perez.ts';

/** A plane by its tilt from the horizontal (0 facing up, 90 upright) and the azimuth it faces, clockwise from north [degrees]. */
export interface Plane {
  readonly tilt: number;
  readonly azimuth: number;
}

/** Sun and sky at an instant as the plane needs them. */
export interface PlaneSun {
  readonly apparentZenith: number;
  readonly azimuth: number;
  readonly extraterrestrialNormal: number;
}

export interface PlaneSky {
  readonly globalHorizontal: number;
  readonly beamNormal: number;
  readonly diffuseHorizontal: number;
}

export type SkyModel = 'isotropic' | 'perez';

export interface PlaneOptions {
  /** Reflectance of the ground for sunlight; 0.2 where not given (grass), 0.65 with snow. */
  readonly albedo?: number;
  readonly model?: SkyModel;
}

/** Light on a plane [W m⁻²]; `incidence` is the angle between the sun and the plane's normal [degrees]. */
export interface PlaneIrradiance {
  readonly incidence: number;
  readonly beam: number;
  readonly skyDiffuse: number;
  readonly ground: number;
  readonly total: number;
}

/** Zenith beyond which the sky is taken as isotropic [degrees]: the model's bins rest on no measurements there. */
export const lowSunZenith = 87;

/** Cosine of the angle between the sun and a plane's normal; below zero the sun is behind the plane. */
export function incidenceCosine(plane: Plane, zenith: number, azimuth: number): number {
  return cosd(plane.tilt) * cosd(zenith) + sind(plane.tilt) * sind(zenith) * cosd(azimuth - plane.azimuth);
}

/** Share of the sky hemisphere's isotropic light that reaches a plane of a tilt [degrees]: (1 + cos β)/2. */
export const skyShare = (tilt: number): number => (1 + cosd(tilt)) / 2;

/** Share of the ground's light that reaches a plane of a tilt [degrees]: (1 − cos β)/2. */
export const groundShare = (tilt: number): number => (1 - cosd(tilt)) / 2;

/**
 * Light of the sky on a tilted plane as a multiple of the diffuse on the horizontal, by Perez et al. 1990.
 * `cosine` is the incidence cosine, `zenith` apparent [degrees], `normal` extraterrestrial [W m⁻²].
 */
export function perezSkyRatio(
  tilt: number,
  cosine: number,
  zenith: number,
  beamNormal: number,
  diffuse: number,
  normal: number,
): number {
  const z = zenith * radians;
  const clearness = perezClearness(diffuse, beamNormal, z);
  const brightness = (diffuse * airMass(zenith)) / normal;
  const circumsolar = perezCoefficient(1, clearness, brightness, z);
  const horizon = perezCoefficient(2, clearness, brightness, z);
  const bright = Math.max(0, cosine) / Math.max(perezFloor, Math.cos(z));
  return Math.max(0, (1 - circumsolar) * skyShare(tilt) + circumsolar * bright + horizon * sind(tilt));
}

/** Beam, sky and ground-reflected light on a plane. */
export function irradianceOnPlane(
  plane: Plane,
  sun: PlaneSun,
  sky: PlaneSky,
  options: PlaneOptions = {},
): PlaneIrradiance {
  checkPlane(plane);
  const { albedo = 0.2, model = 'perez' } = options;
  if (!(albedo >= 0 && albedo <= 1)) throw new RangeError(`expected an albedo 0 to 1, got ${albedo}`);
  if (model !== 'perez' && model !== 'isotropic')
    throw new TypeError(`expected perez or isotropic, got ${model}`);
  const cosine = incidenceCosine(plane, sun.apparentZenith, sun.azimuth);
  const up = sun.apparentZenith < 90;
  const beam = up ? sky.beamNormal * Math.max(0, cosine) : 0;
  const lowSun = !(sun.apparentZenith < lowSunZenith) || !(sky.diffuseHorizontal > 0);
  const ratio =
    model === 'isotropic' || lowSun
      ? skyShare(plane.tilt)
      : perezSkyRatio(
          plane.tilt,
          cosine,
          sun.apparentZenith,
          sky.beamNormal,
          sky.diffuseHorizontal,
          sun.extraterrestrialNormal,
        );
  const skyDiffuse = sky.diffuseHorizontal * ratio;
  const ground = sky.globalHorizontal * albedo * groundShare(plane.tilt);
  return { incidence: acosd(cosine), beam, skyDiffuse, ground, total: beam + skyDiffuse + ground };
}

/** Throws where a plane's tilt or azimuth is not a number in its range. */
export function checkPlane(plane: Plane): void {
  if (!(plane.tilt >= 0 && plane.tilt <= 180))
    throw new RangeError(`expected a tilt 0 to 180, got ${plane.tilt}`);
  if (!Number.isFinite(plane.azimuth))
    throw new RangeError(`expected a finite azimuth, got ${plane.azimuth}`);
}
