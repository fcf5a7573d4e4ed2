/** What can be opened to show its working. */
export type ExplainSubject =
  | { readonly kind: 'heat-loss'; readonly placeId: string }
  | { readonly kind: 'running-cost'; readonly placeId: string }
  | { readonly kind: 'daily-light'; readonly placeId: string; readonly day: number }
  | { readonly kind: 'lamp-light'; readonly placeId: string }
  | { readonly kind: 'state'; readonly lotId: string; readonly day: number }
  | { readonly kind: 'inside-temperature'; readonly placeId: string; readonly day: number }
  | HeatPartSubject;

/** One part of a place's heat account over a span of days or nights; the whole balance where `part` is null. */
export interface HeatPartSubject {
  readonly kind: 'heat-part';
  readonly placeId: string;
  readonly part: string | null;
  /** First day of the season's days and one past the last. */
  readonly from: number;
  readonly to: number;
  /** Only the dark hours, from the noon of a day to the next. */
  readonly dark: boolean;
}

export interface ExplainInput {
  readonly name: string;
  readonly value: string;
  readonly unit: string;
  /** Where the value came from: the plan, the catalogue with its source, the weather, the engine. */
  readonly origin: string;
}

export interface Explanation {
  readonly title: string;
  readonly formula: string;
  readonly inputs: readonly ExplainInput[];
  /** Intermediate results in order, each a line of words and figures. */
  readonly steps: readonly string[];
  readonly result: string;
  readonly source: string;
}
