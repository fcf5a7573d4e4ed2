import {
  carbonNightResponse,
  lightNeeded,
  lightResponse,
  limitingFactors,
  plantStates,
  temperatureResponse,
  thresholdsOf,
} from '../../core/index.ts';
import type { GroupNumbers, LotSeason } from '../../core/index.ts';
import type { CurveMark, CurvePoint, CurveZone, DrawnCurve } from '../shared/curve.ts';
import { whyRun } from './why.ts';

/** One of the pair of curves of a why panel. */
export interface WhyCurve {
  readonly domain: [number, number];
  readonly curves: readonly DrawnCurve[];
  readonly points: readonly CurvePoint[];
  readonly marks: readonly CurveMark[];
  /** Where the state of the day lasts, for a state that this quantity decides; else null. */
  readonly zone: CurveZone | null;
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

/** Where a rest by cold or heat lasts: on the far side of the warmth that would end it. */
function restZone(lot: LotSeason, day: number, domain: readonly [number, number]): CurveZone | null {
  const state = lot.state[day];
  const ends = lot.rememberedLeaf[day] + lot.marginKelvin[day];
  switch (plantStates[state].id) {
    case 'resting-cold':
      return lot.marginKelvin[day] > 0 ? { from: domain[0], to: ends, state } : null;
    case 'resting-heat':
      return lot.marginKelvin[day] < 0 ? { from: ends, to: domain[1], state } : null;
    default:
      return null;
  }
}

/** Where stretching or a rest from dark lasts: under the light that would end it. */
function dimZone(lot: LotSeason, day: number): CurveZone | null {
  const state = lot.state[day];
  const { id } = plantStates[state];
  if ((id !== 'stretching' && id !== 'resting-dim') || !(lot.marginLight[day] > 0)) return null;
  return { from: 0, to: lot.rememberedLight[day] + lot.marginLight[day], state };
}

/** True where the day's state is one that light decides: its curve is the one to look at first. */
export function lightDecides(lot: LotSeason, day: number): boolean {
  const { id } = plantStates[lot.state[day]];
  return id === 'stretching' || id === 'resting-dim' || limitingFactors[lot.limiting[day]].id === 'dark';
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
  const domain: [number, number] = [
    Math.floor(Math.min(numbers.baseTemperature - 3, mean - 1, remembered - 1, night - 1)),
    Math.ceil(Math.max(numbers.ceiling + 1, mean + 1)),
  ];
  return {
    domain,
    zone: restZone(lot, day, domain),
    curves: [
      { id: 'development', words: 'development', response: development },
      ...(carbonNow === null
        ? []
        : [{ id: 'carbon', words: 'carbon gain', response: (celsius: number) => carbon(celsius) ?? 0 }]),
    ],
    points: [
      { id: 'remembered', at: remembered, value: development(remembered), words: 'of late, as remembered' },
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
  const zone = dimZone(lot, day);
  /** In a dim state the light that ends it, which lies a little above the need, is the one to tell. */
  const need = zone
    ? { at: zone.to, words: plantStates[zone.state].id === 'stretching' ? 'compact above' : 'grows above' }
    : { at: compact, words: 'compact at its warmth with' };
  return {
    zone,
    domain: [0, Math.ceil(Math.max(numbers.lightGoodHigh * 1.1, light + 1, remembered + 1))],
    curves: [{ id: 'light', words: 'growth', response }],
    points: [
      { id: 'remembered', at: remembered, value: response(remembered), words: 'of late, as remembered' },
      { id: 'day', at: light, value: response(light), words: 'of the day' },
    ],
    marks: marked(
      [
        { at: numbers.lightHold, words: 'holds with' },
        need,
        { at: numbers.lightGood, words: 'grows well from' },
      ],
      lot,
      day,
      'mol/m²',
    ),
  };
}
