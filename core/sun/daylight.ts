import type { Site } from '../plan/site.ts';
import { localSun, solarCoordinates } from './ephemeris.ts';
import { checkPlace } from './position.ts';
import { halfTurn } from './angle.ts';
import { civilInstant } from './civil.ts';

/** The light part of one civil date. Instants [epoch ms UTC] are null where the sun does not rise or set. */
export interface Daylight {
  readonly sunriseMs: number | null;
  readonly sunsetMs: number | null;
  /** Sunrise to sunset, and dawn to dusk of civil twilight [h]; 24 and 0 in polar day and night. */
  readonly hours: number;
  readonly civilHours: number;
}

/** Elevation of the sun's centre at sunrise (upper limb, usual refraction) and at civil dawn [degrees]. */
export const sunriseElevation = -0.8333;
export const civilElevation = -6;

const halfDay = 43_200_000;

/**
 * Sunrise, sunset and the hours of light of a civil date: the day whose solar noon lies nearest to the middle of
 * that date in the site's time zone. At high latitudes its sunset may fall after midnight and still belongs to it.
 */
export function daylight(dateISO: string, site: Site): Daylight {
  checkPlace(site);
  const transit = solarNoon(civilInstant(dateISO, 720, site.timeZone), site.longitude);
  const day = crossings(transit, site, sunriseElevation);
  const civil = crossings(transit, site, civilElevation);
  return { sunriseMs: day.rise, sunsetMs: day.set, hours: day.hours, civilHours: civil.hours };
}

/** Instant of the sun's transit of the meridian nearest to `nearMs` [epoch ms UTC]. */
export function solarNoon(nearMs: number, longitude: number): number {
  let at = nearMs;
  for (let round = 0; round < 3; round++) {
    const sun = solarCoordinates(at);
    // The hour angle runs 360.9856° of sidereal time a day less the sun's own 0.9856°.
    at -= (halfTurn(sun.siderealTime + longitude - sun.rightAscension) / 360) * 86_400_000;
  }
  return at;
}

interface Crossings {
  readonly rise: number | null;
  readonly set: number | null;
  readonly hours: number;
}

/** When the sun's centre passes an elevation before and after a transit. */
function crossings(transit: number, site: Site, level: number): Crossings {
  if (elevationAt(transit, site) < level) return { rise: null, set: null, hours: 0 };
  const rise = crossing(transit, transit - halfDay, site, level);
  const set = crossing(transit, transit + halfDay, site, level);
  const hours = ((set ?? transit + halfDay) - (rise ?? transit - halfDay)) / 3_600_000;
  return { rise, set, hours };
}

/**
 * When the sun passes a level between an instant above it and one half a day away: false position with the Illinois
 * halving (Dowell & Jarratt 1971), to 0.02 s; null where the sun is above the level there too.
 */
function crossing(above: number, away: number, site: Site, level: number): number | null {
  let [high, low] = [above, away];
  let [over, under] = [elevationAt(high, site) - level, elevationAt(low, site) - level];
  if (under >= 0) return null;
  let kept = 0;
  for (let round = 0; round < 60 && Math.abs(high - low) > 20; round++) {
    const at = low + ((high - low) * under) / (under - over);
    const height = elevationAt(at, site) - level;
    // 1e-6° is passed in a tenth of a millisecond or, grazing near the pole, in a few milliseconds.
    if (Math.abs(height) < 1e-6) return Math.round(at);
    if (height > 0) {
      [high, over] = [at, height];
      if (kept === 1) under /= 2;
      kept = 1;
    } else {
      [low, under] = [at, height];
      if (kept === -1) over /= 2;
      kept = -1;
    }
  }
  return Math.round((high + low) / 2);
}

function elevationAt(epochMs: number, site: Site): number {
  return localSun(solarCoordinates(epochMs), site.latitude, site.longitude).elevation;
}
