import type { SeasonResult } from '../../core/index.ts';
import { WrongUse } from './outcome.ts';

const dayMs = 86_400_000;

/** Days of the season from `from` to `to`, both included. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

type SeasonDates = Pick<SeasonResult, 'startDate' | 'days'>;

/** ISO date of a day of the season. */
export function dateOf(season: SeasonDates, day: number): string {
  return new Date(Date.parse(`${season.startDate}T00:00:00Z`) + day * dayMs).toISOString().slice(0, 10);
}

/** Refuses what is no date before a season is run for it. */
export function checkDateForm(option: string, text: string | null): void {
  const full = text?.length === 5 ? `2025-${text}` : text;
  if (full === null || isCalendarDate(full)) return;
  throw new WrongUse(`--${option}: expected a date as YYYY-MM-DD or MM-DD, got ${text}`);
}

/** True for a date that is in the calendar, YYYY-MM-DD. */
export function isCalendarDate(text: string): boolean {
  const ms = Date.parse(`${text}T00:00:00Z`);
  return Number.isFinite(ms) && new Date(ms).toISOString().slice(0, 10) === text;
}

/** The days that two dates name (MM-DD, or YYYY-MM-DD inside the season); the whole season by default. */
export function spanOf(season: SeasonDates, from: string | null, to: string | null): Span {
  const span = {
    from: from === null ? 0 : dayOf(season, 'from', from),
    to: to === null ? season.days - 1 : dayOf(season, 'to', to),
  };
  if (span.from > span.to) throw new WrongUse(`--from ${from} comes after --to ${to} in the season`);
  return span;
}

export function dayOf(season: SeasonDates, option: string, text: string): number {
  const form = text.length === 5 ? 5 : 0;
  for (let day = 0; day < season.days; day++) if (dateOf(season, day).slice(form) === text) return day;
  const last = dateOf(season, season.days - 1);
  throw new WrongUse(
    `--${option}: expected a date from ${season.startDate} to ${last}, or its month and day as MM-DD, got ${text}`,
  );
}

/** The season with every daily series cut to the span; totals stay those of the whole season. */
export function cutTo(season: SeasonResult, span: Span): SeasonResult {
  if (span.from === 0 && span.to === season.days - 1) return season;
  const cut = <T extends object>(part: T): T => {
    const entries = Object.entries(part).map(([name, value]) => [
      name,
      isDaily(value, season.days) ? value.slice(span.from, span.to + 1) : value,
    ]);
    return Object.fromEntries(entries) as T;
  };
  return {
    ...season,
    outdoor: cut(season.outdoor),
    places: season.places.map((place) => ({ ...place, daily: cut(place.daily), lots: place.lots.map(cut) })),
  };
}

function isDaily(value: unknown, days: number): value is Float64Array | Uint8Array {
  return (value instanceof Float64Array || value instanceof Uint8Array) && value.length === days;
}
