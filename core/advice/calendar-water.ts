import { outdoors } from '../plan/schema.ts';
import { planGroup } from '../plan/plan-groups.ts';
import { plantStates, restsMoist, thresholdsOf, waterings } from '../plants/index.ts';
import type { Crossing } from '../plants/index.ts';
import type { Cause, Draft, LotInSeason } from './calendar-lot.ts';
import { crossed, standsIn, turned } from './calendar-lot.ts';
import type { RingSpan } from './calendar-ring.ts';
import { ringDay, ringSpans } from './calendar-ring.ts';
import { dayWords } from './calendar-words.ts';

/**
 * A week of wetter advice between drier is no change, and advice that lasts less than a fortnight is no task: what was
 * advised before goes on [days] (judgement, no source; in doubt the drier holds).
 */
const wobble = 7;
const lasting = 14;

const [water, sparingly, hold] = ['water', 'sparingly', 'hold'].map((advice) =>
  waterings.indexOf(advice as (typeof waterings)[number]),
);
const stateOf = (id: string) => plantStates.findIndex((state) => state.id === id);
const [restingCold, restingHeat, restingDry] = ['resting-cold', 'resting-heat', 'resting-dry'].map(stateOf);

/**
 * The season's advice day by day; a group with dry months is kept dry from their first day, not only once its mix is
 * dry, and watered from the day after their last.
 */
export function advised({ lot, numbers }: LotInSeason): Uint8Array {
  if (numbers.dryFromMonth === null) return lot.watering;
  return lot.watering.map((advice, day) => {
    if (lot.waterIndex[day] < 1) return hold;
    return lot.state[day] === restingDry ? water : advice;
  });
}

/** Advice with its wobbles closed: the driest that holds on a day or on both sides of a week around it. */
function steadied(advice: Uint8Array): Uint8Array {
  const steady = Uint8Array.from(advice, () => water);
  for (const least of [sparingly, hold]) {
    const spans = ringSpans(advice.length, wobble, 1, (day) => advice[day] >= least);
    if (spans.length === 0 && advice[0] >= least) steady.fill(least);
    for (const { from, to } of spans)
      for (let day = from; day <= to; day++) steady[ringDay(day, advice.length)] = least;
  }
  return steady;
}

/** Spans of advice that last, in the order of the season, neighbours of the same advice joined. */
export function lastingAdvice(advice: Uint8Array): (RingSpan & { readonly advice: number })[] {
  const steady = steadied(advice);
  const spans = [water, sparingly, hold]
    .flatMap((code) =>
      ringSpans(steady.length, 0, lasting, (day) => steady[day] === code).map((span) => ({
        ...span,
        advice: code,
      })),
    )
    .sort((a, b) => a.from - b.from);
  return spans.filter((span, k) => span.advice !== spans[(k + spans.length - 1) % spans.length].advice);
}

/**
 * When to water less, not at all, and again: the days on which the season's advice changes for longer than a wobble.
 * Lots kept dry or watered by the plan's own word have none.
 */
export function waterTasks(subject: LotInSeason): Draft[] {
  if (subject.planned.watering !== 'by-season') return [];
  const spans = lastingAdvice(advised(subject));
  return spans.map(({ from, advice }, k): Draft => {
    const before = spans[(k + spans.length - 1) % spans.length].advice;
    return {
      ...wordsOf(advice, before, standsIn(subject.lot, from) === outdoors),
      from,
      to: null,
      ...causeOf(subject, from, advice === hold || before === hold),
    };
  });
}

function wordsOf(advice: number, before: number, inRain: boolean): Pick<Draft, 'kind' | 'words'> {
  const keep = inRain ? 'Stop watering, and keep the rain off.' : 'Stop watering.';
  if (advice === hold) return { kind: 'stop-water', words: `${keep} Let the mix dry right out.` };
  if (advice === water)
    return { kind: 'water-again', words: 'Water again whenever the mix has dried; begin with a little.' };
  return before === hold
    ? { kind: 'water-sparingly', words: 'A little water again: moisten, and let it dry out well between.' }
    : { kind: 'water-sparingly', words: 'Water sparingly from now on.' };
}

/**
 * What changed the advice: dry months that begin or end, the week ahead passing the cold at which water is held, or
 * else the change of state of the day, the last before where advice lags behind it.
 * @param holding whether water is held before or after, so that those two may be the cause
 */
function causeOf(subject: LotInSeason, day: number, holding: boolean): Cause {
  const { lot } = subject;
  const cause = holding ? (dryMonths(subject, day) ?? weekAhead(subject, day)) : null;
  if (cause !== null) return cause;
  const past = [...lot.transitions].reverse();
  const transition = past.find((each) => each.day <= day) ?? past.at(0);
  if (transition === undefined) throw new RangeError(`expected a change of state by day ${day}, got none`);
  return turned(transition);
}

function dryMonths({ season, lot, numbers }: LotInSeason, day: number): Cause | null {
  if (numbers.dryFromMonth === null) return null;
  const before = ringDay(day - 1, lot.state.length);
  const kept = (of: number) =>
    lot.waterIndex[of] < 1 && lot.state[of] !== restingCold && lot.state[of] !== restingHeat;
  if (kept(day) === kept(before)) return null;
  const what = kept(day) ? 'begin' : 'end';
  const series = `day on which its dry months ${what}`;
  const crossing: Crossing = { series, value: day, threshold: day, unit: 'days', way: 'reached' };
  const on = dayWords(kept(day) ? day : before, season.startDay);
  return { because: `Its dry months ${what} on ${on}.`, crossing };
}

function weekAhead({ season, lot, numbers }: LotInSeason, day: number): Cause | null {
  const before = ringDay(day - 1, lot.state.length);
  const group = planGroup(season.plan, lot.groupId);
  const moist = group !== null && restsMoist(group);
  const threshold = moist
    ? numbers.wetColdBelow
    : Math.max(thresholdsOf(numbers).coldBegins, numbers.wetColdBelow);
  const [value, valueBefore] = [day, before].map((of) => meanAhead(lot.lived.leafMean, of));
  const byWeek = (of: number) => lot.watering[of] === hold && (moist || lot.state[of] !== restingCold);
  const series = 'mean of day and night over the week ahead';
  if (byWeek(day) && value < threshold && valueBefore >= threshold)
    return crossed({ series, value, threshold, unit: '°C', way: 'fell below' });
  if (byWeek(before) && value >= threshold && valueBefore < threshold)
    return crossed({ series, value, threshold, unit: '°C', way: 'rose above' });
  return null;
}

/** Mean of the seven days after a day; the season is a ring. */
function meanAhead(leafMean: Float64Array, day: number): number {
  let sum = 0;
  for (let k = 1; k <= 7; k++) sum += leafMean[ringDay(day + k, leafMean.length)];
  return sum / 7;
}
