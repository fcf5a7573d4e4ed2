/** View factors of parallel rectangles in closed form (Howell, Catalog of Radiation Heat Transfer Configuration Factors: B-4, C-11, C-13). */

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

/** The function whose fourfold difference gives the exchange between parallel rectangles (C-13) [m²]. */
function exchange(u: number, v: number, z: number): number {
  const a = Math.sqrt(u * u + z * z);
  const b = Math.sqrt(v * v + z * z);
  return (
    (v * a * Math.atan(v / a) + u * b * Math.atan(u / b) - (z * z * Math.log(u * u + v * v + z * z)) / 2) /
    (2 * Math.PI)
  );
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
        exchange(u1, v1, distance) -
        exchange(u1, v2, distance) -
        exchange(u2, v1, distance) +
        exchange(u2, v2, distance);
      sum += i === j ? four : -four;
    }
  }
  return Math.max(0, Math.min(1, sum / areaOfRectangle(from)));
}

/** Share of a rectangle's area that lies inside another of the same plane, 0–1. */
export function overlap(inner: Rectangle, outer: Rectangle): number {
  const alongX = Math.max(0, Math.min(inner.x2, outer.x2) - Math.max(inner.x1, outer.x1));
  const alongY = Math.max(0, Math.min(inner.y2, outer.y2) - Math.max(inner.y1, outer.y1));
  return (alongX * alongY) / areaOfRectangle(inner);
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
