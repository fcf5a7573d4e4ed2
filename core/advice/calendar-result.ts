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
   * Days of the season; `to` is the last day of a span, null for a single day. A span may go on beyond the season's
   * last day into the next, and flowers may all be next summer's.
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
}
