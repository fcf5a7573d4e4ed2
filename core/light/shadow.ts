import type { Point, Polygon } from '../fabric/index.ts';
import { areaOf, areaVector, cutAtLevel } from '../fabric/index.ts';

/** A flat convex receiver of light with a frame in its own plane. */
export interface Receiver {
  readonly origin: Point;
  /** Unit vectors in the plane, and the unit normal towards the light. */
  readonly u: Point;
  readonly v: Point;
  readonly normal: Point;
  /** Corners in (u, v), anticlockwise seen from the normal's side. */
  readonly corners: Float64Array;
  readonly area: number;
}

const dot = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const scaled = (a: Point, k: number): Point => [a[0] * k, a[1] * k, a[2] * k];
const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Makes a receiver of a polygon whose normal (anticlockwise order) points to where its light comes from. */
export function receiverOf(polygon: Polygon): Receiver {
  const vector = areaVector(polygon);
  const area = areaOf(polygon);
  const normal = scaled(vector, 1 / area);
  const edge = minus(polygon[1], polygon[0]);
  const u = scaled(edge, 1 / Math.hypot(...edge));
  const v = cross(normal, u);
  const corners = new Float64Array(polygon.length * 2);
  polygon.forEach((point, i) => {
    const from = minus(point, polygon[0]);
    corners[2 * i] = dot(from, u);
    corners[2 * i + 1] = dot(from, v);
  });
  return { origin: polygon[0], u, v, normal, corners, area };
}

/** Room for a polygon while it is cut; twice as many corners as any face has. */
let front = new Float64Array(96);
let back = new Float64Array(96);

/**
 * Area of a receiver [m²] that the light through an opening falls on when it comes from `toSun` (unit vector):
 * the opening is thrown along the light onto the receiver's plane and cut to it (Sutherland & Hodgman 1974).
 */
export function litArea(receiver: Receiver, opening: Polygon, toSun: Point): number {
  const count = thrown(receiver, opening, toSun);
  return count > 2 ? shoelace(count) : 0;
}

/** The same as a polygon in the receiver's plane; empty where the light misses it. */
export function litPolygon(receiver: Receiver, opening: Polygon, toSun: Point): Polygon {
  const count = thrown(receiver, opening, toSun);
  if (count < 3 || !(shoelace(count) > 1e-9)) return [];
  const { origin, u, v } = receiver;
  return Array.from({ length: count }, (_, i): Point => {
    const [a, b] = [front[2 * i], front[2 * i + 1]];
    return [
      origin[0] + a * u[0] + b * v[0],
      origin[1] + a * u[1] + b * v[1],
      origin[2] + a * u[2] + b * v[2],
    ];
  });
}

/**
 * Area of a receiver [m²] that boards keep the light of an opening from: their shadow on it, as far as that opening's
 * light, from over the boards, would have fallen there.
 */
export function shadedArea(receiver: Receiver, boards: Polygon, opening: Polygon, toSun: Point): number {
  const shadow = litPolygon(receiver, boards, toSun);
  if (shadow.length === 0) return 0;
  const over = cutAtLevel(opening, boards[0][2], 1);
  return over.length === 0 ? 0 : litArea(receiverOf(shadow), over, toSun);
}

/** Leaves the lit polygon in `front`, corners in (u, v), and returns how many they are. */
function thrown(receiver: Receiver, opening: Polygon, toSun: Point): number {
  const slope = dot(toSun, receiver.normal);
  if (!(slope > 1e-9)) return 0;
  let count = opening.length;
  for (let i = 0; i < count; i++) {
    const from = minus(opening[i], receiver.origin);
    const back = dot(from, receiver.normal) / slope;
    front[2 * i] = dot(from, receiver.u) - back * dot(toSun, receiver.u);
    front[2 * i + 1] = dot(from, receiver.v) - back * dot(toSun, receiver.v);
  }
  const { corners } = receiver;
  const sides = corners.length / 2;
  for (let e = 0; e < sides && count > 2; e++) {
    const ax = corners[2 * e];
    const ay = corners[2 * e + 1];
    const next = (e + 1) % sides;
    count = cutByEdge(count, ax, ay, corners[2 * next] - ax, corners[2 * next + 1] - ay);
  }
  return count;
}

/** Keeps the part of the polygon in `front` left of the edge from (ax, ay) along (dx, dy). */
function cutByEdge(count: number, ax: number, ay: number, dx: number, dy: number): number {
  let kept = 0;
  let px = front[2 * count - 2];
  let py = front[2 * count - 1];
  let pSide = dx * (py - ay) - dy * (px - ax);
  for (let i = 0; i < count; i++) {
    const x = front[2 * i];
    const y = front[2 * i + 1];
    const side = dx * (y - ay) - dy * (x - ax);
    if (side * pSide < 0) {
      const t = pSide / (pSide - side);
      back[kept++] = px + t * (x - px);
      back[kept++] = py + t * (y - py);
    }
    if (side >= 0) {
      back[kept++] = x;
      back[kept++] = y;
    }
    px = x;
    py = y;
    pSide = side;
  }
  [front, back] = [back, front];
  return kept / 2;
}

function shoelace(count: number): number {
  let twice = 0;
  let px = front[2 * count - 2];
  let py = front[2 * count - 1];
  for (let i = 0; i < count; i++) {
    const x = front[2 * i];
    const y = front[2 * i + 1];
    twice += px * y - x * py;
    px = x;
    py = y;
  }
  return Math.abs(twice) / 2;
}
