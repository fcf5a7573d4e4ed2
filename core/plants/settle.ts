import type { GroupNumbers } from '../plan/groups.ts';

/**
 * Days that a crossing must hold before a plant's state follows it, and so the shortest that any state lasts [d]: two
 * fifths of the group's memory, 2 to 7 days. Common practice, no source: three days tell growing from slow, a week rest.
 */
export function settleDays(group: GroupNumbers): number {
  return Math.min(7, Math.max(2, Math.round(0.4 * group.inertiaDays)));
}

/** Ranks of the switches in the order of decision; a switch waits while one of a lower rank has just turned. */
export const rankCold = 0;
export const rankHeat = 1;
export const rankDry = 2;
export const rankShort = 3;
export const rankRest = 4;

/** One switch with two thresholds and a wait. `turning` counts the days running on which it wants to turn. */
export interface Switch {
  on: boolean;
  turning: number;
}

/** Days since a switch of each rank last turned [d]; large at first. */
export type SinceTurn = Float64Array;

/** True while a switch of a lower rank turned less than `days` ago: the verdicts below it wait. */
function waits(since: SinceTurn, rank: number, days: number): boolean {
  for (let lower = 0; lower < rank; lower += 1) if ((since[lower] as number) < days) return true;
  return false;
}

/**
 * Turns a switch on after `value` has been below `begins` for `days` days running, off after it has been above `ends`
 * as long; for a switch that comes on when a value rises, pass the negatives. Of two series of which one is never
 * higher, its switch is on whenever the other's is: waiting keeps the order.
 */
export function settleBelow(
  one: Switch,
  value: number,
  begins: number,
  ends: number,
  rank: number,
  since: SinceTurn,
  days: number,
): void {
  const wants = one.on ? value > ends : value < begins;
  one.turning = wants ? one.turning + 1 : 0;
  if (one.turning < days || waits(since, rank, days)) return;
  one.on = !one.on;
  one.turning = 0;
  if (rank < rankRest) since[rank] = 0;
}
