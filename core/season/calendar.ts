import type { OutdoorSteps } from '../weather/index.ts';

const dayMs = 86_400_000;
const hourMs = 3_600_000;

/** Days before each month of a common year. */
export const daysBeforeMonth = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

/** Months in words, January first. */
export const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** Day of a common year (0 = 1 January) of a day written `MM-DD`; 29 February counts as 1 March. */
export function dayOfMonthDay(monthDay: string): number {
  return daysBeforeMonth[Number(monthDay.slice(0, 2)) - 1] + Number(monthDay.slice(3, 5)) - 1;
}

/** First day of a season and the half-year of it that is winter. */
export interface SeasonSpan {
  /** Day of a common year, 0 = 1 January. */
  readonly startDay: number;
  /** First and last day index of the winter half-year, counted from `startDay`. */
  readonly winterFrom: number;
  readonly winterTo: number;
}

/** Latitude of the tropics: nearer to the equator "winter" is what the climate makes it [degrees]. */
export const tropic = 23.44;

/** Least difference of the warmest and the coolest month for the climate to have a winter of its own [K] (judgement, no source). */
export const leastSwing = 1.5;

/**
 * The season of a site: from 1 August, south of the equator from 1 February, with October to March, or April to
 * September, as winter. Between the tropics winter is the six whole months running that are coolest outdoors, and
 * the season begins two months before; where all months are alike it goes by the hemisphere.
 */
export function seasonSpan(
  latitude: number,
  weather: Pick<OutdoorSteps, 'dryBulb' | 'stepMinutes'>,
): SeasonSpan {
  const usual = latitude >= 0 ? 9 : 3;
  const first = Math.abs(latitude) < tropic ? (coolestHalf(weather) ?? usual) : usual;
  const startDay = daysBeforeMonth[(first + 10) % 12];
  const from = (daysBeforeMonth[first] - startDay + 365) % 365;
  const end = (daysBeforeMonth[(first + 6) % 12] - startDay + 365) % 365;
  return { startDay, winterFrom: from, winterTo: (end + 364) % 365 };
}

/** First month (0 = January) of the six running that are coolest; null where the months are alike. */
function coolestHalf({ dryBulb, stepMinutes }: Pick<OutdoorSteps, 'dryBulb' | 'stepMinutes'>): number | null {
  const perDay = 1440 / stepMinutes;
  const means = Array.from({ length: 12 }, (_, month) => {
    const days = dryBulb.subarray(daysBeforeMonth[month] * perDay, daysBeforeMonth[month + 1] * perDay);
    return days.reduce((sum, value) => sum + value, 0) / days.length;
  });
  if (!(Math.max(...means) - Math.min(...means) >= leastSwing)) return null;
  const half = (first: number) =>
    [0, 1, 2, 3, 4, 5].reduce((sum, month) => sum + means[(first + month) % 12], 0);
  return means.map((_, first) => first).reduce((best, first) => (half(first) < half(best) ? first : best));
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

/** Calendar month, 1 January … 12 December, of a day of the season that begins on `startDay` (0 = 1 January). */
export function monthOfSeasonDay(day: number, startDay: number): number {
  const ofYear = (startDay + day) % 365;
  let month = 1;
  while (daysBeforeMonth[month] <= ofYear) month += 1;
  return month;
}
