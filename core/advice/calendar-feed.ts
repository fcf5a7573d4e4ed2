import type { Draft, LotInSeason } from './calendar-lot.ts';
import { reached, transitionOn } from './calendar-lot.ts';
import { crossingOf } from './calendar-crossing.ts';
import { isGrowing, restsOf } from './calendar-rest.ts';
import { ringDay, ringSpans } from './calendar-ring.ts';
import { crossingWords } from './calendar-words.ts';

/**
 * Days of growth before the first feed, days before rest at which feeding ends, breaks in growth that are none, and the
 * shortest time of feeding worth beginning [days]. Common practice, no source.
 */
const growthBeforeFeed = 14;
const beforeRest = 28;
const breaks = 7;
const feedAtLeast = 28;

/**
 * When to begin and to stop feeding: once it has grown for a fortnight in light that is good enough for growth, until
 * it leaves growth or four weeks before a rest, whichever is earlier. Plants that grow all year have no such dates.
 */
export function feedTasks(subject: LotInSeason): Draft[] {
  const { lot } = subject;
  const count = lot.state.length;
  const rests = restsOf(subject);
  return ringSpans(count, breaks, growthBeforeFeed + feedAtLeast, (day) => isGrowing(lot.state[day])).flatMap(
    ({ from, to }) => {
      const begin = from + growthBeforeFeed;
      const nextRest = Math.min(...rests.map((rest) => from + ringDay(rest.from - from, count)));
      const stop = Math.min(to + 1, nextRest - beforeRest);
      return stop - begin < feedAtLeast ? [] : [first(begin), last(stop, stop === to + 1)];
    },
  );

  function first(day: number): Draft {
    const crossing = reached('days of growth', growthBeforeFeed);
    return {
      kind: 'feed',
      from: ringDay(day, count),
      to: null,
      words: 'Begin to feed: half strength, with the water, every second or third week.',
      because: crossingWords(crossing),
      crossing,
    };
  }

  function last(day: number, growthEnds: boolean): Draft {
    const from = ringDay(day, count);
    const transition = growthEnds ? transitionOn(lot, from) : null;
    const crossing =
      transition === null ? reached('days left before rest', beforeRest) : crossingOf(subject, transition);
    const words = 'Stop feeding, so that it goes on firm and ripe.';
    return { kind: 'stop-feeding', from, to: null, words, because: crossingWords(crossing), crossing };
  }
}
