import { planNumbers } from '../plan/plan-groups.ts';
import type { SeasonResult } from '../season/index.ts';

/** A lot that flowers in short days and stands under a lamp that makes its days long. */
export interface LongDay {
  readonly placeId: string;
  readonly lotId: string;
  /** The lot's critical day length [h]; its days must be shorter. */
  readonly critical: number;
  /** Winter days that nature would keep short enough and the lamp does not, and the longest of them [h]. */
  readonly days: number;
  readonly longest: number;
}

/** Fewer long days than this are no matter [d] (common practice, no source). */
const unremarked = 7;

/**
 * Lots of short-day groups whose days a lamp lengthens past what they flower under. Compared with the days nature
 * gives outdoors: civil twilight counts as day, as it does for the plants.
 */
export function longDays(season: SeasonResult): LongDay[] {
  const { plan, places, outdoors, winterFrom, winterTo } = season;
  return places.flatMap(({ placeId, lots, daily }) => {
    const lamps = plan.places.find((place) => place.id === placeId)?.lamps ?? [];
    if (lamps.length === 0) return [];
    return lots.flatMap(({ lotId, groupId, stays }) => {
      const { criticalDayLength: critical, dayLengthKind } = planNumbers(plan, groupId);
      if (critical === null || dayLengthKind !== -1) return [];
      let days = 0;
      let longest = 0;
      for (let day = winterFrom; day <= winterTo; day++) {
        if (!stays.some((stay) => stay.placeId === placeId && day >= stay.from && day <= stay.to)) continue;
        const hours = daily.photoperiod[day];
        if (hours <= critical || outdoors.lived.photoperiod[day] > critical || daily.lampLight[day] === 0)
          continue;
        days += 1;
        longest = Math.max(longest, hours);
      }
      return days < unremarked ? [] : [{ placeId, lotId, critical, days, longest }];
    });
  });
}
