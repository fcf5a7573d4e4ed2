import { readFileSync } from 'node:fs';
import { sunPosition } from '../../core/sun/index.ts';

/** Columns of a file of the glass compartments by the instant [epoch ms], blanks as null. */
export type Readings = ReadonlyMap<number, Readonly<Record<string, number | null>>>;

/** The files keep Central European standard time (the sun's noon falls near 13 h) and end before the clocks change. */
const offsetMs = 3_600_000;

/** Reads a file of `measured/glasshouse-52N-winter`: header names with trailing blanks, dates as month/day/year. */
export function readGlasshouse(file: string): Readings {
  const lines = readFileSync(file, 'utf8')
    .split(/\r?\n/)
    .filter((line) => line !== '');
  const names = lines[0].split(',').map((name) => name.trim());
  const readings = new Map<number, Record<string, number | null>>();
  for (const line of lines.slice(1)) {
    const cells = line.split(',');
    const [month, day, year, hour, minute] = cells[0].split(/[/ :]/).map(Number);
    const row: Record<string, number | null> = {};
    for (let i = 1; i < names.length; i++) row[names[i]] = cells[i].trim() === '' ? null : Number(cells[i]);
    readings.set(Date.UTC(year, month - 1, day, hour, minute) - offsetMs, row);
  }
  return readings;
}

/** Day of the file's own calendar an instant belongs to, as days since 1970. */
export const fileDay = (ms: number): number => Math.floor((ms + offsetMs) / 86_400_000);

/** Near the middle of the Netherlands: the file says no more than 52° N (longitude an estimate, 0.1 of clearness at most at low sun). */
const somewhere = { latitude: 52, longitude: 5, elevation: 0 };

/** Sine of the sun's height and extraterrestrial irradiance facing the sun [W m⁻²]. */
export function sunOver(ms: number): { sine: number; extraterrestrial: number } {
  const sun = sunPosition(ms, somewhere);
  return {
    sine: Math.cos((sun.apparentZenith * Math.PI) / 180),
    extraterrestrial: sun.extraterrestrialNormal,
  };
}
