import type { Place } from '../plan/schema.ts';
import type { ShapeOf } from '../plan/shapes.ts';
import { cornerFactor } from './rectangles.ts';

/** The window bay of a place; anything else is wrong use. */
export function windowBayOf(place: Pick<Place, 'shape'>): ShapeOf<'window-bay'> {
  if (place.shape.kind !== 'window-bay') throw new Error(`expected a window bay, got ${place.shape.kind}`);
  return place.shape;
}

/**
 * Configuration factor of an upright rectangle for a level point at the height of its foot, `distance` before the
 * middle of it [m]: F = (1/π)·[atan(w/d) − (d/s)·atan(w/s)], s = √(d² + h²), w half the width (Howell, Catalog of
 * Radiation Heat Transfer Configuration Factors, plane element at right angles to a rectangle; derived again).
 */
export function uprightFactor(width: number, height: number, distance: number): number {
  if (!(distance >= 0)) throw new Error(`expected a distance of 0 or more, got ${distance}`);
  const half = width / 2;
  const slant = Math.hypot(distance, height);
  return (Math.atan2(half, distance) - (distance / slant) * Math.atan(half / slant)) / Math.PI;
}

/**
 * Mean of that factor over a level strip as wide as the rectangle, `from` to `to` before it [m], by reciprocity from
 * the factor of two rectangles at right angles (C-14).
 */
export function stripFactor(width: number, height: number, from: number, to: number): number {
  if (!(to > from && from >= 0))
    throw new Error(`expected a strip from 0 or more to more, got ${from} to ${to}`);
  const upTo = (depth: number) => (depth > 0 ? cornerFactor(height, depth, width) : 0);
  return (height * (upTo(to) - upTo(from))) / (to - from);
}

/**
 * Share of an even sky's light on the level that a point on the sill has, `distance` behind the middle of the pane
 * [m], nothing in the frame. The wall's outer opening, `reveal` further off and of the pane's size, is what bounds it.
 */
export function windowSkyFactor(place: Pick<Place, 'shape'>, distance: number): number {
  const { width, height, reveal } = windowBayOf(place);
  return uprightFactor(width, height, distance + reveal);
}

/** The same averaged over a strip of the sill `from` to `to` behind the pane [m], as wide as the pane. */
export function windowStripFactor(place: Pick<Place, 'shape'>, from: number, to: number): number {
  const { width, height, reveal } = windowBayOf(place);
  return stripFactor(width, height, from + reveal, to + reveal);
}
