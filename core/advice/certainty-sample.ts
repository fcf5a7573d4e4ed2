import type { LotSeason } from '../season/index.ts';
import { plantStates } from '../plants/index.ts';
import { weeksOfSeason } from './certainty-tally.ts';
import type { LotSample } from './certainty-tally.ts';

const restingCold = plantStates.findIndex((state) => state.id === 'resting-cold');
const counts = new Uint8Array(plantStates.length);

/** The state of most days of each week, the later one where two are level, as `weeklyStates` has it. */
export function statesByWeek(days: Uint8Array): Uint8Array {
  const weeks = new Uint8Array(Math.ceil(days.length / 7));
  for (let week = 0; week < weeks.length; week += 1) {
    counts.fill(0);
    const end = Math.min(days.length, week * 7 + 7);
    for (let day = week * 7; day < end; day += 1) counts[days[day]] += 1;
    let most = days[end - 1];
    for (let day = end - 2; day >= week * 7; day -= 1) if (counts[days[day]] > counts[most]) most = days[day];
    weeks[week] = most;
  }
  return weeks;
}

/** First day on which it rests from cold having not rested before; the first day of all where it rests all season. */
function restFrom(state: Uint8Array): number | null {
  const begins = state.findIndex(
    (each, day) => each === restingCold && day > 0 && state[day - 1] !== restingCold,
  );
  if (begins >= 0) return begins;
  return state[0] === restingCold ? 0 : null;
}

/** A season's days begun at another day, the year being a ring. */
function turned(days: Uint8Array, by: number): Uint8Array {
  if (by === 0) return days;
  return days.map((_, day) => days[(((day + by) % days.length) + days.length) % days.length]);
}

/**
 * What is kept of a judged lot. A harm is done where its dose is above nothing; chill where what it carries
 * injures the group.
 * @param shift days from the first of this season to that of the shown one: between the tropics the season's first
 *   day follows the weather
 */
export function sampleOf({ state: days, harm }: LotSeason, shift = 0): LotSample {
  const state = turned(days, shift);
  const weeks = statesByWeek(state);
  if (weeks.length !== weeksOfSeason)
    throw new RangeError(`expected a season of ${weeksOfSeason} weeks, got ${weeks.length}`);
  return {
    weeks,
    restFrom: restFrom(state),
    harms: [
      harm.frost > 0,
      harm.chilled > 0,
      harm.heat > 0,
      harm.scorch > 0,
      harm.wetCold > 0,
      harm.decline > 0,
    ],
  };
}
