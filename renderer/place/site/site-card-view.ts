import type { SiteCard } from '../../../core/index.ts';

/** Days before each month of a common year. */
const monthStarts = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];

const dayOfYear = (monthDay: string) =>
  monthStarts[Number(monthDay.slice(0, 2)) - 1] + Number(monthDay.slice(3, 5)) - 1;

/** Month 0–11 a card's year is drawn from: three before its winter, so that winter lies in the middle. */
export function firstMonth(card: SiteCard): number {
  return (Number(card.winter.from.slice(0, 2)) - 1 + 9) % 12;
}

/** Months 0–11 in the order a card's year is drawn. */
export function monthOrder(card: SiteCard): number[] {
  return Array.from({ length: 12 }, (_, index) => (firstMonth(card) + index) % 12);
}

/** Days from the beginning of the drawn year to a day `MM-DD`, 0–364. */
export function dayAt(card: SiteCard, monthDay: string): number {
  return (dayOfYear(monthDay) - monthStarts[firstMonth(card)] + 365) % 365;
}

/** Days from the beginning of the drawn year to the first of the month at a place of its order, and 365 at its end. */
export function monthAt(card: SiteCard, index: number): number {
  if (index >= 12) return 365;
  return (monthStarts[(firstMonth(card) + index) % 12] - monthStarts[firstMonth(card)] + 365) % 365;
}

/** A stretch of days with frost: between the usual first and last, or only in some years. */
export interface FrostStretch {
  readonly kind: 'usual' | 'some';
  readonly from: number;
  readonly to: number;
}

/** Stretches of the drawn year in which frost is usual, and before and after in which it comes in some years. */
export function frostStretches(card: SiteCard): FrostStretch[] {
  const { firstFrost: first, lastFrost: last } = card;
  const stretches: FrostStretch[] = [];
  const add = (kind: FrostStretch['kind'], from: string | null, to: string | null) => {
    if (from === null || to === null) return;
    const [begin, end] = [dayAt(card, from), dayAt(card, to)];
    // A stretch over the end of the drawn year is drawn in two.
    if (begin <= end) stretches.push({ kind, from: begin, to: end });
    else stretches.push({ kind, from: begin, to: 365 }, { kind, from: 0, to: end });
  };
  if (first.median === null || last.median === null) add('some', first.oneInTen, last.oneInTen);
  else {
    add('some', first.oneInTen, first.median);
    add('usual', first.median, last.median);
    add('some', last.median, last.oneInTen);
  }
  return stretches;
}

/** A day that is marked on the strip of frosts. */
export interface FrostMark {
  readonly id: string;
  readonly day: number;
  readonly date: string;
  /** True for the one year in ten. */
  readonly rare: boolean;
  readonly words: string;
}

export function frostMarks(card: SiteCard): FrostMark[] {
  const marks: [string, string | null, boolean, string][] = [
    ['first-rare', card.firstFrost.oneInTen, true, 'first frost, one year in ten'],
    ['first', card.firstFrost.median, false, 'first frost, middle year'],
    ['last', card.lastFrost.median, false, 'last frost, middle year'],
    ['last-rare', card.lastFrost.oneInTen, true, 'last frost, one year in ten'],
  ];
  return marks.flatMap(([id, date, rare, words]) =>
    date === null ? [] : [{ id, day: dayAt(card, date), date, rare, words }],
  );
}
