import type { GroupNumbers } from '../plan/groups.ts';
import type { Mind } from './mind.ts';
import { lightResponse, optimumOf, temperatureResponse } from './response.ts';
import type { Thresholds } from './thresholds.ts';
import * as level from './thresholds.ts';
import * as code from './words.ts';

/** True where the day's length keeps the group from setting flower. */
function dayLengthHolds(group: GroupNumbers, photoperiod: number): boolean {
  if (group.criticalDayLength === null) return false;
  if (group.dayLengthKind > 0) return photoperiod < group.criticalDayLength;
  return group.dayLengthKind < 0 && photoperiod > group.criticalDayLength;
}

function slowLimit(mind: Mind, group: GroupNumbers): number {
  const byTemperature =
    !mind.closed && mind.warmth < optimumOf(group) ? code.limitedByCold : code.limitedByHeat;
  if (!mind.dull) return byTemperature;
  if (!mind.cool && !mind.warm && !mind.closed) return code.limitedByDark;
  const dimmer = lightResponse(group, mind.light) <= temperatureResponse(group, mind.warmth);
  return dimmer ? code.limitedByDark : byTemperature;
}

/** The factor that holds a plant in its state: an index into `limitingFactors`. */
export function limitOf(state: number, mind: Mind, group: GroupNumbers, photoperiod: number): number {
  switch (state) {
    case code.restingCold:
      return code.limitedByCold;
    case code.restingHeat:
      return code.limitedByHeat;
    case code.restingDry:
      return code.limitedByDry;
    case code.restingDim:
    case code.stretching:
      return code.limitedByDark;
    case code.slow:
      return slowLimit(mind, group);
    default:
      return dayLengthHolds(group, photoperiod) ? code.limitedByDayLength : code.limitedByNothing;
  }
}

/**
 * Kelvin by which the mean of day and night must rise (positive) or fall (negative) for the next better state, by
 * what the plant remembers; 0 where warmth or cooling does not help.
 */
export function marginKelvin(state: number, mind: Mind, group: GroupNumbers, at: Thresholds): number {
  if (state === code.restingCold) return Math.max(0, at.coldEnds - mind.warmth);
  if (state === code.restingHeat)
    return Math.min(0, (mind.hot ? at.heatEnds : group.slowAbove) - mind.warmth);
  if (state === code.stretching) {
    const cool = level.coolEnoughFor(group, at, mind.light);
    return cool === null ? 0 : Math.min(0, cool - mind.warmth);
  }
  if (state === code.slow && mind.cool) return Math.max(0, at.coolSlowEnds - mind.warmth);
  if (state === code.slow && mind.warm) return Math.min(0, at.warmSlowEnds - mind.warmth);
  if (state === code.slow && mind.closed)
    return Math.min(0, -level.closingExcess(group, mind.warmth, mind.dayHigh) - level.closedEnds);
  return 0;
}

/** Daily light to add for the next better state [mol m⁻² d⁻¹], by what the plant remembers; 0 where light is enough. */
export function marginLight(state: number, mind: Mind, group: GroupNumbers, at: Thresholds): number {
  if (state === code.restingDim || state === code.stretching) {
    return Math.max(0, level.lightNeeded(group, at, mind.warmth) * level.lackEnds - mind.light);
  }
  return state === code.slow && mind.dull ? Math.max(0, group.lightGood * level.goodBegins - mind.light) : 0;
}

const figure = (value: number) => (Math.abs(value) < 0.05 ? '0.0' : value.toFixed(1).replace('-', '−'));

/** The crossing that brought a state, in words with its figures. */
export function becauseOf(state: number, mind: Mind, group: GroupNumbers, at: Thresholds): string {
  const warmth = `mean of day and night ${figure(mind.warmth)} °C`;
  const light = `daily light ${figure(mind.light)} mol/m²`;
  const needed = figure(level.lightNeeded(group, at, mind.warmth));
  switch (state) {
    case code.restingCold:
      return `${warmth}, below ${figure(at.coldBegins)} °C`;
    case code.restingHeat:
      return mind.hot
        ? `${warmth}, above ${figure(at.heatBegins)} °C`
        : `days too hot for too long: means above ${figure(group.slowAbove)} °C with warm nights, or leaves above ${figure(group.hotDay)} °C`;
    case code.restingDry:
      return 'no water for long while warmth would let it grow';
    case code.restingDim:
      return `${light}, below the ${figure(group.lightHold)} that holds it`;
    case code.stretching:
      return `${light} at a ${warmth}, which needs ${needed} to stay compact`;
    case code.slow:
      if (!mind.dull && mind.closed && !mind.warm)
        return `days up to ${figure(mind.dayHigh)} °C at the leaf with a ${warmth}: closed up against the heat`;
      return mind.dull ? `${light}, under the good ${figure(group.lightGood)}` : warmth;
    default:
      return `${warmth} with ${light}`;
  }
}
