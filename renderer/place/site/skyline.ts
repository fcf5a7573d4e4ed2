import { horizonElevation, horizonPasses } from '../../../core/index.ts';
import type { PlanSite } from '../../../core/index.ts';

/** A point of a skyline: azimuth clockwise from north and height [degrees], and the share of light that passes from it to the next. */
export type SkylinePoint = PlanSite['horizon'][number];
export type Skyline = readonly SkylinePoint[];

/** Most points a plan keeps, closest two may stand and highest one may reach [degrees]. */
export const mostPoints = 72;
const closest = 0.5;
const highest = 89;

/** Points a hand can set: half a degree. */
const halves = (value: number) => Math.round(value * 2) / 2;
const clamped = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));

/** The points clockwise from north. */
export const sorted = (points: Skyline): SkylinePoint[] => [...points].sort((a, b) => a.azimuth - b.azimuth);

/** The skyline with one point moved, kept between its neighbours and within what a plan takes. */
export function moved(points: Skyline, index: number, azimuth: number, elevation: number): SkylinePoint[] {
  const least = index > 0 ? points[index - 1].azimuth + closest : 0;
  const most = index < points.length - 1 ? points[index + 1].azimuth - closest : 360 - closest;
  const at = most < least ? points[index].azimuth : clamped(halves(azimuth), least, most);
  const to = clamped(halves(elevation), 0, highest);
  return points.map((point, i) => (i === index ? { ...point, azimuth: at, elevation: to } : point));
}

const turn = (azimuth: number) => ((azimuth % 360) + 360) % 360;
const onGround = (azimuth: number): SkylinePoint => ({ azimuth: turn(azimuth), elevation: 0, passes: 0 });

/** How far to either side the first point of an open horizon comes down to the ground [degrees]. */
const slope = 15;

/**
 * The skyline with one more point, which passes light as what stood there did, and where it stands; null where
 * there is no room. One point alone would stand so high all round, so the first comes down to either side.
 */
export function added(
  points: Skyline,
  azimuth: number,
  elevation: number,
): { readonly points: SkylinePoint[]; readonly index: number } | null {
  if (points.length >= mostPoints) return null;
  const at = halves(turn(azimuth)) % 360;
  if (points.some((point) => Math.abs(point.azimuth - at) < closest)) return null;
  const point = {
    azimuth: at,
    elevation: clamped(halves(elevation), 0, highest),
    passes: horizonPasses(points, at),
  };
  const feet = points.length > 0 ? [] : [at - slope, at + slope].map((foot) => onGround(foot));
  const after = sorted([...points, point, ...feet]);
  return { points: after, index: after.indexOf(point) };
}

/**
 * What may be put in at once: its half width and height [degrees] and the light it lets through. A house 10 m wide
 * and 5 m over the plants, trees 7 m wide and 7 m over them, 20 m away (derived); bare crowns pass 0.4 to 0.8 of the
 * sun (from memory). All are there to be changed.
 */
export const things = {
  house: { words: 'a house', half: 14, elevation: 14, shoulder: 1, passes: 0 },
  trees: { words: 'trees', half: 10, elevation: 20, shoulder: 4, passes: 0.5 },
} as const;

export type ThingKind = keyof typeof things;

/** The skyline with a house or trees put before what stands there, in the middle at an azimuth; null where there is no room. */
export function withThing(points: Skyline, kind: ThingKind, middle: number): SkylinePoint[] | null {
  const { half, elevation, shoulder, passes } = things[kind];
  const within = (azimuth: number) => turn(azimuth - middle + half) <= 2 * half;
  const [left, right] = [turn(middle - half), turn(middle + half)];
  const top = (azimuth: number) => Math.max(elevation, horizonElevation(points, azimuth));
  const shoulders = [left + shoulder, right - shoulder].map(turn);
  const put = [
    { azimuth: left, elevation: horizonElevation(points, left), passes },
    ...shoulders.map((azimuth) => ({ azimuth, elevation: top(azimuth), passes })),
    { azimuth: right, elevation: horizonElevation(points, right), passes: horizonPasses(points, right) },
  ];
  const after = sorted([...points.filter((point) => !within(point.azimuth)), ...put]);
  return after.length > mostPoints ? null : after;
}

/** The way from `middle` to look for room for a thing: the first of a few directions with nothing in it yet. */
export function freeDirection(points: Skyline, kind: ThingKind, middle: number): number {
  const { half } = things[kind];
  const aside = (point: SkylinePoint, azimuth: number) => Math.abs(turn(point.azimuth - azimuth + 180) - 180);
  const free = (azimuth: number) =>
    points.every((point) => aside(point, azimuth) > half) && horizonElevation(points, azimuth) === 0;
  const tries = [0, 30, -30, 60, -60, 90, -90].map((off) => turn(middle + off));
  return tries.find(free) ?? middle;
}

/** A part of the skyline with one share of light passing, as [azimuth, elevation] corners [degrees], azimuth rising past 360. */
export interface Stretch {
  readonly passes: number;
  readonly corners: readonly (readonly [azimuth: number, elevation: number])[];
}

/** The skyline from an azimuth once round, cut where it passes another share of light. */
export function stretches(points: Skyline, start: number): Stretch[] {
  const turned = sorted(points).map((point) => turn(point.azimuth - start));
  const stops = [...new Set([0, ...turned, 360])].sort((a, b) => a - b);
  return stops.slice(1).flatMap((to, index) => {
    const from = stops[index];
    const heights = [from, to].map((stop) => horizonElevation(points, start + stop));
    if (heights[0] === 0 && heights[1] === 0) return [];
    const passes = horizonPasses(points, start + (from + to) / 2);
    const corners = [from, to].map((stop, i) => [start + stop, heights[i]] as const);
    return [{ passes, corners }];
  });
}

/** Height angle of a thing [degrees] by its height over the plants and its distance [m]. */
export const heightAngle = (height: number, distance: number): number =>
  clamped(halves((Math.atan2(height, distance) * 180) / Math.PI), 0, highest);
