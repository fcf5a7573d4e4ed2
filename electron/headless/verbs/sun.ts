import { sunPosition } from '../../../core/index.ts';
import { bytesOf } from '../files.ts';
import { neededNumber, neededText, readOptions } from '../options.ts';
import { RefusedInput } from '../outcome.ts';
import { serialise } from '../serialise.ts';
import { isCalendarDate } from '../span.ts';
import type { World } from '../world.ts';

const options = {
  latitude: { type: 'string' },
  longitude: { type: 'string' },
  elevation: { type: 'string' },
  at: { type: 'string' },
} as const;

/** Date and time with a zone, such as 2026-12-21T12:00:00Z or 2026-12-21T12:00+01:00. */
const instant = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2})$/;

/** `sun`: position of the sun at each instant of a file, one a line. */
export function sun(words: readonly string[], world: World): void {
  const given = readOptions(words, options, []);
  const site = {
    latitude: neededNumber(given, 'latitude', -90, 90),
    longitude: neededNumber(given, 'longitude', -180, 180),
    elevation: neededNumber(given, 'elevation', -430, 9000),
  };
  const path = neededText(given, 'at');
  const text = new TextDecoder().decode(bytesOf(world, path, 10_000_000));
  const lines = text.split(/\r?\n/).map((line, index) => ({ line: line.trim(), number: index + 1 }));
  const rows = lines
    .filter(({ line }) => line !== '')
    .map(({ line, number }) => ({ at: line, ...sunPosition(instantOf(line, number, path), site) }));
  world.out(serialise(rows));
}

function instantOf(line: string, number: number, path: string): number {
  if (/^-?\d{1,15}$/.test(line)) return Number(line);
  const epochMs = instant.test(line) ? Date.parse(line) : NaN;
  // Date.parse takes the 30th of February for the 2nd of March: the date is asked back.
  const real = Number.isFinite(epochMs) && isCalendarDate(line.slice(0, 10));
  if (!real) {
    const message = `expected an instant such as 2026-12-21T12:00:00Z, or milliseconds since 1970, got ${line.slice(0, 60)}`;
    throw new RefusedInput(`${path} cannot be used.`, [{ path: `line ${number}`, message }]);
  }
  return epochMs;
}
