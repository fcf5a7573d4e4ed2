import type { Lot, Place, Plan } from '../plan/schema.ts';
import { heatPrice } from '../cost/index.ts';
import { planNumbers } from '../plan/plan-groups.ts';
import { AIR, LEAF, airHeights, emptyDrive, heatPerEnergy, initialState, stepHeat } from '../heat/index.ts';
import type { AirHeights, HeatState, Network } from '../heat/index.ts';
import {
  lampRuns,
  placeOn,
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
import { HeatLedger } from '../season/ledger.ts';
import { fuelPerKwh, fuelUnit } from '../season/fuel.ts';
import type { FuelNight, NightHeat } from './result.ts';

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
  /** 1 where the circulation fan runs. */
  readonly circulating: Uint8Array;
  readonly heights: AirHeights;
  readonly heat: readonly NightHeat[];
  readonly dewHours: number;
  readonly leafDewHours: number;
  readonly mostCarbonDioxide: number;
}

/** Network, drives and state at dusk of a place. */
export function settle(plan: Plan, place: Place, night: SiteYear, lead: LeadIn, day: number): NightSetting {
  const lots = plan.lots.filter((lot) => placeOn(lot, night.startDay, day) === place.id);
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
  const room = roomTemperatures(place.room, night.clock, night.beginMinutes);
  const run = preparePlaceRun(place, night, light, lampRuns(place), room, wetness);
  const heaters = run.network.heaters.map((heater) => ({
    ...heater,
    day: heater.day - heater.swing,
    night: heater.night - heater.swing,
    frostWatch: heater.frostWatch === null ? null : heater.frostWatch - heater.swing,
  }));
  return { ...run, network: { ...run.network, heaters } };
}

/** The same night with the outdoor air and the sky warmer or colder by `shift` [K]. */
export function shifted(night: SiteYear, shift: number): SiteYear {
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
  const hours = night.steps.stepMinutes / 60;
  const ledger = new HeatLedger(network, night.steps.stepMinutes, 3);
  const trace = {
    air: new Float64Array(n),
    leaf: new Float64Array(n),
    power: new Float64Array(n),
    byHeater: new Float64Array(n * network.heaters.length),
    fan: new Float64Array(n),
    circulating: new Uint8Array(n),
  };
  const sums = { dewHours: 0, leafDewHours: 0, mostCarbonDioxide: 0 };
  let least = Infinity;
  let heights: AirHeights = { floor: 0, bench: 0, ridge: 0, middle: 0, edge: 0 };
  for (let k = 0; k < n; k++) {
    setDrive(drive, run, night, k, state);
    drive.powered = options.powerCutAt === undefined || k < options.powerCutAt;
    if (!drive.powered) {
      drive.lampAir = drive.lampLeaf = drive.lampPots = 0;
      if (night.clock.sunUp[k] === 0) drive.onFleece = 0;
      drive.circulating = false;
    }
    stepHeat(network, state, drive);
    ledger.step(k, drive, state, night.clock.sunUp[k] === 0);
    trace.air[k] = state.temperature[AIR];
    trace.leaf[k] = state.temperature[LEAF];
    trace.fan[k] = state.fan;
    trace.circulating[k] = drive.circulating ? 1 : 0;
    for (let h = 0; h < network.heaters.length; h++) {
      trace.power[k] += state.heaterPower[h];
      trace.byHeater[h * n + k] = state.heaterPower[h];
    }
    if (state.condensing) sums.dewHours += hours;
    if (state.leafWet) sums.leafDewHours += hours;
    sums.mostCarbonDioxide = Math.max(sums.mostCarbonDioxide, state.carbonDioxide);
    if (trace.air[k] < least) {
      least = trace.air[k];
      heights = airHeights(network, state, drive);
    }
  }
  const heat = ledger.parts(0).map(({ name, kind, season }) => ({ name, kind, kwh: season }));
  return { ...trace, ...sums, heights, heat };
}

