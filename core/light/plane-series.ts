import type { Point } from '../fabric/index.ts';
import { perezFloor } from '../sun/perez.ts';
import type { SkySeries } from './sky-series.ts';

/** Light on one plane for every daylit step [W m⁻²], and the incidence cosine of the sun (negative behind the plane). */
export interface PlaneSeries {
  readonly cosIncidence: Float64Array;
  /** Beam with the light from round the sun; sky and ground light. */
  readonly beam: Float64Array;
  readonly diffuse: Float64Array;
}

/** What of the beam reaches the place, and how much of the even sky, with the skyline taken into account. */
export interface Skyline {
  /** 1 where the sun stands clear of the skyline, for each daylit step; null for a level horizon. */
  readonly clear: Uint8Array | null;
  /** Share of the plane's even sky light that is left, 0–1. */
  readonly skyLeft: number;
}

export const levelHorizon: Skyline = { clear: null, skyLeft: 1 };

/**
 * Irradiance on a plane by its outward unit normal (east, north, up): beam, Perez sky, ground by albedo.
 * The terms are those of `irradianceOnPlane` in sun/; the circumsolar part is counted with the beam because it
 * comes through glass at the same angle.
 */
export function planeSeries(
  normal: Point,
  sky: SkySeries,
  albedo: number,
  skyline: Skyline = levelHorizon,
): PlaneSeries {
  const count = sky.index.length;
  const cosIncidence = new Float64Array(count);
  const beam = new Float64Array(count);
  const diffuse = new Float64Array(count);
  const [east, north, up] = normal;
  const skyView = ((1 + up) / 2) * skyline.skyLeft;
  const groundView = ((1 - up) / 2) * albedo;
  const sine = Math.sqrt(Math.max(0, 1 - up * up)) * skyline.skyLeft;
  for (let j = 0; j < count; j++) {
    const cosine = east * sky.east[j] + north * sky.north[j] + up * sky.up[j];
    cosIncidence[j] = cosine;
    const round = sky.circumsolar[j];
    if (cosine > 0 && (skyline.clear === null || skyline.clear[j] === 1)) {
      const bright = round * sky.diffuse[j];
      beam[j] = cosine * (sky.beam[j] + bright / (sky.up[j] > perezFloor ? sky.up[j] : perezFloor));
    }
    const even = sky.diffuse[j] * ((1 - round) * skyView + sky.horizon[j] * sine);
    diffuse[j] = (even > 0 ? even : 0) + sky.global[j] * groundView;
  }
  return { cosIncidence, beam, diffuse };
}
