import type { Room } from '../../../core/index.ts';

export type SeriesReading =
  | { readonly ok: true; readonly values: number[]; readonly heading: string | null }
  | { readonly ok: false; readonly reason: string };

/** Least and most a room may be [°C] and the longest series, as the plan's schema has them. */
const range = { least: -40, most: 60, longest: 35136 };

/** The last column as it stands: after the last semicolon or tab, else after the last blank, else after a comma. */
function lastColumn(line: string): number {
  const cell = unquoted(line.split(/[;\t]/).at(-1) ?? '');
  const word = unquoted(cell.split(/\s+/).at(-1) ?? '');
  const whole = numberOf(word);
  return Number.isNaN(whole) ? numberOf(unquoted(word.split(',').at(-1) ?? '')) : whole;
}

const unquoted = (text: string) =>
  text
    .trim()
    .replaceAll('"', '')
    .replace(/\s*°?\s*[CF]$/, '');

/** A plain number with a decimal point or comma; NaN for anything else. */
function numberOf(text: string): number {
  const plain = text.replaceAll('−', '-');
  return /^[+-]?\d+(?:[.,]\d+)?$/.test(plain) ? Number(plain.replace(',', '.')) : NaN;
}

const quoted = (line: string) => `“${line.length > 40 ? `${line.slice(0, 40)}…` : line}”`;

/**
 * Measured temperatures from pasted text or a file: one a line, or the last column of each line. The first line
 * may be a heading. `unit` is what they are in; they are kept in °C.
 */
export function readSeries(text: string, unit: 'C' | 'F'): SeriesReading {
  const lines = text
    .replace(/^\ufeff/, '')
    .trimEnd()
    .split(/\r\n|\r|\n/);
  const refused = (index: number, why: string): SeriesReading => ({
    ok: false,
    reason: `Line ${index + 1}${lines[index].trim() === '' ? '' : `, ${quoted(lines[index].trim())},`} ${why}`,
  });
  if (text.trim() === '') return { ok: false, reason: 'There is no temperature in it.' };
  const heading = Number.isNaN(lastColumn(lines[0])) && /\p{L}/u.test(lines[0]) ? lines[0].trim() : null;
  const values: number[] = [];
  for (let index = heading === null ? 0 : 1; index < lines.length; index += 1) {
    if (lines[index].trim() === '')
      return refused(index, 'is empty. A missing hour would shift all that follow.');
    const read = lastColumn(lines[index]);
    if (Number.isNaN(read)) return refused(index, 'does not end with a number.');
    const celsius = unit === 'F' ? (read - 32) / 1.8 : read;
    if (!(celsius >= range.least && celsius <= range.most))
      return refused(index, `is no temperature of a room: give from ${range.least} to ${range.most} °C.`);
    values.push(Number(celsius.toFixed(3)));
  }
  if (values.length === 0) return { ok: false, reason: 'There is a heading and no temperature under it.' };
  if (values.length > range.longest)
    return { ok: false, reason: `It holds ${values.length} temperatures; at most ${range.longest} fit.` };
  return { ok: true, values, heading };
}

type Series = Extract<Room, { kind: 'series' }>;

/** How many temperatures there are, the last day they reach as `MM-DD`, their least and most [°C]. */
export function seriesFacts(series: Pick<Series, 'from' | 'stepHours' | 'values'>) {
  const { from, stepHours, values } = series;
  const start = Date.UTC(2025, Number(from.slice(0, 2)) - 1, Number(from.slice(3, 5)));
  const end = new Date(start + (values.length - 1) * stepHours * 3_600_000);
  const least = values.reduce((low, value) => Math.min(low, value), Infinity);
  const most = values.reduce((high, value) => Math.max(high, value), -Infinity);
  return {
    count: values.length,
    days: (values.length * stepHours) / 24,
    to: end.toISOString().slice(5, 10),
    least,
    most,
  };
}
