import type { GroupNumbers } from '../plan/groups.ts';
import type { PlantDays } from './day.ts';
import { dayCount, firstOfAugust, seasonMonth } from './day.ts';
import { becauseOf, crossingOf } from './crossed.ts';
import type { Crossing } from './crossing.ts';
import { declineShare } from './injury.ts';
import { limitOf, limitShareOf } from './limit.ts';
import { marginKelvin, marginLight, spareKelvin, spareLight } from './margins.ts';
import type { Mind, Watering } from './mind.ts';
import { flagsOf, liveDay, newMind } from './mind.ts';
import { photothermalRatio } from './photothermal.ts';
import type { Reading } from './reading.ts';
import { carbonResponse, lightResponse, softnessOf, temperatureResponse } from './response.ts';
import type { Thresholds } from './thresholds.ts';
import { thresholdsOf } from './thresholds.ts';
import { stateOf, steadied } from './verdict.ts';
import { plantStates } from './words.ts';

export interface PlantOptions {
  /** Water by season (default), held dry throughout, or given whatever the state. */
  readonly watering?: Watering;
  /** Days lived through before the first, so that memory starts as the plant's would [d]; default 30. */
  readonly spinUpDays?: number;
  /** Whether the days before the first are the last of the series (a year, default) or its first week over again. */
  readonly cyclic?: boolean;
  /** Days from the season's start to the first day; default 0. */
  readonly firstSeasonDay?: number;
  /** The season's first day as day of a common year (0 = 1 January), for the months in which it is kept dry; default 1 August. */
  readonly startDay?: number;
}

export interface PlantTransition {
  readonly day: number;
  readonly from: number;
  readonly to: number;
  readonly because: string;
  /** The same as figures, so that the date can be checked. */
  readonly crossing: Crossing;
}

/** What a group of plants does, a day an entry; every number is finite. */
export interface PlantResult {
  /** Index into `plantStates`, and into `limitingFactors`. */
  readonly state: Uint8Array;
  readonly limiting: Uint8Array;
  /** Share of the whole lack of growth that the limiting factor has, 0–1. */
  readonly limitingShare: Float64Array;
  /** Days in each state, indexed as `plantStates` [d]. */
  readonly stateDays: Float64Array;
  /** The day's own indices, 0–1, and their product. */
  readonly temperatureIndex: Float64Array;
  readonly lightIndex: Float64Array;
  readonly waterIndex: Float64Array;
  readonly growthIndex: Float64Array;
  /** Carbon gain, 0–1: by night temperature where the group has a curve of its own, else as development. */
  readonly carbonIndex: Float64Array;
  /** Remembered mean temperature [°C] and daily light [mol m⁻² d⁻¹] that the state is read from. */
  readonly rememberedLeaf: Float64Array;
  readonly rememberedLight: Float64Array;
  /** Kelvin to warm (positive) or cool (negative), and mol m⁻² d⁻¹ to add, for the next better state; 0 where none. */
  readonly marginKelvin: Float64Array;
  readonly marginLight: Float64Array;
  /** Kelvin it may cool (negative) or warm (positive), and mol m⁻² d⁻¹ it may lose (negative), before the next worse state; 0 where none. */
  readonly spareKelvin: Float64Array;
  readonly spareLight: Float64Array;
  /** How hardened to cold it is, 0–1. */
  readonly hardening: Float64Array;
  /** Remembered daily light for each degree above the base [mol m⁻² d⁻¹ K⁻¹]; 0 at and below the base. */
  readonly photothermal: Float64Array;
  /** 1 where water was given or the mix still holds more than half of it: the wet limit of cold counts. */
  readonly watered: Uint8Array;
  readonly wet: Uint8Array;
  /** 1 on days on which heat has lasted so long that the plant declines. */
  readonly decline: Uint8Array;
  /** Share of the way from decline to death by heat, 0–1; 1 from the day on which it is dead, for good. */
  readonly declineShare: Float64Array;
  /** How far development runs ahead of carbon gain, 0–1: soft growth, from warm nights above all. */
  readonly softness: Float64Array;
  readonly transitions: readonly PlantTransition[];
}

const meanOf = (values: Float64Array, count: number) => {
  let sum = 0;
  for (let day = 0; day < count; day += 1) sum += values[day] as number;
  return sum / count;
};

/** Lives through the days before the first so that the first day finds a plant with a past. */
function spinUp(
  group: GroupNumbers,
  at: Thresholds,
  days: PlantDays,
  count: number,
  options: Required<PlantOptions>,
): Mind {
  const { spinUpDays, cyclic, watering, firstSeasonDay, startDay } = options;
  const week = Math.min(7, count);
  const [warmth, light, high] = [days.meanLeaf, days.dailyLight, days.mostLeaf].map((values) =>
    meanOf(values, week),
  ) as [number, number, number];
  const mind = newMind(group, at, warmth, light, high);
  const cycle = cyclic ? count : week;
  for (let back = spinUpDays; back > 0; back -= 1) {
    const day = ((-back % cycle) + cycle) % cycle;
    liveDay(mind, group, at, days, day, watering, seasonMonth(firstSeasonDay - back, startDay));
  }
  return mind;
}

function emptyResult(count: number) {
  const numbers = () => new Float64Array(count);
  const codes = () => new Uint8Array(count);
  return {
    state: codes(),
    limiting: codes(),
    stateDays: new Float64Array(plantStates.length),
    temperatureIndex: numbers(),
    lightIndex: numbers(),
    waterIndex: numbers(),
    growthIndex: numbers(),
    carbonIndex: numbers(),
    rememberedLeaf: numbers(),
    rememberedLight: numbers(),
    marginKelvin: numbers(),
    marginLight: numbers(),
    limitingShare: numbers(),
    spareKelvin: numbers(),
    spareLight: numbers(),
    hardening: numbers(),
    photothermal: numbers(),
    watered: codes(),
    wet: codes(),
    decline: codes(),
    declineShare: numbers(),
    softness: numbers(),
    transitions: [] as PlantTransition[],
  };
}

