import { plainNumber, quoted } from './numbers.ts';
import type { FileHeader } from './sun-hours.ts';
import type { WeatherProblem } from './year.ts';

/** Number of header records before the first data row. */
export const epwHeaderLines = 8;

/** Reads the header records; the problems found are added to the list and null is returned. */
export function epwHeader(
  lines: readonly string[],
  problems: WeatherProblem[],
  notes: string[],
): FileHeader | null {
  const location = lines[0].replace(/^\uFEFF/, '').split(',');
  if (location[0].trim().toUpperCase() !== 'LOCATION') {
    problems.push({
      line: 1,
      message: `expected an EPW file beginning with LOCATION, got ${quoted(lines[0])}`,
    });
    return null;
  }
  const latitude = headerNumber(location[6], 'latitude', -90, 90, problems);
  const longitude = headerNumber(location[7], 'longitude', -180, 180, problems);
  const utcOffsetHours = headerNumber(location[8], 'time zone', -12, 14, problems);
  const elevation = headerNumber(location[9], 'elevation', -1000, 9999, problems);
  checkPeriods(lines, problems);
  if (latitude === null || longitude === null || utcOffsetHours === null || elevation === null) return null;
  return {
    name: stationName(location, latitude, longitude),
    origin: 'epw',
    latitude,
    longitude,
    utcOffsetHours,
    elevation,
    radiationShiftMinutes: radiationShift(lines, notes),
  };
}

function headerNumber(
  text: string | undefined,
  words: string,
  least: number,
  most: number,
  problems: WeatherProblem[],
): number | null {
  const value = plainNumber(text ?? '');
  if (value !== null && value >= least && value <= most) return value;
  problems.push({
    line: 1,
    message: `expected ${words} from ${least} to ${most}, got ${quoted(text ?? '')}`,
  });
  return null;
}

/** City, region and country where the file knows them, else its position. */
function stationName(location: readonly string[], latitude: number, longitude: number): string {
  const known = location.slice(1, 4).map((part) => part.trim());
  const parts = known.filter((part) => part !== '' && part !== '-' && part.toLowerCase() !== 'unknown');
  if (parts.length > 0) return parts.join(', ');
  return `${latitude.toFixed(2)}, ${longitude.toFixed(2)}`;
}

/** DATA PERIODS must say one record an hour. */
function checkPeriods(lines: readonly string[], problems: WeatherProblem[]): void {
  const at = lines.findIndex((line, k) => k < epwHeaderLines && /^DATA PERIODS/i.test(line));
  if (at < 0) {
    problems.push({ line: epwHeaderLines, message: 'expected a DATA PERIODS record in the header' });
    return;
  }
  const perHour = lines[at].split(',')[2] ?? '';
  if (Number(perHour) !== 1) {
    problems.push({ line: at + 1, message: `expected one record an hour, got ${quoted(perHour)}` });
  }
}

/**
 * PVGIS writes “Irradiance Time Offset (h): x” into a comment: its radiation is that of the instant x hours from the
 * row's label, so it stands for the time around that instant and not for the hour ending at the label.
 */
function radiationShift(lines: readonly string[], notes: string[]): number {
  for (let k = 0; k < epwHeaderLines; k++) {
    const match = /Irradiance Time Offset \(h\):\s*(-?\d+(?:\.\d+)?)/i.exec(lines[k]);
    if (match === null) continue;
    const minutes = (Number(match[1]) + 0.5) * 60;
    if (!(Math.abs(minutes) <= 90)) return 0;
    notes.push(
      `Radiation stands for the hour ${Math.abs(minutes).toFixed(0)} min ${minutes < 0 ? 'before' : 'after'} its row (time offset in the file's comments).`,
    );
    return minutes;
  }
  return 0;
}
