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

/**
 * What years differ by beside the quick departures, fitted to the same days and to those of 1942–2021: a slow departure
 * of temperature that lasts two months (its share of the variance, greatest in winter), the memory of the quick one
 * beside it, what widens the daily range beside clearness, what wide days are colder by, and how much earlier than the
 * coldest day departures are greatest [d]. Autocorrelation of daily means there 0.66 after one day, 0.07 after ten and
 * 0.05 after thirty, drawn 0.70, 0.13 and 0.08; sd of the mean of December to February 0.98 K there, 0.92 K drawn
 * (0.65 K without), of the yearly low 2.2 K there and 1.7 K drawn.
 */
const manyYears = {
  slowShare: 0.14,
  slowSwing: 0.08,
  slowMemory: Math.exp(-1 / 60),
  memory: 0.63,
  range: 0.34,
  rangeSwing: 0.05,
  rangeBesideSpread: 0.5,
  rangeMemory: 0.1,
  wideCooler: 0.17,
  wideCoolerSwing: 0.18,
  wideLead: 90,
  lead: 50,
};

/** Departures of one year's days from the mean, standard normal, running on from 31 December to 1 January. */
export interface Departures {
  readonly temperature: Float64Array;
  /** Held within ±2. */
  readonly clearness: Float64Array;
  /** What widens the day's range beside clearness, held within ±2.2; zero in a usual year. */
  readonly range: Float64Array;
}

/**
 * How a year is drawn: `usual`, whose months stay near their normals, or one of `many`, whose months also differ from
 * year to year as measured.
 */
export type YearKind = 'usual' | 'many';

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

export function drawDepartures(random: RandomStream, kind: YearKind = 'usual', coldestDay = 0): Departures {
  const temperature = ringProcess(random, kind === 'usual' ? temperatureMemory : manyYears.memory);
  const clearness = ringProcess(random, clearnessMemory).map((value) => held(value, 2));
  if (kind === 'usual') return { temperature, clearness, range: new Float64Array(365) };
  const slow = ringProcess(random, manyYears.slowMemory);
  return {
    temperature: temperature.map((value, day) => {
      const share = slowShare(day, coldestDay);
      return Math.sqrt(1 - share) * value + Math.sqrt(share) * slow[day];
    }),
    clearness,
    range: ringProcess(random, manyYears.rangeMemory).map((value) => held(value, 2.2)),
  };
}

const held = (value: number, most: number): number => Math.max(-most, Math.min(most, value));

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
export function seasonalSpread(day: number, coldestDay: number, kind: YearKind = 'usual'): number {
  if (kind === 'usual') return 0.85 + 0.15 * season(day, coldestDay);
  return 0.9 + 0.1 * season(day, coldestDay - manyYears.lead);
}

/** Share of the tail that a day has: the long cold tail is deep winter's; in many years a summer night keeps none of it. */
function seasonalTail(day: number, coldestDay: number, kind: YearKind): number {
  return kind === 'usual' ? 1 : Math.max(0, season(day, coldestDay));
}

/** Share of the temperature's variance that is slow. */
function slowShare(day: number, coldestDay: number): number {
  return manyYears.slowShare + manyYears.slowSwing * season(day, coldestDay - manyYears.lead);
}

/** A climate's mean daily least temperature and range [°C, K] and its coldest day. */
export interface TemperatureCurves {
  readonly minimum: Float64Array;
  readonly range: Float64Array;
  readonly coldestDay: number;
  readonly kind: YearKind;
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
    seasonalSpread(day, curves.coldestDay, curves.kind) *
    drawnOut(departures.temperature[day], spread.tail * seasonalTail(day, curves.coldestDay, curves.kind));
  const wider = departures.range[day] * widerCooling(curves, spread, day);
  return curves.minimum[day] + cold + clearChange(curves, departures, day) - wider;
}

/** What a day's clearness does to its least temperature [K]: the shift of the mean less half the widening of the range. */
function clearChange(curves: TemperatureCurves, departures: Departures, day: number): number {
  const widening = curves.range[day] * clearRangeGain(day, curves.coldestDay);
  return (clearWarming(day, curves.coldestDay) - 0.5 * widening) * departures.clearness[day];
}

/**
 * Half of what one standard departure of `range` widens the day by [K]: a share of the mean range, but no more beside
 * the temperature's own departures than at Dublin, so that a climate of even nights keeps them.
 */
export function halfWidening(curves: TemperatureCurves, spread: Spread, day: number): number {
  const ofRange = manyYears.range + manyYears.rangeSwing * season(day, curves.coldestDay);
  const most = manyYears.rangeBesideSpread * spread.kelvin;
  return Math.min(0.5 * ofRange * curves.range[day], most);
}

/**
 * What one standard departure of `range` takes from the day's least temperature [K]: half the widening, and what wide
 * days are colder by in the mean, autumn's above all (correlation of mean and range −0.40 in October, −0.15 in
 * January and April, none in July).
 */
export function widerCooling(curves: TemperatureCurves, spread: Spread, day: number): number {
  const { coldestDay, kind } = curves;
  const share =
    manyYears.wideCooler + manyYears.wideCoolerSwing * season(day, coldestDay - manyYears.wideLead);
  return halfWidening(curves, spread, day) + share * spread.kelvin * seasonalSpread(day, coldestDay, kind);
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
  /** Day of the year, and departure of its range. */
  readonly day: Int32Array;
  readonly range: Float64Array;
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
      (value) => quantileLow(curves, candidates, { kelvin: value, tail }, 0.5) - typicalLow,
    );
    const longer = bisect(
      -0.15,
      1.5,
      (value) => quantileLow(curves, candidates, { kelvin, tail: value }, 0.1) - rareLow,
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
  const days: number[] = [];
  const range: number[] = [];
  for (let winter = 0; winter < winters; winter++) {
    from[winter] = base.length;
    const drawn = drawDepartures(random, curves.kind, curves.coldestDay);
    for (let day = 0; day < 365; day++) {
      const size = seasonalSpread(day, curves.coldestDay, curves.kind);
      if (season(day, curves.coldestDay) < 0 || drawn.temperature[day] > -0.5) continue;
      base.push(curves.minimum[day] + clearChange(curves, drawn, day));
      share.push(size);
      departure.push(drawn.temperature[day]);
      days.push(day);
      range.push(drawn.range[day]);
    }
  }
  from[winters] = base.length;
  return {
    from,
    base: Float64Array.from(base),
    share: Float64Array.from(share),
    departure: Float64Array.from(departure),
    day: Int32Array.from(days),
    range: Float64Array.from(range),
  };
}

/** Quantile over the drawn winters of the year's least temperature [°C]. */
function quantileLow(
  curves: TemperatureCurves,
  candidates: Candidates,
  spread: Spread,
  quantile: number,
): number {
  const { from, base, share, departure, day, range } = candidates;
  const wider = Float64Array.from({ length: 365 }, (_, each) => widerCooling(curves, spread, each));
  const tail = Float64Array.from(
    { length: 365 },
    (_, each) => spread.tail * seasonalTail(each, curves.coldestDay, curves.kind),
  );
  const least = new Float64Array(winters);
  for (let winter = 0; winter < winters; winter++) {
    let low = Infinity;
    for (let k = from[winter]; k < from[winter + 1]; k++) {
      const here =
        base[k] + spread.kelvin * share[k] * drawnOut(departure[k], tail[day[k]]) - wider[day[k]] * range[k];
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
