import { covering, isCovering } from './coverings.ts';
import type { Place } from './schema.ts';

/**
 * True where the sky's light comes in: not in a tent or on a shelf within a room, nor where all that faces the open
 * air is opaque. A covering that nobody knows is refused elsewhere and taken to be clear here.
 */
export function daylightReaches({ shape, covering: id }: Pick<Place, 'shape' | 'covering'>): boolean {
  if (shape.kind === 'tent' || shape.kind === 'shelf') return false;
  if (shape.kind !== 'listed') return isClear(id);
  return shape.surfaces.some(({ behind, build, covering: own }) => {
    if (behind !== 'outdoors') return false;
    return build === null ? own !== null && isClear(own) : build.kind === 'panes';
  });
}

const isClear = (id: string) => !isCovering(id) || covering(id).optics.kind !== 'opaque';
