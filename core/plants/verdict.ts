import type { GroupNumbers } from '../plan/groups.ts';
import { bit, slowBits } from './reading.ts';
import { growing, restingCold, restingDim, restingDry, restingHeat, slow, stretching } from './words.ts';

/** The state that the switches give: cold or heat whatever the light; then dry; then lack of light; then growth. */
export function stateOf(flags: number, group: GroupNumbers): number {
  if (flags & bit.cold) return restingCold;
  if (flags & (bit.hot | bit.heatDosed)) return restingHeat;
  if (flags & bit.dry) return restingDry;
  if (flags & bit.short) return flags & bit.dim && group.canRestDim > 0.5 ? restingDim : stretching;
  return flags & slowBits ? slow : growing;
}

/** Place of each state in the order of decision, by its code: cold rest first, growing last. */
const order = [5, 4, 0, 1, 3, 2, 3] as const;

/** Where a state stands in the order of decision: 0 cold rest, then heat, dry, lack of light, slow, 5 growing. */
export function rankOf(state: number): number {
  return order[state] as number;
}

/**
 * Leaves out states too short to be one: where a state gives way within `days` to one decided before it, the plant is
 * taken to have stayed as it was. Switches that settle and wait leave no other short state. Of lack of light nothing
 * is added that a darker plant would not have, so more light still never lengthens it. Changed in place.
 * @param before the state on the day before the first
 */
export function steadied(state: Uint8Array, before: number, days: number): void {
  let [past, pastFrom, from] = [before, 0, 0];
  for (let day = 1; day < state.length; day += 1) {
    const next = state[day] as number;
    if (next === state[day - 1]) continue;
    const now = state[from] as number;
    const short = day - from < days && !(from === 0 && now === before);
    // Heat rest that freezes off is left as it is: colder days shall never lengthen it.
    const givesWay = rankOf(next) < rankOf(now) && !(past === restingHeat && next === restingCold);
    // A plant resting in the dim that stirs just before it has light enough goes straight to growth.
    const stirs = rankOf(past) === rankOf(now);
    if (short && (givesWay || stirs)) {
      state.fill(past, from, day);
      from = next === past ? pastFrom : day;
    } else {
      [past, pastFrom] = [now, from];
      from = day;
    }
  }
}
