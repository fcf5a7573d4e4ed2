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

/** What crossed what on the day, so that the date can be checked. */
export interface Crossing {
  /** What was measured, in words: `mean of day and night, as remembered`. */
  readonly series: string;
  readonly value: number;
  readonly threshold: number;
  /** `°C`, `mol/m²`, `h`, `days`, `K h`. */
  readonly unit: string;
  /** Whether the value fell below or rose above the threshold; `reached` for counts and dates of the plan. */
  readonly way: 'fell below' | 'rose above' | 'reached';
}

/** Something to do, or to expect, on a day or between two. */
export interface CalendarTask {
  /** The same for the same lot, kind and occasion in every run: `<lot>-<kind>-<number>`. */
  readonly id: string;
  readonly kind: TaskKind;
  readonly lotId: string;
  readonly placeId: string;
  /** Days of the season; `to` is the last day of a span, null for a single day. */
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
