import { hoursOfYear, monthStarts, type WeatherProblem } from './year.ts';

/** Names of the columns a weather file may carry. Units as in `WeatherYear`; humidity and cloud 0–1. */
export const columnNames = [
  'dryBulb',
  'dewPoint',
  'humidity',
  'pressure',
  'globalHorizontal',
  'beamNormal',
  'diffuseHorizontal',
  'skyLongWave',
  'windSpeed',
  'cloudCover',
] as const;
export type ColumnName = (typeof columnNames)[number];

/** A year as read: NaN where the file says missing. `line` holds each hour's line in the file, 0 where none was read. */
export interface RawTable {
  readonly columns: Readonly<Record<ColumnName, Float64Array>>;
  readonly line: Int32Array;
  leapHours: number;
}

export function emptyTable(): RawTable {
  const column = (): Float64Array => new Float64Array(hoursOfYear).fill(NaN);
  return {
    columns: {
      dryBulb: column(),
      dewPoint: column(),
      humidity: column(),
      pressure: column(),
      globalHorizontal: column(),
      beamNormal: column(),
      diffuseHorizontal: column(),
      skyLongWave: column(),
      windSpeed: column(),
      cloudCover: column(),
    },
    line: new Int32Array(hoursOfYear),
    leapHours: 0,
  };
}

/** Row of the nominal year for an hour 1–24 of a date; null on 29 February. Throws on a date that does not exist. */
export function rowOf(month: number, day: number, hour: number): number | null {
  const whole = Number.isInteger(month) && Number.isInteger(day) && Number.isInteger(hour);
  if (!whole || !(month >= 1 && month <= 12)) throw new RangeError(`expected a month 1 to 12, got ${month}`);
  if (month === 2 && day === 29 && hour >= 1 && hour <= 24) return null;
  const length = monthStarts[month] - monthStarts[month - 1];
  if (!(day >= 1 && day <= length)) throw new RangeError(`expected a day 1 to ${length}, got ${day}`);
  if (!(hour >= 1 && hour <= 24)) throw new RangeError(`expected an hour 1 to 24, got ${hour}`);
  return (monthStarts[month - 1] + day - 1) * 24 + hour - 1;
}

const monthNames =
  'January February March April May June July August September October November December'.split(' ');

/** An hour of the nominal year in words, as the file counts it: `2 July, hour 14`. */
export function hourInWords(row: number): string {
  const day = Math.floor(row / 24);
  let month = 0;
  while (day >= monthStarts[month + 1]) month++;
  return `${day - monthStarts[month] + 1} ${monthNames[month]}, hour ${(row % 24) + 1}`;
}

/** Problems of hours that no line gave, run by run; the line named is that of the hour before the gap. */
export function missingHours(table: RawTable): WeatherProblem[] {
  const problems: WeatherProblem[] = [];
  let row = 0;
  while (row < hoursOfYear) {
    if (table.line[row] !== 0) {
      row++;
      continue;
    }
    const from = row;
    while (row < hoursOfYear && table.line[row] === 0) row++;
    const count = row - from;
    const line = from === 0 ? 0 : table.line[from - 1];
    const what =
      count === 1
        ? `${hourInWords(from)} is missing`
        : `${count} hours are missing, from ${hourInWords(from)}`;
    problems.push({ line, message: line === 0 ? what : `${what}, after this line` });
  }
  return problems;
}
