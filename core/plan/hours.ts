import { minutesOf } from './fields.ts';

const day = 1440;

/** True for hours that begin when they end, midnight being one time by either name; 00:00 to 24:00 is a whole day. */
export function holdsAtNoTime(from: string, to: string): boolean {
  const [start, end] = [minutesOf(from), minutesOf(to)];
  return start % day === end % day && !(start === 0 && end === day);
}

/** Why such hours are refused: they could mean always or never. */
export const noTime = (from: string, to: string): string =>
  `expected another time than it begins at (${from}; a whole day is 00:00 to 24:00), got ${to}`;

/** Minutes from one time on to another, round midnight where need be; a whole day for 00:00 to 24:00 [min]. */
function length(from: string, to: string): number {
  const span = minutesOf(to) - minutesOf(from);
  return span > 0 ? span : span + day;
}

/** True where two spans of hours of the day share a minute; one may begin as the other ends. */
export function hoursOverlap(
  a: { readonly on: string; readonly off: string },
  b: { readonly on: string; readonly off: string },
): boolean {
  const gap = (minutesOf(b.on) - minutesOf(a.on) + 2 * day) % day;
  return gap < length(a.on, a.off) || day - gap < length(b.on, b.off);
}
