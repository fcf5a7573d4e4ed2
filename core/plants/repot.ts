import type { GroupNumbers } from '../plan/groups.ts';
import type { PlantResult } from './state.ts';
import { growing, restingCold, slow } from './words.ts';

/** Weeks of warmth that roots need before cold rest: Sedum set in autumn 23 %, in spring 81 % alive (plug trial). */
const daysBeforeCold = 42;

/**
 * Least 24-h mean for roots to take hold [°C]: 15 for rosettes, 18 for cacti with a base of 10 °C (placeholders;
 * Opuntia roots grow most at 33 °C and half at 19 °C, Nobel & Bobich).
 */
export function rootWarmth(group: GroupNumbers): number {
  return Math.max(15, group.baseTemperature + 8);
}

/**
 * Days on which a plant may be repotted, 1 each: growing or slow, warm enough for roots, and six weeks clear of
 * cold rest. Common practice, no source. Days near the end of the series look no further than it goes.
 */
export function repotDays(
  group: GroupNumbers,
  result: PlantResult,
  roots: Float64Array = result.rememberedLeaf,
): Uint8Array {
  const good = new Uint8Array(result.state.length);
  const least = rootWarmth(group);
  let nextCold = Number.POSITIVE_INFINITY;
  for (let day = good.length - 1; day >= 0; day -= 1) {
    const state = result.state[day] as number;
    if (state === restingCold) nextCold = day;
    const awake = state === growing || state === slow;
    good[day] = awake && (roots[day] as number) >= least && nextCold - day > daysBeforeCold ? 1 : 0;
  }
  return good;
}
