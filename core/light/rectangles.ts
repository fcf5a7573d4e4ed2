/** View factors of rectangles in closed form (Howell, Catalog of Radiation Heat Transfer Configuration Factors: B-4, C-11, C-13, C-14, C-15). */

/** A rectangle in a level plane: its sides' coordinates [m]. */
export interface Rectangle {
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
}

/** A rectangle by its middle and sizes. */
export function rectangleAt(x: number, y: number, alongX: number, alongY: number): Rectangle {
  return { x1: x - alongX / 2, x2: x + alongX / 2, y1: y - alongY / 2, y2: y + alongY / 2 };
}

export const areaOfRectangle = (r: Rectangle): number => (r.x2 - r.x1) * (r.y2 - r.y1);

/** Corner term of a point under a rectangle's corner (B-4 with both arms), odd in x and in y. */
function corner(x: number, y: number, height: number): number {
  const a = Math.sqrt(x * x + height * height);
  const b = Math.sqrt(y * y + height * height);
  return ((x / a) * Math.atan(y / a) + (y / b) * Math.atan(x / b)) / (2 * Math.PI);
}

/** Share of the light leaving a small level element at (x, y) that meets a parallel rectangle `height` away, 0–1. */
export function pointFactor(x: number, y: number, rectangle: Rectangle, height: number): number {
  const left = rectangle.x1 - x;
  const right = rectangle.x2 - x;
  const near = rectangle.y1 - y;
  const far = rectangle.y2 - y;
  return (
    corner(right, far, height) -
    corner(left, far, height) -
    corner(right, near, height) +
    corner(left, near, height)
  );
}

/**
 * The function whose fourfold difference in both directions gives the exchange between parallel rectangles `z`
 * apart, their corners `u` and `v` apart along the sides (C-13) [m²].
 */
export function parallelExchange(u: number, v: number, z: number): number {
  const a = Math.sqrt(u * u + z * z);
  const b = Math.sqrt(v * v + z * z);
  const squares = u * u + v * v + z * z;
  if (squares === 0) return 0;
  return (
    (v * a * Math.atan2(v, a) + u * b * Math.atan2(u, b) - (z * z * Math.log(squares)) / 2) / (2 * Math.PI)
  );
}

/**
 * The function whose fourfold difference in both directions gives the exchange between rectangles at right
 * angles (C-15): `u` apart along the common edge, `squared` the sum of the squares of the two distances from it [m²].
 */
export function uprightExchange(u: number, squared: number): number {
  const sum = squared + u * u;
  if (sum === 0) return 0;
  const c = Math.sqrt(squared);
  return (u * c * Math.atan2(u, c) - ((squared - u * u) * Math.log(sum)) / 4) / (2 * Math.PI);
}

/** Share of the light leaving rectangle `from` that meets `to`, parallel and `distance` away, 0–1. */
export function parallelFactor(from: Rectangle, to: Rectangle, distance: number): number {
  let sum = 0;
  for (let i = 0; i < 2; i++) {
    for (let j = 0; j < 2; j++) {
      const u1 = (i === 0 ? from.x1 : from.x2) - to.x1;
      const u2 = (i === 0 ? from.x1 : from.x2) - to.x2;
      const v1 = (j === 0 ? from.y1 : from.y2) - to.y1;
      const v2 = (j === 0 ? from.y1 : from.y2) - to.y2;
      const four =
        parallelExchange(u1, v1, distance) -
        parallelExchange(u1, v2, distance) -
        parallelExchange(u2, v1, distance) +
        parallelExchange(u2, v2, distance);
      sum += i === j ? four : -four;
    }
  }
  return Math.max(0, Math.min(1, sum / areaOfRectangle(from)));
}

/**
 * Share of the light leaving an upright rectangle `height` × `length` that meets a level one `width` × `length` at
 * right angles along their common edge (C-14), 0–1.
 */
export function cornerFactor(height: number, width: number, length: number): number {
  const w = height / length;
  const h = width / length;
  const ww = w * w;
  const hh = h * h;
  const diagonal = Math.sqrt(ww + hh);
  const logs =
    Math.log(((1 + ww) * (1 + hh)) / (1 + ww + hh)) +
    ww * Math.log((ww * (1 + ww + hh)) / ((1 + ww) * (ww + hh))) +
    hh * Math.log((hh * (1 + ww + hh)) / ((1 + hh) * (ww + hh)));
  const arcs = w * Math.atan(1 / w) + h * Math.atan(1 / h) - diagonal * Math.atan(1 / diagonal);
  return (arcs + logs / 4) / (Math.PI * w);
}
