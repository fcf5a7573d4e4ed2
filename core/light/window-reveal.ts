import type { Place } from '../plan/schema.ts';
import type { Point, Polygon } from '../fabric/index.ts';
import { toPlace } from '../fabric/index.ts';
import type { PlaneSeries } from './plane-series.ts';
import { parallelFactor } from './rectangles.ts';
import type { SkySeries } from './sky-series.ts';
import type { BeamBounce } from './window-bounce.ts';
import { beamBounce, revealBounce } from './window-bounce.ts';

/** How far the pane of a place lies behind the wall's outer face [m]; 0 for all but a window bay. */
export const revealOf = ({ shape }: Pick<Place, 'shape'>): number =>
  shape.kind === 'window-bay' ? shape.reveal : 0;

/**
 * The part of an upright pane (at x = 0, outwards −x) that light from `toSun` meets when it comes through an outer
 * opening of the pane's own size `reveal` before it [m]: the opening thrown along the light into the pane's plane and
 * cut with it.
 */
export function litPane(pane: Polygon, reveal: number, toSun: Point): Polygon {
  if (reveal === 0) return pane;
  const along = reveal / -toSun[0];
  if (!(along > 0 && Number.isFinite(along))) return [];
  const ys = pane.map((point) => point[1]);
  const zs = pane.map((point) => point[2]);
  const [y0, y1] = shared(Math.min(...ys), Math.max(...ys), -along * toSun[1]);
  const [z0, z1] = shared(Math.min(...zs), Math.max(...zs), -along * toSun[2]);
  if (!(y1 > y0 && z1 > z0)) return [];
  return [
    [0, y0, z0],
    [0, y1, z0],
    [0, y1, z1],
    [0, y0, z1],
  ];
}

/** What a span has in common with itself moved by `shift`. */
const shared = (low: number, high: number, shift: number): [number, number] =>
  shift > 0 ? [low + shift, high] : [low, high + shift];

/**
 * Light on a pane behind its reveal: the beam on its lit part; sky and ground through the outer opening, and what the
 * sides throw on it of all three at the first bounce. `offSides` is what they throw to the plants, pane not taken off.
 */
export function behindReveal(
  plane: PlaneSeries,
  place: Place,
  sky: SkySeries,
  albedo: number | Float64Array,
): PlaneSeries {
  const { shape } = place;
  if (shape.kind !== 'window-bay' || shape.reveal === 0) return plane;
  const { width, height, reveal, azimuth } = shape;
  const pane = { x1: 0, x2: width, y1: 0, y2: height };
  const even = revealBounce(shape);
  const open = parallelFactor(pane, pane, reveal) + even.pane;
  const beam = new Float64Array(plane.beam.length);
  const diffuse = plane.diffuse.map((value) => value * open);
  const offSides = new Float64Array(beam.length);
  const thrown: BeamBounce = { pane: 0, plants: 0 };
  for (let j = 0; j < beam.length; j++) {
    const ground = sky.global[j] * (typeof albedo === 'number' ? albedo : albedo[sky.index[j]]);
    offSides[j] = plane.diffuse[j] * even.plants + ground * even.lintel;
    const bright = plane.beam[j];
    if (bright === 0) continue;
    const [out, side, up] = toPlace([sky.east[j], sky.north[j], sky.up[j]], azimuth);
    const along = reveal / -out;
    const lit = Math.max(0, width - Math.abs(along * side)) * Math.max(0, height - Math.abs(along * up));
    beam[j] = (bright * lit) / (width * height);
    beamBounce(shape, along * side, along * up, thrown);
    diffuse[j] += bright * thrown.pane;
    offSides[j] += bright * thrown.plants;
  }
  return { cosIncidence: plane.cosIncidence, beam, diffuse, offSides };
}
