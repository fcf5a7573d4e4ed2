import { covering } from '../plan/coverings.ts';
import { minutesOf } from '../plan/fields.ts';
import type { Place } from '../plan/schema.ts';
import { coverTransmittance, dirtLoss } from '../light/index.ts';
import { dayOfMonthDay, within } from './calendar.ts';
import { lyingSnow } from './schedules.ts';
import type { SiteYear } from './site-year.ts';

/** What stands between sun and plants by season and hour, a value a step; null where it never changes. */
export interface PlaceCover {
  readonly groundAlbedo: Float64Array | null;
  readonly shade: Float64Array | null;
  readonly dirt: Float64Array | null;
  readonly sheerDrawn: Uint8Array | null;
}

export function placeCover(place: Place, year: SiteYear): PlaceCover {
  return {
    groundAlbedo: groundAlbedo(year),
    shade: shadeShares(place, year),
    dirt: dirtShares(place, year),
    sheerDrawn: sheerDrawn(place, year),
  };
}

/** Day of a common year (0 = 1 January) of a step. */
const dayOf = (year: SiteYear, k: number): number =>
  Math.floor((year.beginMinutes + k * year.clock.stepMinutes) / 1440) % 365;

/** One value for each day of the year laid out over the steps. */
function byDay(year: SiteYear, valueOf: (day: number) => number): Float64Array {
  const days = Float64Array.from({ length: 365 }, (_, day) => valueOf(day));
  const values = new Float64Array(year.clock.n);
  for (let k = 0; k < values.length; k++) values[k] = days[dayOf(year, k)];
  return values;
}

function shadeShares(place: Place, year: SiteYear): Float64Array | null {
  const { shadeCloth } = place;
  if (shadeCloth === null) return null;
  const [from, to] = [dayOfMonthDay(shadeCloth.from), dayOfMonthDay(shadeCloth.to)];
  const left = coverTransmittance(0, covering(shadeCloth.covering));
  // The last day named is one with the cloth on, so that one day alone can be named.
  return byDay(year, (day) =>
    (from <= to ? day >= from && day <= to : day >= from || day <= to) ? left : 1,
  );
}

function dirtShares(place: Place, year: SiteYear): Float64Array | null {
  if (place.cleanedOn === null) return null;
  const washed = dayOfMonthDay(place.cleanedOn);
  return byDay(year, (day) => dirtLoss((day - washed + 365) % 365, place.dirtShare));
}

function sheerDrawn(place: Place, year: SiteYear): Uint8Array | null {
  const { sheer } = place;
  if (sheer === null) return null;
  const [from, to] = [minutesOf(sheer.from), minutesOf(sheer.to)];
  return Uint8Array.from(year.clock.civil, (minute) => (within(minute, from, to) ? 1 : 0));
}

/** Reflectance of lying snow for sunlight: old 0.65, fresh 0.75 (common albedo tables). */
const snowAlbedo = 0.65;

/** Depth from which snow hides the ground [m] (estimate). */
const hidingDepth = 0.03;

const kept = new WeakMap<SiteYear, Float64Array | null>();

/** Reflectance of the ground in each step: the site's, brightened while snow lies; null where the site has no snow. */
export function groundAlbedo(year: SiteYear): Float64Array | null {
  const found = kept.get(year);
  if (found !== undefined) return found;
  const { albedo } = year.site;
  const brighter = Math.max(0, snowAlbedo - albedo);
  const made = lyingSnow(year)?.map((depth) => albedo + brighter * Math.min(1, depth / hidingDepth)) ?? null;
  kept.set(year, made);
  return made;
}
