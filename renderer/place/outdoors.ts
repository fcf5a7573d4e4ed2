import { calendarOf, outdoors } from '../../core/index.ts';
import type { CalendarTask, LotDays, LotSeason, SeasonResult } from '../../core/index.ts';
import { spansIn } from '../marks/stays.ts';
import { monthsOf } from '../sheet/time.ts';

/** The open air of a month: coldest and warmest leaf, mean leaf [°C], mean daily light [mol m⁻² d⁻¹]. */
export interface OpenMonth {
  readonly name: string;
  readonly least: number;
  readonly mean: number;
  readonly most: number;
  readonly light: number;
}

const meanOf = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0) / values.length;

export function openMonths(lived: LotDays, startDate: string): OpenMonth[] {
  return monthsOf(startDate).map(({ name, fromDay, toDay }) => ({
    name,
    least: lived.leafLeast.slice(fromDay, toDay).reduce((a, b) => Math.min(a, b), Infinity),
    mean: meanOf(lived.leafMean.slice(fromDay, toDay)),
    most: lived.leafMost.slice(fromDay, toDay).reduce((a, b) => Math.max(a, b), -Infinity),
    light: meanOf(lived.dailyLight.slice(fromDay, toDay)),
  }));
}

/** What the nights outdoors mean to a lot that ever stands there. */
export interface OpenLot {
  readonly lot: LotSeason;
  /** Night outdoors that comes nearest to its cold limit, or goes furthest past it: day and kelvin to spare; null where it is never out. */
  readonly closest: { readonly day: number; readonly margin: number } | null;
  /** From when nights are safe, and from when they no longer are; null where the season names no such day. */
  readonly safeFrom: CalendarTask | null;
  readonly coverFrom: CalendarTask | null;
  /** What the plan's own dates leave to be done: bring in, put out. */
  readonly asked: readonly CalendarTask[];
}

export function openLots(season: SeasonResult): OpenLot[] {
  const tasks = calendarOf(season);
  return season.outdoors.lots.map((lot) => {
    const own = tasks.filter((task) => task.lotId === lot.lotId);
    const first = (kind: CalendarTask['kind']) => own.find((task) => task.kind === kind) ?? null;
    return {
      lot,
      closest: closestNight(lot, season.outdoors.lived),
      safeFrom: first('first-safe-night'),
      coverFrom: first('last-safe-night'),
      asked: own.filter(({ kind }) => kind === 'bring-in' || kind === 'put-out'),
    };
  });
}

function closestNight(lot: LotSeason, lived: LotDays): OpenLot['closest'] {
  let closest: { day: number; margin: number } | null = null;
  for (const { from, to } of spansIn(lot, outdoors)) {
    for (let day = from; day <= to; day += 1) {
      const margin = lived.leafLeast[day] - lot.coldLimit[day];
      if (closest === null || margin < closest.margin) closest = { day, margin };
    }
  }
  return closest;
}
