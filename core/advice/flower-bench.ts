import type { Lot, Plan } from '../plan/schema.ts';
import { benchTaken, staysOf } from '../season/index.ts';
import type { Stay } from '../season/index.ts';

/** Room on the benches for two lots beside all the others of the plan. */
export interface Room {
  /** Whether the first (0) or the second (1) finds its area, were the other away. */
  readonly alone: (which: 0 | 1, stays: readonly Stay[]) => boolean;
  /** Whether both do where each does alone. */
  readonly both: (one: readonly Stay[], other: readonly Stay[]) => boolean;
}

/** Bench area that may be lacking by rounding alone [m²]. */
const rounding = 1e-9;

/**
 * On each day a lot needs its area free where it stands, unless the plan has it (or both, where both are there) in that
 * place on that day anyway. The open air has room without end.
 */
export function roomFor(plan: Plan, lots: readonly [Lot, Lot], startDay: number): Room {
  const others = plan.lots.filter((lot) => !lots.some(({ id }) => id === lot.id));
  const planned = lots.map((lot) => daily(staysOf(lot, startDay)));
  const tightFor = (which: readonly number[]) => {
    const need = which.reduce((sum, each) => sum + lots[each].area, 0);
    return new Map(
      plan.places.map(({ id, growingArea }) => {
        const taken = benchTaken(others, startDay, id);
        const tight = (day: number) =>
          need > growingArea - taken[day] + rounding && which.some((each) => planned[each][day] !== id);
        return [id, sumsOf(taken.length, tight)];
      }),
    );
  };
  const single = [tightFor([0]), tightFor([1])];
  const pair = tightFor([0, 1]);
  return {
    alone: (which, stays) =>
      stays.every(({ placeId, from, to }) => isFree(single[which].get(placeId), from, to)),
    both: (one, other) =>
      one.every((a) =>
        other.every(
          (b) =>
            a.placeId !== b.placeId ||
            isFree(pair.get(a.placeId), Math.max(a.from, b.from), Math.min(a.to, b.to)),
        ),
      ),
  };
}

/** True where no day of a span is tight, by sums of tight days; always where the place has no bench. */
function isFree(sums: Int32Array | undefined, from: number, to: number): boolean {
  return sums === undefined || from > to || sums[to + 1] === sums[from];
}

/** How many days before each day are tight. */
function sumsOf(days: number, tight: (day: number) => boolean): Int32Array {
  const sums = new Int32Array(days + 1);
  for (let day = 0; day < days; day += 1) sums[day + 1] = sums[day] + (tight(day) ? 1 : 0);
  return sums;
}

/** The place of each day. */
function daily(stays: readonly Stay[]): string[] {
  return stays.flatMap(({ placeId, from, to }) => Array<string>(to - from + 1).fill(placeId));
}
