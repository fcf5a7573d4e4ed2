import type { Lamp } from '../plan/lamp.ts';
import type { Place } from '../plan/schema.ts';
import type { FieldLevel } from '../light/index.ts';
import { lampLight } from '../light/index.ts';

export function placeField(
  place: Place,
  options: { readonly lamps?: readonly Lamp[] } = {},
): { levels: FieldLevel[]; average: number } {
  const fields = (options.lamps ?? place.lamps).map((lamp) => lampLight(place, lamp));
  const map = fields.length === 0 ? new Float64Array(1) : new Float64Array(fields[0].map.length);
  for (const field of fields) for (let i = 0; i < map.length; i++) map[i] += field.map[i];
  const average = fields.reduce((sum, field) => sum + field.average, 0);
  const least = map.reduce((a, b) => Math.min(a, b), Infinity);
  const side = Math.sqrt(place.growingArea);
  return {
    average,
    levels: [
      {
        shelf: 'lower',
        height: 0,
        area: place.growingArea,
        length: fields[0]?.target.length ?? side,
        width: fields[0]?.target.width ?? side,
        along: 0,
        across: 0,
        average,
        least,
        most: map.reduce((a, b) => Math.max(a, b), 0),
        evenness: average > 0 ? least / average : 0,
        map,
        columns: fields[0]?.columns ?? 1,
        rows: fields[0]?.rows ?? 1,
      },
    ],
  };
}
