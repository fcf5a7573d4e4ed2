import type { OutdoorSteps } from '../weather/index.ts';
import type { Tariff } from '../plan/schema.ts';
import { minutesOf } from '../plan/fields.ts';
import { civilMinutes, within } from './calendar.ts';

/**
 * What every place of a site shares, step by step, in the weather year's own order (1 January first).
 */
export interface SeasonClock {
  readonly n: number;
  readonly stepMinutes: number;
  /** Civil minutes after midnight at mid-step. */
  readonly civil: Uint16Array;
  /** 1 where the sun stands above −0.8333°, and where it stands above −6° (civil daylight). */
  readonly sunUp: Uint8Array;
  readonly twilight: Uint8Array;
  /** Least outdoor temperature of the noon-to-noon night a step belongs to [°C]: the low that was forecast. */
  readonly nightLow: Float64Array;
  /** 24-h running mean of the outdoor temperature up to the step [°C]. */
  readonly dayMean: Float64Array;
  /** Price of a kilowatt-hour in each step and 1 where the night price holds. */
  readonly price: Float64Array;
}

export function seasonClock(steps: OutdoorSteps, timeZone: string, tariff: Tariff): SeasonClock {
  const lows = nightLows(steps.dryBulb, steps.stepMinutes);
  return clockOf(steps, timeZone, tariff, lows, runningMean(steps.dryBulb, 1440 / steps.stepMinutes));
}

/** A clock with the night lows and 24-h means given: for a night on its own, where they are known. */
export function clockOf(
  steps: OutdoorSteps,
  timeZone: string,
  tariff: Tariff,
  nightLow: Float64Array,
  dayMean: Float64Array,
): SeasonClock {
  const { n, stepMinutes } = steps;
  const civil = civilMinutes(steps.startMs, stepMinutes, n, timeZone);
  const sunUp = new Uint8Array(n);
  const twilight = new Uint8Array(n);
  const price = new Float64Array(n);
  const from = minutesOf(tariff.nightFrom);
  const to = minutesOf(tariff.nightTo);
  for (let k = 0; k < n; k++) {
    sunUp[k] = steps.sunElevation[k] > -0.8333 ? 1 : 0;
    twilight[k] = steps.sunElevation[k] > -6 ? 1 : 0;
    const night = tariff.nightPrice !== null && within(civil[k], from, to);
    price[k] = night ? (tariff.nightPrice as number) : tariff.dayPrice;
  }
  return { n, stepMinutes, civil, sunUp, twilight, price, nightLow, dayMean };
}

/** Least value from noon to noon, for each step of that span; the year is taken as a ring. */
export function nightLows(dryBulb: Float64Array, stepMinutes: number): Float64Array {
  const n = dryBulb.length;
  const perDay = 1440 / stepMinutes;
  const lows = new Float64Array(n);
  for (let start = -perDay / 2; start < n; start += perDay) {
    let low = Infinity;
    for (let k = 0; k < perDay; k++) low = Math.min(low, dryBulb[(start + k + n) % n]);
    for (let k = 0; k < perDay; k++) {
      const at = start + k;
      if (at >= 0 && at < n) lows[at] = low;
    }
  }
  return lows;
}

function runningMean(values: Float64Array, span: number): Float64Array {
  const n = values.length;
  const mean = new Float64Array(n);
  let sum = 0;
  for (let k = n - span; k < n; k++) sum += values[k];
  for (let k = 0; k < n; k++) {
    sum += values[k] - values[(k - span + n) % n];
    mean[k] = sum / span;
  }
  return mean;
}
