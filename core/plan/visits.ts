import type { Lot } from './schema.ts';

/** True where a lot stands in a place on any day: it begins the season there or is carried there. */
export function visits(lot: Pick<Lot, 'place' | 'moves'>, placeId: string): boolean {
  return lot.place === placeId || lot.moves.some((move) => move.to === placeId);
}