/** What the first pass keeps of each day for the verdicts of the second. */
interface Kept {
  readonly flags: Uint16Array;
  readonly dayHigh: Float64Array;
  readonly heat: Float64Array;
}

/** The day's indices: their product is the growth index, in the manner of Nobel's (1984, 1988) productivity index. */
function recordDay(
  result: ReturnType<typeof emptyResult>,
  kept: Kept,
  group: GroupNumbers,
  days: PlantDays,
  day: number,
  mind: Mind,
) {
  const mean = days.meanLeaf[day] as number;
  const temperature = temperatureResponse(group, mean);
  const light = lightResponse(group, days.dailyLight[day] as number);
  result.temperatureIndex[day] = temperature;
  result.lightIndex[day] = light;
  result.waterIndex[day] = mind.moisture;
  result.growthIndex[day] = temperature * light * mind.moisture;
  const carbon = carbonResponse(group, days.meanNightLeaf[day] as number, mind.warmth, mean);
  result.carbonIndex[day] = carbon;
  result.softness[day] = softnessOf(temperature, carbon);
  result.rememberedLeaf[day] = mind.warmth;
  result.rememberedLight[day] = mind.light;
  result.photothermal[day] = photothermalRatio(group, mind.light, mind.warmth);
  result.hardening[day] = mind.hardening;
  result.watered[day] = mind.watered ? 1 : 0;
  result.wet[day] = mind.moisture > 0.5 ? 1 : 0;
  result.declineShare[day] = mind.dead ? 1 : declineShare(group, mind.warmDays);
  result.decline[day] = mind.dead || mind.warmDays > group.declineDays ? 1 : 0;
  kept.flags[day] = flagsOf(mind);
  kept.dayHigh[day] = mind.dayHigh;
  kept.heat[day] = mind.heat;
}

/** Fills a day's reading from what was kept. */
function readDay(
  reading: Reading,
  result: ReturnType<typeof emptyResult>,
  kept: Kept,
  days: PlantDays,
  day: number,
) {
  reading.warmth = result.rememberedLeaf[day] as number;
  reading.light = result.rememberedLight[day] as number;
  reading.moisture = result.waterIndex[day] as number;
  reading.dayHigh = kept.dayHigh[day] as number;
  reading.heat = kept.heat[day] as number;
  reading.meanLeaf = days.meanLeaf[day] as number;
  reading.flagsBefore = reading.flags;
  reading.flags = kept.flags[day] as number;
}

/** Limits, margins and transitions of every day, once the states are steady. */
function giveVerdicts(
  result: ReturnType<typeof emptyResult>,
  kept: Kept,
  group: GroupNumbers,
  days: PlantDays,
  flagsBefore: number,
) {
  const at = thresholdsOf(group);
  const reading: Reading = {
    warmth: 0,
    dayHigh: 0,
    light: 0,
    moisture: 0,
    heat: 0,
    meanLeaf: 0,
    flags: flagsBefore,
    flagsBefore,
  };
  let from = stateOf(flagsBefore, group);
  for (let day = 0; day < result.state.length; day += 1) {
    readDay(reading, result, kept, days, day);
    const state = result.state[day] as number;
    const limit = limitOf(state, reading, group, days.photoperiod[day] as number);
    result.stateDays[state] = (result.stateDays[state] as number) + 1;
    result.limiting[day] = limit;
    result.limitingShare[day] = limitShareOf(limit, state, reading, group);
    result.marginKelvin[day] = marginKelvin(state, reading, group, at);
    result.marginLight[day] = marginLight(state, reading, group, at);
    result.spareKelvin[day] = spareKelvin(state, reading, group, at);
    result.spareLight[day] = spareLight(state, reading, group, at);
    if (state === from) continue;
    const crossing = crossingOf(from, state, reading, group, at);
    const because = becauseOf(state, crossing, reading, group);
    result.transitions.push({ day, from, to: state, because, crossing });
    from = state;
  }
}

const usual: Required<PlantOptions> = {
  watering: 'by-season',
  spinUpDays: 30,
  cyclic: true,
  firstSeasonDay: 0,
  startDay: firstOfAugust,
};

/**
 * Carries a plant group through its days: indices of the day, state with memory and hysteresis, the factor that
 * holds, and how far the next better and the next worse state are. Development follows the 24-h mean leaf temperature.
 */
export function runPlants(group: GroupNumbers, days: PlantDays, options: PlantOptions = {}): PlantResult {
  const count = dayCount(days);
  const all = { ...usual, ...options };
  const at = thresholdsOf(group);
  const mind = spinUp(group, at, days, count, all);
  const result = emptyResult(count);
  const kept: Kept = {
    flags: new Uint16Array(count),
    dayHigh: new Float64Array(count),
    heat: new Float64Array(count),
  };
  const flagsBefore = flagsOf(mind);
  for (let day = 0; day < count; day += 1) {
    liveDay(mind, group, at, days, day, all.watering, seasonMonth(all.firstSeasonDay + day, all.startDay));
    recordDay(result, kept, group, days, day, mind);
    result.state[day] = stateOf(kept.flags[day] as number, group);
  }
  steadied(result.state, stateOf(flagsBefore, group), mind.settle);
  giveVerdicts(result, kept, group, days, flagsBefore);
  return result;
}
