import type { ShapeOf } from '../plan/shapes.ts';
import { cornerFactor, parallelFactor } from './rectangles.ts';
import { stripFactor } from './window-factor.ts';

/** Reflectance of a reveal's sides for light, 0–1: painted a light colour, weathered (common practice, no source). */
export const revealReflectance = 0.5;

/** What the sides of a reveal throw of light that falls on the wall's outer opening [W m⁻² of it], by configuration factors. */
export interface RevealBounce {
  /** Share of even light thrown on to the pane, and on to the plants' level [W m⁻² there] by the two upright sides. */
  readonly pane: number;
  readonly plants: number;
  /** Light of the ground [W m⁻² of a plane that sees only ground] thrown on to the plants' level by the lintel. */
  readonly lintel: number;
}

type Bay = ShapeOf<'window-bay'>;

/** A·F between a level strip `near` to `far` before a side wall's foot and the wall's strip `from` to `to` before the same line, by shape-factor algebra. */
function sideExchange({ width, height }: Bay, near: number, far: number, from: number, to: number): number {
  // Light from the floor over a length L to a wall of the same length: A·F of two rectangles at right angles (C-14).
  const along = (length: number) => (length > 0 ? height * length * cornerFactor(height, width, length) : 0);
  return (along(to + far) - along(from + far) - along(to + near) + along(from + near)) / 2;
}

/** Share of light leaving the plants' level that meets one upright side of the reveal between two depths before the pane [m]. */
const plantsToSide = (bay: Bay, from: number, to: number): number =>
  sideExchange(bay, bay.distance, bay.depth, from, to) / (bay.width * (bay.depth - bay.distance));

/** First bounce of even light: each side has its factor of the opening's light and throws it back by its factors. */
export function revealBounce(bay: Bay): RevealBounce {
  const { width, height, reveal, distance, depth } = bay;
  // To the pane and, the same turned round, to the outer opening.
  const upright = stripFactor(height, width, 0, reveal);
  const level = stripFactor(width, height, 0, reveal);
  const ofOpening = (reveal * 2 * (height * upright ** 2 + width * level ** 2)) / (width * height);
  const plants = { x1: distance, x2: depth, y1: 0, y2: width };
  const lintel = { x1: -reveal, x2: 0, y1: 0, y2: width };
  return {
    pane: revealReflectance * ofOpening,
    plants: revealReflectance * 2 * upright * plantsToSide(bay, 0, reveal),
    lintel: revealReflectance * level * parallelFactor(plants, lintel, height),
  };
}

/**
 * Share of a beam through a rectangle of unit sides that meets the side `shift` is measured towards before the other:
 * shifts are how far a ray moves on its way to the pane, in widths of the opening (derived; with the other's share the
 * whole of what misses the pane).
 */
export function sideShare(shift: number, other: number): number {
  if (shift === 0) return 0;
  if (shift >= other) return shift <= 1 ? shift - (shift * other) / 2 : 1 - other / (2 * shift);
  return other <= 1 ? shift - (shift * other) / 2 : shift / (2 * other);
}

/** What a beam of 1 W m⁻² on the outer opening leaves by one bounce [W m⁻²]: on the pane, and on the plants' level. */
export interface BeamBounce {
  pane: number;
  plants: number;
}

/** Sets `out` for a beam that moves by `side` and `up` [m] on its way from the outer opening to the pane. */
export function beamBounce(bay: Bay, side: number, up: number, out: BeamBounce): void {
  const { width, height, reveal } = bay;
  const [a, b] = [Math.abs(side) / width, Math.abs(up) / height];
  const onSide = sideShare(a, b);
  const onSill = sideShare(b, a);
  // A side is lit from the outer edge in, to where the last ray that can meets it.
  const sideFrom = a > 1 ? reveal * (1 - 1 / a) : 0;
  const sillFrom = b > 1 ? reveal * (1 - 1 / b) : 0;
  out.pane = 0;
  out.plants = 0;
  if (onSide > 0) {
    const lit = height * (reveal - sideFrom);
    out.pane += revealReflectance * onSide * stripFactor(height, width, sideFrom, reveal);
    out.plants += ((revealReflectance * onSide * width * height) / lit) * plantsToSide(bay, sideFrom, reveal);
  }
  if (onSill > 0) out.pane += revealReflectance * onSill * stripFactor(width, height, sillFrom, reveal);
}
