import type { PatchGrid } from './patch-grid.ts';
import { columnsOf, linesAlong, patchesOf, sidesOf } from './patch-grid.ts';
import { parallelExchange, uprightExchange } from './rectangles.ts';

/**
 * Exchange areas A·F [m²] between every patch of two grids that see each other unhindered, `[a * patches(b) + b]`,
 * exact in closed form; what lies behind the other's plane is cut off. Rectangles of grids share few distances, so
 * the closed forms are evaluated once for each pair of different distances and differenced from the table.
 */
export function exchangeBlock(a: PatchGrid, b: PatchGrid): Float64Array {
  if (a.axis === b.axis) return parallelBlock(a, b);
  const common = 3 - a.axis - b.axis;
  const ofA = distances(linesAlong(a, b.axis), b);
  const ofB = distances(linesAlong(b, a.axis), a);
  const along = pairs(linesAlong(a, common), linesAlong(b, common), (x, y) => Math.abs(x - y));
  const away = pairs(ofA, ofB, (x, y) => x * x + y * y);
  const table = tabled(along.values, away.values, uprightExchange);
  return differenced(a, b, common, along, away, table);
}

function parallelBlock(a: PatchGrid, b: PatchGrid): Float64Array {
  const gap = a.facing * (b.at - a.at);
  if (a.facing === b.facing || !(gap >= 0)) return new Float64Array(patchesOf(a) * patchesOf(b));
  const along = pairs(a.u, b.u, (x, y) => Math.abs(x - y));
  const away = pairs(a.v, b.v, (x, y) => Math.abs(x - y));
  const table = tabled(along.values, away.values, (u, v) => parallelExchange(u, v, gap));
  return differenced(a, b, sidesOf(a.axis)[0], along, away, table);
}

/** Distances of lines in front of a grid's plane, 0 behind it [m]. */
function distances(at: Float64Array, plane: PatchGrid): Float64Array {
  return at.map((value) => Math.max(0, plane.facing * (value - plane.at)));
}

/** For each pair of lines the place of its distance in a list of the different ones. */
interface Pairs {
  readonly values: number[];
  readonly index: Int32Array;
  readonly second: number;
}

function pairs(a: Float64Array, b: Float64Array, of: (x: number, y: number) => number): Pairs {
  const seen = new Map<number, number>();
  const values: number[] = [];
  const index = new Int32Array(a.length * b.length);
  for (let i = 0; i < a.length; i++) {
    for (let j = 0; j < b.length; j++) {
      const value = of(a[i], b[j]);
      const key = Math.round(value * 1e10);
      let at = seen.get(key);
      if (at === undefined) {
        at = values.length;
        seen.set(key, at);
        values.push(value);
      }
      index[i * b.length + j] = at;
    }
  }
  return { values, index, second: b.length };
}

function tabled(
  first: readonly number[],
  second: readonly number[],
  of: (u: number, v: number) => number,
): Float64Array {
  const table = new Float64Array(first.length * second.length);
  for (let i = 0; i < first.length; i++) {
    for (let j = 0; j < second.length; j++) table[i * second.length + j] = of(first[i], second[j]);
  }
  return table;
}

/** The fourfold difference along the common axis, then along the other pair of axes. */
function differenced(
  a: PatchGrid,
  b: PatchGrid,
  common: number,
  along: Pairs,
  away: Pairs,
  table: Float64Array,
): Float64Array {
  const uFirstA = sidesOf(a.axis)[0] === common;
  const uFirstB = sidesOf(b.axis)[0] === common;
  const commonA = (uFirstA ? a.u : a.v).length - 1;
  const commonB = (uFirstB ? b.u : b.v).length - 1;
  const otherA = (uFirstA ? a.v : a.u).length - 1;
  const otherB = (uFirstB ? b.v : b.u).length - 1;
  const columnsA = columnsOf(a);
  const columnsB = columnsOf(b);
  const countB = patchesOf(b);
  const wide = away.values.length;
  const out = new Float64Array(patchesOf(a) * countB);
  const row = new Float64Array(wide);
  for (let i = 0; i < commonA; i++) {
    for (let k = 0; k < commonB; k++) {
      const p = wide * along.index[i * along.second + k];
      const q = wide * along.index[(i + 1) * along.second + k];
      const r = wide * along.index[i * along.second + k + 1];
      const s = wide * along.index[(i + 1) * along.second + k + 1];
      for (let d = 0; d < wide; d++) row[d] = table[p + d] - table[q + d] - table[r + d] + table[s + d];
      for (let j = 0; j < otherA; j++) {
        const patchA = uFirstA ? j * columnsA + i : i * columnsA + j;
        for (let l = 0; l < otherB; l++) {
          const patchB = uFirstB ? l * columnsB + k : k * columnsB + l;
          const at = j * away.second + l;
          const value =
            row[away.index[at]] -
            row[away.index[at + away.second]] -
            row[away.index[at + 1]] +
            row[away.index[at + away.second + 1]];
          out[patchA * countB + patchB] = Math.abs(value);
        }
      }
    }
  }
  return out;
}
