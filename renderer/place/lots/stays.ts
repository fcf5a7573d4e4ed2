import { benchTaken, outdoors, staysOf } from '../../../core/index.ts';
import type { Lot, Plan, SeasonResult, Stay } from '../../../core/index.ts';
import { openAirName, standName } from '../../sheet/stands.ts';
import { daysInSeason, formatDay } from '../../sheet/time.ts';

/** Where a lot may be carried: all places, and the open air. */
export function standOptions(plan: Plan): { value: string; name: string }[] {
  return [
    ...plan.places.map((place) => ({ value: place.id, name: place.name })),
    { value: outdoors, name: openAirName },
  ];
}

/** The season's first day, `YYYY-MM-DD` and as day of a common year; before a season stands, as the hemisphere has it. */
export interface SeasonStart {
  readonly date: string;
  readonly day: number;
}

export function seasonStart(season: SeasonResult | null, latitude: number): SeasonStart {
  if (season) return { date: season.startDate, day: season.startDay };
  return latitude >= 0 ? { date: '2025-08-01', day: 212 } : { date: '2025-02-01', day: 31 };
}

/** Day of a common year, 0 = 1 January, of a day written `MM-DD`; 29 February counts as 1 March. */
export function dayOfYear(monthDay: string): number {
  const [month, day] = monthDay.split('-').map(Number);
  const start = Date.UTC(2025, 0, 1);
  return Math.round((Date.UTC(2025, month - 1, day) - start) / 86_400_000);
}

/** Day of the season, 0 its first, of a day written `MM-DD`. */
export function seasonDay(monthDay: string, start: SeasonStart): number {
  return (dayOfYear(monthDay) - start.day + daysInSeason) % daysInSeason;
}

/** A day of the season as `MM-DD`. */
export function monthDay(day: number, start: SeasonStart): string {
  return new Date(Date.UTC(2025, 0, 1 + start.day + day)).toISOString().slice(5, 10);
}

/** `from 1 October to 14 May`, or `all year`. */
export function stayWords({ from, to }: Pick<Stay, 'from' | 'to'>, start: SeasonStart): string {
  if (from === 0 && to === daysInSeason - 1) return 'all year';
  if (from === to) return `on ${formatDay(start.date, from)}`;
  return `from ${formatDay(start.date, from)} to ${formatDay(start.date, to)}`;
}

/** `Agaves`, `Agaves and Aeoniums`, `Agaves, Aeoniums and Echeverias`. */
export function listed(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

/** All stays of a lot in one sentence: `Garden bench from 1 August to 30 September, Tunnel from …`. */
export function staysWords(lot: Pick<Lot, 'place' | 'moves'>, plan: Plan, start: SeasonStart): string {
  const stays = staysOf(lot, start.day);
  return stays.map((stay) => `${standName(plan, stay.placeId)} ${stayWords(stay, start)}`).join(', then ');
}

/** When a lot stands in a place: `from 1 October to 14 May`; null where it never does. */
export function hereWords(
  lot: Pick<Lot, 'place' | 'moves'>,
  placeId: string,
  start: SeasonStart,
): string | null {
  const here = joinedOverNewYear(staysOf(lot, start.day).filter((stay) => stay.placeId === placeId));
  return here.length === 0 ? null : listed(here.map((stay) => stayWords(stay, start)));
}

/** The season is a ring: a stay up to its last day goes on into one from its first. */
function joinedOverNewYear(stays: readonly Stay[]): readonly Pick<Stay, 'from' | 'to'>[] {
  const [first, last] = [stays[0], stays.at(-1)];
  if (stays.length < 2 || first.from !== 0 || last?.to !== daysInSeason - 1) return stays;
  return [...stays.slice(1, -1), { from: last.from, to: first.to }];
}

export interface OverFull {
  readonly from: number;
  readonly to: number;
  /** Most that is taken beyond what there is [m²]. */
  readonly over: number;
}

/** Least that counts as over-full [m²]: figures of fields are kept to a thousandth. */
const slack = 0.005;

/** Spans of the season in which more stands in a place than it has room for. */
export function overFull(
  lots: readonly Lot[],
  placeId: string,
  area: number,
  start: SeasonStart,
): OverFull[] {
  const taken = benchTaken(lots, start.day, placeId);
  const spans: { from: number; to: number; over: number }[] = [];
  for (let day = 0; day < taken.length; day += 1) {
    const over = taken[day] - area;
    if (!(over > slack)) continue;
    const last = spans.at(-1);
    if (last && last.to === day - 1) {
      last.to = day;
      last.over = Math.max(last.over, over);
    } else spans.push({ from: day, to: day, over });
  }
  return spans;
}
