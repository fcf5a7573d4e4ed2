const dayMs = 86_400_000;
const hourMs = 3_600_000;

/** Days before each month of a common year. */
export const daysBeforeMonth = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

/** Day of a common year (0 = 1 January) of a day written `MM-DD`; 29 February counts as 1 March. */
export function dayOfMonthDay(monthDay: string): number {
  return daysBeforeMonth[Number(monthDay.slice(0, 2)) - 1] + Number(monthDay.slice(3, 5)) - 1;
}

/** First day of the season as day of a common year (0 = 1 January): 1 August, south of the equator 1 February. */
export function seasonStartDay(latitude: number): number {
  return latitude >= 0 ? 212 : 31;
}

/** First and last day index of the half-year that is winter, counted from the season's first day (October to March, or April to September). */
export function winterSpan(latitude: number): { from: number; to: number } {
  return latitude >= 0 ? { from: 61, to: 242 } : { from: 59, to: 241 };
}

/** ISO date of a day of the season whose first day begins at `startMs` (standard time, shifted by `offsetHours`). */
export function isoDate(startMs: number, offsetHours: number, day: number): string {
  return new Date(startMs + offsetHours * hourMs + day * dayMs).toISOString().slice(0, 10);
}

/** Offset of a time zone from UTC at an instant [minutes], from the runtime's zone data. */
export function zoneOffset(formatter: Intl.DateTimeFormat, ms: number): number {
  const parts = formatter.formatToParts(ms);
  const value = (type: string) => Number(parts.find((part) => part.type === type)?.value);
  const local = Date.UTC(value('year'), value('month') - 1, value('day'), value('hour'), value('minute'));
  return Math.round((local - ms) / 60_000);
}

/** A formatter that `zoneOffset` can read. */
export function zoneFormatter(timeZone: string): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat('en-GB', {
    timeZone,
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    hourCycle: 'h23',
  });
}

/**
 * Civil minutes after midnight at the middle of each step, clock changes included.
 * @param startMs beginning of the first step [epoch ms UTC]; days whose offset changes are read hour by hour
 */
export function civilMinutes(startMs: number, stepMinutes: number, n: number, timeZone: string): Uint16Array {
  const formatter = zoneFormatter(timeZone);
  const minutes = new Uint16Array(n);
  const perDay = (24 * 60) / stepMinutes;
  const stepMs = stepMinutes * 60_000;
  let offset = zoneOffset(formatter, startMs);
  for (let day = 0; day * perDay < n; day++) {
    const dayStart = startMs + day * dayMs;
    const atEnd = zoneOffset(formatter, dayStart + dayMs);
    for (let k = 0; k < perDay && day * perDay + k < n; k++) {
      const middle = dayStart + (k + 0.5) * stepMs;
      const here = atEnd === offset ? offset : zoneOffset(formatter, Math.floor(middle / hourMs) * hourMs);
      const local = Math.floor(middle / 60_000) + here;
      minutes[day * perDay + k] = ((local % 1440) + 1440) % 1440;
    }
    offset = atEnd;
  }
  return minutes;
}

/** True where `minute` lies from `from` (inclusive) to `to` (exclusive) [minutes], past midnight where `to` is not after `from`. */
export function within(minute: number, from: number, to: number): boolean {
  if (from === to) return false;
  return from < to ? minute >= from && minute < to : minute >= from || minute < to;
}

/** Calendar month, 1 January … 12 December, of a day of the season at a latitude. */
export function monthOfSeasonDay(day: number, latitude: number): number {
  const ofYear = (seasonStartDay(latitude) + day) % 365;
  let month = 1;
  while (daysBeforeMonth[month] <= ofYear) month += 1;
  return month;
}
