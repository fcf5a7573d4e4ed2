import type { Lot } from '../plan/schema.ts';
import { dayOfMonthDay } from './calendar.ts';

/** Days `from` to `to` of the season, both counted, in one place (or `outdoors`). */
export interface Stay {
  readonly placeId: string;
  readonly from: number;
  readonly to: number;
}

const seasonDays = 365;

/**
 * Where a lot stands through the season, stay after stay: in `lot.place` from the first day, from the day of each
 * move on in its place. The season is a ring: on its first day the lot is back.
 * @param startDay the season's first day as day of a common year, 0 = 1 January
 */
export function staysOf(lot: Pick<Lot, 'place' | 'moves'>, startDay: number): readonly Stay[] {
  const moves = lot.moves
    .map(({ on, to }) => ({ day: (dayOfMonthDay(on) - startDay + seasonDays) % seasonDays, to }))
    .sort((a, b) => a.day - b.day);
  const stays: { placeId: string; from: number; to: number }[] = [
    { placeId: lot.place, from: 0, to: seasonDays - 1 },
  ];
  for (const { day, to } of moves) {
    const last = stays[stays.length - 1];
    if (last.placeId === to) continue;
    last.to = day - 1;
    if (day === last.from) stays.pop();
    const before = stays.at(-1);
    if (before !== undefined && before.placeId === to) before.to = seasonDays - 1;
    else stays.push({ placeId: to, from: day, to: seasonDays - 1 });
  }
  return stays;
}

/** The place (or `outdoors`) in which a lot stands on a day of the season. */
export function placeOn(lot: Pick<Lot, 'place' | 'moves'>, startDay: number, day: number): string {
  const stays = staysOf(lot, startDay);
  const at = stays.find(({ from, to }) => day >= from && day <= to);
  if (at === undefined) throw new RangeError(`expected a day from 0 to ${seasonDays - 1}, got ${day}`);
  return at.placeId;
}

/** Share of the season that a lot spends in a place, 0–1. */
export function shareOfSeason(lot: Pick<Lot, 'place' | 'moves'>, startDay: number, placeId: string): number {
  let days = 0;
  for (const stay of staysOf(lot, startDay)) if (stay.placeId === placeId) days += stay.to - stay.from + 1;
  return days / seasonDays;
}

/** Bench area taken in a place on each day of the season [m²]. */
export function benchTaken(lots: readonly Lot[], startDay: number, placeId: string): Float64Array {
  const taken = new Float64Array(seasonDays);
  for (const lot of lots) {
    for (const stay of staysOf(lot, startDay)) {
      if (stay.placeId !== placeId) continue;
      for (let day = stay.from; day <= stay.to; day++) taken[day] += lot.area;
    }
  }
  return taken;
}
