import type { Lot, Plan } from '../plan/schema.ts';
import { groupNumbers, plantGroup } from '../plan/groups.ts';
import { harmDoses, harmTotals, runPlants, waterAdvice } from '../plants/index.ts';
import type { PlaceYear } from './place-season.ts';
import { seasonStepMinutes } from './site-year.ts';
import type { LotSeason } from './result.ts';

/** Judges one lot of plants in a place's year. */
export function runLot(plan: Plan, lot: Lot, place: PlaceYear): LotSeason {
  const group = plantGroup(lot.group);
  if (group === null) throw new RangeError(`expected a plant group of the catalogue, got ${lot.group}`);
  const numbers = groupNumbers(group, plan.groupEdits[lot.group]);
  const { daily } = place;
  const dailyLight = daily.daylight.map((light, day) => light + daily.lampLight[day]);
  const days = {
    meanLeaf: daily.leafMean,
    leastLeaf: daily.leafLeast,
    mostLeaf: daily.leafMost,
    meanNightLeaf: daily.leafNight,
    dailyLight,
    photoperiod: daily.photoperiod,
  };
  const result = runPlants(numbers, days, { watering: lot.watering });
  const harms = harmDoses(numbers, place.leaf, seasonStepMinutes, result.wet, dailyLight);
  const count = dailyLight.length;
  const watering = new Uint8Array(count);
  for (let day = 0; day < count; day++) {
    watering[day] =
      lot.watering === 'dry'
        ? 2
        : waterAdvice(result.state[day], numbers, meanAhead(daily.leafMean, day)).code;
  }
  return {
    lotId: lot.id,
    groupId: lot.group,
    placeId: lot.place,
    state: result.state,
    stateDays: result.stateDays,
    temperatureIndex: result.temperatureIndex,
    lightIndex: result.lightIndex,
    growthIndex: result.growthIndex,
    limiting: result.limiting,
    marginKelvin: result.marginKelvin,
    marginLight: result.marginLight,
    frostDose: harms.frost,
    chillDose: harms.chill,
    heatDose: harms.heat,
    scorchDose: harms.scorch,
    wetColdDose: harms.wetCold,
    harm: harmTotals(harms),
    transitions: result.transitions,
    wet: result.wet,
    watering,
  };
}

/** Mean of the week after a day; the year is a ring. */
function meanAhead(values: Float64Array, day: number): number {
  let sum = 0;
  for (let k = 1; k <= 7; k++) sum += values[(day + k) % values.length];
  return sum / 7;
}
