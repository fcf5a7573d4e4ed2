import type { GroupNumbers } from '../plan/groups.ts';
import type { Reading } from './reading.ts';
import { bit, has } from './reading.ts';
import type { Thresholds } from './thresholds.ts';
import * as level from './thresholds.ts';
import * as code from './words.ts';

/**
 * Kelvin by which the mean of day and night must rise (positive) or fall (negative) for the next better state, by
 * what the plant remembers; 0 where warmth or cooling does not help.
 */
export function marginKelvin(state: number, reading: Reading, group: GroupNumbers, at: Thresholds): number {
  const { warmth } = reading;
  if (state === code.restingCold) return Math.max(0, at.coldEnds - warmth);
  if (state === code.restingHeat)
    return Math.min(0, (has(reading, bit.hot) ? at.heatEnds : group.slowAbove) - warmth);
  if (state === code.stretching) {
    const cool = level.coolEnoughFor(group, at, reading.light);
    return cool === null ? 0 : Math.min(0, cool - warmth);
  }
  if (state !== code.slow) return 0;
  if (has(reading, bit.cool)) return Math.max(0, at.coolSlowEnds - warmth);
  if (has(reading, bit.warm)) return Math.min(0, at.warmSlowEnds - warmth);
  if (!has(reading, bit.closed)) return 0;
  return Math.min(0, -level.closingExcess(group, warmth, reading.dayHigh) - level.closedEnds);
}

/** Daily light to add for the next better state [mol m⁻² d⁻¹], by what the plant remembers; 0 where light is enough. */
export function marginLight(state: number, reading: Reading, group: GroupNumbers, at: Thresholds): number {
  if (state === code.restingDim || state === code.stretching) {
    return Math.max(0, level.lightNeeded(group, at, reading.warmth) * level.lackEnds - reading.light);
  }
  const dull = state === code.slow && has(reading, bit.dull);
  return dull ? Math.max(0, group.lightGood * level.goodBegins - reading.light) : 0;
}

/**
 * Mean of day and night above which `light` no longer keeps a plant compact [°C]; infinite where it does at any warmth.
 * Where it does not even at the coolest, `coldEnds`, which is where waking from cold rest would find it short.
 */
function stretchesAbove(group: GroupNumbers, at: Thresholds, light: number): number {
  const enough = light / level.lackBegins;
  if (enough >= group.lightStretch) return Number.POSITIVE_INFINITY;
  return level.coolEnoughFor(group, at, enough) ?? at.coldBegins;
}

/** The nearer of two distances, counting only those above zero; infinite where neither is. */
const nearer = (one: number, other: number) =>
  Math.min(one > 0 ? one : Number.POSITIVE_INFINITY, other > 0 ? other : Number.POSITIVE_INFINITY);

/** Kelvin of warming that bring a worse state; infinite where none does. */
function warmingBorne(state: number, reading: Reading, group: GroupNumbers, at: Thresholds): number {
  const { warmth, dayHigh } = reading;
  const drawnUp = stretchesAbove(group, at, reading.light) - warmth;
  if (state === code.growing) {
    const closes = -level.closingExcess(group, warmth, dayHigh);
    return nearer(nearer(at.warmSlowBegins - warmth, closes), drawnUp);
  }
  const hotDays = has(reading, bit.closed) ? group.hotDay - dayHigh : 0;
  const rests = nearer(nearer(group.slowAbove - warmth, at.heatBegins - warmth), hotDays);
  return nearer(rests, drawnUp);
}

/**
 * Kelvin it may cool (negative) or warm (positive) before the next worse state, whichever is nearer, by what it remembers;
 * 0 where neither makes it worse. Worse than growing is slow; worse than slow is rest or stretching; a plant resting from
 * cold in the dim would stretch when warmed. The other states have no worse one that warmth or cooling brings.
 */
export function spareKelvin(state: number, reading: Reading, group: GroupNumbers, at: Thresholds): number {
  if (state === code.restingCold) {
    const wakes = at.coldEnds - reading.warmth;
    const drawnUp = reading.light < level.lightNeeded(group, at, at.coldEnds) * level.lackBegins;
    return drawnUp && group.canRestDim <= 0.5 ? Math.max(0, wakes) : 0;
  }
  if (state !== code.growing && state !== code.slow) return 0;
  const cools = reading.warmth - (state === code.growing ? at.coolSlowBegins : at.coldBegins);
  const warms = warmingBorne(state, reading, group, at);
  const least = nearer(cools, warms);
  if (!Number.isFinite(least)) return 0;
  return least === cools ? -least : least;
}

/** Daily light it may lose (negative) before the next worse state [mol m⁻² d⁻¹]; 0 where losing light makes none. */
export function spareLight(state: number, reading: Reading, group: GroupNumbers, at: Thresholds): number {
  if (state === code.growing) return Math.min(0, group.lightGood * level.goodEnds - reading.light);
  if (state !== code.slow) return 0;
  const needed = level.lightNeeded(group, at, reading.warmth) * level.lackBegins;
  return Math.min(0, needed - reading.light);
}
