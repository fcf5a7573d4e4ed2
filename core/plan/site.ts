import * as v from 'valibot';
import { azimuth, monthDay, quantity, words } from './fields.ts';

/** True where the JavaScript runtime knows the IANA time zone. */
function knownTimeZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

/**
 * One point of the skyline seen from the place: obstruction `elevation` at `azimuth` [degrees], and the share of
 * light that comes through what stands there from this point to the next (0 a wall, 0.5 bare trees).
 */
export const horizonPointSchema = v.strictObject({
  azimuth,
  elevation: quantity(0, 89, 'degrees'),
  passes: v.optional(quantity(0, 1, ''), 0),
});

/** The ground the places stand on: position, height, civil time and what differs from the weather station. */
export const siteSchema = v.strictObject({
  name: words(),
  latitude: quantity(-90, 90, 'degrees north'),
  longitude: quantity(-180, 180, 'degrees east'),
  elevation: quantity(-430, 6000, 'm'),
  timeZone: v.pipe(words(64), v.check(knownTimeZone, 'expected an IANA time zone such as Europe/Dublin')),
  /** How much colder than the station the garden is on a clear still night [K]. */
  frostHollow: v.optional(quantity(-5, 10, 'K'), 0),
  /** Reflectance of the ground around for sunlight, 0–1. */
  albedo: v.optional(quantity(0, 1, ''), 0.2),
  /** Wind at the place as a share of the station's 10 m wind: 1 open, 0.5 among houses and hedges. */
  windShare: v.optional(quantity(0, 1.5, ''), 0.5),
  /** Snow that lies in a usual winter: its depth [m] and from when to when; null where none lies. */
  snow: v.optional(
    v.nullable(v.strictObject({ depth: quantity(0.01, 2, 'm'), from: monthDay, to: monthDay })),
    null,
  ),
  horizon: v.optional(v.pipe(v.array(horizonPointSchema), v.maxLength(72)), []),
});

/** Position and civil time only: what sun calculations need. */
export interface Site {
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation: number;
  readonly timeZone: string;
}

export type PlanSite = v.InferOutput<typeof siteSchema>;
