import type { GroupNumbers } from '../plan/groups.ts';
import type { Reading } from './reading.ts';
import { bit, has } from './reading.ts';
import { lightResponse, optimumOf, temperatureResponse } from './response.ts';
import { growingEnds, restBegins } from './thresholds.ts';
import * as code from './words.ts';

/** True where the day's length keeps the group from setting flower. */
function dayLengthHolds(group: GroupNumbers, photoperiod: number): boolean {
  if (group.criticalDayLength === null) return false;
  if (group.dayLengthKind > 0) return photoperiod < group.criticalDayLength;
  return group.dayLengthKind < 0 && photoperiod > group.criticalDayLength;
}

function slowLimit(reading: Reading, group: GroupNumbers): number {
  const tooHot = has(reading, bit.closed) || !(reading.warmth < optimumOf(group));
  const byTemperature = tooHot ? code.limitedByHeat : code.limitedByCold;
  if (!has(reading, bit.dull)) return byTemperature;
  if (!has(reading, bit.cool | bit.warm | bit.closed)) return code.limitedByDark;
  const dimmer = lightResponse(group, reading.light) <= temperatureResponse(group, reading.warmth);
  return dimmer ? code.limitedByDark : byTemperature;
}

/** The factor that holds a plant in its state: an index into `limitingFactors`. */
export function limitOf(state: number, reading: Reading, group: GroupNumbers, photoperiod: number): number {
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
      return slowLimit(reading, group);
    default:
      return dayLengthHolds(group, photoperiod) ? code.limitedByDayLength : code.limitedByNothing;
  }
}

/** Index below which a lack counts as whole: −ln 0.01 = 4.6 is the most that one factor can have. */
const leastIndex = 0.01;
const lackOf = (index: number) => -Math.log(Math.min(1, Math.max(leastIndex, index)));

/**
 * Temperature index of what the plant remembers. The curve does not know of heat doses: one at rest from heat counts as
 * at the level where rest begins, one closed up as at the level where growing ends, if its curve stands higher.
 */
function rememberedTemperatureIndex(state: number, reading: Reading, group: GroupNumbers): number {
  const index = temperatureResponse(group, reading.warmth);
  if (state === code.restingHeat) return Math.min(index, restBegins);
  return has(reading, bit.closed) ? Math.min(index, growingEnds) : index;
}

/**
 * Share of the whole lack of growth that the limiting factor has, 0–1. Growth is the product of the indices of
 * temperature, light and water (after Nobel 1984), so their logarithms add up: each factor's lack is −ln of its index, by
 * what the plant remembers. Dry mix counts where it holds the plant: one that rests from cold or heat is kept dry because
 * it rests. 0 where nothing holds it, or only day length keeps it from flower.
 */
export function limitShareOf(limit: number, state: number, reading: Reading, group: GroupNumbers): number {
  if (limit === code.limitedByNothing || limit === code.limitedByDayLength) return 0;
  const temperature = lackOf(rememberedTemperatureIndex(state, reading, group));
  const light = lackOf(lightResponse(group, reading.light));
  const water = limit === code.limitedByDry ? lackOf(reading.moisture) : 0;
  const whole = temperature + light + water;
  const own = limit === code.limitedByDark ? light : limit === code.limitedByDry ? water : temperature;
  return whole > 0 ? own / whole : 0;
}
