import { placeField } from '../../core/index.ts';
import type { FieldLevel, Place, PlaceField } from '../../core/index.ts';

/** Light of a place's lamps on its levels of plants, and where the rest of it ends. */
export interface LightField {
  /** The upper shelf first, as it stands. */
  readonly levels: readonly FieldLevel[];
  /** Where the lamps' light ends, shares of what they send out, 0–1. */
  readonly onPlants: number;
  readonly inWalls: number;
  readonly past: number;
}

const kept = new WeakMap<Place, LightField>();

/** The light of all lamps of a place together; null where there is none. */
export function lightFieldOf(place: Place): LightField | null {
  if (place.lamps.length === 0) return null;
  const found = kept.get(place);
  if (found !== undefined) return found;
  const field = asField(placeField(place));
  kept.set(place, field);
  return field;
}

function asField({ levels, emitted, absorbed, inWalls, inCeiling, lost }: PlaceField): LightField {
  const part = (photons: number) => (emitted > 0 ? photons / emitted : 0);
  return {
    levels: [...levels].reverse(),
    onPlants: part(absorbed),
    inWalls: part(inWalls + inCeiling),
    past: part(lost),
  };
}

/** Upper end of the light scale shared by all places: the brightest spot rounded up to 50 µmol m⁻² s⁻¹. */
export function scaleTop(fields: readonly (LightField | null)[]): number {
  const most = Math.max(...fields.flatMap((field) => field?.levels.map((level) => level.most) ?? []), 1);
  return Math.ceil(most / 50) * 50;
}
