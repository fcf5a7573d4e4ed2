import { horizonElevation } from '../../../core/index.ts';
import type { HorizonPoint } from '../../../core/index.ts';
import { profileAngle } from './view.ts';

/** What stands in one direction before a place, as the section sees it. */
export interface SkylineSeen {
  /** Its height over the horizon there, and the same turned into the section's plane [degrees]. */
  readonly elevation: number;
  readonly angle: number;
  /** True where light comes through it: trees. */
  readonly passes: boolean;
}

/** Lower than this it is left out [degrees]. */
const least = 1;

/** The skyline at an azimuth where that lies before the front; null where nothing worth drawing stands. */
export function skylineSeen(
  profile: readonly HorizonPoint[],
  azimuth: number,
  front: number,
): SkylineSeen | null {
  const elevation = horizonElevation(profile, azimuth);
  const angle = elevation > 0 ? profileAngle(elevation, azimuth, front) : 0;
  if (!(elevation >= least) || !(angle > 0 && angle < 90)) return null;
  return { elevation, angle, passes: passesAt(profile, azimuth) };
}

/** Whether the point from which the skyline at an azimuth begins lets light through. */
function passesAt(profile: readonly HorizonPoint[], azimuth: number): boolean {
  const behind = (point: HorizonPoint) => (((azimuth - point.azimuth) % 360) + 360) % 360;
  const nearest = profile.reduce((best, point) => (behind(point) < behind(best) ? point : best));
  return (nearest.passes ?? 0) > 0;
}
