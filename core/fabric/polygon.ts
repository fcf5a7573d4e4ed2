/**
 * Points of a place in its own frame [m]: x from the front (the side that faces the shape's azimuth) to the
 * back, y along the length, z up from the floor.
 */
export type Point = readonly [x: number, y: number, z: number];
export type Polygon = readonly Point[];

/** Area vector of a flat polygon by Newell's sum: its length is the area [m²], its direction the normal. */
export function areaVector(polygon: Polygon): Point {
  let x = 0;
  let y = 0;
  let z = 0;
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i];
    const b = polygon[(i + 1) % polygon.length];
    x += (a[1] - b[1]) * (a[2] + b[2]);
    y += (a[2] - b[2]) * (a[0] + b[0]);
    z += (a[0] - b[0]) * (a[1] + b[1]);
  }
  return [x / 2, y / 2, z / 2];
}

/** Area of a flat polygon [m²]. */
export function areaOf(polygon: Polygon): number {
  return Math.hypot(...areaVector(polygon));
}

/** Mean of the corners: inside a convex polygon. */
export function middleOf(points: readonly Point[]): Point {
  const sum = points.reduce((s, p) => [s[0] + p[0], s[1] + p[1], s[2] + p[2]] as const, [0, 0, 0] as Point);
  return [sum[0] / points.length, sum[1] / points.length, sum[2] / points.length];
}

/** The same polygon turned so that its normal points away from `inside`. */
export function facingAwayFrom(polygon: Polygon, inside: Point): Polygon {
  const normal = areaVector(polygon);
  const middle = middleOf(polygon);
  const outward =
    normal[0] * (middle[0] - inside[0]) +
    normal[1] * (middle[1] - inside[1]) +
    normal[2] * (middle[2] - inside[2]);
  return outward >= 0 ? polygon : [...polygon].reverse();
}

/** The part of a polygon above (`side` 1) or below (`side` −1) the level `z` (Sutherland & Hodgman 1974). */
export function cutAtLevel(polygon: Polygon, z: number, side: 1 | -1): Polygon {
  const kept: Point[] = [];
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i];
    const b = polygon[(i + 1) % polygon.length];
    const da = (a[2] - z) * side;
    const db = (b[2] - z) * side;
    if (da >= 0) kept.push(a);
    if (da * db < 0) {
      const t = da / (da - db);
      kept.push([a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), z]);
    }
  }
  return kept.length >= 3 && areaOf(kept) > 1e-9 ? kept : [];
}

/** Volume of a closed body from outward polygons [m³] (divergence theorem). */
export function volumeOf(faces: readonly Polygon[]): number {
  let volume = 0;
  for (const face of faces) {
    const normal = areaVector(face);
    const corner = face[0];
    volume += (normal[0] * corner[0] + normal[1] * corner[1] + normal[2] * corner[2]) / 3;
  }
  return volume;
}
