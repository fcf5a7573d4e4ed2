import type { Site } from '../plan/site.ts';
import { normalsOfYear } from './file-normals.ts';
import { weatherFromNormals } from './from-normals.ts';
import type { ClimateNormals } from './normals.ts';
import type { WeatherYear } from './year.ts';

/** Years of one climate to try a plan in. */
export interface Winters {
  /** Where they come from, in words. */
  readonly origin: string;
  /** How many there are; null where any number can be drawn. */
  readonly count: number | null;
  /** Year `index`; 0 is the one the sheet shows. The same index gives the same year. */
  winter(index: number): WeatherYear;
}

/** Typed normals with the seed of the year that is shown. */
export type SeededNormals = ClimateNormals & { readonly seed: number };

/** Seeds run from 0 to this. */
const seeds = 2 ** 31;

/**
 * The years a climate brings: the one shown first, then years drawn from the typed normals, or from the months of the
 * file where `climate` is null. What is shown keeps near the normals; the others differ from year to year.
 */
export function wintersOf(climate: SeededNormals | null, weather: WeatherYear, site: Site): Winters {
  if (climate !== null) {
    return drawn('drawn from the climate', weather, (index) =>
      weatherFromNormals(climate, site, (climate.seed + index) % seeds, 'many'),
    );
  }
  const normals = normalsOfYear(weather);
  const { latitude, longitude, elevation, utcOffsetHours } = weather;
  const there = { latitude, longitude, elevation, timeZone: fixedZone(utcOffsetHours) };
  return drawn('drawn from the months of the file', weather, (index) => ({
    ...weatherFromNormals(normals, there, index, 'many'),
    name: `${weather.name}, winter ${index}`,
    // The site of a plan follows a file from far off, and so it must the years drawn from it.
    origin: weather.origin,
  }));
}

function drawn(origin: string, shown: WeatherYear, draw: (index: number) => WeatherYear): Winters {
  return {
    origin,
    count: null,
    winter(index) {
      if (!(Number.isInteger(index) && index >= 0)) {
        throw new RangeError(`expected a winter from 0 on, got ${index}`);
      }
      return index === 0 ? shown : draw(index);
    },
  };
}

/** A fixed offset as the runtime names it, such as `+05:30`. */
function fixedZone(offsetHours: number): string {
  const minutes = Math.round(Math.abs(offsetHours) * 60);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${offsetHours < 0 ? '-' : '+'}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}
