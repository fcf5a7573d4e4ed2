/** Formatters by time zone: making one is slow, and the table only saves time, never changes a result. */
const formatters = new Map<string, Intl.DateTimeFormat>();

function formatter(timeZone: string): Intl.DateTimeFormat {
  let made = formatters.get(timeZone);
  if (made === undefined) {
    made = new Intl.DateTimeFormat('en-US', {
      timeZone,
      calendar: 'gregory',
      numberingSystem: 'latn',
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
      second: 'numeric',
      era: 'short',
    });
    formatters.set(timeZone, made);
  }
  return made;
}

/** Civil time minus UTC [ms] in an IANA zone at an instant. */
export function civilOffset(epochMs: number, timeZone: string): number {
  const fields: Record<string, number> = {};
  for (const part of formatter(timeZone).formatToParts(epochMs)) fields[part.type] = Number(part.value);
  const { year, month, day, hour, minute, second } = fields;
  const whole = Math.floor(epochMs / 1000) * 1000;
  return Date.UTC(year, month - 1, day, hour, minute, second) - whole;
}

/** Instant [epoch ms UTC] at which the zone's clocks show a date and a time of day [min after midnight]. */
export function civilInstant(dateISO: string, minutes: number, timeZone: string): number {
  const wall = dateMs(dateISO) + minutes * 60_000;
  const guess = wall - civilOffset(wall, timeZone);
  return wall - civilOffset(guess, timeZone);
}

/** Standard (not summer) time minus UTC in a zone [h]: the lesser of the January and July offsets of a year. */
export function standardOffsetHours(timeZone: string, year = 2025): number {
  const january = civilOffset(Date.UTC(year, 0, 1), timeZone);
  const july = civilOffset(Date.UTC(year, 6, 1), timeZone);
  return Math.min(january, july) / 3_600_000;
}

/** Midnight UTC of a date written YYYY-MM-DD [epoch ms]; throws where there is no such date. */
export function dateMs(dateISO: string): number {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(dateISO);
  if (match !== null) {
    const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
    const ms = Date.UTC(year, month - 1, day);
    const back = new Date(ms);
    if (back.getUTCMonth() === month - 1 && back.getUTCDate() === day && back.getUTCFullYear() === year)
      return ms;
  }
  throw new RangeError(`expected a date as YYYY-MM-DD, got ${dateISO}`);
}

/** Day of the year, 1 for 1 January, of a date given as epoch ms UTC. */
export function dayOfYear(epochMs: number): number {
  const year = new Date(epochMs).getUTCFullYear();
  return Math.floor((epochMs - Date.UTC(year, 0, 1)) / 86_400_000) + 1;
}
