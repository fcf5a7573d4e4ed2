export type TextReading =
  { readonly ok: true; readonly value: string } | { readonly ok: false; readonly reason: string };

/** A name: 1 to `longest` characters, blanks at the ends dropped. */
export function readName(text: string, longest: number): TextReading {
  const value = text.trim();
  if (value === '') return { ok: false, reason: 'A name is missing.' };
  if (value.length > longest)
    return { ok: false, reason: `That is ${value.length} letters long; at most ${longest} fit.` };
  return { ok: true, value };
}

/** A time of day as `07:00` from `7`, `7:30`, `7.30`, `19h` or `7:30 pm`; up to 24:00. */
export function readClock(text: string): TextReading {
  const match = /^(\d{1,2})(?:\s*[:.h]\s*(\d{2})?)?\s*(am|pm)?$/i.exec(text.trim());
  const refused: TextReading = {
    ok: false,
    reason: `“${text.trim()}” is not a time. Give one such as 7:30, from 0:00 to 24:00.`,
  };
  if (!match) return refused;
  const half = match[3]?.toLowerCase();
  let hours = Number(match[1]);
  const minutes = Number(match[2] ?? 0);
  if (half && (hours < 1 || hours > 12)) return refused;
  if (half) hours = (hours % 12) + (half === 'pm' ? 12 : 0);
  if (minutes > 59 || hours > 24 || (hours === 24 && minutes > 0)) return refused;
  return { ok: true, value: `${String(hours).padStart(2, '0')}:${String(minutes).padStart(2, '0')}` };
}

/** A reading that is good by itself and that `refuse` takes too. */
export function checked(reading: TextReading, refuse?: (value: string) => string | null): TextReading {
  const reason = reading.ok ? (refuse?.(reading.value) ?? null) : null;
  return reason === null ? reading : { ok: false, reason };
}
