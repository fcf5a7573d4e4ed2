import type { Point, Surface } from '../fabric/index.ts';
import type { HorizonPoint } from '../sun/index.ts';
import { pastBars } from './bars.ts';
import { onCurve } from './curve.ts';
import type { DirectionalGain } from './gain.ts';
import { tabledGain } from './gain.ts';
import type { Opening } from './openings.ts';

const dot = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/**
 * Gain of a place whose surfaces are listed without their positions. The surfaces that face a direction make up
 * the outline of a closed convex body seen from there, so the share of the light that comes in, and so falls on
 * the floor, is taken as the transparent part of that outline (an estimate: it cannot know which part shades which).
 */
export function listedGain(
  openings: readonly Opening[],
  surfaces: readonly Surface[],
  horizon: readonly HorizonPoint[],
): DirectionalGain {
  return tabledGain([0, 0, 1], horizon, (world, out) => {
    const facing = ({ normal, area }: Surface) =>
      area * Math.max(0, normal[0] * world[0] + normal[1] * world[1] + normal[2] * world[2]);
    let outline = 0;
    for (const surface of surfaces) outline += facing(surface);
    if (!(outline > 0)) return;
    for (const { surface, bars, solar, par } of openings) {
      const cosine = facing(surface) / surface.area;
      const past = bars === null ? 1 : pastBars(bars.depth, dot(bars.acrossWorld, world), cosine);
      const share = (facing(surface) / outline) * past;
      out.solar += share * onCurve(solar, cosine);
      out.par += share * onCurve(par, cosine);
    }
  });
}
