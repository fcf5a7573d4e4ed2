import { lampLight } from '../../core/index.ts';
import type { LampField, Place } from '../../core/index.ts';

/** The light of all lamps of a place together on its growing area [µmol m⁻² s⁻¹]. */
export interface LightField {
  readonly map: Float64Array;
  readonly columns: number;
  readonly rows: number;
  /** Size of the lit area [m]. */
  readonly length: number;
  readonly width: number;
  readonly average: number;
  readonly least: number;
  readonly most: number;
  readonly evenness: number;
  /** Where the lamps' light ends, shares of what they send out, 0–1. */
  readonly onPlants: number;
  readonly inWalls: number;
  readonly past: number;
}

/** Adds the fields of the lamps; null where there is none. */
export function lightFieldOf(place: Place): LightField | null {
  const fields = place.lamps.map((lamp) => lampLight(place, lamp));
  if (fields.length === 0) return null;
  const { columns, rows, target } = fields[0];
  const map = new Float64Array(columns * rows);
  for (const field of fields) for (let i = 0; i < map.length; i += 1) map[i] += field.map[i];
  const sum = (of: (field: LampField) => number) => fields.reduce((total, field) => total + of(field), 0);
  const average = sum((field) => field.average);
  const least = map.reduce((a, b) => Math.min(a, b), Infinity);
  const emitted = sum((field) => field.emitted);
  const part = (of: (field: LampField) => number) => (emitted > 0 ? sum(of) / emitted : 0);
  return {
    map,
    columns,
    rows,
    length: target.length,
    width: target.width,
    average,
    least,
    most: map.reduce((a, b) => Math.max(a, b), 0),
    evenness: average > 0 ? least / average : 0,
    onPlants: part((field) => field.absorbed),
    inWalls: part((field) => field.inWalls),
    past: part((field) => field.lost),
  };
}

/** Upper end of the light scale shared by all places: the brightest spot rounded up to 50 µmol m⁻² s⁻¹. */
export function scaleTop(fields: readonly (LightField | null)[]): number {
  const most = Math.max(...fields.map((field) => field?.most ?? 0), 1);
  return Math.ceil(most / 50) * 50;
}
