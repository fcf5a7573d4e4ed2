import type { Crossing } from '../plants/index.ts';
import { plantStates, thresholdsOf, waterAdvice, waterings } from '../plants/index.ts';
import { crossingOf } from './calendar-crossing.ts';
import type { Draft, LotInSeason } from './calendar-lot.ts';
import type { RingSpan } from './calendar-ring.ts';
import { ringDay, ringSpans } from './calendar-ring.ts';
import { crossingWords } from './calendar-words.ts';

/**
 * A week of wetter advice between drier is no change, and advice that lasts less than a fortnight is no task: what was
 * advised before goes on [days] (judgement, no source; in doubt the drier holds).
 */
const wobble = 7;
const lasting = 14;

const [water, sparingly, hold] = ['water', 'sparingly', 'hold'].map((advice) =>
  waterings.indexOf(advice as (typeof waterings)[number]),
);
const restingCold = plantStates.findIndex(({ id }) => id === 'resting-cold');

/** Advice with its wobbles closed: the driest that holds on a day or on both sides of a week around it. */
function steadied(watering: Uint8Array): Uint8Array {
  const steady = Uint8Array.from(watering, () => water);
  for (const advice of [sparingly, hold]) {
    const spans = ringSpans(watering.length, wobble, 1, (day) => watering[day] >= advice);
    if (spans.length === 0 && watering[0] >= advice) steady.fill(advice);
    for (const { from, to } of spans)
      for (let day = from; day <= to; day++) steady[ringDay(day, watering.length)] = advice;
  }
  return steady;
}

/** Spans of advice that last, in the order of the season, neighbours of the same advice joined. */
export function lastingAdvice(watering: Uint8Array): (RingSpan & { readonly advice: number })[] {
  const steady = steadied(watering);
  const spans = [water, sparingly, hold]
    .flatMap((advice) =>
      ringSpans(steady.length, 0, lasting, (day) => steady[day] === advice).map((span) => ({
        ...span,
        advice,
      })),
    )
    .sort((a, b) => a.from - b.from);
  return spans.filter(({ advice }, k) => advice !== spans[(k + spans.length - 1) % spans.length].advice);
}

/**
 * When to water less, not at all, and again: the days on which the season's advice changes for longer than a wobble.
 * Lots kept dry or watered by the plan's own word have none.
 */
export function waterTasks(subject: LotInSeason): Draft[] {
  const { lot, planned } = subject;
  if (planned.watering !== 'by-season') return [];
  const spans = lastingAdvice(lot.watering);
  return spans.map(({ from, advice }, k): Draft => {
    const before = spans[(k + spans.length - 1) % spans.length].advice;
    const crossing = causeOf(subject, from);
    return {
      ...wordsOf(advice, before),
      from,
      to: null,
      because: reasonOf(subject, from, crossing),
      crossing,
    };
  });
}

function wordsOf(advice: number, before: number): Pick<Draft, 'kind' | 'words'> {
  if (advice === hold) return { kind: 'stop-water', words: 'Stop watering. Let the mix dry right out.' };
  if (advice === water)
    return { kind: 'water-again', words: 'Water again whenever the mix has dried; begin with a little.' };
  return before === hold
    ? { kind: 'water-sparingly', words: 'A little water again: moisten, and let it dry out well between.' }
    : { kind: 'water-sparingly', words: 'Water sparingly from now on.' };
}

/** The advice's own reason, and the crossing that brought it. */
function reasonOf({ lot, numbers }: LotInSeason, day: number, crossing: Crossing): string {
  const { reason } = waterAdvice(lot.state[day], numbers, weekAhead(lot.lived.leafMean, day));
  return `${reason} ${crossingWords(crossing)}`;
}

/**
 * What changed the advice: the week ahead passing the cold at which water is held, or else the change of state of the
 * day, the last before where advice lags behind it.
 */
function causeOf(subject: LotInSeason, day: number): Crossing {
  const { lot, numbers } = subject;
  const count = lot.state.length;
  const before = ringDay(day - 1, count);
  const limit = Math.max(thresholdsOf(numbers).coldBegins, numbers.wetColdBelow);
  const [ahead, aheadBefore] = [weekAhead(lot.lived.leafMean, day), weekAhead(lot.lived.leafMean, before)];
  const named = {
    series: 'mean of day and night over the week ahead',
    value: ahead,
    threshold: limit,
    unit: '°C',
  };
  const [advice, adviceBefore] = [lot.watering[day], lot.watering[before]];
  if (advice === hold && lot.state[day] !== restingCold && ahead < limit && aheadBefore >= limit)
    return { ...named, way: 'fell below' };
  if (adviceBefore === hold && lot.state[before] !== restingCold && aheadBefore < limit && ahead >= limit)
    return { ...named, way: 'rose above' };
  const past = [...lot.transitions].reverse();
  const transition = past.find((each) => each.day <= day) ?? past[0];
  if (transition === undefined) throw new RangeError(`expected a change of state by day ${day}, got none`);
  return crossingOf(subject, transition);
}

/** Mean of the seven days after a day; the season is a ring. */
function weekAhead(leafMean: Float64Array, day: number): number {
  let sum = 0;
  for (let k = 1; k <= 7; k++) sum += leafMean[ringDay(day + k, leafMean.length)];
  return sum / 7;
}
