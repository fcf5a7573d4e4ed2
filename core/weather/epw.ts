import { completeYear } from './complete.ts';
import { decodeText } from './decode.ts';
import { epwFields, epwLeastFields, leastLongWave, type EpwField } from './epw-fields.ts';
import { epwHeader, epwHeaderLines } from './epw-header.ts';
import { plainNumber, quoted } from './numbers.ts';
import { emptyTable, hourInWords, missingHours, rowOf, type RawTable } from './raw-table.ts';
import type { WeatherProblem, WeatherReading } from './year.ts';

/** Reading stops after this many problems: more would say nothing new. */
const mostProblems = 20;

/** Rows no year can have, with some room: a longer file is not read at all. */
const mostLines = 20_000;

/** Bytes of an EPW file, UTF-8 or Latin-1. */
export function readEpwBytes(bytes: Uint8Array): WeatherReading {
  return readEpw(decodeText(bytes));
}

/**
 * Reads an EnergyPlus weather file: a year of hourly rows, hour 1–24 being the hour ending then, missing codes field
 * by field, months from any years, 29 February left out. Gives the year or what is wrong with it, line by line.
 */
export function readEpw(text: string): WeatherReading {
  const lines = text.split(/\r\n|\n|\r/);
  while (lines.length > 0 && lines[lines.length - 1].trim() === '') lines.pop();
  if (lines.length <= epwHeaderLines) {
    return {
      ok: false,
      problems: [{ line: lines.length, message: 'expected eight header lines and hourly rows' }],
    };
  }
  if (lines.length > mostLines) {
    return {
      ok: false,
      problems: [{ line: mostLines, message: 'too many lines for a year of hourly rows' }],
    };
  }
  const problems: WeatherProblem[] = [];
  const notes: string[] = [];
  const header = epwHeader(lines, problems, notes);
  if (header === null || problems.length > 0) return { ok: false, problems };
  const table = emptyTable();
  for (let k = epwHeaderLines; k < lines.length && problems.length < mostProblems; k++) {
    if (lines[k].trim() !== '') readRow(lines[k], k + 1, table, problems);
  }
  if (problems.length === 0) problems.push(...missingHours(table).slice(0, mostProblems));
  if (problems.length > 0) return { ok: false, problems };
  return completeYear(table, header, notes);
}

function readRow(text: string, line: number, table: RawTable, problems: WeatherProblem[]): void {
  const fields = text.split(',');
  if (fields.length < epwLeastFields) {
    problems.push({ line, message: `expected 35 fields, got ${fields.length}` });
    return;
  }
  const row = rowAt(fields, line, problems);
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
  for (const field of epwFields) readField(field, fields[field.index], row, line, table, problems);
}

/** Row of the nominal year for a line's date; null on 29 February, undefined where a problem was found. */
function rowAt(
  fields: readonly string[],
  line: number,
  problems: WeatherProblem[],
): number | null | undefined {
  const date = [fields[1], fields[2], fields[3]].map((part) => plainNumber(part));
  if (date.some((part) => part === null || Number.isNaN(part))) {
    problems.push({
      line,
      message: `expected month, day and hour as numbers, got ${quoted(fields.slice(1, 4).join(','))}`,
    });
    return undefined;
  }
  try {
    return rowOf(date[0] as number, date[1] as number, date[2] as number);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    problems.push({ line, message: error.message });
    return undefined;
  }
}

function readField(
  field: EpwField,
  text: string,
  row: number,
  line: number,
  table: RawTable,
  problems: WeatherProblem[],
): void {
  const value = plainNumber(text);
  if (value === null) {
    problems.push({ line, message: `expected a number for ${field.words}, got ${quoted(text)}` });
    return;
  }
  if (Number.isNaN(value) || value >= field.missingFrom) return;
  if (field.column === 'skyLongWave' && value < leastLongWave) return;
  if (!(value >= field.least && value <= field.most)) {
    problems.push({
      line,
      message: `expected ${field.words} from ${field.least} to ${field.most}, got ${value}`,
    });
    return;
  }
  table.columns[field.column][row] = Math.min(
    value * field.scale,
    field.column === 'humidity' ? 1 : Infinity,
  );
}