/**
 * A state of its own for a run, so that the setting can be run again; sized for the network it is run with. What
 * the network has more than the state's (a canister put in) stands at the end and starts at the air's temperature.
 */
function copyState(state: HeatState, network: Network): HeatState {
  const copy = initialState(network, state.temperature[AIR], state.humidity);
  copy.temperature.set(state.temperature);
  copy.carbonDioxide = state.carbonDioxide;
  const surfaces = Math.min(state.face.length, copy.face.length);
  copy.face.set(state.face.subarray(0, surfaces));
  copy.outer.set(state.outer.subarray(0, surfaces));
  copy.layer.set(state.layer.subarray(0, Math.min(state.layer.length, copy.layer.length)));
  return copy;
}

/** Puts warm water into the last containers of `after`, which `before` has not. */
function addWater(
  state: HeatState,
  before: Network,
  after: Network,
  water: { litres: number; temperature: number },
): void {
  for (let i = before.surfaceCount; i < after.surfaceCount; i++) {
    state.face[i] = water.temperature;
    for (let c = after.layerFrom[i]; c < after.layerFrom[i] + after.layerCount[i]; c++) {
      state.layer[c] = water.temperature;
    }
  }
}

/** What each burner takes tonight, and when a tank that was full at dusk is empty. */
export function fuelsTonight(setting: NightSetting, trace: NightTrace): FuelNight[] {
  const { network } = setting.run;
  const n = trace.power.length;
  const hours = setting.night.steps.stepMinutes / 60;
  return network.heaters.flatMap((heater, h) => {
    const unit = fuelUnit(heater.fuel);
    if (unit === null) return [];
    const { tank } = setting.place.heaters[h];
    let amount = 0;
    let emptyAtMs: number | null = null;
    for (let k = 0; k < n; k++) {
      const taken = trace.byHeater[h * n + k] / heatPerEnergy(heater, setting.night.steps.dryBulb[k]);
      amount += ((taken * hours) / 1000) * fuelPerKwh(heater.fuel);
      if (tank !== null && amount > tank && emptyAtMs === null) {
        emptyAtMs = setting.night.steps.startMs + k * setting.night.steps.stepMinutes * 60_000;
      }
    }
    return [{ heaterId: heater.id, name: heater.name, unit, amount, tank, emptyAtMs }];
  });
}

/** Cold limit of each lot tonight [°C]: as hardened, and as dry or wet, as the season says on that day. */
export function coldLimits(plan: Plan, lots: readonly Lot[], season: SeasonResult, day: number): number[] {
  return lots.map((lot) => {
    const judged = season.lots.find((each) => each.lotId === lot.id);
    return judged === undefined ? planNumbers(plan, lot.group).damageColdDry : judged.coldLimit[day];
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
  const { power, byHeater, fan, circulating } = trace;
  const { night, plan, run } = setting;
  const hours = night.steps.stepMinutes / 60;
  let kwh = 0;
  let cost = 0;
  for (let k = 0; k < power.length; k++) {
    kwh += (power[k] * hours) / 1000;
    run.network.heaters.forEach((heater, h) => {
      const taken = byHeater[h * power.length + k] / heatPerEnergy(heater, night.steps.dryBulb[k]);
      const energy = (taken * hours) / 1000;
      cost += energy * heatPrice(heater.fuel, plan.tariff, night.clock.price[k]);
    });
    const { fan: drawing, circulation } = run.network;
    const fans = fan[k] * (drawing?.watts ?? 0) + circulating[k] * (circulation?.watts ?? 0);
    cost += ((fans * hours) / 1000) * night.clock.price[k];
    for (let l = 0; l < run.lamps.length; l++) {
      cost += ((run.lampFlags[l][k] * run.lamps[l].watts * hours) / 1000) * night.clock.price[k];
    }
  }
  return { heaterKwh: kwh, cost };
}
