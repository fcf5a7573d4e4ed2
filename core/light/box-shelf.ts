import type { BoxShelf } from './box-parts.ts';
import type { PatchGrid } from './patch-grid.ts';
import { columnsOf, patchesOf, sidesOf } from './patch-grid.ts';

/** Skin of the shelf that light may run along [m]: rays that only touch it pass. */
const skin = 1e-7;

/** False where the straight way between two points runs through the shelf. */
export function passes(
  shelf: BoxShelf,
  px: number,
  py: number,
  pz: number,
  qx: number,
  qy: number,
  qz: number,
): boolean {
  const dx = qx - px;
  const dy = qy - py;
  const dz = qz - pz;
  // Shares of the way at which it crosses the planes of the shelf; level with a pair of planes it lies between
  // them all the way, or never.
  let from = 0;
  let to = 1;
  if (dx !== 0) {
    const a = (shelf.x1 + skin - px) / dx;
    const b = (shelf.x2 - skin - px) / dx;
    from = Math.max(from, a < b ? a : b);
    to = Math.min(to, a < b ? b : a);
  } else if (px <= shelf.x1 + skin || px >= shelf.x2 - skin) return true;
  if (dy !== 0) {
    const a = (shelf.y1 + skin - py) / dy;
    const b = (shelf.y2 - skin - py) / dy;
    from = Math.max(from, a < b ? a : b);
    to = Math.min(to, a < b ? b : a);
  } else if (py <= shelf.y1 + skin || py >= shelf.y2 - skin) return true;
  if (dz !== 0) {
    const a = (shelf.under + skin - pz) / dz;
    const b = (shelf.top - skin - pz) / dz;
    from = Math.max(from, a < b ? a : b);
    to = Math.min(to, a < b ? b : a);
  } else if (pz <= shelf.under + skin || pz >= shelf.top - skin) return true;
  return from >= to;
}

/** Bounds of a patch: lowest and highest x, y, z. */
export type Bounds = Float64Array;

export function boundsOf(grid: PatchGrid, patch: number): Bounds {
  const columns = columnsOf(grid);
  const i = patch % columns;
  const j = (patch - i) / columns;
  const [first, second] = sidesOf(grid.axis);
  const bounds = new Float64Array(6);
  bounds[2 * grid.axis] = bounds[2 * grid.axis + 1] = grid.at;
  bounds[2 * first] = grid.u[i];
  bounds[2 * first + 1] = grid.u[i + 1];
  bounds[2 * second] = grid.v[j];
  bounds[2 * second + 1] = grid.v[j + 1];
  return bounds;
}

/** True where two patches lie on the same outer side of the shelf, so that it cannot stand between them. */
export function clearOf(shelf: BoxShelf, a: Bounds, b: Bounds): boolean {
  return (
    (a[0] >= shelf.x2 - skin && b[0] >= shelf.x2 - skin) ||
    (a[1] <= shelf.x1 + skin && b[1] <= shelf.x1 + skin) ||
    (a[2] >= shelf.y2 - skin && b[2] >= shelf.y2 - skin) ||
    (a[3] <= shelf.y1 + skin && b[3] <= shelf.y1 + skin) ||
    (a[4] >= shelf.top - skin && b[4] >= shelf.top - skin) ||
    (a[5] <= shelf.under + skin && b[5] <= shelf.under + skin)
  );
}

/** False where the smallest box round two patches does not meet the shelf. */
function couldHide(shelf: BoxShelf, a: Bounds, b: Bounds): boolean {
  return (
    Math.min(a[0], b[0]) < shelf.x2 &&
    Math.max(a[1], b[1]) > shelf.x1 &&
    Math.min(a[2], b[2]) < shelf.y2 &&
    Math.max(a[3], b[3]) > shelf.y1 &&
    Math.min(a[4], b[4]) < shelf.top &&
    Math.max(a[5], b[5]) > shelf.under
  );
}

/** `n`² points spread over a patch, three coordinates each. */
function pointsOn(bounds: Bounds, n: number): Float64Array {
  const points = new Float64Array(3 * n * n);
  const flat = bounds[0] === bounds[1] ? 0 : bounds[2] === bounds[3] ? 1 : 2;
  for (let k = 0; k < n * n; k++) {
    const shares = [((k % n) + 0.5) / n, (Math.floor(k / n) + 0.5) / n];
    for (let axis = 0, side = 0; axis < 3; axis++) {
      const low = bounds[2 * axis];
      points[3 * k + axis] = axis === flat ? low : low + shares[side++] * (bounds[2 * axis + 1] - low);
    }
  }
  return points;
}

/** Share of the ways between the points of two patches that pass the shelf. */
function visibleShare(shelf: BoxShelf, a: Float64Array, b: Float64Array): number {
  let seen = 0;
  for (let i = 0; i < a.length; i += 3) {
    for (let k = 0; k < b.length; k += 3) {
      if (passes(shelf, a[i], a[i + 1], a[i + 2], b[k], b[k + 1], b[k + 2])) seen++;
    }
  }
  return (9 * seen) / (a.length * b.length);
}

/** Takes out of a block of exchange areas what the shelf hides (`patch-exchange.ts`), in place, by `samples`² points on each patch of the one and the other grid. */
export function hideBehind(
  shelf: BoxShelf,
  a: PatchGrid,
  b: PatchGrid,
  block: Float64Array,
  samples: readonly [number, number],
): void {
  const bounds = [a, b].map((grid) => Array.from({ length: patchesOf(grid) }, (_, k) => boundsOf(grid, k)));
  const points = bounds.map((all, g) => all.map((each) => pointsOn(each, samples[g])));
  const wide = bounds[1].length;
  for (let k = 0; k < block.length; k++) {
    const j = k % wide;
    const i = (k - j) / wide;
    const [from, to] = [bounds[0][i], bounds[1][j]];
    if (!(block[k] > 0) || !couldHide(shelf, from, to) || clearOf(shelf, from, to)) continue;
    block[k] *= visibleShare(shelf, points[0][i], points[1][j]);
  }
}
