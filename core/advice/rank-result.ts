/** How a winter goes for a group in a place, summed for ranking; days of the winter half-year. */
export interface WinterFit {
  /** Days of each state over the winter half-year, indexed as `plantStates`. */
  readonly stateDays: readonly number[];
  /** Least leaf temperature of the winter half-year [°C] and how far it stays above the cold limit of its day [K]; negative is damage. */
  readonly leastLeaf: number;
  readonly sparedKelvin: number;
  /** Mean daily light of the winter half-year [mol m⁻² d⁻¹]. */
  readonly light: number;
  /** Harms of the winter half-year that count against it, by their ids in `plantHarms`, worst first. */
  readonly harms: readonly string[];
  /** 0 unfit, 1 as good as it gets; how it is made up is in `rank-score.ts`. */
  readonly score: number;
  /** `well`, `with care`, `poorly`, `not safe`. */
  readonly verdict: 'well' | 'with-care' | 'poorly' | 'unsafe';
  /** Why, in one sentence of the grower's words. */
  readonly words: string;
}

/** One place for a group; best first in a ranking. */
export interface PlaceRank extends WinterFit {
  /** A place, or `outdoors`. */
  readonly placeId: string;
  /** Bench area still free there on every day of the winter [m²]; outdoors counts as free without end (Infinity is not used: null). */
  readonly freeArea: number | null;
}

/** One group for a place; best first in a ranking. */
export interface GroupRank extends WinterFit {
  readonly groupId: string;
}
