import {
  groundShare,
  horizonFromTable,
  horizonPasses,
  horizonTable,
  incidenceCosine,
  lowSunZenith,
  perezSkyRatio,
  skyShare,
  skyViewCut,
  type HorizonPoint,
  type Plane,
  type SkyModel,
} from '../sun/index.ts';
import type { OutdoorSteps } from './outdoor.ts';

/** Light on a plane through a run of steps [W m⁻²], and the angle of incidence [degrees], 90 where the sun is behind it or down. */
export interface PlaneSteps {
  readonly incidence: Float64Array;
  readonly beam: Float64Array;
  readonly skyDiffuse: Float64Array;
  readonly ground: Float64Array;
}

export interface PlaneStepOptions {
  /** Reflectance of the ground for sunlight; 0.2 where not given. */
  readonly albedo?: number;
  readonly model?: SkyModel;
  readonly horizon?: readonly HorizonPoint[];
}

/**
 * `irradianceOnPlane` over every step, the skyline taken off: it cuts the beam behind it to what comes through (`passes`),
 * and its share of the sky's light.
 */
export function planeSteps(steps: OutdoorSteps, plane: Plane, options: PlaneStepOptions = {}): PlaneSteps {
  const { albedo = 0.2, model = 'perez', horizon = [] } = options;
  const incidence = new Float64Array(steps.n).fill(90);
  const beam = new Float64Array(steps.n);
  const skyDiffuse = new Float64Array(steps.n);
  const ground = new Float64Array(steps.n);
  const skyline = horizon.length === 0 ? null : horizonTable(horizon);
  const isotropic = skyShare(plane.tilt);
  const open = 1 - skyViewCut(horizon, plane);
  const groundFactor = albedo * groundShare(plane.tilt);
  for (let j = 0; j < steps.n; j++) {
    const diffuse = steps.diffuseHorizontal[j];
    const normal = steps.beamNormal[j];
    const elevation = steps.sunElevation[j];
    if (!(diffuse > 0 || normal > 0 || elevation > 0)) continue;
    const zenith = 90 - elevation;
    const cosine = incidenceCosine(plane, zenith, steps.sunAzimuth[j]);
    const clears =
      elevation > 0 && (skyline === null || elevation > horizonFromTable(skyline, steps.sunAzimuth[j]));
    const past = clears ? 1 : elevation > 0 ? horizonPasses(horizon, steps.sunAzimuth[j]) : 0;
    if (cosine > 0 && elevation > 0) incidence[j] = (Math.acos(Math.min(1, cosine)) * 180) / Math.PI;
    if (cosine > 0) beam[j] = past * normal * cosine;
    const ratio =
      model === 'isotropic' || !(diffuse > 0) || !(zenith < lowSunZenith)
        ? isotropic
        : perezSkyRatio(plane.tilt, past * cosine, zenith, normal, diffuse, steps.extraterrestrialNormal[j]);
    skyDiffuse[j] = diffuse * ratio * open;
    ground[j] = steps.globalHorizontal[j] * groundFactor;
  }
  return { incidence, beam, skyDiffuse, ground };
}
