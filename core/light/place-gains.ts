import type { Place, Spot } from '../plan/schema.ts';
import type { HorizonPoint } from '../sun/index.ts';
import type { Enclosure, Point, Polygon } from '../fabric/index.ts';
import { cutAtLevel, facesOf } from '../fabric/index.ts';
import type { DirectionalGain } from './gain.ts';
import { directionalGain } from './gain.ts';
import { listedGain } from './listed-gain.ts';
import type { Opening } from './openings.ts';
import { cornerFactor } from './rectangles.ts';
import { receiverOf } from './shadow.ts';
import { spotGain, wholeSpot } from './spot-gain.ts';
import { levelGains, shelfOver } from './upper-shelf.ts';

/** How daylight reaches the inside of a place from every direction of the sky. */
export interface PlaceGains {
  readonly bench: DirectionalGain;
  /** All that falls on lower and upper level a square metre of the lower; null where there is no upper shelf. */
  readonly landed: DirectionalGain | null;
  readonly benchArea: number;
  /** The same for an opaque back wall above the plants' level, null where there is none. */
  readonly wall: DirectionalGain | null;
  readonly wallArea: number;
  /** Unit normal of that wall into the place (east, north, up). */
  readonly wallNormal: Point;
  /** Share of the light falling on that wall that it throws on to the plants' level, 0–1. */
  readonly wallToBench: number;
  /** Share kept inside of light that misses bench and wall and goes on to the far side. */
  readonly keptCrossing: number;
}

/**
 * Of light that crosses above the plants' level some is caught by tall plants, pots and frame, and of what meets
 * the glass on the far side about 0.12 comes back (estimate; in a window bay all of it goes on into the room).
 */
const caughtCrossing = 0.3;

/** Share of the sunlight falling on them that plants and floor, and a back wall, keep (estimate: reflectance 0.2 and 0.4, part of which is caught again). */
export const keptByBench = 0.85;
export const keptByWall = 0.75;

/** The plants' level as a polygon facing up, in the place's frame. */
export function benchOf(place: Place, enclosure: Enclosure): Polygon {
  const { length, width, plantLevel: z } = enclosure;
  const { shape } = place;
  const across = (from: number, to: number): Polygon => [
    [from, 0, z],
    [to, 0, z],
    [to, length, z],
    [from, length, z],
  ];
  if (shape.kind === 'window-bay') {
    const { distance, depth } = shape;
    if (!(distance < depth)) throw new Error(`expected plants nearer than ${depth} m, got ${distance} m`);
    return across(distance, depth);
  }
  if (shape.kind !== 'tunnel' || z === 0) return across(0, width);
  const end = cutAtLevel(facesOf(shape).filter((face) => face.part === 'end')[0].polygon, z, 1);
  const xs = end.filter((point) => Math.abs(point[2] - z) < 1e-9).map((point) => point[0]);
  return across(Math.min(...xs), Math.max(...xs));
}

export function placeGains(
  place: Place,
  enclosure: Enclosure,
  openings: readonly Opening[],
  horizon: readonly HorizonPoint[],
  spot: Spot = wholeSpot,
): PlaceGains {
  const bench = receiverOf(benchOf(place, enclosure));
  const common = {
    benchArea: bench.area,
    keptCrossing: place.shape.kind === 'window-bay' ? 0 : caughtCrossing,
  };
  const noWall = { wall: null, wallArea: 0, wallNormal: [0, 0, 0] as const, wallToBench: 0 };
  if (place.shape.kind === 'listed') {
    return { ...common, ...noWall, landed: null, bench: listedGain(openings, enclosure.surfaces, horizon) };
  }
  const front = enclosure.azimuth;
  const shelf = shelfOver(place, enclosure);
  const levels =
    spot === wholeSpot
      ? levelGains(bench, shelf, openings, front, horizon)
      : { bench: spotGain(benchOf(place, enclosure), shelf, spot, openings, front, horizon), landed: null };
  const wall = enclosure.surfaces.find((surface) => surface.part === 'wall');
  if (wall === undefined || wall.polygon === null) return { ...common, ...noWall, ...levels };
  const receiver = receiverOf(cutAtLevel([...wall.polygon].reverse(), enclosure.plantLevel, 1));
  return {
    ...common,
    ...levels,
    wall: directionalGain(receiver, openings, front, horizon, { boards: shelf?.boards }),
    wallArea: receiver.area,
    wallToBench:
      place.wallReflectance *
      cornerFactor(receiver.area / enclosure.length, enclosure.width, enclosure.length),
    wallNormal: [-wall.normal[0], -wall.normal[1], -wall.normal[2]],
  };
}
