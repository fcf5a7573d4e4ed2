import type { Lot, Plan } from '../plan/schema.ts';
import { planGroup } from '../plan/plan-groups.ts';
import type { GroupNumbers } from '../plan/groups.ts';
import {
  coldLimits,
  flowerOutlook,
  harmDoses,
  harmTotals,
  repotDays,
  restsMoist,
  runPlants,
  waterAdvice,
} from '../plants/index.ts';
import type { PlantClimate } from './plant-climate.ts';
import type { LotDays, LotSeason } from './result.ts';
import type { SiteYear } from './site-year.ts';
import type { Stay } from './stays.ts';

/** A stay with the climate of its place. */
export interface StayIn extends Stay {
  readonly climate: PlantClimate;
}

/** Everything a plant would live through that stood in one climate all season. */
export function livedIn(climate: PlantClimate): LotDays {
  return { ...climate.daily, dailyLight: climate.lightAt({ across: 'all', along: 'all', level: 'all' }) };
}

const dailyNames = ['leafLeast', 'leafMean', 'leafMost', 'leafNight', 'potMean', 'photoperiod'] as const;

/** Days of the climates a lot stands in, joined stay after stay, and its leaf temperature by the step. */
function joined(lot: Lot, stays: readonly StayIn[]): { lived: LotDays; leaf: Float64Array } {
  const [{ climate }] = stays;
  if (stays.length === 1)
    return { lived: { ...livedIn(climate), dailyLight: climate.lightAt(lot.spot) }, leaf: climate.leaf };
  const days = climate.daily.leafMean.length;
  const perDay = climate.leaf.length / days;
  const leaf = new Float64Array(climate.leaf.length);
  const series = Object.fromEntries(dailyNames.map((name) => [name, new Float64Array(days)]));
  const dailyLight = new Float64Array(days);
  for (const stay of stays) {
    const part = (values: Float64Array) => values.subarray(stay.from, stay.to + 1);
    for (const name of dailyNames) series[name].set(part(stay.climate.daily[name]), stay.from);
    dailyLight.set(part(stay.climate.lightAt(lot.spot)), stay.from);
    leaf.set(stay.climate.leaf.subarray(stay.from * perDay, (stay.to + 1) * perDay), stay.from * perDay);
  }
  return { lived: { ...series, dailyLight } as unknown as LotDays, leaf };
}

/** Judges one lot through the season, wherever it stands; what it remembers goes with it. */
export function runLot(
  plan: Plan,
  lot: Lot,
  stays: readonly StayIn[],
  numbers: GroupNumbers,
  year: SiteYear,
): LotSeason {
  const group = planGroup(plan, lot.group);
  if (group === null) throw new RangeError(`expected a plant group of the plan, got ${lot.group}`);
  const { lived, leaf } = joined(lot, stays);
  const days = {
    meanLeaf: lived.leafMean,
    leastLeaf: lived.leafLeast,
    mostLeaf: lived.leafMost,
    meanNightLeaf: lived.leafNight,
    dailyLight: lived.dailyLight,
    photoperiod: lived.photoperiod,
  };
  const result = runPlants(numbers, days, { watering: lot.watering, startDay: year.startDay });
  const coldLimit = coldLimits(numbers, result);
  const harms = harmDoses(numbers, leaf, year.clock.stepMinutes, result.wet, lived.dailyLight, {
    coldLimit,
    decline: result.decline,
  });
  const moist = restsMoist(group);
  const watering = lived.leafMean.map((_, day) =>
    lot.watering === 'dry'
      ? 2
      : waterAdvice(result.state[day], numbers, meanAhead(lived.leafMean, day), moist).code,
  );
  return {
    lotId: lot.id,
    groupId: lot.group,
    placeId: lot.place,
    stays: stays.map(({ placeId, from, to }) => ({ placeId, from, to })),
    lived,
    state: result.state,
    stateDays: result.stateDays,
    temperatureIndex: result.temperatureIndex,
    lightIndex: result.lightIndex,
    waterIndex: result.waterIndex,
    carbonIndex: result.carbonIndex,
    softness: result.softness,
    growthIndex: result.growthIndex,
    rememberedLeaf: result.rememberedLeaf,
    rememberedLight: result.rememberedLight,
    limiting: result.limiting,
    limitingShare: result.limitingShare,
    marginKelvin: result.marginKelvin,
    marginLight: result.marginLight,
    spareKelvin: result.spareKelvin,
    spareLight: result.spareLight,
    hardening: result.hardening,
    coldLimit,
    photothermal: result.photothermal,
    repot: repotDays(numbers, result, lived.potMean),
    flowering: flowerOutlook(group, numbers, days, result),
    frostDose: harms.frost,
    chillDose: harms.chill,
    chillLoad: harms.chillLoad,
    chilled: harms.chilled,
    frostDepth: harms.frostDepth,
    heatDose: harms.heat,
    scorchDose: harms.scorch,
    wetColdDose: harms.wetCold,
    declineDose: harms.decline,
    declineShare: result.declineShare,
    harm: harmTotals(harms),
    transitions: result.transitions,
    wet: result.wet,
    watering: Uint8Array.from(watering),
  };
}

/** Mean of the week after a day; the year is a ring. */
function meanAhead(values: Float64Array, day: number): number {
  let sum = 0;
  for (let k = 1; k <= 7; k++) sum += values[(day + k) % values.length];
  return sum / 7;
}
