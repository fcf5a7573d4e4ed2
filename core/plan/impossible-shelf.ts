import type { Extent } from './extent.ts';
import { mostHeight } from './extent.ts';
import type { Problem } from './problem.ts';
import { over, shown } from './problem.ts';
import type { Place } from './schema.ts';

/** An upper shelf that the place does not hold, or that leaves nothing to grow on below it. */
export function upperShelfProblems(place: Place, extent: Extent): Problem[] {
  const { upperShelf, growingArea } = place;
  if (upperShelf === null) return [];
  const problems = [...sizeProblems(upperShelf, extent), ...heightProblems(place, extent)];
  const area = upperShelf.length * upperShelf.width;
  if (!(growingArea > area))
    problems.push({
      path: 'growingArea',
      message: `expected more to grow on than the upper shelf alone (${shown(area)} m²; both count), got ${shown(growingArea)} m²`,
    });
  return problems;
}

function sizeProblems(shelf: NonNullable<Place['upperShelf']>, { length, width, floor }: Extent): Problem[] {
  const longer = (path: 'length' | 'width', what: string, most: number | null): Problem[] => {
    if (!over(shelf[path], most)) return [];
    const message = `expected an upper shelf no ${what} than the place (${shown(most as number)} m), got ${shown(shelf[path])} m`;
    return [{ path: `upperShelf.${path}`, message }];
  };
  const found = [...longer('length', 'longer', length), ...longer('width', 'wider', width)];
  if (length !== null || !over(shelf.length * shelf.width, floor)) return found;
  const message = `expected an upper shelf no larger than the floor (${shown(floor)} m²), got ${shown(shelf.length * shelf.width)} m²`;
  return [...found, { path: 'upperShelf.length', message }];
}

/** In a closed place its plants stay under the top; before a window and on an open shelf only the boards must. */
function heightProblems({ shape, upperShelf }: Place, extent: Extent): Problem[] {
  if (upperShelf === null) return [];
  const { height, plants } = upperShelf;
  const open = shape.kind === 'shelf' || shape.kind === 'window-bay';
  const top = open ? height : height + plants;
  const most = mostHeight(extent);
  if (!over(top, most)) return [];
  const what = open ? 'an upper shelf' : 'an upper shelf whose plants stay';
  const message = `expected ${what} within the height of the place (${shown(most)} m), got ${shown(top)} m`;
  return [{ path: 'upperShelf.height', message }];
}
