import type { TextReading } from './text.ts';

/** Month names as the system says them, January first. */
export const monthNames: readonly string[] = Array.from({ length: 12 }, (_, month) =>
  new Date(Date.UTC(2025, month, 1)).toLocaleDateString(undefined, { month: 'long', timeZone: 'UTC' }),
);

const englishMonths = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
/** Days of each month of any year, the leap day among them. */
const lengths = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const two = (number: number) => String(number).padStart(2, '0');

/** `12-01` as `1 December`. */
export function dayWords(day: string): string {
  return `${Number(day.slice(3, 5))} ${monthNames[Number(day.slice(0, 2)) - 1]}`;
}

/** Month 0–11 of its name or the first three letters of it, in the system's language or in English; −1 for others. */
function monthOf(word: string): number {
  const plain = word.toLowerCase();
  if (plain.length < 3) return -1;
  const own = monthNames.findIndex((name) => name.toLowerCase().startsWith(plain));
  return own >= 0 ? own : englishMonths.indexOf(plain.slice(0, 3));
}

/** A day of any year as `12-01` from `1 December`, `Dec 1`, `1. Dec` or `12-01`. */
export function readDay(text: string): TextReading {
  const typed = text.trim();
  const refused = { ok: false, reason: `“${typed}” is not a day. Give one such as 1 December.` } as const;
  const figures = /^(\d{1,2})-(\d{1,2})$/.exec(typed);
  const dayFirst = /^(\d{1,2})\.?\s*([^\d\s.]+)\.?$/u.exec(typed);
  const monthFirst = /^([^\d\s.]+)\.?\s*(\d{1,2})$/u.exec(typed);
  const found = figures
    ? [Number(figures[1]) - 1, Number(figures[2])]
    : dayFirst
      ? [monthOf(dayFirst[2]), Number(dayFirst[1])]
      : monthFirst
        ? [monthOf(monthFirst[1]), Number(monthFirst[2])]
        : null;
  if (!found) return refused;
  const [month, day] = found;
  if (!(month >= 0 && month <= 11 && day >= 1 && day <= lengths[month])) return refused;
  return { ok: true, value: `${two(month + 1)}-${two(day)}` };
}
