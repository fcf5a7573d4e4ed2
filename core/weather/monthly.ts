import { monthStarts } from './year.ts';

/** Month 0–11 of each of the 365 days. */
export const monthOfDay: Uint8Array = (() => {
  const months = new Uint8Array(365);
  for (let month = 0; month < 12; month++) months.fill(month, monthStarts[month], monthStarts[month + 1]);
  return months;
})();

const rounds = 365;

/**
 * Twelve monthly means as 365 daily values that run smoothly round the year and whose monthly means are those given:
 * Rymes & Myers 2001 (Solar Energy 71, 225–231), repeated smoothing over three days with each month's mean restored.
 * The restoring adds a constant; with `positive` it multiplies, so that the values keep their sign.
 */
export function dailyFromMonthly(means: readonly number[], positive = false): Float64Array {
  if (means.length !== 12 || !means.every((value) => Number.isFinite(value))) {
    throw new TypeError(`expected twelve finite monthly means, got ${means.length}`);
  }
  const key = `${positive}${means.join()}`;
  const known = smoothed.get(key) ?? smooth(means, positive);
  smoothed.delete(key);
  smoothed.set(key, known);
  if (smoothed.size > 8) smoothed.delete(smoothed.keys().next().value as string);
  return known.slice();
}

/** The series smoothed last: many years are drawn from the same months. Saves time, changes nothing. */
const smoothed = new Map<string, Float64Array>();

function smooth(means: readonly number[], positive: boolean): Float64Array {
  let days = Float64Array.from(monthOfDay, (month) => means[month]);
  for (let round = 0; round < rounds; round++) {
    const next = new Float64Array(365);
    for (let d = 0; d < 365; d++) next[d] = (days[(d + 364) % 365] + days[d] + days[(d + 1) % 365]) / 3;
    restore(next, means, positive);
    days = next;
  }
  return days;
}

/** Brings each month's mean back to the one given, in place. */
export function restore(days: Float64Array, means: readonly number[], positive: boolean): void {
  for (let month = 0; month < 12; month++) {
    const [from, to] = [monthStarts[month], monthStarts[month + 1]];
    let sum = 0;
    for (let d = from; d < to; d++) sum += days[d];
    const mean = sum / (to - from);
    const factor = positive && mean > 0 ? means[month] / mean : 1;
    const shift = positive ? 0 : means[month] - mean;
    for (let d = from; d < to; d++) days[d] = days[d] * factor + shift;
  }
}
