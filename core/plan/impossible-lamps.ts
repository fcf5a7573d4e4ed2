import type { Extent } from './extent.ts';
import { mostHeight } from './extent.ts';
import type { Lamp } from './lamp.ts';
import type { Problem } from './problem.ts';
import { over, shown } from './problem.ts';
import type { Place } from './schema.ts';

/** Lamps hang inside a closed place; over a shelf and a sill they may hang from the room's ceiling, and beside it. */
export function lampProblems({ lamps, shape, upperShelf }: Place, extent: Extent): Problem[] {
  if (shape.kind === 'shelf' || shape.kind === 'window-bay') return [];
  return lamps.flatMap((lamp, index) => {
    const raised = lamp.shelf === 'upper' && upperShelf !== null ? upperShelf.height + upperShelf.plants : 0;
    const found = [...heightProblems(lamp, raised, mostHeight(extent)), ...asideProblems(lamp, extent)];
    return found.map((each) => ({ ...each, path: `lamps.${index}.${each.path}` }));
  });
}

function heightProblems({ height }: Lamp, raised: number, most: number): Problem[] {
  if (!over(raised + height, most)) return [];
  const where = raised === 0 ? 'the plants' : `those of the upper shelf, which reach ${shown(raised)} m`;
  const message = `expected a lamp inside the place, at most ${shown(Math.max(0, most - raised))} m over ${where}, got ${shown(height)} m`;
  return [{ path: 'height', message }];
}

function asideProblems({ along, across }: Lamp, { length, width }: Extent): Problem[] {
  const off = (path: string, value: number, side: number | null): Problem[] => {
    if (side === null || !over(Math.abs(value), side / 2)) return [];
    const message = `expected a lamp inside the place, at most ${shown(side / 2)} m off the middle, got ${shown(value)} m`;
    return [{ path, message }];
  };
  return [...off('along', along, length), ...off('across', across, width)];
}
