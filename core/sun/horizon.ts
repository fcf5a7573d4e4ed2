import { cosd, sind, turn } from './angle.ts';
import { checkPlane, incidenceCosine, skyShare, type Plane } from './plane.ts';

/** One point of a skyline: how high [degrees] what stands at an azimuth [degrees clockwise from north] reaches. */
export interface HorizonPoint {
  readonly azimuth: number;
  readonly elevation: number;
  /** Share of light that comes through what stands from here to the next point, 0–1; none where not given. */
  readonly passes?: number;
}

/** Height of the skyline at an azimuth [degrees], straight between its points and right round the circle; 0 without points. */
export function horizonElevation(profile: readonly HorizonPoint[], azimuth: number): number {
  if (profile.length === 0) return 0;
  const at = turn(azimuth);
  // Nearest point clockwise after `at` and nearest before it, both as distances 0…360.
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
  const span = behind + ahead;
  if (span === 0) return before.elevation;
  return before.elevation + ((after.elevation - before.elevation) * behind) / span;
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
 * Share of a plane's isotropic sky light that the skyline hides, 0–1: the sky below the skyline weighted with the
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
    for (let elevation = step / 2; elevation < 90; elevation += step) {
      const weight = Math.max(0, incidenceCosine(plane, 90 - elevation, azimuth)) * cosd(elevation);
      all += weight;
      hidden += weight * hiddenPart(elevation, skyline);
    }
  }
  return all > 0 ? hidden / all : 0;
}

/** Share of a patch round an elevation that lies below the skyline. */
function hiddenPart(elevation: number, skyline: number): number {
  const low = sind(elevation - step / 2);
  const high = sind(elevation + step / 2);
  return Math.max(0, Math.min(1, (sind(skyline) - low) / (high - low)));
}
