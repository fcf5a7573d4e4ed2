/** A map of cells, row by row. */
export interface Cells {
  readonly map: Float64Array;
  readonly columns: number;
  readonly rows: number;
}

export interface Figure {
  readonly key: number;
  /** Place in 0–1 of the area. */
  readonly x: number;
  readonly y: number;
  readonly value: number;
}

/** Means over a coarse grid of the map, to be written as numbers. */
export function coarse({ map, columns, rows }: Cells, across: number, down: number): Figure[] {
  const cells: Figure[] = [];
  for (let j = 0; j < down; j++) {
    for (let i = 0; i < across; i++) {
      let sum = 0;
      let count = 0;
      for (let row = Math.floor((j * rows) / down); row < Math.ceil(((j + 1) * rows) / down); row++) {
        const to = Math.ceil(((i + 1) * columns) / across);
        for (let column = Math.floor((i * columns) / across); column < to; column++) {
          sum += map[row * columns + column];
          count += 1;
        }
      }
      const value = count > 0 ? sum / count : 0;
      cells.push({ key: j * across + i, x: (i + 0.5) / across, y: (j + 0.5) / down, value });
    }
  }
  return cells;
}
