import type { Lamp } from '../plan/equipment.ts';
import type { Place } from '../plan/schema.ts';
import { placeField } from './field-all.ts';
import type { LampField } from './lamp-field.ts';

export { lampPhotons, lampWatts, lightLeft } from './lamp-emission.ts';

/**
 * Light of one lamp entry on a place's growing area (`placeField`). Where there are two levels of plants, average,
 * least and most are over both and the map is the lower one's.
 */
export function lampLight(place: Place, lamp: Lamp): LampField {
  const field = placeField(place, { lamps: [lamp] });
  const growing = field.levels.filter(({ area }) => area > 0);
  const least = Math.min(...growing.map((level) => level.least));
  const { map, columns, rows, length, width } = field.levels[0];
  return {
    average: field.average,
    least,
    most: Math.max(...growing.map((level) => level.most)),
    evenness: field.average > 0 ? least / field.average : 0,
    utilisation: field.emitted > 0 ? (field.average * place.growingArea) / field.emitted : 0,
    map,
    columns,
    rows,
    target: { length, width },
    emitted: field.emitted,
    absorbed: field.absorbed,
    inWalls: field.inWalls + field.inCeiling,
    lost: field.lost,
    closure: field.closure,
  };
}

const kept = new WeakMap<Lamp, { readonly place: Place; readonly ppfd: number }>();

/** Average photon flux density of a lamp entry on a place's growing area [µmol m⁻² s⁻¹]; kept for the pair of objects. */
export function lampPpfd(place: Place, lamp: Lamp): number {
  const found = kept.get(lamp);
  if (found !== undefined && found.place === place) return found.ppfd;
  const ppfd = lampLight(place, lamp).average;
  kept.set(lamp, { place, ppfd });
  return ppfd;
}
