import { cosd, sind, turn } from './angle.ts';
import { checkPlane, incidenceCosine, skyShare, type Plane } from './plane.ts';

/** One point of a skyline: how high [degrees] what stands at an azimuth [degrees clockwise from north] reaches. */
export interface HorizonPoint {
  readonly azimuth: number;
  readonly elevation: number;
  /** Share of light that comes through what stands from here to the next point, 0–1; none where not given. */
  readonly passes?: number;
}

/** Points on either side of an azimuth, and how far it lies behind the one and the one is from the other [degrees]. */
interface Between {
  readonly before: HorizonPoint;
  readonly after: HorizonPoint;
  readonly behind: number;
  readonly span: number;
}

/** Nearest point at or anticlockwise of an azimuth and nearest clockwise of it; the profile has points. */
function pointsRound(profile: readonly HorizonPoint[], azimuth: number): Between {
  const at = turn(azimuth);
  let before = profile[0];
  let after = profile[0];
  let behind = 361;
  let ahead = 361;
  for (const point of profile) {
    const back = turn(at - point.azimuth);
    const forth = turn(point.azimuth - at);
    if (back < behind) [behind, before] = [back, point];
    if (forth < ahead) [ahead, after] = [forth, point];
  }
  return { before, after, behind, span: behind + ahead };
}

/** Height of the skyline at an azimuth [degrees], straight between its points and right round the circle; 0 without points. */
export function horizonElevation(profile: readonly HorizonPoint[], azimuth: number): number {
  if (profile.length === 0) return 0;
  const { before, after, behind, span } = pointsRound(profile, azimuth);
  if (span === 0) return before.elevation;
  return before.elevation + ((after.elevation - before.elevation) * behind) / span;
}

/** Share of light that comes through what stands at an azimuth [degrees], 0–1: that of the point it begins from. */
export function horizonPasses(profile: readonly HorizonPoint[], azimuth: number): number {
  if (profile.length === 0) return 0;
  return pointsRound(profile, azimuth).before.passes ?? 0;
}

/** Share of the beam that reaches past the skyline: 1 with the sun above it, what bare trees pass behind them, 0 at night. */
export function skylineShare(profile: readonly HorizonPoint[], elevation: number, azimuth: number): number {
  if (!(elevation > 0)) return 0;
  return elevation > horizonElevation(profile, azimuth) ? 1 : horizonPasses(profile, azimuth);
}

/** True where the sun's centre stands above the skyline and above the level horizon. */
export function sunClearsHorizon(
  profile: readonly HorizonPoint[],
  elevation: number,
  azimuth: number,
): boolean {
  return elevation > 0 && elevation > horizonElevation(profile, azimuth);
}

/** The skyline at every whole degree of azimuth, 0 to 360: for loops that ask often. */
export function horizonTable(profile: readonly HorizonPoint[]): Float64Array {
  return Float64Array.from({ length: 361 }, (_, azimuth) => horizonElevation(profile, azimuth));
}

/** Skyline at an azimuth of 0 to 360 from its table, straight between whole degrees. */
export function horizonFromTable(table: Float64Array, azimuth: number): number {
  const floor = Math.min(359, Math.floor(azimuth));
  return table[floor] + (table[floor + 1] - table[floor]) * (azimuth - floor);
}

const step = 2;

/**
 * Share of a plane's isotropic sky light that the skyline hides, 0–1: the sky below the skyline, less what comes through it, weighted with the
 * cosine of its angle to the plane, over the whole of it. Patches of 2° by 2° (derived; a level plane under an even
 * skyline of elevation e loses sin² e).
 */
export function skyViewCut(profile: readonly HorizonPoint[], plane: Plane): number {
  checkPlane(plane);
  if (profile.length === 0 || skyShare(plane.tilt) < 1e-9) return 0;
  let hidden = 0;
  let all = 0;
  for (let azimuth = step / 2; azimuth < 360; azimuth += step) {
    const skyline = horizonElevation(profile, azimuth);
    const held = 1 - horizonPasses(profile, azimuth);
    for (let elevation = step / 2; elevation < 90; elevation += step) {
      const weight = Math.max(0, incidenceCosine(plane, 90 - elevation, azimuth)) * cosd(elevation);
      all += weight;
      hidden += weight * held * hiddenPart(elevation, skyline, step);
    }
  }
  return all > 0 ? hidden / all : 0;
}

/** Share of a patch of sky round an elevation, `height` tall [degrees], that lies below the skyline, 0–1. */
export function hiddenPart(elevation: number, skyline: number, height: number): number {
  const low = sind(elevation - height / 2);
  const high = sind(Math.min(90, elevation + height / 2));
  return Math.max(0, Math.min(1, (sind(skyline) - low) / (high - low)));
}
