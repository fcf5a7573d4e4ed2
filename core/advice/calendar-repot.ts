import { rootWarmth } from '../plants/index.ts';
import { crossingOf } from './calendar-crossing.ts';
import type { Draft, LotInSeason } from './calendar-lot.ts';
import { reached, transitionOn } from './calendar-lot.ts';
import { ringDay, ringSpans } from './calendar-ring.ts';
import { crossingWords } from './calendar-words.ts';

/**
 * A week's break is none; a window of less than a fortnight is not worth a date, and one of more than half the year is
 * none to wait for [days] (judgement, no source).
 */
const breaks = 7;
const windowAtLeast = 14;
const windowAtMost = 182;

/**
 * Windows in which roots take hold: the season's repotting days joined. Those are days on which the plant is awake,
 * its pot warm enough for roots, and cold rest weeks away; so a window opens as pots warm up or as the plant wakes.
 */
export function repotTasks(subject: LotInSeason): Draft[] {
  const { lot, numbers } = subject;
  const count = lot.state.length;
  const windows = ringSpans(count, breaks, windowAtLeast, (day) => lot.repot[day] === 1);
  return windows
    .filter(({ from, to }) => to - from < windowAtMost)
    .map(({ from, to }): Draft => {
      const crossing = opening(from);
      const words = 'Time to repot: roots are warm enough to take hold, with time before any rest.';
      return { kind: 'repot', from, to, words, because: crossingWords(crossing), crossing };
    });

  function opening(day: number) {
    const threshold = rootWarmth(numbers);
    const [value, before] = [lot.lived.potMean[day], lot.lived.potMean[ringDay(day - 1, count)]];
    if (value >= threshold && before < threshold) {
      return {
        series: 'temperature of pots, day and night',
        value,
        threshold,
        unit: '°C',
        way: 'rose above',
      } as const;
    }
    const transition = transitionOn(lot, day);
    return transition === null ? reached('days awake in warm pots', 1) : crossingOf(subject, transition);
  }
}
