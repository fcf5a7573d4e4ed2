import { solarNoon, sunClearsHorizon, sunPosition } from '../../core/index.ts';
import type { Place, PlanSite, SeasonResult } from '../../core/index.ts';

const dayMs = 86_400_000;

export interface NoonSun {
  /** Height over the horizon and azimuth clockwise from north [degrees]. */
  readonly elevation: number;
  readonly azimuth: number;
  /** True where it stands over what is around the place. */
  readonly clear: boolean;
}

/** The sun at its highest on a day of the season, seen from a place. */
export function noonSun(place: Place, site: PlanSite, season: SeasonResult, day: number): NoonSun {
  const noonMs = solarNoon(season.startMs + (day + 0.5) * dayMs, site.longitude);
  const sun = sunPosition(noonMs, site);
  const elevation = 90 - sun.apparentZenith;
  const clear = sunClearsHorizon(place.horizon ?? site.horizon, elevation, sun.azimuth);
  return { elevation, azimuth: sun.azimuth, clear };
}
