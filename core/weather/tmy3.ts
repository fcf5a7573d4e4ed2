import { completeYear } from './complete.ts';
import { plainNumber, quoted } from './numbers.ts';
import { emptyTable, hourInWords, missingHours, rowOf, type ColumnName, type RawTable } from './raw-table.ts';
import type { FileHeader } from './sun-hours.ts';
import type { WeatherProblem, WeatherReading } from './year.ts';

/** Columns of a TMY3 file by their heading (Wilcox & Marion 2008, NREL/TP-581-43156, table 1-2) and the factor to our unit. */
const tmy3Columns: readonly {
  heading: string;
  column: ColumnName;
  scale: number;
  least: number;
  most: number;
}[] = [
  { heading: 'GHI (W/m^2)', column: 'globalHorizontal', scale: 1, least: 0, most: 1800 },
  { heading: 'DNI (W/m^2)', column: 'beamNormal', scale: 1, least: 0, most: 1500 },
  { heading: 'DHI (W/m^2)', column: 'diffuseHorizontal', scale: 1, least: 0, most: 1500 },
  { heading: 'TotCld (tenths)', column: 'cloudCover', scale: 0.1, least: 0, most: 10 },
  { heading: 'OpqCld (tenths)', column: 'cloudCover', scale: 0.1, least: 0, most: 10 },
  { heading: 'Dry-bulb (C)', column: 'dryBulb', scale: 1, least: -90, most: 70 },
  { heading: 'Dew-point (C)', column: 'dewPoint', scale: 1, least: -90, most: 70 },
  { heading: 'RHum (%)', column: 'humidity', scale: 0.01, least: 0, most: 110 },
  { heading: 'Pressure (mbar)', column: 'pressure', scale: 100, least: 310, most: 1200 },
  { heading: 'Wspd (m/s)', column: 'windSpeed', scale: 1, least: 0, most: 100 },
];

/** TMY3's code for missing. */
const missing = -9900;

const mostProblems = 20;

/** A comma-separated line; a quoted field may hold commas. */
function cells(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map((match) => match[1] ?? match[2] ?? '');
}

/** Reads a TMY3 file (two header lines, 8,760 hourly rows; time 01:00–24:00 is the hour ending then). Result as `readEpw`. */
export function readTmy3(text: string): WeatherReading {
  const lines = text.split(/\r\n|\n|\r/);
  while (lines.length > 0 && lines[lines.length - 1].trim() === '') lines.pop();
  const problems: WeatherProblem[] = [];
  if (lines.length < 3)
    return {
      ok: false,
      problems: [{ line: lines.length, message: 'expected two header lines and hourly rows' }],
    };
  const header = tmy3Header(lines[0], problems);
  const headings = cells(lines[1]).map((heading) => heading.trim());
  for (const needed of [
    'Date (MM/DD/YYYY)',
    'Time (HH:MM)',
    ...tmy3Columns.map((column) => column.heading),
  ]) {
    if (!headings.includes(needed)) problems.push({ line: 2, message: `expected a column headed ${needed}` });
  }
  if (header === null || problems.length > 0) return { ok: false, problems };
  const table = emptyTable();
  for (let k = 2; k < lines.length && problems.length < mostProblems; k++) {
    if (lines[k].trim() !== '') readRow(cells(lines[k]), headings, k + 1, table, problems);
  }
  if (problems.length === 0) problems.push(...missingHours(table).slice(0, mostProblems));
  if (problems.length > 0) return { ok: false, problems };
  return completeYear(table, header, []);
}

function tmy3Header(line: string, problems: WeatherProblem[]): FileHeader | null {
  const [, name, region, zone, latitude, longitude, elevation] = cells(line);
  const values = [zone, latitude, longitude, elevation].map((part) => plainNumber(part ?? ''));
  const limits = [14, 90, 180, 9999];
  const good = values.every((value, k) => value !== null && Math.abs(value) <= limits[k]);
  if (!good) {
    problems.push({
      line: 1,
      message: `expected a TMY3 station line with time zone, latitude, longitude and elevation, got ${quoted(line)}`,
    });
    return null;
  }
  const [utcOffsetHours, north, east, height] = values as number[];
  return {
    name: [name.trim(), region.trim()].filter((part) => part !== '').join(', '),
    origin: 'tmy3',
    latitude: north,
    longitude: east,
    elevation: height,
    utcOffsetHours,
    radiationShiftMinutes: 0,
  };
}

function readRow(
  fields: readonly string[],
  headings: readonly string[],
  line: number,
  table: RawTable,
  problems: WeatherProblem[],
): void {
  const row = rowAt(
    fields[headings.indexOf('Date (MM/DD/YYYY)')],
    fields[headings.indexOf('Time (HH:MM)')],
    line,
    problems,
  );
  if (row === undefined) return;
  if (row === null) {
    table.leapHours++;
    return;
  }
  if (table.line[row] !== 0) {
    problems.push({ line, message: `${hourInWords(row)} is given twice, first on line ${table.line[row]}` });
    return;
  }
  table.line[row] = line;
  for (const { heading, column, scale, least, most } of tmy3Columns) {
    const text = fields[headings.indexOf(heading)];
    const value = text === undefined ? null : plainNumber(text);
    if (value === null) {
      problems.push({ line, message: `expected a number under ${heading}, got ${quoted(text ?? '')}` });
    } else if (Number.isNaN(value) || value === missing) {
      continue;
    } else if (!(value >= least && value <= most)) {
      problems.push({ line, message: `expected ${heading} from ${least} to ${most}, got ${value}` });
    } else {
      table.columns[column][row] = column === 'humidity' ? Math.min(1, value * scale) : value * scale;
    }
  }
}

/** Row for a line's date and time; null on 29 February, undefined where a problem was found. */
function rowAt(
  date: string,
  time: string,
  line: number,
  problems: WeatherProblem[],
): number | null | undefined {
  const match = /^(\d{1,2})\/(\d{1,2})\/\d{4} (\d{1,2}):\d{2}$/.exec(
    `${(date ?? '').trim()} ${(time ?? '').trim()}`,
  );
  if (match === null) {
    problems.push({ line, message: `expected MM/DD/YYYY,HH:MM, got ${quoted(`${date},${time}`)}` });
    return undefined;
  }
  try {
    return rowOf(Number(match[1]), Number(match[2]), Number(match[3]));
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    problems.push({ line, message: error.message });
    return undefined;
  }
}
