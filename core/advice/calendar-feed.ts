import type { Draft, LotInSeason } from './calendar-lot.ts';
import { reached, transitionOn, turned } from './calendar-lot.ts';
import { isGrowing, restsOf } from './calendar-rest.ts';
import { ringDay, ringSpans } from './calendar-ring.ts';
import { dayWords } from './calendar-words.ts';

/**
 * Days of growth before the first feed, days before rest at which feeding ends, breaks in growth that are none, and the
 * shortest time of feeding worth beginning [days]. Common practice, no source.
 */
const growthBeforeFeed = 14;
const beforeRest = 28;
const breaks = 7;
const feedAtLeast = 42;

/**
 * When to begin and to stop feeding: once it has grown for a fortnight in light that is good enough for growth, until
 * it leaves growth or four weeks before a rest, whichever is earlier. Plants that grow all year have no such dates.
 */
export function feedTasks(subject: LotInSeason): Draft[] {
  const { season, lot } = subject;
  const count = lot.state.length;
  const rests = restsOf(subject);
  const growths = ringSpans(count, breaks, growthBeforeFeed + feedAtLeast, (day) =>
    isGrowing(lot.state[day]),
  );
  return growths.flatMap(({ from, to }) => {
    const begin = from + growthBeforeFeed;
    const nextRest = Math.min(...rests.map((rest) => from + ringDay(rest.from - from, count)));
    const stop = Math.min(to + 1, nextRest - beforeRest);
    return stop - begin < feedAtLeast ? [] : [first(begin), last(stop, stop === to + 1)];
  });

  function first(day: number): Draft {
    const words = 'Begin to feed: half strength, with the water, every second or third week.';
    return {
      kind: 'feed',
      from: ringDay(day, count),
      to: null,
      words,
      because: `It has grown for ${growthBeforeFeed} days, in light that is good enough.`,
      crossing: reached('days of growth', growthBeforeFeed),
    };
  }

  function last(day: number, growthEnds: boolean): Draft {
    const from = ringDay(day, count);
    const transition = growthEnds ? transitionOn(lot, from) : null;
    const rest = dayWords(from + beforeRest, season.startDay);
    const ahead = {
      because: `Rest begins in ${beforeRest} days, on ${rest}.`,
      crossing: reached('days left before rest', beforeRest),
    };
    const cause = transition === null ? ahead : turned(transition);
    const words = 'Stop feeding, so that it goes on firm and ripe.';
    return { kind: 'stop-feeding', from, to: null, words, ...cause };
  }
}
