import type { Place } from '../plan/schema.ts';
import type { Point, Surface } from '../fabric/index.ts';
import { toPlace } from '../fabric/index.ts';
import type { TransmittanceCurve } from './curve.ts';
import { onCurve } from './curve.ts';

/**
 * Bars that run up the slope of a pane and stand proud of it, as thin slats: light aslant to them loses, of the clear
 * width between two, depth × tangent of its angle to the pane's normal in the plane across the bars, down to nothing
 * (derived). The bars' own width is in `frameShare`; what they throw back is left out, which errs to the dark side.
 */
export interface Bars {
  /** Depth of a bar over the clear width between two of them. */
  readonly depth: number;
  /** Level unit vector across the bars: in the place's frame, and towards east, north, up. */
  readonly across: Point;
  readonly acrossWorld: Point;
}

/** Depth of a place's bars over the clear width between them; null where they lie flat. */
export function barDepth({ bars, frameShare }: Pick<Place, 'bars' | 'frameShare'>): number | null {
  return bars === null ? null : bars.depth / (bars.spacing * (1 - frameShare));
}

/** The bars on a surface: up its slope, and from front to back where it lies level. */
export function barsOn(
  place: Pick<Place, 'bars' | 'frameShare'>,
  surface: Surface,
  front: number,
): Bars | null {
  const depth = barDepth(place);
  if (depth === null) return null;
  const azimuth = (surface.normal[2] > 1 - 1e-9 ? front : surface.azimuth) * (Math.PI / 180);
  const acrossWorld: Point = [Math.cos(azimuth), -Math.sin(azimuth), 0];
  return { depth, acrossWorld, across: toPlace(acrossWorld, front) };
}

/** Share of light left between the bars when it lies `side` across them and `cosine` along the pane's normal, 0–1. */
export function pastBars(depth: number, side: number, cosine: number): number {
  const shaded = depth * Math.abs(side);
  return shaded < cosine ? 1 - shaded / cosine : 0;
}

const dot = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** The same for light from `toSun` (unit vector in the place's frame); 1 without bars. */
export const pastBarsFrom = (bars: Bars | null, toSun: Point, cosine: number): number =>
  bars === null ? 1 : pastBars(bars.depth, dot(bars.across, toSun), cosine);

/**
 * Mean of that share round the normal at an angle of tangent `tangent` to it: ∫ max(0, 1 − q |sin φ|) dφ ÷ 2π with
 * q = depth × tangent; 1 − 2q/π up to q = 1 (derived).
 */
function meanRound(depth: number, tangent: number): number {
  const q = depth * tangent;
  if (q <= 1) return 1 - (2 * q) / Math.PI;
  const clear = Math.asin(1 / q);
  return (2 / Math.PI) * (clear - q * (1 - Math.cos(clear)));
}

/** Steps of the integral over the angle; 360 of them agree with the crossed strings of black slats to 1e-5. */
const steps = 360;

/** The curve of a cover behind bars: by angle as before, for an even sky what is left between the bars. */
export function behindBars(curve: TransmittanceCurve, depth: number | null): TransmittanceCurve {
  if (depth === null) return curve;
  let passed = 0;
  let whole = 0;
  for (let i = 0; i < steps; i++) {
    const angle = ((i + 0.5) * Math.PI) / 2 / steps;
    const through = onCurve(curve, Math.cos(angle)) * Math.sin(2 * angle);
    whole += through;
    passed += through * meanRound(depth, Math.tan(angle));
  }
  return { table: curve.table, diffuse: whole > 0 ? (curve.diffuse * passed) / whole : 0 };
}
