import type { Lot, Place, Plan } from '../plan/schema.ts';
import { heatPrice } from '../cost/index.ts';
import { groupNumbers, plantGroup } from '../plan/groups.ts';
import { AIR, LEAF, WATER, emptyDrive, initialState, stepHeat } from '../heat/index.ts';
import type { HeatState, Network } from '../heat/index.ts';
import {
  lampRuns,
  placeLight,
  preparePlaceRun,
  roomTemperatures,
  setDrive,
  wetnessOf,
} from '../season/index.ts';
import type { PlaceRun, SeasonResult, SiteYear } from '../season/index.ts';
import type { LeadIn } from './lead-in.ts';
import { leadIn } from './lead-in.ts';
import type { PlaceLight } from '../season/place-light.ts';

/** A place made ready for tonight: the network, the night's drives, and its state at dusk. */
export interface NightSetting {
  readonly plan: Plan;
  readonly place: Place;
  readonly lots: readonly Lot[];
  readonly run: PlaceRun;
  readonly night: SiteYear;
  readonly start: HeatState;
}

export interface NightTrace {
  readonly air: Float64Array;
  readonly leaf: Float64Array;
  /** Heat given by all heaters [W]; by each, heater after heater; fan speed 0–1. */
  readonly power: Float64Array;
  readonly byHeater: Float64Array;
  readonly fan: Float64Array;
}

/** Network, drives and state at dusk of a place. */
export function settle(plan: Plan, place: Place, night: SiteYear, lead: LeadIn): NightSetting {
  const lots = plan.lots.filter((lot) => lot.place === place.id);
  const wetness = wetnessOf(place, lots);
  const run = nightRun(place, night, placeLight(place, night), wetness);
  return { plan, place, lots, run, night, start: leadIn(place, lead, run.network, wetness) };
}

/** The same place and the same dusk with something changed tonight: a cover, a lamp. The days before stay as they were. */
export function changedTonight(setting: NightSetting, place: Place): NightSetting {
  const run = nightRun(place, setting.night, setting.run.light, setting.run.wetness);
  return { ...setting, place, run };
}

/** The same place under a forecast warmer or colder by `shift` [K]. */
export function shiftedNight(setting: NightSetting, shift: number): NightSetting {
  return { ...setting, night: shifted(setting.night, shift) };
}

/** A night asks for the lowest air, so thermostats hold the temperature at which they switch on, not their mean. */
function nightRun(place: Place, night: SiteYear, light: PlaceLight, wetness: number): PlaceRun {
  const room = roomTemperatures(place.room, night.clock);
  const run = preparePlaceRun(place, night, light, lampRuns(place), room, wetness);
  const heaters = run.network.heaters.map((heater) => ({
    ...heater,
    day: heater.day - heater.swing,
    night: heater.night - heater.swing,
  }));
  return { ...run, network: { ...run.network, heaters } };
}

/** The same night with the outdoor air and the sky warmer or colder by `shift` [K]. */
function shifted(night: SiteYear, shift: number): SiteYear {
  if (shift === 0) return night;
  return {
    ...night,
    steps: { ...night.steps, dryBulb: night.steps.dryBulb.map((value) => value + shift) },
    skyTemperature: night.skyTemperature.map((value) => value + shift),
  };
}

export interface NightRunOptions {
  /** Network to use instead of the place's own: other heaters, a lining. */
  readonly network?: Network;
  /** Step from which there is no mains power: heaters and lamps off. */
  readonly powerCutAt?: number;
  /** Warm water put in at dusk: litres and temperature [°C]. */
  readonly warmWater?: { readonly litres: number; readonly temperature: number };
}

/** Runs a place through the night. */
export function runTrace(setting: NightSetting, options: NightRunOptions = {}): NightTrace {
  const { night, run } = setting;
  const network = options.network ?? run.network;
  const n = night.steps.n;
  const state = copyState(setting.start, network);
  if (options.warmWater !== undefined) addWater(state, setting.run.network, network, options.warmWater);
  const drive = emptyDrive(network, night.steps.stepMinutes * 60);
  const trace = {
    air: new Float64Array(n),
    leaf: new Float64Array(n),
    power: new Float64Array(n),
    byHeater: new Float64Array(n * network.heaters.length),
    fan: new Float64Array(n),
  };
  for (let k = 0; k < n; k++) {
    setDrive(drive, run, night, k, state);
    drive.powered = options.powerCutAt === undefined || k < options.powerCutAt;
    if (!drive.powered) drive.lampAir = drive.lampLeaf = drive.lampPots = 0;
    stepHeat(network, state, drive);
    trace.air[k] = state.temperature[AIR];
    trace.leaf[k] = state.temperature[LEAF];
    trace.fan[k] = state.fan;
    for (let h = 0; h < network.heaters.length; h++) {
      trace.power[k] += state.heaterPower[h];
      trace.byHeater[h * n + k] = state.heaterPower[h];
    }
  }
  return trace;
}

/** A state of its own for a run, so that the setting can be run again; sized for the network it is run with. */
function copyState(state: HeatState, network: Network): HeatState {
  const copy = initialState(network, 0, state.humidity);
  copy.temperature.set(state.temperature);
  copy.face.set(state.face);
  return copy;
}

/** Mixes warm water into the containers there are; `after` holds the larger capacity. */
function addWater(
  state: HeatState,
  before: Network,
  after: Network,
  water: { litres: number; temperature: number },
): void {
  const there = before.capacity[WATER] * state.temperature[WATER];
  const added = after.capacity[WATER] - before.capacity[WATER];
  state.temperature[WATER] = (there + added * water.temperature) / after.capacity[WATER];
}

/** Cold limit of each lot tonight [°C]: dry or wet as the season says on that day. */
export function coldLimits(plan: Plan, lots: readonly Lot[], season: SeasonResult, day: number): number[] {
  return lots.map((lot) => {
    const group = plantGroup(lot.group);
    if (group === null) throw new RangeError(`expected a plant group of the catalogue, got ${lot.group}`);
    const numbers = groupNumbers(group, plan.groupEdits[lot.group]);
    const judged = season.places.flatMap((place) => place.lots).find((each) => each.lotId === lot.id);
    return judged !== undefined && judged.wet[day] === 1 ? numbers.damageColdWet : numbers.damageColdDry;
  });
}

/** Least value and where. */
export function leastOf(values: Float64Array): { value: number; at: number } {
  let at = 0;
  for (let k = 1; k < values.length; k++) if (values[k] < values[at]) at = k;
  return { value: values[at], at };
}

/** Heat given [kWh] and what the night costs: each heater at the price of its fuel, lamps and fan. */
export function nightCost(setting: NightSetting, trace: NightTrace): { heaterKwh: number; cost: number } {
  const { power, byHeater, fan } = trace;
  const { night, plan, run } = setting;
  const hours = night.steps.stepMinutes / 60;
  let kwh = 0;
  let cost = 0;
  for (let k = 0; k < power.length; k++) {
    kwh += (power[k] * hours) / 1000;
    run.network.heaters.forEach((heater, h) => {
      const energy = (byHeater[h * power.length + k] * hours) / 1000;
      cost += energy * heatPrice(heater.fuel, plan.tariff, night.clock.price[k]);
    });
    cost += ((fan[k] * run.network.fanWatts * hours) / 1000) * night.clock.price[k];
    for (let l = 0; l < run.lamps.length; l++) {
      if (run.lampFlags[l][k] === 1) cost += ((run.lamps[l].watts * hours) / 1000) * night.clock.price[k];
    }
  }
  return { heaterKwh: kwh, cost };
}
