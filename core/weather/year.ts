/** Hours of the nominal year every weather year is brought to (2025, no leap day). */
export const hoursOfYear = 8760;

/**
 * A year of hourly outdoor weather. Row `i` is the hour that ends at `startMs + (i + 1)` hours; the year is the
 * nominal 2025 in the station's standard time, whatever years the data come from. Every number is finite.
 */
export interface WeatherYear {
  readonly name: string;
  readonly origin: 'epw' | 'tmy3' | 'normals';
  /** Where the data were measured or made for [degrees north, degrees east, m]. The sun of the data is the sun there. */
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation: number;
  /** Standard time minus UTC [h]. */
  readonly utcOffsetHours: number;
  /** Beginning of the first hour [epoch ms UTC]. */
  readonly startMs: number;
  readonly hours: number;
  /** Air temperature and dew point at the end of the hour [°C]. */
  readonly dryBulb: Float64Array;
  readonly dewPoint: Float64Array;
  /** Wind at 10 m [m s⁻¹] and pressure [Pa] at the end of the hour. */
  readonly windSpeed: Float64Array;
  readonly pressure: Float64Array;
  /** Means over the hour [W m⁻²]: on the horizontal, sun's disc on a plane facing it, sky on the horizontal. */
  readonly globalHorizontal: Float64Array;
  readonly beamNormal: Float64Array;
  readonly diffuseHorizontal: Float64Array;
  /** Share of the sky covered, 0–1. */
  readonly cloudCover: Float64Array;
  /** Long-wave radiation of the sky on the horizontal [W m⁻²]. */
  readonly skyLongWave: Float64Array;
  /** Where each hour's long-wave comes from: 0 the file, 1 computed from dew point and cloud. */
  readonly skyLongWaveFrom: Uint8Array;
  /** How far the middle of the time each radiation value stands for lies from the middle of its hour [min]; 0 in most files. */
  readonly radiationShiftMinutes: number;
  /** What was noticed and done on the way in, in words. */
  readonly notes: readonly string[];
}

/** One thing wrong with a file: `line` counts from 1; 0 means the file as a whole. */
export interface WeatherProblem {
  readonly line: number;
  readonly message: string;
}

export type WeatherReading =
  | { readonly ok: true; readonly weather: WeatherYear }
  | { readonly ok: false; readonly problems: readonly WeatherProblem[] };

/** Beginning of the nominal year at an offset from UTC [epoch ms UTC]. */
export function nominalStart(utcOffsetHours: number): number {
  return Date.UTC(2025, 0, 1) - utcOffsetHours * 3_600_000;
}

/** Days before each month of a year of 365 days, and the year's length at the end. */
export const monthStarts: readonly number[] = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];
