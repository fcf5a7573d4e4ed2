/** How often samples (winters drawn from the climate × thresholds drawn within their spread) agree with what the sheet shows. */
export interface Certainty {
  /** Winters drawn, and thresholds drawn in each. */
  readonly winters: number;
  readonly draws: number;
  /** Largest half-width of the 95 % interval of any lot's weekly share, 0–1; grows smaller with the winters. */
  readonly halfWidth: number;
  /** True once `halfWidth` is within 0.05; false also where the most winters are reached first. */
  readonly enough: boolean;
  /** Where the winters come from, in words: `drawn from the climate`, `of the file`. */
  readonly origin: string;
  readonly lots: readonly LotCertainty[];
}

export interface LotCertainty {
  readonly lotId: string;
  /** Winters this lot was judged in: fewer than those of the plan where it was sure enough before. */
  readonly winters: number;
  /** Share of samples in each state, `shares[week * 7 + state]`, 0–1; 53 weeks, the last of one day. */
  readonly shares: Float64Array;
  /** Share of samples whose state of the week is the one shown, and half-width of its 95 % interval, 0–1. */
  readonly agree: Float64Array;
  readonly halfWidth: Float64Array;
  /** The same with winters alone varied (thresholds as they are), and with thresholds alone varied (the usual winter). */
  readonly agreeByWinter: Float64Array;
  readonly agreeByThreshold: Float64Array;
  /** Share of winters in which each harm is done at all, all samples counted, 0–1. */
  readonly harm: HarmShares;
  /** First day of the first rest from cold of the season: early (one in ten), usual, late (nine in ten) [day]; null where most samples have none. */
  readonly restBegins: readonly [number, number, number] | null;
  /** Share of samples that rest from cold at all, 0–1. */
  readonly restsAtAll: number;
}

export interface HarmShares {
  readonly frost: number;
  readonly chill: number;
  readonly heat: number;
  readonly scorch: number;
  readonly wetCold: number;
  readonly decline: number;
}
