import {
  carbonNightResponse,
  lightNeeded,
  lightResponse,
  temperatureResponse,
  thresholdsOf,
} from '../../core/index.ts';
import type { GroupNumbers, LotSeason } from '../../core/index.ts';
import type { CurveMark, CurvePoint, DrawnCurve } from '../shared/curve.ts';
import { whyRun } from './why.ts';

/** One of the pair of curves of a why panel. */
export interface WhyCurve {
  readonly domain: [number, number];
  readonly curves: readonly DrawnCurve[];
  readonly points: readonly CurvePoint[];
  readonly marks: readonly CurveMark[];
}

/**
 * The thresholds with those that the run began and ended at in full ink: one of the group's own where it is that, else
 * one more. Crossings of other quantities leave the marks as they are.
 */
function marked(
  marks: readonly Omit<CurveMark, 'strong'>[],
  lot: LotSeason,
  day: number,
  unit: string,
): CurveMark[] {
  const { began, ended } = whyRun(lot, day);
  const crossed = [
    { words: 'it began at', crossing: began?.crossing },
    { words: 'it ended at', crossing: ended?.crossing },
  ].flatMap(({ words, crossing }) => (crossing?.unit === unit ? [{ words, at: crossing.threshold }] : []));
  const like = (at: number) => (other: { readonly at: number }) => Math.abs(other.at - at) < 0.02;
  return [
    ...marks.map((mark) => ({ ...mark, strong: crossed.some(like(mark.at)) })),
    ...crossed.filter(({ at }) => !marks.some(like(at))).map((mark) => ({ ...mark, strong: true })),
  ];
}

/**
 * Development over the 24-h mean, carbon gain over night temperature, and where the day and the remembered mean stand.
 * The carbon curve, where the group has one, is that of a plant used to the remembered mean, as the season judges it.
 */
export function warmthCurve(numbers: GroupNumbers, lot: LotSeason, day: number): WhyCurve {
  const at = thresholdsOf(numbers);
  const [mean, remembered, night] = [
    lot.lived.leafMean[day],
    lot.rememberedLeaf[day],
    lot.lived.leafNight[day],
  ];
  const development = (celsius: number) => temperatureResponse(numbers, celsius);
  const carbon = (celsius: number) => carbonNightResponse(numbers, celsius, remembered);
  const carbonNow = carbon(night);
  return {
    domain: [
      Math.floor(Math.min(numbers.baseTemperature - 3, mean - 1, remembered - 1, night - 1)),
      Math.ceil(Math.max(numbers.ceiling + 1, mean + 1)),
    ],
    curves: [
      { id: 'development', words: 'development', response: development },
      ...(carbonNow === null
        ? []
        : [{ id: 'carbon', words: 'carbon gain', response: (celsius: number) => carbon(celsius) ?? 0 }]),
    ],
    points: [
      { id: 'remembered', at: remembered, value: development(remembered), words: 'as remembered' },
      ...(carbonNow === null
        ? []
        : [{ id: 'night' as const, at: night, value: carbonNow, words: 'by night' }]),
      { id: 'day', at: mean, value: development(mean), words: 'mean of the day' },
    ],
    marks: marked(
      [
        { at: at.coldBegins, words: 'rests below' },
        { at: at.coldEnds, words: 'wakes above' },
        { at: numbers.optimumLow, words: 'best from' },
        { at: numbers.optimumHigh, words: 'best up to' },
        { at: numbers.slowAbove, words: 'slows above' },
      ],
      lot,
      day,
      '°C',
    ),
  };
}

/** Growth over daily light, and where the day's light and the remembered light stand. */
export function lightCurve(numbers: GroupNumbers, lot: LotSeason, day: number): WhyCurve {
  const [light, remembered] = [lot.lived.dailyLight[day], lot.rememberedLight[day]];
  const response = (mol: number) => lightResponse(numbers, mol);
  const compact = lightNeeded(numbers, thresholdsOf(numbers), lot.rememberedLeaf[day]);
  return {
    domain: [0, Math.ceil(Math.max(numbers.lightGoodHigh * 1.1, light + 1, remembered + 1))],
    curves: [{ id: 'light', words: 'growth', response }],
    points: [
      { id: 'remembered', at: remembered, value: response(remembered), words: 'as remembered' },
      { id: 'day', at: light, value: response(light), words: 'of the day' },
    ],
    marks: marked(
      [
        { at: numbers.lightHold, words: 'holds with' },
        { at: compact, words: 'compact at its warmth with' },
        { at: numbers.lightGood, words: 'grows well from' },
      ],
      lot,
      day,
      'mol/m²',
    ),
  };
}
