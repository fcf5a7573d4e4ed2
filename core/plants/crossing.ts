/** What crossed what on a day, so that a date can be checked. */
export interface Crossing {
  /** What was measured, in words: `mean of day and night, as remembered`. */
  readonly series: string;
  readonly value: number;
  readonly threshold: number;
  /** `°C`, `mol/m²`, `h`, `days`, `K h`, `share`. */
  readonly unit: string;
  /** Whether the value fell below or rose above the threshold; `reached` for counts and for dates of the plan. */
  readonly way: 'fell below' | 'rose above' | 'reached';
}
