import type { Place, Section } from '../../../core/index.ts';
import { innerRange } from './geometry.ts';
import type { Stretch } from './standing.ts';

/** The upper shelf as it stands in the section [m]: its boards, and the tops of its plants over the floor. */
export interface ShelfPlaced extends Stretch {
  readonly z: number;
  readonly top: number;
}

/** Boards over the plants' tops, as wide and on the side the plan says, within the cover at their height. */
export function shelfOf(place: Place, section: Section, plantTop: number): ShelfPlaced | null {
  const { upperShelf } = place;
  if (upperShelf === null) return null;
  const z = Math.min(plantTop + upperShelf.height, 0.92 * section.height);
  const inner = innerRange(section, z);
  const wide = Math.min(upperShelf.width, inner.to - inner.from);
  const from = {
    middle: (section.width - wide) / 2,
    front: inner.from,
    back: inner.to - wide,
  }[upperShelf.side];
  const start = Math.min(Math.max(from, inner.from), inner.to - wide);
  return { from: start, to: start + wide, z, top: Math.min(z + upperShelf.plants, 0.97 * section.height) };
}
