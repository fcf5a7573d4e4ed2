import { coldestNightDay, spanWords } from '../../core/index.ts';
import type { HeatSpan, PlaceSeason, SeasonResult } from '../../core/index.ts';
import { daysInSeason, endDayOf, firstDayOf, weekOf } from '../sheet/time.ts';

/** The spans a heat account can be read over, in the order offered. */
export const spanIds = ['night', 'coldest', 'week', 'winter', 'season'] as const;
export type SpanId = (typeof spanIds)[number];

export function spanOf(id: SpanId, season: SeasonResult, place: PlaceSeason, cursorDay: number): HeatSpan {
  const night = (day: number): HeatSpan => ({ from: day, to: day + 1, dark: true });
  const days = (from: number, to: number): HeatSpan => ({ from, to, dark: false });
  switch (id) {
    case 'night':
      return night(Math.min(daysInSeason - 1, Math.max(0, cursorDay)));
    case 'coldest':
      return night(coldestNightDay(season, place));
    case 'week':
      return days(firstDayOf(weekOf(cursorDay)), endDayOf(weekOf(cursorDay)));
    case 'winter':
      return days(season.winterFrom, season.winterTo + 1);
    case 'season':
      return days(0, season.days);
  }
}

/** A choice in words with its dates: `Coldest night, 12 to 13 January`. */
export function spanLabel(id: SpanId, season: SeasonResult, place: PlaceSeason, cursorDay: number): string {
  const dates = spanWords(season.startDate, season.days, spanOf(id, season, place, cursorDay));
  const bare = dates.replace(/^nights? of /, '');
  switch (id) {
    case 'night':
      return `Night at the cursor, ${bare}`;
    case 'coldest':
      return `Coldest night, ${bare}`;
    case 'week':
      return `Week at the cursor, ${bare}`;
    case 'winter':
      return 'Winter half-year';
    case 'season':
      return 'Whole season';
  }
}
