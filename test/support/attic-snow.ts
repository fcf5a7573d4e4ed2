import { atticOffsetHours } from './attic-data.ts';
import type { AtticReadings } from './attic-data.ts';

/** Water in the thinnest snow that covers a roof [mm]: some 3 cm of fresh snow. */
const leastWater = 3;

/** Precipitation at or under this air temperature falls as snow [°C] (common in degree-day models, from memory). */
const snowBelow = 0.5;

/** Water a warm day melts out of snow [mm K⁻¹ d⁻¹]: middle of the 2–5 given for open ground at 60° N (from memory). */
const meltRate = 3;

/** Density of settled winter snow [kg m⁻³] (200–300 in southern Finland, from memory). */
const settledDensity = 220;

/** Snow of a winter as a site has it: mean depth on the ground [m], first and last day. */
export interface LyingSnow {
  readonly depth: number;
  readonly from: string;
  readonly to: string;
}

const hourMs = 3_600_000;

/**
 * The snow of a winter from its measured precipitation and temperature by a degree-day store: the longest unbroken
 * time it lay between two readings, and its mean depth then. The station's file has no snow depth.
 * @param lying water in the snow that lies at the first of these readings [mm]
 */
export function snowOf(readings: AtticReadings, begin: number, end: number, lying: number): LyingSnow {
  const { outdoor, precipitation } = readings;
  let water = lying;
  let run = { from: begin, to: begin, sum: 0 };
  let best = run;
  for (let i = begin; i < end; i++) {
    if (outdoor[i] <= snowBelow) water += precipitation[i];
    water = Math.max(0, water - (Math.max(0, outdoor[i]) * meltRate) / 24);
    run =
      water < leastWater ? { from: i + 1, to: i + 1, sum: 0 } : { ...run, to: i + 1, sum: run.sum + water };
    if (run.to - run.from > best.to - best.from) best = run;
  }
  const hours = best.to - best.from;
  if (hours === 0) throw new RangeError('expected a winter with lying snow');
  const day = (i: number) =>
    new Date(readings.startMs + (i + atticOffsetHours) * hourMs).toISOString().slice(5, 10);
  return { depth: best.sum / hours / settledDensity, from: day(best.from), to: day(best.to) };
}
