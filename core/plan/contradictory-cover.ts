import type { Problem } from './problem.ts';
import { shown } from './problem.ts';
import type { Place } from './schema.ts';

/** A gutter lies along the eaves of a house, and on a lean-to's front; half of it covers the roof, half the side. */
export function coverContradictions({ gutter, shape }: Place): Problem[] {
  if (gutter === null) return [];
  if (shape.kind !== 'even-span' && shape.kind !== 'lean-to') {
    const message =
      'expected a gutter only along the eaves of a house or lean-to, got one on a place without eaves';
    return [{ path: 'gutter', message }];
  }
  const { width, eavesHeight, ridgeHeight } = shape;
  const level = shape.kind === 'even-span' ? width / 2 : width;
  const most = 2 * Math.min(eavesHeight, Math.hypot(level, ridgeHeight - eavesHeight));
  if (gutter < most) return [];
  const message = `expected a gutter that leaves something of roof and sides, less than ${shown(most)} m wide, got ${shown(gutter)} m`;
  return [{ path: 'gutter', message }];
}
