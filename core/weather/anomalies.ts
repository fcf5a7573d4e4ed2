import { randomStream, type RandomStream } from './random.ts';

/*
 * The numbers of this file are those of the days of Dublin Airport 1991–2020 (Met Éireann, CC BY 4.0), rounded; how
 * large the departures are is fitted to each climate's own lows.
 */

/** Correlation of one day's departure with the next: temperature (0.66 there) and clearness (0.18). */
const temperatureMemory = 0.66;
const clearnessMemory = 0.18;

/** Cosine of the time of year: 1 in its coldest part, −1 in its warmest. */
function season(day: number, coldestDay: number): number {
  return Math.cos((2 * Math.PI * (day - coldestDay)) / 365);
}

/** Share of the mean daily range by which one standard departure of clearness widens it: 0.09 in winter, 0.21 in summer. */
export function clearRangeGain(day: number, coldestDay: number): number {
  return 0.15 - 0.06 * season(day, coldestDay);
}

/** What one standard departure of clearness adds to the day's mean temperature [K]: −0.9 in winter, 0.3 in summer. */
function clearWarming(day: number, coldestDay: number): number {
  return -0.3 - 0.6 * season(day, coldestDay);
}

/** Departures of one year's days from the mean, standard normal, running on from 31 December to 1 January. */
export interface Departures {
  readonly temperature: Float64Array;
  /** Held within ±2. */
  readonly clearness: Float64Array;
}

/** AR(1) round the ring of a year: the noise is run through twice, so that the year's end leads into its beginning. */
export function ringProcess(random: RandomStream, memory: number): Float64Array {
  const noise = new Float64Array(365);
  for (let d = 0; d < 365; d++) noise[d] = random.normal();
  const values = new Float64Array(365);
  const fresh = Math.sqrt(1 - memory * memory);
  let state = 0;
  for (let d = 0; d < 730; d++) {
    state = memory * state + fresh * noise[d % 365];
    values[d % 365] = state;
  }
  return values;
}

export function drawDepartures(random: RandomStream): Departures {
  const temperature = ringProcess(random, temperatureMemory);
  const clearness = ringProcess(random, clearnessMemory).map((value) => Math.max(-2, Math.min(2, value)));
  return { temperature, clearness };
}

/** Size of the temperature's departures: their spread in deep winter [K], and how much longer the cold tail is than a normal one. */
export interface Spread {
  readonly kelvin: number;
  readonly tail: number;
}

/** Mean of (−1 − z)² over z < −1 of a standard normal: what the tail would take from the mean. */
const tailMean = 0.07535;

/** A standard normal departure with its cold side drawn out (or in) beyond one standard deviation; the mean stays zero. */
export function drawnOut(z: number, tail: number): number {
  const beyond = Math.max(0, -1 - z);
  return z - tail * (beyond * beyond - tailMean);
}

/** Share of the winter's spread on a day: from 1 in the coldest part of the year to 0.7 in the warmest (1.94 K in July to 2.78 K in January and February). */
export function seasonalSpread(day: number, coldestDay: number): number {
  return 0.85 + 0.15 * season(day, coldestDay);
}

/** A climate's mean daily least temperature and range [°C, K] and its coldest day. */
export interface TemperatureCurves {
  readonly minimum: Float64Array;
  readonly range: Float64Array;
  readonly coldestDay: number;
}

/** Least temperature of a day under its departures [°C]. */
export function dayMinimum(
  curves: TemperatureCurves,
  spread: Spread,
  departures: Departures,
  day: number,
): number {
  const cold =
    spread.kelvin *
    seasonalSpread(day, curves.coldestDay) *
    drawnOut(departures.temperature[day], spread.tail);
  return curves.minimum[day] + cold + clearChange(curves, departures, day);
}

/** What a day's clearness does to its least temperature [K]: the shift of the mean less half the widening of the range. */
function clearChange(curves: TemperatureCurves, departures: Departures, day: number): number {
  const widening = curves.range[day] * clearRangeGain(day, curves.coldestDay);
  return (clearWarming(day, curves.coldestDay) - 0.5 * widening) * departures.clearness[day];
}

/** Winters drawn to fit the spread; their seed is the climate's own, so a plan's seed does not change its climate. */
const winters = 300;
const climateSeed = 20_250_101;

/** Days of the drawn winters on which the year's low may fall: what a day's least temperature is made of, one after another. */
interface Candidates {
  /** First candidate of each winter, and the end of the last. */
  readonly from: Int32Array;
  /** Least temperature without the temperature's departure [°C], its seasonal share, and the departure's own size. */
  readonly base: Float64Array;
  readonly share: Float64Array;
  readonly departure: Float64Array;
}

/**
 * Spread and tail for which half of the winters reach the typical low and one in ten the rare low [°C]: bisection on
 * each in turn over a fixed set of drawn winters.
 */
export function fitSpread(curves: TemperatureCurves, typicalLow: number, rareLow: number): Spread {
  const candidates = drawCandidates(curves);
  let spread: Spread = { kelvin: 3, tail: 0 };
  for (let round = 0; round < 4; round++) {
    const { tail } = spread;
    const kelvin = bisect(
      0.2,
      20,
      (value) => quantileLow(candidates, { kelvin: value, tail }, 0.5) - typicalLow,
    );
    const longer = bisect(
      -0.15,
      1.5,
      (value) => quantileLow(candidates, { kelvin, tail: value }, 0.1) - rareLow,
    );
    spread = { kelvin, tail: longer };
  }
  return spread;
}

/** Draws the winters and keeps the days colder than usual in the colder half of the year: no low falls on another. */
function drawCandidates(curves: TemperatureCurves): Candidates {
  const random = randomStream(climateSeed);
  const from = new Int32Array(winters + 1);
  const base: number[] = [];
  const share: number[] = [];
  const departure: number[] = [];
  for (let winter = 0; winter < winters; winter++) {
    from[winter] = base.length;
    const drawn = drawDepartures(random);
    for (let day = 0; day < 365; day++) {
      const size = seasonalSpread(day, curves.coldestDay);
      if (size < 0.85 || drawn.temperature[day] > -0.5) continue;
      base.push(curves.minimum[day] + clearChange(curves, drawn, day));
      share.push(size);
      departure.push(drawn.temperature[day]);
    }
  }
  from[winters] = base.length;
  return {
    from,
    base: Float64Array.from(base),
    share: Float64Array.from(share),
    departure: Float64Array.from(departure),
  };
}

/** Quantile over the drawn winters of the year's least temperature [°C]. */
function quantileLow(candidates: Candidates, spread: Spread, quantile: number): number {
  const { from, base, share, departure } = candidates;
  const least = new Float64Array(winters);
  for (let winter = 0; winter < winters; winter++) {
    let low = Infinity;
    for (let k = from[winter]; k < from[winter + 1]; k++) {
      const here = base[k] + spread.kelvin * share[k] * drawnOut(departure[k], spread.tail);
      if (here < low) low = here;
    }
    least[winter] = low;
  }
  least.sort();
  return least[Math.floor(quantile * (winters - 1))];
}

/** Root of a falling function between two bounds; the nearer bound where it has none. */
function bisect(low: number, high: number, falling: (value: number) => number): number {
  for (let round = 0; round < 14; round++) {
    const middle = (low + high) / 2;
    if (falling(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
