import type { Covering, CoveringUse } from './covering.ts';
import { additions, open } from './coverings-additions.ts';
import { cloths } from './coverings-cloths.ts';
import { films } from './coverings-films.ts';
import { glazings } from './coverings-glazing.ts';
import { walls } from './coverings-walls.ts';

/** Every covering the catalogue knows, each number with its source. */
export const coverings: readonly Covering[] = [
  ...glazings,
  ...films,
  ...additions,
  ...cloths,
  ...walls,
  open,
];

const byId: ReadonlyMap<string, Covering> = new Map(coverings.map((entry) => [entry.id, entry]));

/** The covering of an id; an id the catalogue does not know is wrong use (the plan was checked before). */
export function covering(id: string): Covering {
  const found = byId.get(id);
  if (found === undefined) throw new Error(`expected a covering of the catalogue, got ${id}`);
  return found;
}

/** True where the catalogue holds the id. */
export function isCovering(id: string): boolean {
  return byId.has(id);
}

/** Coverings put to any of the uses, in the catalogue's order. */
export function coveringsFor(...uses: readonly CoveringUse[]): readonly Covering[] {
  return coverings.filter((entry) => uses.includes(entry.use));
}

export type { Confidence, Covering, CoveringUse, Figure, Optics } from './covering.ts';
