import { monthNames } from '../season/index.ts';
import type { HeatPart, PlaceSeason, SeasonResult } from '../season/index.ts';

/**
 * Days `from` to one before `to` of a season: whole days from midnight to midnight, or (`dark`) only the dark
 * hours from the noon of each day to the next noon.
 */
export interface HeatSpan {
  readonly from: number;
  readonly to: number;
  readonly dark: boolean;
}

/** One line of a balance [kWh]; positive leaves the inside air and contents. */
export interface HeatAmount {
  readonly name: string;
  readonly kind: HeatPart['kind'];
  readonly kwh: number;
}

/** Heat in and out of a place over a span, and what its contents took up (negative: gave back) [kWh]. */
export interface HeatBalance {
  readonly amounts: readonly HeatAmount[];
  readonly into: number;
  readonly out: number;
  readonly stored: number;
  /** In less out less stored: nothing, but for rounding. */
  readonly left: number;
}

/** Adds up the days or nights of a span. Throws where it does not lie in the season. */
export function spanSum(days: ArrayLike<number>, span: HeatSpan): number {
  const { from, to } = span;
  if (!(Number.isInteger(from) && Number.isInteger(to) && from >= 0 && to > from && to <= days.length))
    throw new RangeError(`expected days within 0 to ${days.length}, got ${from} to ${to}`);
  let sum = 0;
  for (let day = from; day < to; day += 1) sum += days[day];
  return sum;
}

/** Heat of one part over a span [kWh]. */
export function heatOf(part: HeatPart, span: HeatSpan): number {
  return spanSum(span.dark ? part.nights : part.days, span);
}

/** The balance of amounts that leave (positive) and enter (negative). */
export function balanceOf(amounts: readonly HeatAmount[]): HeatBalance {
  let [into, out, stored] = [0, 0, 0];
  for (const { kind, kwh } of amounts) {
    if (kind === 'storage') stored += kwh;
    else if (kwh > 0) out += kwh;
    else into -= kwh;
  }
  return { amounts, into, out, stored, left: into - out - stored };
}

/** Where the heat of a place goes and comes from over a span. */
export function heatBalance(parts: readonly HeatPart[], span: HeatSpan): HeatBalance {
  return balanceOf(parts.map((part) => ({ name: part.name, kind: part.kind, kwh: heatOf(part, span) })));
}

/** The day on whose noon the season's coldest night begins: the night that each part's `coldestNight` is of. */
export function coldestNightDay(season: SeasonResult, place: PlaceSeason): number {
  const isIt = (night: number) => place.heat.every((part) => part.nights[night] === part.coldestNight);
  for (let night = 0; night < season.days; night += 1) if (isIt(night)) return night;
  throw new Error('expected the coldest night among the nights of the season, got none');
}

const dateOf = (startDate: string, day: number) =>
  new Date(Date.parse(`${startDate}T00:00:00Z`) + day * 86_400_000);

export const monthOf = (startDate: string, day: number) => monthNames[dateOf(startDate, day).getUTCMonth()];

export function dayWords(startDate: string, day: number): string {
  const date = dateOf(startDate, day);
  return `${date.getUTCDate()} ${monthNames[date.getUTCMonth()]}`;
}

/** `night of 12 to 13 January`, `12 to 18 January`, `whole season`. */
export function spanWords(startDate: string, days: number, span: HeatSpan): string {
  const { from, to, dark } = span;
  if (from === 0 && to === days) return dark ? 'all nights of the season' : 'whole season';
  const last = dark ? to : to - 1;
  const sameMonth = monthOf(startDate, from) === monthOf(startDate, last) && last - from < 31;
  const first = sameMonth ? String(dateOf(startDate, from).getUTCDate()) : dayWords(startDate, from);
  const both = last === from ? dayWords(startDate, from) : `${first} to ${dayWords(startDate, last)}`;
  if (!dark) return both;
  return to - from === 1 ? `night of ${both}` : `nights of ${both}`;
}

/** The span cut into pieces that read well: days or nights where they are few, else months. */
export function piecesOf(
  startDate: string,
  span: HeatSpan,
): { readonly words: string; readonly span: HeatSpan }[] {
  const pieces: { words: string; span: HeatSpan }[] = [];
  const few = span.to - span.from <= 8;
  for (let day = span.from; day < span.to; day += 1) {
    const one = { from: day, to: day + 1, dark: span.dark };
    const words = few ? dayWords(startDate, day) : monthOf(startDate, day);
    const last = pieces.at(-1);
    if (last?.words === words) pieces[pieces.length - 1] = { words, span: { ...last.span, to: day + 1 } };
    else pieces.push({ words, span: one });
  }
  return pieces;
}
