import { hourInWords, type RawTable } from './raw-table.ts';
import type { WeatherProblem } from './year.ts';

/** Longest run of missing hours that is filled in a straight line [h]. */
export const longestGap = 6;

/**
 * Fills runs of NaN up to six hours long in a straight line between their neighbours (the year being a ring), in place.
 * Returns how many hours were filled; longer runs are left and reported with the line they begin at.
 */
export function fillGaps(
  values: Float64Array,
  what: string,
  table: RawTable,
  problems: WeatherProblem[],
): number {
  const n = values.length;
  let start = 0;
  while (start < n && Number.isNaN(values[start])) start++;
  if (start === n) {
    problems.push({ line: 0, message: `the file gives no ${what}` });
    return 0;
  }
  let filled = 0;
  for (let k = 1; k < n; k++) {
    const row = (start + k) % n;
    if (!Number.isNaN(values[row])) continue;
    let length = 1;
    while (Number.isNaN(values[(row + length) % n])) length++;
    if (length > longestGap) {
      const message = `${length} hours of ${what} are missing from ${hourInWords(row)}; at most ${longestGap} are filled`;
      problems.push({ line: table.line[row], message });
    } else {
      bridge(values, row, length);
      filled += length;
    }
    k += length - 1;
  }
  return filled;
}

function bridge(values: Float64Array, row: number, length: number): void {
  const n = values.length;
  const before = values[(row - 1 + n) % n];
  const after = values[(row + length) % n];
  for (let i = 0; i < length; i++)
    values[(row + i) % n] = before + ((after - before) * (i + 1)) / (length + 1);
}
