import type { ColumnName } from './raw-table.ts';

/** One field of an EPW data row that is used: its place, what counts as missing, its range, and its unit as we keep it. */
export interface EpwField {
  readonly index: number;
  readonly column: ColumnName;
  readonly words: string;
  /** Values at or above this one mean missing. */
  readonly missingFrom: number;
  readonly least: number;
  readonly most: number;
  /** Factor from the file's unit to ours. */
  readonly scale: number;
}

/**
 * The data dictionary of EnergyPlus weather files (EnergyPlus Auxiliary Programs, "EnergyPlus Weather File (EPW) Data
 * Dictionary"): field numbers counted from 0, missing codes, limits. Total sky cover (22) stands in where opaque (23) is missing.
 */
export const epwFields: readonly EpwField[] = [
  {
    index: 6,
    column: 'dryBulb',
    words: 'dry-bulb temperature',
    missingFrom: 99.9,
    least: -90,
    most: 70,
    scale: 1,
  },
  { index: 7, column: 'dewPoint', words: 'dew point', missingFrom: 99.9, least: -90, most: 70, scale: 1 },
  {
    index: 8,
    column: 'humidity',
    words: 'relative humidity',
    missingFrom: 999,
    least: 0,
    most: 110,
    scale: 0.01,
  },
  {
    index: 9,
    column: 'pressure',
    words: 'pressure',
    missingFrom: 999999,
    least: 31000,
    most: 120000,
    scale: 1,
  },
  {
    index: 12,
    column: 'skyLongWave',
    words: 'horizontal infrared',
    missingFrom: 9999,
    least: 0,
    most: 1000,
    scale: 1,
  },
  {
    index: 13,
    column: 'globalHorizontal',
    words: 'global horizontal radiation',
    missingFrom: 9999,
    least: 0,
    most: 1800,
    scale: 1,
  },
  {
    index: 14,
    column: 'beamNormal',
    words: 'direct normal radiation',
    missingFrom: 9999,
    least: 0,
    most: 1500,
    scale: 1,
  },
  {
    index: 15,
    column: 'diffuseHorizontal',
    words: 'diffuse horizontal radiation',
    missingFrom: 9999,
    least: 0,
    most: 1500,
    scale: 1,
  },
  { index: 21, column: 'windSpeed', words: 'wind speed', missingFrom: 999, least: 0, most: 100, scale: 1 },
  {
    index: 22,
    column: 'cloudCover',
    words: 'total sky cover',
    missingFrom: 99,
    least: 0,
    most: 10,
    scale: 0.1,
  },
  {
    index: 23,
    column: 'cloudCover',
    words: 'opaque sky cover',
    missingFrom: 99,
    least: 0,
    most: 10,
    scale: 0.1,
  },
];

/** Least number of fields a row must have for all of the above to be there. */
export const epwLeastFields = 24;

/** A long-wave below this is no sky on earth and read as missing [W m⁻²]. */
export const leastLongWave = 40;
