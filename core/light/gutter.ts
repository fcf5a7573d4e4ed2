import type { Place } from '../plan/schema.ts';
import type { Polygon, Surface } from '../fabric/index.ts';
import { cutAtLevel } from '../fabric/index.ts';

/**
 * The part of a surface no gutter lies over; null for a surface listed by hand, empty where nothing is left. A gutter
 * runs along the eaves over the roof and the side under it, half its width on either, measured along them.
 */
export function besideGutter(
  { polygon, part, normal }: Surface,
  { shape, gutter }: Pick<Place, 'shape' | 'gutter'>,
): Polygon | null {
  if (gutter === null || polygon === null) return polygon;
  if (shape.kind !== 'even-span' && shape.kind !== 'lean-to') return polygon;
  const half = gutter / 2;
  const steepness = Math.sqrt(1 - normal[2] ** 2);
  if (part === 'roof') return cutAtLevel(polygon, shape.eavesHeight + half * steepness, 1);
  return part === 'side' ? cutAtLevel(polygon, shape.eavesHeight - half, -1) : polygon;
}
