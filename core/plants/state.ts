import type { GroupNumbers } from '../plan/groups.ts';
import type { PlantDays } from './day.ts';
import { dayCount } from './day.ts';
import { becauseOf, limitOf, marginKelvin, marginLight } from './limit.ts';
import type { Mind, Watering } from './mind.ts';
import { liveDay, newMind, stateOf } from './mind.ts';
import { carbonNightResponse, lightResponse, temperatureResponse } from './response.ts';
import type { Thresholds } from './thresholds.ts';
import { thresholdsOf } from './thresholds.ts';
import { plantStates } from './words.ts';

export interface PlantOptions {
  /** Water by season (default), held dry throughout, or given whatever the state. */
  readonly watering?: Watering;
  /** Days lived through before the first, so that memory starts as the plant's would [d]; default 30. */
  readonly spinUpDays?: number;
  /** Whether the days before the first are the last of the series (a year, default) or its first week over again. */
  readonly cyclic?: boolean;
  /** Days from the season's start (1 August, 1 February in the south) to the first day; default 0. */
  readonly firstSeasonDay?: number;
}

export interface PlantTransition {
  readonly day: number;
  readonly from: number;
  readonly to: number;
  readonly because: string;
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
  /** Carbon gain by night temperature, 0–1; for succulents with crassulacean metabolism. */
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
  const { spinUpDays, cyclic, watering, firstSeasonDay } = options;
  const week = Math.min(7, count);
  const [warmth, light, high] = [days.meanLeaf, days.dailyLight, days.mostLeaf].map((values) =>
    meanOf(values, week),
  ) as [number, number, number];
  const mind = newMind(group, at, warmth, light, high);
  const cycle = cyclic ? count : week;
  for (let back = spinUpDays; back > 0; back -= 1) {
    const day = ((-back % cycle) + cycle) % cycle;
    liveDay(mind, group, at, days, day, watering, firstSeasonDay - back - day);
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
    transitions: [] as PlantTransition[],
  };
}

/** The day's indices: their product is the growth index, in the manner of Nobel's (1984, 1988) productivity index. */
function recordIndices(
  result: ReturnType<typeof emptyResult>,
  group: GroupNumbers,
  days: PlantDays,
  day: number,
  mind: Mind,
) {
  const temperature = temperatureResponse(group, days.meanLeaf[day] as number);
  const light = lightResponse(group, days.dailyLight[day] as number);
  result.temperatureIndex[day] = temperature;
  result.lightIndex[day] = light;
  result.waterIndex[day] = mind.moisture;
  result.growthIndex[day] = temperature * light * mind.moisture;
  result.carbonIndex[day] = carbonNightResponse(days.meanNightLeaf[day] as number, mind.warmth);
  result.rememberedLeaf[day] = mind.warmth;
  result.rememberedLight[day] = mind.light;
  result.watered[day] = mind.watered ? 1 : 0;
  result.wet[day] = mind.moisture > 0.5 ? 1 : 0;
  result.decline[day] = mind.warmDays > group.declineDays ? 1 : 0;
}

/**
 * Carries a plant group through its days: indices of the day, state with memory and hysteresis, the factor that
 * holds, and how far the next better state is. Development follows the 24-h mean leaf temperature.
 */
export function runPlants(group: GroupNumbers, days: PlantDays, options: PlantOptions = {}): PlantResult {
  const count = dayCount(days);
  const all = { watering: 'by-season', spinUpDays: 30, cyclic: true, firstSeasonDay: 0, ...options } as const;
  const at = thresholdsOf(group);
  const mind = spinUp(group, at, days, count, all);
  const result = emptyResult(count);
  let before = stateOf(mind, group);
  for (let day = 0; day < count; day += 1) {
    liveDay(mind, group, at, days, day, all.watering, all.firstSeasonDay);
    const state = stateOf(mind, group);
    recordIndices(result, group, days, day, mind);
    result.state[day] = state;
    result.stateDays[state] = (result.stateDays[state] as number) + 1;
    result.limiting[day] = limitOf(state, mind, group, days.photoperiod[day] as number);
    result.marginKelvin[day] = marginKelvin(state, mind, group, at);
    result.marginLight[day] = marginLight(state, mind, group, at);
    if (state !== before) {
      result.transitions.push({ day, from: before, to: state, because: becauseOf(state, mind, group, at) });
    }
    before = state;
  }
  return result;
}
