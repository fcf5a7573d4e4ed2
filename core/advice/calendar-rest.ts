import { plantStates, restsMoist, thresholdsOf } from '../plants/index.ts';
import type { GroupNumbers } from '../plan/groups.ts';
import { planGroup } from '../plan/plan-groups.ts';
import type { LotInSeason, Draft } from './calendar-lot.ts';
import { transitionOn, turned } from './calendar-lot.ts';
import type { RingSpan } from './calendar-ring.ts';
import { ringDay, ringSpans } from './calendar-ring.ts';

const [growing, cold, heat, dim, dry, stretching] = (
  ['growing', 'resting-cold', 'resting-heat', 'resting-dim', 'resting-dry', 'stretching'] as const
).map((id) => plantStates.findIndex((state) => state.id === id));

/** States of rest, whatever brings it. */
export const isRest = (state: number) => state === cold || state === heat || state === dim || state === dry;
export const isGrowing = (state: number) => state === growing;

/**
 * Less than three weeks awake are no end of a rest, and less than a fortnight's rest is none worth a date [days]
 * (judgement, no source).
 */
const awakeAtLeast = 21;
const restAtLeast = 14;

/** The rests of a season, of whatever cause; one cause may pass into another without an end. */
export const restsOf = ({ lot }: LotInSeason): RingSpan[] =>
  ringSpans(lot.state.length, awakeAtLeast - 1, restAtLeast, (day) => isRest(lot.state[day]));

const beginnings: Readonly<Record<number, string>> = {
  [heat]: 'Rest from heat begins. Shade and air; no feed.',
  [dim]: 'It stands still for want of light. Keep it nearly dry, and cool rather than warm.',
  [dry]: 'Its dry rest begins. Leave it without water.',
};
const endings: Readonly<Record<number, string>> = {
  [cold]: 'Rest from cold ends. Look for new growth before it gets much water.',
  [heat]: 'Rest from heat ends. It begins to move again.',
  [dim]: 'There is light enough again: the standstill ends.',
  [dry]: 'Its dry rest ends.',
};

/** Mean at which a rest from cold is called rest from cold; above it the plant is only too cool to grow [°C] (judgement, no source). */
const coldAtMost = 12;

const tooCoolToGrow = (numbers: GroupNumbers) => thresholdsOf(numbers).coldBegins > coldAtMost;

function beginning(state: number, moist: boolean, { numbers }: LotInSeason): string {
  if (state !== cold) return beginnings[state];
  const begins = tooCoolToGrow(numbers)
    ? 'Too cool to grow from now on: it rests.'
    : 'Rest from cold begins.';
  const care = moist
    ? 'No feed; give it air, and water with a light hand.'
    : 'Let it dry, give it air, and leave it be.';
  return `${begins} ${care}`;
}

function ending(state: number, next: number, { numbers }: LotInSeason): string {
  if (next === stretching)
    return 'It stirs before there is light enough. Keep it cool and nearly dry, or give it more light.';
  return state === cold && tooCoolToGrow(numbers)
    ? 'Warm enough to grow again: its rest ends. Look for new growth before it gets much water.'
    : endings[state];
}

/** When each rest begins and ends, on the days on which the state changes. */
export function restTasks(subject: LotInSeason): Draft[] {
  const { season, lot, planned } = subject;
  const count = lot.state.length;
  const group = planGroup(season.plan, lot.groupId);
  const moist =
    planned.watering === 'watered' || (planned.watering !== 'dry' && group !== null && restsMoist(group));
  return restsOf(subject).flatMap(({ from, to }) => {
    const end = ringDay(to + 1, count);
    return [
      draft('rest-begins', from, beginning(lot.state[from], moist, subject)),
      draft('rest-ends', end, ending(lot.state[ringDay(to, count)], lot.state[end], subject)),
    ].filter((task) => task !== null);
  });

  /** Null on the seam of a season whose last day and first day were not lived one after the other. */
  function draft(kind: 'rest-begins' | 'rest-ends', day: number, words: string): Draft | null {
    const transition = transitionOn(lot, day);
    return transition === null ? null : { kind, from: day, to: null, words, ...turned(transition) };
  }
}
