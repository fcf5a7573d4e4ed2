import { plantStates } from '../plants/index.ts';
import { shareHalfWidth } from './certainty-interval.ts';
import type { HarmShares, LotCertainty } from './certainty-result.ts';

/** Weeks of a season, the last of one day. */
export const weeksOfSeason = 53;

export const harmNames = ['frost', 'chill', 'heat', 'scorch', 'wetCold', 'decline'] as const;

/** What one sample says of a lot: the state of each week, the first day of rest from cold, and which harms are done. */
export interface LotSample {
  readonly weeks: Uint8Array;
  /** Null where it does not rest from cold. */
  readonly restFrom: number | null;
  readonly harms: readonly boolean[];
}

/** What the samples have said of a lot so far; changed in place. */
export interface LotTally {
  winters: number;
  samples: number;
  /** Draws judged in the shown winter. */
  inShown: number;
  readonly states: Float64Array;
  /** By week: sum and sum of squares of the share of a winter's draws that agree; winters that agree or differ at all. */
  readonly agree: Float64Array;
  readonly squares: Float64Array;
  readonly anyFor: Float64Array;
  readonly anyAgainst: Float64Array;
  /** By week: winters with nominal thresholds, and draws in the shown winter, that agree. */
  readonly byWinter: Float64Array;
  readonly byThreshold: Float64Array;
  readonly harms: Float64Array;
  readonly rests: number[];
}

export function emptyTally(): LotTally {
  const weeks = () => new Float64Array(weeksOfSeason);
  return {
    winters: 0,
    samples: 0,
    inShown: 0,
    states: new Float64Array(weeksOfSeason * plantStates.length),
    agree: weeks(),
    squares: weeks(),
    anyFor: weeks(),
    anyAgainst: weeks(),
    byWinter: weeks(),
    byThreshold: weeks(),
    harms: new Float64Array(harmNames.length),
    rests: [],
  };
}

/** One winter for a lot: with its thresholds as they are, with drawn ones, and the drawn ones in the shown winter. */
export interface LotWinter {
  readonly nominal: LotSample;
  readonly drawn: readonly LotSample[];
  readonly inShown: readonly LotSample[];
}

/** @param shown the state of each week on the sheet */
export function addWinter(tally: LotTally, shown: Uint8Array, winter: LotWinter): void {
  const { drawn, nominal, inShown } = winter;
  tally.winters += 1;
  tally.samples += drawn.length;
  tally.inShown += inShown.length;
  for (let week = 0; week < weeksOfSeason; week += 1) {
    const state = shown[week];
    let agreed = 0;
    for (const sample of drawn) {
      tally.states[week * plantStates.length + sample.weeks[week]] += 1;
      if (sample.weeks[week] === state) agreed += 1;
    }
    const share = agreed / drawn.length;
    tally.agree[week] += share;
    tally.squares[week] += share * share;
    if (agreed > 0) tally.anyFor[week] += 1;
    if (agreed < drawn.length) tally.anyAgainst[week] += 1;
    if (nominal.weeks[week] === state) tally.byWinter[week] += 1;
    for (const sample of inShown) if (sample.weeks[week] === state) tally.byThreshold[week] += 1;
  }
  for (const { harms, restFrom } of drawn) {
    harms.forEach((done, index) => (tally.harms[index] += done ? 1 : 0));
    if (restFrom !== null) tally.rests.push(restFrom);
  }
}

/** The tally as shares; nothing but zeros and a half-width of 1 before the first winter. */
export function readTally(lotId: string, tally: LotTally, draws: number): LotCertainty {
  const { winters, samples } = tally;
  const of = (count: number) => (values: Float64Array) => values.map((value) => value / Math.max(1, count));
  const halfWidth = tally.agree.map((sum, week) =>
    shareHalfWidth({
      winters,
      draws,
      sum,
      squares: tally.squares[week],
      anyFor: tally.anyFor[week],
      anyAgainst: tally.anyAgainst[week],
    }),
  );
  const harms = of(samples)(tally.harms);
  return {
    lotId,
    winters,
    shares: of(samples)(tally.states),
    agree: of(winters)(tally.agree),
    halfWidth,
    agreeByWinter: of(winters)(tally.byWinter),
    agreeByThreshold: of(tally.inShown)(tally.byThreshold),
    harm: Object.fromEntries(harmNames.map((name, index) => [name, harms[index]])) as unknown as HarmShares,
    restBegins: tally.rests.length * 2 > samples ? tenths(tally.rests) : null,
    restsAtAll: tally.rests.length / Math.max(1, samples),
  };
}

/** The days that one, five and nine in ten do not pass: the nearest rank. */
function tenths(days: readonly number[]): [number, number, number] {
  const sorted = [...days].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)];
  return [at(0.1), at(0.5), at(0.9)];
}
