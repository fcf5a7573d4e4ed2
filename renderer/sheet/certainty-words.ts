import { plantStates } from '../../core/index.ts';
import type { Certainty, LotCertainty } from '../../core/index.ts';

export interface CertaintyWords {
  /** `So in 87 of 100 winters (±4); otherwise mostly slow.` */
  readonly usual: string;
  /** What winters and thresholds do to it by themselves. */
  readonly parts: string;
}

/** Half-widths above this say nothing yet, and are not shown (judgement, no source). */
export const vague = 0.25;

const inHundred = (share: number) => Math.round(share * 100);
/** The interval as it is said; never nought, which would claim more than samples can. */
const within = (halfWidth: number) => Math.max(1, Math.ceil(halfWidth * 100 - 1e-9));

/** The state other than `shown` that most samples are in that week, and its share. */
function otherwise(lot: LotCertainty, week: number, shown: number): { code: number; share: number } {
  const count = plantStates.length;
  let [code, share] = [-1, 0];
  for (let state = 0; state < count; state += 1) {
    if (state === shown || !(lot.shares[week * count + state] > share)) continue;
    [code, share] = [state, lot.shares[week * count + state]];
  }
  return { code, share };
}

/**
 * How often a week's state comes out as the sheet shows it; null where it has not been sampled enough.
 * @param week of the season; the samples' 53rd week of one day belongs to the sheet's last
 * @param shown index into `plantStates`
 */
export function certaintyWords(
  certainty: Certainty,
  lotId: string,
  week: number,
  shown: number,
): CertaintyWords | null {
  const lot = certainty.lots.find((each) => each.lotId === lotId);
  if (!lot || !(lot.halfWidth[week] <= vague)) return null;
  const agree = lot.agree[week];
  const other = otherwise(lot, week, shown);
  const name = other.code < 0 ? '' : plantStates[other.code].name.toLowerCase();
  const start = `So in ${inHundred(agree)} of 100 winters (±${within(lot.halfWidth[week])})`;
  const end =
    inHundred(other.share) === 0
      ? ''
      : other.share > agree
        ? `; more often ${name}, in ${inHundred(other.share)}`
        : other.share >= (1 - agree) * 0.8
          ? `; otherwise ${name}`
          : `; otherwise mostly ${name}`;
  return {
    usual: `${start}${end}.`,
    parts: `If only the weather varied, in ${inHundred(lot.agreeByWinter[week])}; if only the plant’s thresholds, in ${inHundred(lot.agreeByThreshold[week])}.`,
  };
}

/** How far the samples have got, for the legend. */
export function sampledWords(certainty: Certainty, growing: boolean): string {
  const winters = `${certainty.winters} winter${certainty.winters === 1 ? '' : 's'}`;
  if (!(certainty.halfWidth <= vague)) return `being worked out, ${winters} so far`;
  const draws = certainty.draws > 1 ? `, thresholds drawn ${certainty.draws} times in each` : '';
  const end = growing ? ', so far' : '';
  return `the deeper, the more often (${winters} ${certainty.origin}${draws}, to ±${within(certainty.halfWidth)} in 100${end})`;
}
