import { solarNoon, sunPosition } from '../../core/index.ts';
import type { PlanSite, SeasonResult } from '../../core/index.ts';

const dayMs = 86_400_000;

export interface NoonSun {
  /** Height over the horizon and azimuth clockwise from north [degrees]. */
  readonly elevation: number;
  readonly azimuth: number;
}

/** The sun at its highest on a day of the season. */
export function noonSun(site: PlanSite, season: SeasonResult, day: number): NoonSun {
  const noonMs = solarNoon(season.startMs + (day + 0.5) * dayMs, site.longitude);
  const sun = sunPosition(noonMs, site);
  return { elevation: 90 - sun.apparentZenith, azimuth: sun.azimuth };
}
