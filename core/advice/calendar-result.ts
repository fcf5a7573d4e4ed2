import type { Crossing } from '../plants/index.ts';

export type TaskKind =
  | 'rest-begins'
  | 'rest-ends'
  | 'stop-water'
  | 'water-sparingly'
  | 'water-again'
  | 'feed'
  | 'stop-feeding'
  | 'repot'
  | 'last-safe-night'
  | 'first-safe-night'
  | 'bring-in'
  | 'put-out'
  | 'carry'
  | 'flowers'
  | 'harm';

/** Something to do, or to expect, on a day or between two. */
export interface CalendarTask {
  /** The same for the same lot, kind and occasion in every run: `<lot>-<kind>-<number>`. */
  readonly id: string;
  readonly kind: TaskKind;
  readonly lotId: string;
  readonly placeId: string;
  /**
   * Days of the season; `to` is the last day of a span, null for a single day. `from` lies in the season; `to` may lie
   * beyond its last day where a span goes on into the next.
   */
  readonly from: number;
  readonly to: number | null;
  /** The same as dates of the civil calendar, `MM-DD`: a season is of no year. */
  readonly on: string;
  readonly until: string | null;
  /** What to do, and why, in the grower's words. */
  readonly words: string;
  readonly because: string;
  readonly crossing: Crossing;
  /** True for flowers of the season after: the same dates a year later. */
  readonly nextSeason: boolean;
}
