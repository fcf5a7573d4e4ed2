import {
  carbonNightResponse,
  lightNeeded,
  lightResponse,
  temperatureResponse,
  thresholdsOf,
} from '../../core/index.ts';
import type { GroupNumbers } from '../../core/index.ts';
import type { MidWinter } from './midwinter.ts';

export type CurveId = 'development' | 'carbon' | 'light' | 'needed';

export interface CurveMark {
  readonly at: number;
  readonly words: string;
}

/** One of a group's response curves: what runs along it, what it gives, and where a lot stands on it in mid-winter. */
export interface GroupCurve {
  readonly id: CurveId;
  readonly title: string;
  /** One sentence under the title. */
  readonly note: string;
  /** What runs along: leaf temperature [°C] or daily light [mol m⁻² d⁻¹]. */
  readonly along: 'warmth' | 'light';
  /** What it gives: a share of the best, 0–1, or daily light [mol m⁻² d⁻¹]. */
  readonly gives: 'share' | 'light';
  /** Whether a group has this curve; all do where it is left out. */
  readonly has?: (numbers: GroupNumbers) => boolean;
  readonly response: (numbers: GroupNumbers, at: number) => number;
  readonly marks: (numbers: GroupNumbers) => readonly CurveMark[];
  /** Least and most along it that show the whole of the curve. */
  readonly span: (numbers: GroupNumbers) => readonly [number, number];
  readonly lotAt: (lot: MidWinter) => number;
  /** How high a lot stands where that is not on the curve itself. */
  readonly lotGives?: (lot: MidWinter) => number;
}

const warmthSpan = (numbers: GroupNumbers) => [numbers.baseTemperature - 4, numbers.ceiling + 2] as const;

export const groupCurves: readonly GroupCurve[] = [
  {
    id: 'development',
    title: 'New growth by warmth',
    note: 'Percent of the best, by the mean of day and night',
    along: 'warmth',
    gives: 'share',
    response: temperatureResponse,
    marks: (numbers) => [
      { at: numbers.optimumLow, words: 'Best from' },
      { at: numbers.optimumHigh, words: 'Best up to' },
      { at: numbers.slowAbove, words: 'Slows above' },
    ],
    span: warmthSpan,
    lotAt: (lot) => lot.leaf,
  },
  {
    id: 'carbon',
    title: 'Substance gained by warmth of the night',
    note: 'Percent of the best, for plants grown at a mean of 18.5 °C; where new growth runs ahead, it is soft',
    along: 'warmth',
    gives: 'share',
    has: (numbers) => carbonNightResponse(numbers, 0) !== null,
    response: (numbers, night) => carbonNightResponse(numbers, night) ?? 0,
    marks: ({ carbonNight: best }) => (best === null ? [] : [{ at: best, words: 'Most at' }]),
    span: ({ carbonNight: best, carbonCool: cool, carbonWarm: warm }) => [
      (best ?? 15) - 1.5 * (cool ?? 10) - 1,
      (best ?? 15) + 1.5 * (warm ?? 10) + 1,
    ],
    lotAt: (lot) => lot.night,
    lotGives: (lot) => lot.carbon,
  },
  {
    id: 'light',
    title: 'New growth by daily light',
    note: 'Percent of the best',
    along: 'light',
    gives: 'share',
    response: lightResponse,
    marks: (numbers) => [
      { at: numbers.lightHold, words: 'Holds with' },
      { at: numbers.lightStretch, words: 'Compact when warm with' },
      { at: numbers.lightGood, words: 'Grows well from' },
    ],
    span: (numbers) => [0, numbers.lightGoodHigh * 1.2],
    lotAt: (lot) => lot.light,
  },
  {
    id: 'needed',
    title: 'Light it needs to stay compact, by warmth',
    note: 'Plants below the line stretch or stand still; cooler, they need less',
    along: 'warmth',
    gives: 'light',
    response: (numbers, leaf) => lightNeeded(numbers, thresholdsOf(numbers), leaf),
    marks: () => [],
    span: warmthSpan,
    lotAt: (lot) => lot.leaf,
    lotGives: (lot) => lot.light,
  },
];

export function groupCurve(id: CurveId): GroupCurve {
  const curve = groupCurves.find((one) => one.id === id);
  if (!curve) throw new Error(`expected a response curve, got ${id}`);
  return curve;
}

/** Along a curve from least to most, widened so that every lot's point lies on the drawing. */
export function domainOf(
  curve: GroupCurve,
  all: readonly GroupNumbers[],
  lots: readonly MidWinter[],
): [number, number] {
  const spans = all.map(curve.span);
  const points = lots.map(curve.lotAt);
  const beside = curve.along === 'warmth' ? 1 : 0;
  const least = Math.min(...spans.map(([from]) => from), ...points.map((at) => at - beside));
  const most = Math.max(...spans.map(([, to]) => to), ...points.map((at) => at * 1.02 + beside));
  return [curve.along === 'light' ? Math.max(0, least) : least, most];
}

/** Up a curve: shares to 1, light a little beyond what the neediest group needs. */
export function heightOf(curve: GroupCurve, all: readonly GroupNumbers[]): number {
  return curve.gives === 'share' ? 1 : 1.5 * Math.max(...all.map((numbers) => numbers.lightStretch));
}

/** Where a curve first reaches `level` of its own height, for a letter; the beginning where it is level. */
export function letterAt(
  response: (at: number) => number,
  [from, to]: readonly [number, number],
  level: number,
): number {
  const steps = Array.from({ length: 121 }, (_, step) => from + ((to - from) * step) / 120);
  const values = steps.map(response);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const at = values.findIndex((value) => value >= least + level * (most - least));
  return steps[Math.max(0, at)];
}
