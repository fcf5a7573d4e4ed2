/** One line of the benchmark's table. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** Most that is allowed; null where the figure is for information. */
  readonly target: number | null;
}

/** Whether every figure that has a target meets it. */
export function allMet(figures: readonly Figure[]): boolean {
  return figures.every(({ value, target }) => target === null || value <= target);
}

/** A table of three columns: figure, value, target and whether it is met. */
export function table(figures: readonly Figure[]): string {
  const rows = figures.map(({ name, value, unit, target }) => [
    name,
    `${value < 10 ? value.toFixed(2) : value.toFixed(1)}${unit === '' ? '' : ` ${unit}`}`,
    target === null
      ? ''
      : `at most ${target}${unit === '' ? '' : ` ${unit}`}: ${value <= target ? 'met' : 'MISSED'}`,
  ]);
  const wide = (column: number) => Math.max(...rows.map((row) => row[column].length));
  return rows
    .map((row) => `${row[0].padEnd(wide(0))}  ${row[1].padStart(wide(1))}  ${row[2]}`.trimEnd())
    .join('\n');
}

export const median = (values: readonly number[]): number => percentile(values, 0.5);

/** The value below which `share` of the values lie (nearest rank). */
export function percentile(values: readonly number[], share: number): number {
  if (values.length === 0) throw new RangeError('expected at least one value, got none');
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))];
}
