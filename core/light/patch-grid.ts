/** A rectangle square to the axes of a box, divided by lines into patches. */
export interface PatchGrid {
  /** Axis of its normal (0 along the length, 1 across from front to back, 2 up) and the way it faces. */
  readonly axis: 0 | 1 | 2;
  readonly facing: 1 | -1;
  /** Where it lies on that axis [m]. */
  readonly at: number;
  /** Rising lines along the other two axes, the lower-numbered first [m]. Patch `j * columns + i` lies between lines i and j. */
  readonly u: Float64Array;
  readonly v: Float64Array;
}

export const columnsOf = (grid: PatchGrid): number => grid.u.length - 1;
export const rowsOf = (grid: PatchGrid): number => grid.v.length - 1;
export const patchesOf = (grid: PatchGrid): number => columnsOf(grid) * rowsOf(grid);

/** The two axes a grid's lines run along. */
export function sidesOf(axis: 0 | 1 | 2): readonly [number, number] {
  return axis === 0 ? [1, 2] : axis === 1 ? [0, 2] : [0, 1];
}

/** Lines of a grid along one of its two axes. */
export function linesAlong(grid: PatchGrid, axis: number): Float64Array {
  return sidesOf(grid.axis)[0] === axis ? grid.u : grid.v;
}

/** Evenly spaced lines from `low` to `high`. */
export function lines(low: number, high: number, parts: number): Float64Array {
  return Float64Array.from({ length: parts + 1 }, (_, k) =>
    k === parts ? high : low + (k * (high - low)) / parts,
  );
}

/** How much closer lines lie at the ends of a side than in its middle, 0–1. */
const crowding = 0.6;

/**
 * Lines from `low` to `high` with `breaks` that lie between added to them; closer together at both ends, where two
 * faces meet and the light on them changes fastest.
 */
export function crowdedLines(
  low: number,
  high: number,
  parts: number,
  breaks: readonly number[] = [],
): Float64Array {
  const least = 1e-6 * (high - low);
  const fixed = [low, ...breaks.filter((at) => at > low + least && at < high - least), high];
  fixed.sort((a, b) => a - b);
  const all = [low];
  for (let k = 1; k < fixed.length; k++) {
    const from = fixed[k - 1];
    const span = fixed[k] - from;
    if (span <= least) continue;
    const pieces = Math.max(1, Math.round((parts * span) / (high - low)));
    for (let i = 1; i < pieces; i++) {
      const share = i / pieces;
      all.push(from + span * (share - (crowding * Math.sin(2 * Math.PI * share)) / (2 * Math.PI)));
    }
    all.push(fixed[k]);
  }
  return Float64Array.from(all);
}

/** Areas of a grid's patches [m²]. */
export function patchAreas(grid: PatchGrid): Float64Array {
  const columns = columnsOf(grid);
  return Float64Array.from({ length: patchesOf(grid) }, (_, k) => {
    const i = k % columns;
    const j = (k - i) / columns;
    return (grid.u[i + 1] - grid.u[i]) * (grid.v[j + 1] - grid.v[j]);
  });
}
