import type { Site } from '../plan/site.ts';
import { minutesOf } from '../plan/fields.ts';
import { civilInstant, clearSky, sunPosition } from '../sun/index.ts';
import type { SunPosition } from '../sun/index.ts';
import { photonsPerSolarJoule } from './daily-light.ts';
import type { DaylightReading, SkyState } from './meter-reading.ts';
import { skyStates } from './meter-reading.ts';
import { slab } from './slab.ts';

const radians = Math.PI / 180;

/** A common year; the sun of any other stands within 0.4° of it. */
const year = 2025;
const daysBefore = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

/** ISO date of a day of a common year, 0 for 1 January or `MM-DD` (29 February counts as 1 March). */
export function isoDay(day: number | string): string {
  if (typeof day === 'string') {
    if (!/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(day))
      throw new Error(`expected a day as MM-DD, got ${day}`);
    return `${year}-${day === '02-29' ? '03-01' : day}`;
  }
  if (!(Number.isInteger(day) && day >= 0 && day <= 364))
    throw new Error(`expected a day 0 to 364, got ${day}`);
  const month = daysBefore.findIndex((before) => before > day) - 1;
  const two = (value: number) => String(value).padStart(2, '0');
  return `${year}-${two(month + 1)}-${two(day - daysBefore[month] + 1)}`;
}

/**
 * Share of the clear sky's light that comes through clouds with the sun in and out: six eighths of cover let
 * 1 − 0.75 × 0.75³·⁴ = 0.72 through (Kasten & Czeplak 1980).
 */
const brokenShare = 0.72;

/**
 * Light of a sky all overcast on the level [lux]: 300 + 21,000 × sine of the sun's elevation (Krochmann & Seidl 1974,
 * from memory); grey cloud light has about 52 lux for a micromole (between blue sky 52 and sun and sky 54, Thimijan &
 * Heins 1983).
 */
function overcastPhotons(sine: number): number {
  return sine > 0 ? (300 + 21000 * sine) / 52 : 0;
}

/** Photon flux density outdoors, or at a window by its shape alone [µmol m⁻² s⁻¹], under a sky at an instant. */
export type SkyPhotons = (sun: SunPosition, sky: SkyState) => number;

/** Level open ground: clear by the model of the clear sky, broken as a share of it, overcast by the sun's elevation. */
export function openSky(site: Site): SkyPhotons {
  return (sun, sky) => {
    const sine = Math.cos(sun.apparentZenith * radians);
    if (sky === 'overcast') return overcastPhotons(sine);
    const clear = photonsPerSolarJoule * clearSky(sun, site).globalHorizontal;
    return sky === 'clear' ? clear : brokenShare * clear;
  };
}

/** Share of the sky's light a level spot on a sill sees: half of it, most of that low and oblique (estimate, no source). */
const sillSky = 0.35;

/** Beyond this angle from square on, the reveal takes the beam [degrees] (common practice, no source). */
const revealAngle = 75;

/**
 * A level spot on the sill of a window facing an azimuth: the beam while the sun stands before the pane, through
 * clear glass, and a share of the sky's light. Good for the shape of the day and the ratio of skies.
 */
export function sillSkyOf(site: Site, facing: number): SkyPhotons {
  if (!(facing >= 0 && facing <= 360))
    throw new Error(`expected a facing of 0 to 360 degrees, got ${facing}`);
  const pane = (cosine: number) => slab(cosine, 1.526, 10, 0.004, 1).transmittance;
  return (sun, sky) => {
    if (sky === 'overcast') return sillSky * overcastPhotons(Math.cos(sun.apparentZenith * radians));
    const light = clearSky(sun, site);
    const cosine = Math.sin(sun.apparentZenith * radians) * Math.cos((sun.azimuth - facing) * radians);
    const before = Math.cos((sun.azimuth - facing) * radians) > Math.cos(revealAngle * radians);
    const beam =
      before && cosine > 0 ? pane(cosine) * light.beamNormal * Math.cos(sun.apparentZenith * radians) : 0;
    const share = sky === 'clear' ? 1 : brokenShare;
    return photonsPerSolarJoule * share * (Math.max(0, beam) + sillSky * light.diffuseHorizontal);
  };
}

/** A day of light at a spot: at the hour of the reading, and summed, under each sky. */
export interface SkyDay {
  /** Apparent elevation of the sun at the hour, and its highest of the day [degrees]. */
  readonly elevation: number;
  readonly highest: number;
  /** Photon flux density at the hour [µmol m⁻² s⁻¹] and the day's sum [mol m⁻²], by sky. */
  readonly now: Readonly<Record<SkyState, number>>;
  readonly sum: Readonly<Record<SkyState, number>>;
}

/** Steps of the day's sum [min]. */
const step = 5;

/** The day of a reading under each sky, from civil midnight to midnight. */
export function skyDay(reading: DaylightReading, site: Site, photons: SkyPhotons): SkyDay {
  if (!/^([01]\d|2[0-3]):[0-5]\d$/.test(reading.time)) {
    throw new Error(`expected a time as HH:MM from 00:00 to 23:59, got ${reading.time}`);
  }
  const midnight = civilInstant(isoDay(reading.day), 0, site.timeZone);
  const at = sunPosition(civilInstant(isoDay(reading.day), minutesOf(reading.time), site.timeZone), site);
  const sum = { clear: 0, broken: 0, overcast: 0 };
  let highest = -90;
  for (let minute = step / 2; minute < 1440; minute += step) {
    const sun = sunPosition(midnight + minute * 60_000, site);
    highest = Math.max(highest, 90 - sun.apparentZenith);
    if (sun.apparentZenith >= 90) continue;
    for (const sky of skyStates) sum[sky] += (photons(sun, sky) * step * 60) / 1e6;
  }
  const now = {
    clear: photons(at, 'clear'),
    broken: photons(at, 'broken'),
    overcast: photons(at, 'overcast'),
  };
  return { elevation: 90 - at.apparentZenith, highest, now, sum };
}
