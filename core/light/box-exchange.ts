import type { Box, BoxMesh } from './box-parts.ts';
import { meshOf } from './box-parts.ts';
import { hideBehind } from './box-shelf.ts';
import { kept } from './field-cache.ts';
import { exchangeBlock } from './patch-exchange.ts';
import type { PatchGrid } from './patch-grid.ts';
import { patchAreas, patchesOf } from './patch-grid.ts';

/** Patches of a box and the exchange areas A·F between all of them [m²]: symmetric, each row adds up to the patch's area. */
export interface BoxExchange {
  readonly mesh: BoxMesh;
  readonly matrix: Float64Array;
}

/** What the shape of a box is told apart by: which sides are one patch matters, how bright they are does not. */
function keyOf(box: Box): string {
  const { length, width, height, shelf, fineness } = box;
  const sides = [...box.walls, box.ceiling].map((side) => (side.reflectance > 0 ? 1 : 0));
  return JSON.stringify([length, width, height, shelf, fineness ?? 0, sides]);
}

const exchanges = kept<BoxExchange>(16);
const sights = kept<Float64Array>(32);

/** Exchange areas of a box; kept for boxes used of late. */
export function exchangeOf(box: Box): BoxExchange {
  return exchanges(keyOf(box), () => made(box));
}

function made(box: Box): BoxExchange {
  const mesh = meshOf(box);
  const { parts, patches } = mesh;
  const matrix = new Float64Array(patches * patches);
  for (let p = 0; p < parts.length; p++) {
    for (let q = p + 1; q < parts.length; q++) {
      const block = exchangeBlock(parts[p].grid, parts[q].grid);
      if (box.shelf !== null) hideBehind(box.shelf, parts[p].grid, parts[q].grid, block, [2, 2]);
      const wide = patchesOf(parts[q].grid);
      for (let k = 0; k < block.length; k++) {
        const i = parts[p].first + Math.floor(k / wide);
        const j = parts[q].first + (k % wide);
        matrix[i * patches + j] = matrix[j * patches + i] = block[k];
      }
    }
  }
  if (box.shelf !== null) closeRows(matrix, mesh.areas);
  return { mesh, matrix };
}

/**
 * Makes the rows of a symmetric matrix add up to the areas again after parts of it were hidden by sampling: rows
 * and columns are scaled alike until they do, which keeps what one patch gives another equal both ways.
 */
function closeRows(matrix: Float64Array, areas: Float64Array): void {
  const n = areas.length;
  const scale = new Float64Array(n).fill(1);
  for (let round = 0; round < 200; round++) {
    let worst = 0;
    for (let i = 0; i < n; i++) {
      let sum = 0;
      for (let j = 0; j < n; j++) sum += matrix[i * n + j] * scale[j];
      if (!(sum > 0)) continue;
      worst = Math.max(worst, Math.abs((scale[i] * sum) / areas[i] - 1));
      scale[i] = Math.sqrt((scale[i] * areas[i]) / sum);
    }
    if (worst < 1e-6) break;
  }
  for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) matrix[i * n + j] *= scale[i] * scale[j];
}

/** Exchange areas between the cells of a map and every patch of a box [m²], `[cell * patches + patch]`; kept like the box's. */
export function sightOf(box: Box, cells: PatchGrid): Float64Array {
  const key = `${keyOf(box)} ${cells.at} ${cells.u.join()} ${cells.v.join()}`;
  return sights(key, () => {
    const { mesh } = exchangeOf(box);
    const count = patchesOf(cells);
    const sight = new Float64Array(count * mesh.patches);
    for (const { grid, first } of mesh.parts) {
      const block = exchangeBlock(cells, grid);
      if (box.shelf !== null) hideBehind(box.shelf, cells, grid, block, [1, 3]);
      const wide = patchesOf(grid);
      for (let c = 0; c < count; c++) {
        sight.set(block.subarray(c * wide, (c + 1) * wide), c * mesh.patches + first);
      }
    }
    if (box.shelf !== null) closeCells(sight, patchAreas(cells), mesh.patches);
    return sight;
  });
}

function closeCells(sight: Float64Array, areas: Float64Array, patches: number): void {
  areas.forEach((area, c) => {
    const row = sight.subarray(c * patches, (c + 1) * patches);
    const sum = row.reduce((a, b) => a + b, 0);
    if (sum > 0) for (let j = 0; j < patches; j++) row[j] *= area / sum;
  });
}
