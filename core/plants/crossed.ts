import type { GroupNumbers } from '../plan/groups.ts';
import type { Crossing } from './crossing.ts';
import type { Reading } from './reading.ts';
import { bit } from './reading.ts';
import type { Thresholds } from './thresholds.ts';
import * as level from './thresholds.ts';
import { rankOf } from './verdict.ts';
import * as code from './words.ts';

const warmthSeries = 'mean of day and night';
const lightSeries = 'daily light';

type Way = Crossing['way'];
const crossing = (series: string, value: number, threshold: number, unit: string, way: Way): Crossing => ({
  series,
  value,
  threshold,
  unit,
  way,
});
const warmthPast = (reading: Reading, threshold: number, way: Way) =>
  crossing(warmthSeries, reading.warmth, threshold, '°C', way);
const lightPast = (reading: Reading, threshold: number, way: Way) =>
  crossing(lightSeries, reading.light, threshold, 'mol/m²', way);
const dosePast = (reading: Reading, threshold: number, way: Way) =>
  crossing('dose of hot days', reading.heat, threshold, 'share', way);
const moisturePast = (reading: Reading, threshold: number, way: Way) =>
  crossing('moisture left in the mix', reading.moisture, threshold, 'share', way);

/** Highest day or mean, whichever is nearer to its limit, that closes a plant up or lets it open. */
function closing(reading: Reading, group: GroupNumbers, slack: number, way: Way): Crossing {
  const byDay = reading.dayHigh - (group.hotDay - level.closesUnderHotDay);
  return byDay <= reading.warmth - group.optimumHigh
    ? crossing(
        'highest of the day',
        reading.dayHigh,
        group.hotDay - level.closesUnderHotDay - slack,
        '°C',
        way,
      )
    : warmthPast(reading, group.optimumHigh - slack, way);
}

/** What brought a state decided before the one it follows. */
function entered(to: number, reading: Reading, group: GroupNumbers, at: Thresholds): Crossing {
  const turned = reading.flags & ~reading.flagsBefore;
  switch (to) {
    case code.restingCold:
      return reading.meanLeaf <= 0
        ? crossing('mean of the day itself', reading.meanLeaf, 0, '°C', 'fell below')
        : warmthPast(reading, at.coldBegins, 'fell below');
    case code.restingHeat:
      return turned & bit.hot
        ? warmthPast(reading, at.heatBegins, 'rose above')
        : dosePast(reading, level.heatDoseBegins, 'reached');
    case code.restingDry:
      return moisturePast(reading, level.dryBegins, 'fell below');
    case code.restingDim:
    case code.stretching: {
      const needed = level.lightNeeded(group, at, reading.warmth);
      return lightPast(reading, needed * level.lackBegins, 'fell below');
    }
    default:
      return slowed(turned, reading, group, at);
  }
}

/** What made a growing plant slow. */
function slowed(turned: number, reading: Reading, group: GroupNumbers, at: Thresholds): Crossing {
  if (turned & bit.cool) return warmthPast(reading, at.coolSlowBegins, 'fell below');
  if (turned & bit.warm) return warmthPast(reading, at.warmSlowBegins, 'rose above');
  if (turned & bit.closed) return closing(reading, group, 0, 'rose above');
  return lightPast(reading, group.lightGood * level.goodEnds, 'fell below');
}

/** What ended a state. */
function left(from: number, reading: Reading, group: GroupNumbers, at: Thresholds): Crossing {
  const turned = reading.flagsBefore & ~reading.flags;
  switch (from) {
    case code.restingCold:
      return warmthPast(reading, at.coldEnds, 'rose above');
    case code.restingHeat:
      return turned & bit.heatDosed
        ? dosePast(reading, level.heatDoseEnds, 'fell below')
        : warmthPast(reading, at.heatEnds, 'fell below');
    case code.restingDry:
      return moisturePast(reading, level.dryEnds, 'rose above');
    case code.restingDim:
    case code.stretching: {
      const needed = level.lightNeeded(group, at, reading.warmth);
      return lightPast(reading, needed * level.lackEnds, 'rose above');
    }
    default:
      if (turned & bit.dull) return lightPast(reading, group.lightGood * level.goodBegins, 'rose above');
      if (turned & bit.cool) return warmthPast(reading, at.coolSlowEnds, 'rose above');
      if (turned & bit.warm) return warmthPast(reading, at.warmSlowEnds, 'fell below');
      return closing(reading, group, level.closedEnds, 'fell below');
  }
}

/** Between resting dim and stretching the hold light decides. */
function dimmed(to: number, reading: Reading, group: GroupNumbers): Crossing {
  return to === code.restingDim
    ? lightPast(reading, group.lightHold * level.dimBegins, 'fell below')
    : lightPast(reading, group.lightHold * level.dimEnds, 'rose above');
}

/** The crossing that turned one state into another, by what the plant remembers on the day. */
export function crossingOf(
  from: number,
  to: number,
  reading: Reading,
  group: GroupNumbers,
  at: Thresholds,
): Crossing {
  if (rankOf(from) === rankOf(to)) return dimmed(to, reading, group);
  return rankOf(to) < rankOf(from) ? entered(to, reading, group, at) : left(from, reading, group, at);
}

const figure = (value: number, unit: string) => {
  const digits = unit === 'share' ? 2 : 1;
  const text = Math.abs(value) < 0.5 * 10 ** -digits ? (0).toFixed(digits) : value.toFixed(digits);
  return text.replace('-', '−');
};
const words: Readonly<Record<Way, string>> = {
  'fell below': 'below',
  'rose above': 'above',
  reached: 'reached',
};

/** What a crossing came to, beyond its figures. */
function meaning(to: number, seen: Crossing, reading: Reading, group: GroupNumbers): string {
  if (to === code.stretching || to === code.restingDim) {
    return to === code.stretching
      ? `: too little to stay compact at a mean of ${figure(reading.warmth, '°C')} °C`
      : `: below the ${figure(group.lightHold, 'mol/m²')} that holds it`;
  }
  if (to === code.restingHeat && seen.unit === 'share')
    return `: means above ${figure(group.slowAbove, '°C')} °C with warm nights, or leaves above ${figure(group.hotDay, '°C')} °C, for too long`;
  if (to === code.restingDry) return ': no water for long while warmth would let it grow';
  if (to === code.slow && seen.series === 'highest of the day') return ': closed up against the heat';
  return '';
}

/** A crossing in words with its figures. */
export function becauseOf(to: number, seen: Crossing, reading: Reading, group: GroupNumbers): string {
  const { series, value, threshold, unit, way } = seen;
  const of = unit === 'share' ? '' : ` ${unit}`;
  const said = `${series} ${figure(value, unit)}${of}, ${words[way]} ${figure(threshold, unit)}${of}`;
  return said + meaning(to, seen, reading, group);
}
