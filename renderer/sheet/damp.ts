import type { DailySeries } from '../../core/index.ts';
import { dayX } from './paths.ts';
import { endDayOf, firstDayOf, weeksInSeason } from './time.ts';
import { weekFigures } from './weekly.ts';

/** Dew on leaves is worth a mark above this many hours a week: two hours a night (common practice, no source). */
export const leafDewThreshold = 14;

/** Damp of one week that matters: hours of dew on leaves, and hours in which grey mould may start [h]. */
export interface DampWeek {
  readonly week: number;
  readonly leafDewHours: number;
  readonly mouldHours: number;
}

/** A week's damp where it matters: mould may start, or leaves are wet for longer than the threshold; else null. */
export function dampWeek(daily: DailySeries, week: number): DampWeek | null {
  const days = endDayOf(week) - firstDayOf(week);
  const leafDewHours = weekFigures(daily.leafDewHours, week).mean * days;
  const mouldHours = weekFigures(daily.mouldHours, week).mean * days;
  return mouldHours > 0 || leafDewHours > leafDewThreshold ? { week, leafDewHours, mouldHours } : null;
}

/** The weeks of the season in which damp matters; none where a place is dry. */
export function dampWeeks(daily: DailySeries): DampWeek[] {
  const weeks: DampWeek[] = [];
  for (let week = 0; week < weeksInSeason; week += 1) {
    const damp = dampWeek(daily, week);
    if (damp) weeks.push(damp);
  }
  return weeks;
}

/** Size of a drop [px]. */
export const dropHeight = 7;
const half = 2.4;

/** A drop hanging with its tip at `top`, in the middle of `x` [px]. */
export function drop(x: number, top: number): string {
  const round = half.toFixed(1);
  const shoulder = (top + dropHeight - half - 0.6).toFixed(1);
  return `M${x.toFixed(1)} ${top.toFixed(1)}L${(x - half).toFixed(1)} ${shoulder}A${round} ${round} 0 1 0 ${(x + half).toFixed(1)} ${shoulder}z`;
}

/** Drops for the weeks that pass: one path. */
export function drops(weeks: readonly DampWeek[], width: number): string {
  return weeks.map(({ week }) => drop(dayX((firstDayOf(week) + endDayOf(week)) / 2, width), 0)).join('');
}

/** The margin card's sentence for a week in which damp matters. */
export function dampSentence(damp: DampWeek, hours: (value: number) => string): string {
  const wet = `Dew on the leaves for ${hours(damp.leafDewHours)} h this week`;
  return damp.mouldHours > 0
    ? `${wet}; grey mould may start for ${hours(damp.mouldHours)} h.`
    : `${wet}, more than two hours a night.`;
}
