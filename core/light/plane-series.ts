import type { Point } from '../fabric/index.ts';
import { perezFloor } from '../sun/perez.ts';
import type { SkySeries } from './sky-series.ts';

/** Light on one plane for every daylit step [W m⁻²], and the incidence cosine of the sun (negative behind the plane). */
export interface PlaneSeries {
  readonly cosIncidence: Float64Array;
  /** Beam with the light from round the sun; sky and ground light. */
  readonly beam: Float64Array;
  readonly diffuse: Float64Array;
  /** What the sides of a window's reveal throw to the plants' level [W m⁻² there], pane not taken off; null elsewhere. */
  readonly offSides: Float64Array | null;
}

/** What of the beam reaches the place, and how much of the even sky, with the skyline taken into account. */
export interface Skyline {
  /** Share of the beam past the skyline for each daylit step, 0–1; null for a level horizon. */
  readonly clear: Float64Array | null;
  /** Share of the plane's even sky light that is left, 0–1. */
  readonly skyLeft: number;
}

export const levelHorizon: Skyline = { clear: null, skyLeft: 1 };

/**
 * Irradiance on a plane by its outward unit normal (east, north, up): beam, Perez sky, ground by albedo.
 * The terms are those of `irradianceOnPlane` in sun/; the circumsolar part is counted with the beam because it
 * comes through glass at the same angle. `albedo` is the ground's reflectance, the same always or one for each of
 * the run's steps (snow comes and goes).
 */
export function planeSeries(
  normal: Point,
  sky: SkySeries,
  albedo: number | Float64Array,
  skyline: Skyline = levelHorizon,
): PlaneSeries {
  const count = sky.index.length;
  const cosIncidence = new Float64Array(count);
  const beam = new Float64Array(count);
  const diffuse = new Float64Array(count);
  const [east, north, up] = normal;
  const skyView = ((1 + up) / 2) * skyline.skyLeft;
  const groundView = (1 - up) / 2;
  const { clear } = skyline;
  const sine = Math.sqrt(Math.max(0, 1 - up * up)) * skyline.skyLeft;
  for (let j = 0; j < count; j++) {
    const cosine = east * sky.east[j] + north * sky.north[j] + up * sky.up[j];
    cosIncidence[j] = cosine;
    const round = sky.circumsolar[j];
    if (cosine > 0) {
      const bright = round * sky.diffuse[j];
      const past = clear === null ? 1 : clear[j];
      beam[j] = past * cosine * (sky.beam[j] + bright / (sky.up[j] > perezFloor ? sky.up[j] : perezFloor));
    }
    const dome = sky.diffuse[j] * ((1 - round) * skyView + sky.horizon[j] * sine);
    const ground = typeof albedo === 'number' ? albedo : albedo[sky.index[j]];
    diffuse[j] = (dome > 0 ? dome : 0) + sky.global[j] * groundView * ground;
  }
  return { cosIncidence, beam, diffuse, offSides: null };
}
