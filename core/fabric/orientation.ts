import type { Point } from './polygon.ts';

const degree = Math.PI / 180;

/** Tilt from horizontal and azimuth clockwise from north of an outward direction [degrees]. */
export interface Orientation {
  readonly tilt: number;
  readonly azimuth: number;
  /** Unit outward normal towards east, north and up. */
  readonly normal: Point;
}

/** Turns a direction of the place's frame (front outward is −x) to east, north, up. */
export function toWorld(direction: Point, frontAzimuth: number): Point {
  const sine = Math.sin(frontAzimuth * degree);
  const cosine = Math.cos(frontAzimuth * degree);
  return [
    -direction[0] * sine + direction[1] * cosine,
    -direction[0] * cosine - direction[1] * sine,
    direction[2],
  ];
}

/** Turns a direction given as east, north, up into the place's frame. */
export function toPlace(direction: Point, frontAzimuth: number): Point {
  const sine = Math.sin(frontAzimuth * degree);
  const cosine = Math.cos(frontAzimuth * degree);
  return [
    -direction[0] * sine - direction[1] * cosine,
    direction[0] * cosine - direction[1] * sine,
    direction[2],
  ];
}

/** Orientation of an area vector of the place's frame; a horizontal face has azimuth 0. */
export function orientationOf(vector: Point, frontAzimuth: number): Orientation {
  const size = Math.hypot(...vector);
  const [east, north, up] = toWorld([vector[0] / size, vector[1] / size, vector[2] / size], frontAzimuth);
  const tilt = Math.acos(Math.max(-1, Math.min(1, up))) / degree;
  const level = Math.hypot(east, north) < 1e-9;
  const azimuth = level ? 0 : (Math.atan2(east, north) / degree + 360) % 360;
  return { tilt, azimuth, normal: [east, north, up] };
}

/** Unit outward normal of a plane given by tilt and azimuth [degrees]. */
export function normalOf(tilt: number, azimuth: number): Point {
  const level = Math.sin(tilt * degree);
  return [level * Math.sin(azimuth * degree), level * Math.cos(azimuth * degree), Math.cos(tilt * degree)];
}

const winds = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;

/** The nearest of eight winds. */
export function windOf(azimuth: number): string {
  return winds[Math.round((((azimuth % 360) + 360) % 360) / 45) % 8];
}
