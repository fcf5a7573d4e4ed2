/** The season's days as weeks, months and dates. Day 0 is the season's first civil day. */
export const daysInSeason = 365;
/** The season as 52 weeks; the last takes the odd day. */
export const weeksInSeason = 52;
const msPerDay = 86_400_000;

export function weekOf(day: number): number {
  return Math.min(weeksInSeason - 1, Math.max(0, Math.floor(day / 7)));
}

export function firstDayOf(week: number): number {
  return week * 7;
}

/** One past the week's last day. */
export function endDayOf(week: number): number {
  return week === weeksInSeason - 1 ? daysInSeason : week * 7 + 7;
}

/** The civil date of a day, as an instant at 00:00 UTC of that date: format it in UTC. */
export function dateOf(startDate: string, day: number): Date {
  return new Date(Date.parse(`${startDate}T00:00:00Z`) + day * msPerDay);
}

const dayFormats = {
  long: new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'long', timeZone: 'UTC' }),
  short: new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'short', timeZone: 'UTC' }),
};
const monthFormat = new Intl.DateTimeFormat(undefined, { month: 'short', timeZone: 'UTC' });

/** Like `12 January`. */
export function formatDay(startDate: string, day: number, month: 'long' | 'short' = 'long'): string {
  return dayFormats[month].format(dateOf(startDate, day));
}

export interface Month {
  readonly name: string;
  readonly fromDay: number;
  readonly toDay: number;
}

/** The season's months with the days they take. */
export function monthsOf(startDate: string): Month[] {
  const months: Month[] = [];
  let fromDay = 0;
  for (let day = 1; day <= daysInSeason; day += 1) {
    if (day < daysInSeason && dateOf(startDate, day).getUTCDate() !== 1) continue;
    const name = monthFormat.format(dateOf(startDate, fromDay));
    months.push({ name, fromDay, toDay: day });
    fromDay = day;
  }
  return months;
}

/** A sum of days as whole weeks, or as days where it is less than two weeks. */
export function formatDays(days: number): string {
  const count = Math.round(Math.abs(days));
  if (count < 14) return `${count} day${count === 1 ? '' : 's'}`;
  return `${Math.round(count / 7)} weeks`;
}
