import type { Place } from '../plan/schema.ts';

/** Usual height of a bench [m] and its most as a share of the eaves (common practice, no source). */
const usualBench = 0.7;
const mostOfEaves = 0.5;

/**
 * Height of the plants' level over the floor [m]. In a house a bench stands at the base wall's height where
 * there is one, else at 0.7 m; in a low tunnel or frame, and indoors, plants stand on the floor of the place.
 */
export function plantLevel(place: Place): number {
  const { shape, baseWall } = place;
  if (place.standing === 'ground') return 0;
  switch (shape.kind) {
    case 'even-span':
    case 'lean-to':
      return Math.min(
        Math.max(baseWall?.height ?? 0, usualBench),
        Math.max(mostOfEaves * shape.eavesHeight, baseWall?.height ?? 0),
        shape.eavesHeight * 0.9,
      );
    case 'tunnel':
      return shape.height > 1.5 || place.standing === 'bench' ? Math.min(usualBench, 0.3 * shape.height) : 0;
    default:
      return 0;
  }
}
