import type { GroupNumbers } from '../plan/groups.ts';
import { dayWeight } from './memory.ts';

/**
 * Days over which a plant feels the warmth it hardens to, and its time constants of hardening and of losing it again
 * [d]. Coryphantha gained 7 K over a fall of 40 K in weekly steps, about 1.7 K a week; citrus loses its hardiness faster
 * than it gains it. The three constants are placeholders that give those rates.
 */
export const hardenFeltDays = 3;
export const hardenDays = 10;
export const softenDays = 3.5;
const hardenWeight = dayWeight(hardenDays);
const softenWeight = dayWeight(softenDays);

/** Hardening at which a plant would settle if the mean stayed at `warmth` [°C, 24-h mean]: 0 soft to 1 hardened. */
export function hardeningTarget(group: GroupNumbers, warmth: number): number {
  return Math.min(1, Math.max(0, (group.hardenBelow - warmth) / group.hardenSpan));
}

/**
 * Hardening a day on, towards the target of the mean felt: slowly in the cold, fast in warmth. Day length plays no part
 * (3–21 h made no difference to Coryphantha, Nobel 1983).
 * @param felt mean of recent days [°C leaf]
 */
export function hardenedBy(group: GroupNumbers, hardening: number, felt: number): number {
  const target = hardeningTarget(group, felt);
  return hardening + (target > hardening ? hardenWeight : softenWeight) * (target - hardening);
}

/** Kelvin that hardening is worth; no more than lies between the dry and the wet limit. */
export function hardeningGain(group: GroupNumbers): number {
  return Math.min(group.hardenGain, group.damageColdWet - group.damageColdDry);
}

/**
 * Leaf temperature at which cold damage begins [°C]:
 *
 *   limit = coldDry + (1 − h) gain + wet (coldWet − coldDry − gain)
 *
 * so that a hardened plant in dry mix bears the dry limit, a soft one in moist mix only the wet limit.
 */
export function coldLimitAt(group: GroupNumbers, hardening: number, wet: boolean): number {
  const gain = hardeningGain(group);
  const moist = wet ? group.damageColdWet - group.damageColdDry - gain : 0;
  return group.damageColdDry + (1 - hardening) * gain + moist;
}

/** Leaf temperature at which cold damage begins on each day [°C], by hardening and moisture. */
export function coldLimits(
  group: GroupNumbers,
  result: { readonly hardening: Float64Array; readonly wet: Uint8Array },
): Float64Array {
  const limits = new Float64Array(result.wet.length);
  for (let day = 0; day < limits.length; day += 1) {
    limits[day] = coldLimitAt(group, result.hardening[day] as number, result.wet[day] === 1);
  }
  return limits;
}
