/**
 * Readings of the roof space in `../shared/data/measured/attic-60N` (CC BY 4.0, source: TRH-database; outdoor weather:
 * Finnish Meteorological Institute, open data, CC BY 4.0). Labels are in UTC+2 and name the moment of the reading, of
 * the radiation too: its centre over the 19 months lies at 12.36 h by the labels, the sun's mean noon at 12.33 h.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The labels' clock minus UTC [h]. */
export const atticOffsetHours = 2;

const hourMs = 3_600_000;

/** Readings an hour apart, aligned; NaN where a cell is blank or a logger had not begun or had ended. */
export interface AtticReadings {
  /** Moment of the first reading [epoch ms UTC], and how many hours follow. */
  readonly startMs: number;
  readonly n: number;
  /** Air [°C], relative humidity [0–1], sun on the horizontal [W m⁻²], wind at 10 m [m s⁻¹], precipitation [mm h⁻¹]. */
  readonly outdoor: Float64Array;
  readonly humidity: Float64Array;
  readonly diffuse: Float64Array;
  readonly global: Float64Array;
  readonly wind: Float64Array;
  readonly precipitation: Float64Array;
  /** Air in the middle of the roof space at half its height, and in the room below [°C]. */
  readonly attic: Float64Array;
  readonly room: Float64Array;
}

/** Longest run of blank cells bridged in a straight line [h]. */
const longestGap = 6;

export function readAttic(folder: string): AtticReadings {
  const weather = readTable(readFileSync(join(folder, 'R7-fmi.csv'), 'utf8'));
  const attic = readTable(readFileSync(join(folder, 'R7-roofmiddle_airmiddle.csv'), 'utf8'));
  const room = readTable(readFileSync(join(folder, 'R7-indoor1.csv'), 'utf8'));
  const { startMs } = weather;
  const n = weather.moments;
  const outdoors = (name: string) => bridged(columnOf(weather, name, startMs, n), name);
  return {
    startMs,
    n,
    outdoor: outdoors('Te'),
    humidity: outdoors('RHe').map((percent) => percent / 100),
    diffuse: outdoors('Rdif'),
    global: outdoors('Rglob'),
    wind: outdoors('ws'),
    precipitation: outdoors('precip'),
    attic: columnOf(attic, 'T', startMs, n),
    room: columnOf(room, 'T', startMs, n),
  };
}

interface Table {
  readonly startMs: number;
  /** Hours from the first to the last row, both counted. */
  readonly moments: number;
  readonly names: readonly string[];
  readonly rows: ReadonlyMap<number, readonly number[]>;
}

/** A table with a `t_UTC+2` column first; blank cells become NaN, anything else that is no number is an error. */
export function readTable(text: string): Table {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  const names = lines[0].split(',').map((name) => name.trim());
  if (names[0] !== 't_UTC+2') throw new RangeError(`expected a first column t_UTC+2, got ${names[0]}`);
  const rows = new Map<number, readonly number[]>();
  for (const line of lines.slice(1)) {
    const cells = line.split(',');
    if (cells.length !== names.length) throw new RangeError(`expected ${names.length} cells, got ${line}`);
    rows.set(momentOf(cells[0]), cells.slice(1).map(numberOf));
  }
  const moments = [...rows.keys()].sort((a, b) => a - b);
  const startMs = moments[0];
  return {
    startMs,
    moments: (moments[moments.length - 1] - startMs) / hourMs + 1,
    names: names.slice(1),
    rows,
  };
}

/** Moment of a label such as `2010-11-28 01:00:00` [epoch ms UTC]. */
function momentOf(label: string): number {
  const moment = Date.parse(`${label.trim().replace(' ', 'T')}Z`) - atticOffsetHours * hourMs;
  if (!(moment % hourMs === 0)) throw new RangeError(`expected a full hour, got ${label}`);
  return moment;
}

function numberOf(cell: string): number {
  if (cell.trim() === '') return NaN;
  const value = Number(cell);
  if (!Number.isFinite(value)) throw new RangeError(`expected a number, got ${cell}`);
  return value;
}

function columnOf(table: Table, name: string, startMs: number, n: number): Float64Array {
  const at = table.names.indexOf(name);
  if (at < 0) throw new RangeError(`expected a column ${name}, got ${table.names.join(', ')}`);
  return Float64Array.from({ length: n }, (_, i) => table.rows.get(startMs + i * hourMs)?.[at] ?? NaN);
}

/** Short runs of missing readings in a straight line; a longer one is an error. */
function bridged(values: Float64Array, name: string): Float64Array {
  let last = -1;
  for (let i = 0; i < values.length; i++) {
    if (Number.isNaN(values[i])) continue;
    if (last < 0 ? i > 0 : i - last - 1 > longestGap)
      throw new RangeError(`expected at most ${longestGap} hours without ${name}, got ${i - last - 1}`);
    for (let k = last + 1; k < i; k++)
      values[k] = values[last] + ((values[i] - values[last]) * (k - last)) / (i - last);
    last = i;
  }
  return values;
}

/** Index of the reading at a moment of the labels' clock, such as `2010-12-01 00:00`. */
export function indexOf(readings: AtticReadings, label: string): number {
  return (momentOf(`${label}:00`) - readings.startMs) / hourMs;
}

/** True from 22 to 5 o'clock by the labels. */
export function isNight(readings: AtticReadings, index: number): boolean {
  const hour = new Date(readings.startMs + (index + atticOffsetHours) * hourMs).getUTCHours();
  return hour >= 22 || hour < 5;
}
