import type { LotCertainty } from '../../core/index.ts';
import { vague } from '../sheet/certainty-words.ts';
import { dayX } from '../sheet/paths.ts';
import { endDayOf, firstDayOf, weeksInSeason } from '../sheet/time.ts';
import type { Span } from './stays.ts';

/** Deepest fringe, in a week in which samples never agree [px]. */
export const fringeDepth = 6;
/** Shares of disagreement under this leave no fringe (judgement, no source). */
export const leastShown = 0.1;

/**
 * The fringe under a ribbon: one tooth a week, as deep as samples disagree with what the ribbon shows.
 * @param sure samples of the lot: those that agree and the half-width of their share, a week an entry, 0–1
 * @param spans days on which the ribbon is drawn; weeks whose middle is outside are left out
 */
export function fringe(
  sure: Pick<LotCertainty, 'agree' | 'halfWidth'>,
  width: number,
  spans: readonly Span[] | null,
): string {
  let path = '';
  for (let week = 0; week < weeksInSeason; week += 1) {
    const otherwise = 1 - sure.agree[week];
    if (!(otherwise >= leastShown && sure.halfWidth[week] <= vague)) continue;
    const [from, to] = [firstDayOf(week), endDayOf(week)];
    const middle = (from + to) / 2;
    const span = spans?.find((each) => middle >= each.from && middle <= each.to + 1);
    if (spans && !span) continue;
    const left = dayX(Math.max(from, span?.from ?? from), width) + 0.5;
    const right = dayX(Math.min(to, (span?.to ?? to) + 1), width) - 0.5;
    path += `M${left.toFixed(1)} 0H${right.toFixed(1)}V${(fringeDepth * otherwise).toFixed(1)}H${left.toFixed(1)}z`;
  }
  return path;
}
