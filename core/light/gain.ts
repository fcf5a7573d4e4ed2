import type { Point, Polygon } from '../fabric/index.ts';
import { cutAtLevel, toPlace, toWorld } from '../fabric/index.ts';
import { pastBarsFrom } from './bars.ts';
import { onCurve } from './curve.ts';
import type { Opening } from './openings.ts';
import type { Receiver } from './shadow.ts';
import { litArea, shadedArea } from './shadow.ts';
import { hiddenPart, horizonElevation, horizonPasses } from '../sun/index.ts';
import type { HorizonPoint } from '../sun/index.ts';
import { litPane } from './window-reveal.ts';

/** Directions of the table: every 6° of azimuth, every 3° of elevation. */
const azimuths = 60;
const elevations = 31;
const rowHeight = 3;
const degree = Math.PI / 180;
const elevationOf = (row: number) => (row === 0 ? 0.5 : Math.min(rowHeight * row, 89.99)) * degree;

/**
 * How much of the light from each direction of the sky reaches a receiver, averaged over it: Σ over openings
 * of (share of the receiver their light falls on) × transmittance at that angle. Rays are followed straight;
 * a convex place has no other way in, and what misses the receiver goes on through the far side, as it does
 * in truth.
 */
export interface DirectionalGain {
  readonly solar: Float64Array;
  readonly par: Float64Array;
  /** The same averaged over an even sky, weighted with the cosine to the receiver. */
  readonly skySolar: number;
  readonly skyPar: number;
}

/** Light of one direction that reaches a receiver: the lit share times the transmittance in each band. */
export interface Reached {
  solar: number;
  par: number;
}

/** What stands between openings and a receiver: boards over it, and a level under which it sees no opening. */
export interface Between {
  readonly boards?: Polygon;
  readonly above?: number;
}

/** Tables the gain of a receiver under a skyline. */
export function directionalGain(
  receiver: Receiver,
  openings: readonly Opening[],
  front: number,
  horizon: readonly HorizonPoint[],
  { boards, above }: Between = {},
): DirectionalGain {
  const reached = (world: Point, out: Reached) => {
    const toSun = toPlace(world, front);
    for (const { polygon, normal, reveal, bars, solar, par } of openings) {
      const cosine = normal[0] * toSun[0] + normal[1] * toSun[1] + normal[2] * toSun[2];
      if (!(cosine > 0) || polygon === null || polygon.length === 0) continue;
      const pane = reveal > 0 ? litPane(polygon, reveal, toSun) : polygon;
      const lit = above === undefined ? pane : cutAtLevel(pane, above, 1);
      if (lit.length === 0) continue;
      const shaded = boards === undefined ? 0 : shadedArea(receiver, boards, lit, toSun);
      const area = Math.max(0, litArea(receiver, lit, toSun) - shaded);
      const share = (area / receiver.area) * pastBarsFrom(bars, toSun, cosine);
      out.solar += share * onCurve(solar, cosine);
      out.par += share * onCurve(par, cosine);
    }
  };
  return tabledGain(toWorld(receiver.normal, front), horizon, reached);
}

/** Walks the hemisphere: tables what is reached from each direction and averages it over an even sky past the skyline. */
export function tabledGain(
  normal: Point,
  horizon: readonly HorizonPoint[],
  reached: (world: Point, out: Reached) => void,
): DirectionalGain {
  const solar = new Float64Array(azimuths * elevations);
  const par = new Float64Array(azimuths * elevations);
  const sums = { solar: 0, par: 0, weight: 0 };
  const out: Reached = { solar: 0, par: 0 };
  for (let a = 0; a < azimuths; a++) {
    const azimuth = (a * 360) / azimuths;
    const skyline = horizonElevation(horizon, azimuth);
    const held = skyline > 0 ? 1 - horizonPasses(horizon, azimuth) : 0;
    for (let e = 0; e < elevations; e++) {
      const elevation = elevationOf(e);
      const world = direction(azimuth * degree, elevation);
      out.solar = out.par = 0;
      reached(world, out);
      solar[a * elevations + e] = out.solar;
      par[a * elevations + e] = out.par;
      const facing = Math.max(0, world[0] * normal[0] + world[1] * normal[1] + world[2] * normal[2]);
      const weight = facing * Math.cos(elevation) * (e === 0 || e === elevations - 1 ? 0.5 : 1);
      sums.weight += weight;
      const clear = held > 0 ? 1 - held * hiddenPart(e * rowHeight, skyline, rowHeight) : 1;
      sums.solar += weight * clear * out.solar;
      sums.par += weight * clear * out.par;
    }
  }
  const share = (value: number) => (sums.weight > 0 ? value / sums.weight : 0);
  return { solar, par, skySolar: share(sums.solar), skyPar: share(sums.par) };
}

function direction(azimuth: number, elevation: number): Point {
  const level = Math.cos(elevation);
  return [level * Math.sin(azimuth), level * Math.cos(azimuth), Math.sin(elevation)];
}

/** Where a direction lies in the table: found once, read for each of the tables. */
export interface TablePlace {
  index: number;
  next: number;
  share: number;
  rise: number;
}

/** Sets `place` for a sun at an azimuth and elevation [degrees]. */
export function locate(place: TablePlace, azimuth: number, elevation: number): void {
  const column = (azimuth * azimuths) / 360;
  const left = Math.floor(column);
  const row = Math.max(0, Math.min(elevations - 1.0001, elevation / rowHeight));
  const low = Math.floor(row);
  place.share = column - left;
  place.rise = row - low;
  place.index = (((left % azimuths) + azimuths) % azimuths) * elevations + low;
  place.next = ((((left + 1) % azimuths) + azimuths) % azimuths) * elevations + low;
}

/** Reads a table between its directions, straight in azimuth and elevation. */
export function readGain(table: Float64Array, place: TablePlace): number {
  const { index, next, share, rise } = place;
  const here = table[index] + rise * (table[index + 1] - table[index]);
  const there = table[next] + rise * (table[next + 1] - table[next]);
  return here + share * (there - here);
}
