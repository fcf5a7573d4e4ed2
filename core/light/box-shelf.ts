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
  let from = 0;
  let to = 1;
  for (let axis = 0; axis < 3; axis++) {
    const p = axis === 0 ? px : axis === 1 ? py : pz;
    const q = axis === 0 ? qx : axis === 1 ? qy : qz;
    const low = (axis === 0 ? shelf.x1 : axis === 1 ? shelf.y1 : shelf.under) + skin;
    const high = (axis === 0 ? shelf.x2 : axis === 1 ? shelf.y2 : shelf.top) - skin;
    const way = q - p;
    if (way === 0) {
      if (p <= low || p >= high) return true;
      continue;
    }
    const a = (low - p) / way;
    const b = (high - p) / way;
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
    if (from >= to) return true;
  }
  return false;
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

/** Share of the ways between two patches that pass the shelf, by `n`² points on each. */
function visibleShare(shelf: BoxShelf, a: Bounds, b: Bounds, n: number): number {
  let seen = 0;
  for (let i = 0; i < n * n; i++) {
    const s = ((i % n) + 0.5) / n;
    const t = (Math.floor(i / n) + 0.5) / n;
    const [px, py, pz] = pointIn(a, s, t);
    for (let k = 0; k < n * n; k++) {
      const [qx, qy, qz] = pointIn(b, ((k % n) + 0.5) / n, (Math.floor(k / n) + 0.5) / n);
      if (passes(shelf, px, py, pz, qx, qy, qz)) seen++;
    }
  }
  return seen / n ** 4;
}

function pointIn(bounds: Bounds, s: number, t: number): readonly [number, number, number] {
  const x = bounds[0];
  const y = bounds[2];
  const z = bounds[4];
  const wide = bounds[1] - x;
  const deep = bounds[3] - y;
  const high = bounds[5] - z;
  if (wide === 0) return [x, y + s * deep, z + t * high];
  return deep === 0 ? [x + s * wide, y, z + t * high] : [x + s * wide, y + t * deep, z];
}

/** Takes out of a block of exchange areas what the shelf hides (`patch-exchange.ts`), in place. */
export function hideBehind(
  shelf: BoxShelf,
  a: PatchGrid,
  b: PatchGrid,
  block: Float64Array,
  samples: number,
): void {
  const boundsA = Array.from({ length: patchesOf(a) }, (_, k) => boundsOf(a, k));
  const boundsB = Array.from({ length: patchesOf(b) }, (_, k) => boundsOf(b, k));
  boundsA.forEach((from, i) => {
    boundsB.forEach((to, k) => {
      const at = i * boundsB.length + k;
      if (block[at] > 0 && !clearOf(shelf, from, to)) block[at] *= visibleShare(shelf, from, to, samples);
    });
  });
}
