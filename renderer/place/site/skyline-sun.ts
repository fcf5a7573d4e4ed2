import { civilOffset, horizonElevation, horizonPasses, solarNoon, sunPosition } from '../../../core/index.ts';
import type { Site } from '../../../core/index.ts';
import type { Skyline } from './skyline.ts';

/** The sun at one moment: azimuth and height as seen through the air [degrees], and minutes after midnight by the clock. */
export interface SunMoment {
  readonly azimuth: number;
  readonly elevation: number;
  readonly minutes: number;
}

/** The sun's way over the site on one day of the year, from rise to set. */
export interface SunWay {
  /** The day, as `12-21`. */
  readonly day: string;
  readonly moments: readonly SunMoment[];
}

/** Any year does: the sun's way on a date differs by less than half a degree from year to year. */
const year = 2025;
const stepMinutes = 4;
const minuteMs = 60_000;

/** The shortest and the longest day and the one between them. */
export const sunDays = ['12-21', '03-21', '06-21'] as const;

/** The day of least sun at the site. */
export const darkestDay = (latitude: number): string => (latitude >= 0 ? '12-21' : '06-21');

export function sunWay(site: Site, day: string): SunWay {
  const noon = solarNoon(Date.parse(`${year}-${day}T12:00:00Z`), site.longitude);
  const offset = civilOffset(noon, site.timeZone);
  const moments: SunMoment[] = [];
  for (let after = -720; after < 720; after += stepMinutes) {
    const at = noon + after * minuteMs;
    const { azimuth, apparentZenith } = sunPosition(at, site);
    const elevation = 90 - apparentZenith;
    if (!(elevation > 0)) continue;
    const minutes = ((((at + offset) / minuteMs) % 1440) + 1440) % 1440;
    moments.push({ azimuth, elevation, minutes });
  }
  return { day, moments };
}

export type Sight = 'clear' | 'through' | 'hidden';

/** Whether the sun is seen: above the skyline, through trees, or not. */
export function sightOf(points: Skyline, { azimuth, elevation }: SunMoment): Sight {
  if (elevation > horizonElevation(points, azimuth)) return 'clear';
  return horizonPasses(points, azimuth) > 0 ? 'through' : 'hidden';
}

/** Hours of one day with the sun over a level horizon, and of these clear of all that stands around, and through trees. */
export interface SunHours {
  readonly all: number;
  readonly clear: number;
  readonly through: number;
}

export function sunHours(points: Skyline, { moments }: SunWay): SunHours {
  const hours = { clear: 0, through: 0, hidden: 0 };
  for (const moment of moments) hours[sightOf(points, moment)] += stepMinutes / 60;
  const { clear, through, hidden } = hours;
  return { all: clear + through + hidden, clear, through };
}

/** The way cut where the sun goes behind something or comes out again; neighbours share the moment between them. */
export function sightings(
  points: Skyline,
  { moments }: SunWay,
): { readonly sight: Sight; readonly moments: readonly SunMoment[] }[] {
  const parts: { sight: Sight; moments: SunMoment[] }[] = [];
  for (const [index, moment] of moments.entries()) {
    const sight = sightOf(points, moment);
    const last = parts.at(-1);
    if (last?.sight === sight) last.moments.push(moment);
    else parts.push({ sight, moments: index > 0 ? [moments[index - 1], moment] : [moment] });
  }
  return parts;
}

/** The moments nearest to whole hours of the clock. */
export function wholeHours({ moments }: SunWay): { readonly hour: number; readonly at: SunMoment }[] {
  const found = new Map<number, SunMoment>();
  const off = (moment: SunMoment, hour: number) => Math.abs(moment.minutes - 60 * hour);
  for (const moment of moments) {
    const hour = Math.round(moment.minutes / 60);
    const before = found.get(hour);
    if (off(moment, hour) <= stepMinutes && (!before || off(moment, hour) < off(before, hour)))
      found.set(hour, moment);
  }
  return [...found].map(([hour, at]) => ({ hour: hour % 24, at }));
}
