import { rootWarmth } from '../plants/index.ts';
import type { Cause, Draft, LotInSeason } from './calendar-lot.ts';
import { crossed, reached, transitionOn, turned } from './calendar-lot.ts';
import { ringDay, ringSpans } from './calendar-ring.ts';

/**
 * A fortnight's break is none; a window of less than three weeks is not worth a date, and one of more than half the
 * year is none to wait for [days] (judgement, no source).
 */
const breaks = 14;
const windowAtLeast = 21;
const windowAtMost = 182;

/**
 * Windows in which roots take hold: the season's repotting days joined. Those are days on which the plant is awake,
 * its pot warm enough for roots, and cold rest weeks away; so a window opens as pots warm up or as the plant wakes.
 */
export function repotTasks(subject: LotInSeason): Draft[] {
  const { lot } = subject;
  return ringSpans(lot.state.length, breaks, windowAtLeast, (day) => lot.repot[day] === 1)
    .filter(({ from, to }) => to - from < windowAtMost)
    .map(({ from, to }) => ({
      kind: 'repot',
      from,
      to,
      words: 'Time to repot: roots are warm enough to take hold, with time before any rest.',
      ...opening(subject, from),
    }));
}

/** What opens a window: pots that have become warm enough, or the plant that wakes in warm pots. */
function opening({ lot, numbers }: LotInSeason, day: number): Cause {
  const threshold = rootWarmth(numbers);
  const [value, before] = [lot.lived.potMean[day], lot.lived.potMean[ringDay(day - 1, lot.state.length)]];
  if (value >= threshold && before < threshold) {
    const series = 'temperature of pots, day and night';
    return crossed({ series, value, threshold, unit: '°C', way: 'rose above' });
  }
  const transition = transitionOn(lot, day);
  return transition === null ? crossed(reached('days awake in warm pots', 1)) : turned(transition);
}
