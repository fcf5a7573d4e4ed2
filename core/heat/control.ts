import { AIR, POTS, STAR, nodeCount } from './nodes.ts';
import type { HeaterNumbers, Network } from './network.ts';
import type { Drive, HeatState } from './state.ts';
import { airHeat, ventFlow } from './air.ts';
import { solve } from './linear.ts';

/** Answer of all nodes to one watt in the air, worked out once a step and only where a device needs it. */
function airResponse(state: HeatState, size: number): Float64Array {
  const { unit } = state;
  if (!state.unitKnown) {
    unit.fill(0);
    unit[AIR] = 1;
    solve(state.matrix, unit, size);
    state.unitKnown = true;
  }
  return unit;
}

/** Adds `watts` at the air node to the solved temperatures in `state.right`. */
function giveAir(state: HeatState, watts: number): void {
  for (let i = 0; i < nodeCount; i++) state.right[i] += state.unit[i] * watts;
}

/**
 * Opening 0–1 of a proportional device that exchanges up to `most` W K⁻¹ with air at `outside`.
 * With air A + k·q and q = g·f·(outside − T), and f rising from 0 at `openAt` to 1 at `openAt + band`,
 * the opening is the root of band·k·g·f² + (band + k·g·(openAt − outside))·f + openAt − A = 0.
 */
export function proportionalOpening(
  free: number,
  response: number,
  most: number,
  outside: number,
  openAt: number,
  band: number,
): number {
  if (free <= openAt || most <= 0) return 0;
  const kg = response * most;
  const a = band * kg;
  const b = band + kg * (openAt - outside);
  const c = openAt - free;
  const root = Math.sqrt(Math.max(0, b * b - 4 * a * c));
  const opening = (2 * -c) / (b + root);
  return Number.isFinite(opening) && opening >= 0 ? Math.min(1, opening) : 1;
}

const flows = { outdoor: 0, room: 0 };

/** Rounds of the search for the temperature at which all openings agree with what they let in: to 1e-9 of its range. */
const rounds = 32;

/**
 * Opens vents and runs the fan where the air is above their opening temperature, all of them by the one
 * temperature they end at; changes the solved temperatures and the one-watt response, and returns the mass flows
 * drawn from outdoors and from the room [kg s⁻¹] (one object, refilled each step).
 */
export function openVents(
  network: Network,
  state: HeatState,
  drive: Drive,
  density: number,
): { readonly outdoor: number; readonly room: number } {
  state.vent = 0;
  state.fan = 0;
  flows.outdoor = flows.room = 0;
  const fan = drive.powered ? network.fan : null;
  if (fan !== null && fan.leastSpeed > 0) draw(network, state, drive, density, fan.leastSpeed);
  let opensAt = fan === null ? Infinity : fan.onAt;
  for (let v = 0; v < network.vents.length; v++) opensAt = Math.min(opensAt, network.vents[v].openAt);
  if (!(state.right[AIR] > opensAt)) return flows;
  const outside = network.leakageFromRoom ? drive.room : drive.outdoor;
  const wind = network.leakageFromRoom ? 0 : drive.wind * network.windShare;
  const difference = Math.max(1, state.temperature[AIR] - outside);
  const free = state.right[AIR];
  const drawn = fan !== null && fan.fromRoom ? drive.room : drive.outdoor;
  const fanMost = fan === null ? 0 : ((density * fan.flow) / 3600) * (1 - fan.leastSpeed) * airHeat;
  const response = airResponse(state, network.size)[AIR];
  let low = Math.min(free, outside, drawn);
  let high = free;
  for (let round = 0; round < rounds; round++) {
    const air = (low + high) / 2;
    let conductance = 0;
    let heat = 0;
    for (let v = 0; v < network.vents.length; v++) {
      const vent = network.vents[v];
      const most = density * airHeat * ventFlow(vent.area, vent.height, difference, wind);
      conductance += most * share(air, vent.openAt, vent.band);
      heat += most * share(air, vent.openAt, vent.band) * outside;
    }
    if (fan !== null) {
      conductance += fanMost * share(air, fan.onAt, fan.band);
      heat += fanMost * share(air, fan.onAt, fan.band) * drawn;
    }
    if ((free + response * heat) / (1 + response * conductance) > air) low = air;
    else high = air;
  }
  const air = (low + high) / 2;
  let whole = 0;
  for (let v = 0; v < network.vents.length; v++) {
    const vent = network.vents[v];
    const opening = share(air, vent.openAt, vent.band);
    const flow = density * ventFlow(vent.area, vent.height, difference, wind) * opening;
    whole += vent.area;
    state.vent += opening * vent.area;
    if (flow <= 0) continue;
    always(state, network.size, flow * airHeat, outside);
    if (network.leakageFromRoom) flows.room += flow;
    else flows.outdoor += flow;
  }
  if (whole > 0) state.vent /= whole;
  if (fan !== null) {
    draw(network, state, drive, density, (1 - fan.leastSpeed) * share(air, fan.onAt, fan.band));
  }
  return flows;
}

/** Opening 0–1 of a device that begins at `from` and is open whole `band` above. */
function share(air: number, from: number, band: number): number {
  return Math.min(1, Math.max(0, (air - from) / band));
}

/** Runs the fan `more` of its full speed faster. */
function draw(network: Network, state: HeatState, drive: Drive, density: number, more: number): void {
  const { fan } = network;
  if (fan === null || more <= 0) return;
  const flow = ((density * fan.flow) / 3600) * more;
  always(state, network.size, flow * airHeat, fan.fromRoom ? drive.room : drive.outdoor);
  state.fan += more;
  if (fan.fromRoom) flows.room += flow;
  else flows.outdoor += flow;
}

/** Exchanges `conductance` [W K⁻¹] with air at `outside` [°C] through the whole step. */
function always(state: HeatState, size: number, conductance: number, outside: number): void {
  const response = airResponse(state, size)[AIR];
  const shrink = 1 / (1 + response * conductance);
  giveAir(state, conductance * (outside - state.right[AIR]) * shrink);
  for (let i = 0; i < nodeCount; i++) state.unit[i] *= shrink;
}

/** Vapour and carbon dioxide from fuel burnt in the step [kg s⁻¹]; one object, refilled each step. */
export interface Burnt {
  vapour: number;
  carbonDioxide: number;
}

const burnt: Burnt = { vapour: 0, carbonDioxide: 0 };

/**
 * Heaters hold their set points, each up to its power, the one set highest first and of equals the one listed
 * first; mats, which hold the pots, before all others. The differential enters as a mean offset already in the
 * set points.
 */
export function holdTemperature(network: Network, state: HeatState, drive: Drive, exchanged: number): Burnt {
  burnt.vapour = burnt.carbonDioxide = 0;
  state.short = false;
  const { heaters } = network;
  if (heaters.length > 1) order(heaters, state.heaterOrder, drive);
  for (let at = 0; at < heaters.length; at++) {
    const h = heaters.length > 1 ? state.heaterOrder[at] : at;
    const heater = heaters[h];
    state.heaterPower[h] = 0;
    if (!drive.powered && heater.fuel === 'electricity') continue;
    const target = targetOf(heater, drive, h);
    const node = heater.mat ? POTS : AIR;
    const need = target - state.right[node];
    if (!(need > 0)) continue;
    const response = heaterResponse(network, state, heater, exchanged);
    const power = Math.min(heater.power, need / response[node]);
    for (let i = 0; i < nodeCount; i++) state.right[i] += response[i] * power;
    if (heater.surface >= 0) heatSurface(network, state, heater.surface, power);
    state.heaterPower[h] = power;
    burnt.vapour += power * heater.vapour;
    burnt.carbonDioxide += power * heater.carbonDioxide;
  }
  for (let h = 0; h < heaters.length; h++) {
    const atLimit = state.heaterPower[h] >= heaters[h].power;
    const node = heaters[h].mat ? POTS : AIR;
    if (atLimit && state.right[node] < targetOf(heaters[h], drive, h) - 0.05) state.short = true;
  }
  return burnt;
}

/** Temperature a heater holds now [°C]; −Infinity where it is off. */
function targetOf(heater: HeaterNumbers, drive: Drive, h: number): number {
  if (drive.heaterOn[h] === 0) return heater.frostWatch ?? -Infinity;
  return drive.night ? heater.night : heater.day;
}

/** Sorts heaters by the temperature they hold now, highest first; mats before all; equals as they are listed. */
function order(heaters: readonly HeaterNumbers[], into: Uint8Array, drive: Drive): void {
  for (let h = 0; h < heaters.length; h++) {
    const rank = heaters[h].mat ? Infinity : targetOf(heaters[h], drive, h);
    let at = h;
    while (at > 0) {
      const other = heaters[into[at - 1]];
      const before = other.mat ? Infinity : targetOf(other, drive, into[at - 1]);
      if (before >= rank) break;
      into[at] = into[at - 1];
      at--;
    }
    into[at] = h;
  }
}

/** Answer of all nodes to one watt of a heater, vents included (Sherman–Morrison). */
function heaterResponse(
  network: Network,
  state: HeatState,
  heater: HeaterNumbers,
  exchanged: number,
): Float64Array {
  if (!heater.mat && heater.radiantShare === 0 && heater.surface < 0) return airResponse(state, network.size);
  const response = state.unitHeater;
  response.fill(0);
  if (heater.mat) response[POTS] = 1;
  else if (heater.surface < 0) {
    response[AIR] = 1 - heater.radiantShare;
    response[STAR] = heater.radiantShare;
  } else {
    const i = heater.surface;
    const node = network.layerFrom[i];
    const reaches = network.layerLink[node] / state.layerTotal[node] / state.sum[i];
    response[AIR] = reaches * state.toAir[i];
    response[STAR] = reaches * state.toStar[i];
  }
  solve(state.matrix, response, network.size);
  if (exchanged > 0) {
    const share = exchanged * response[AIR];
    const { unit } = state;
    for (let i = 0; i < nodeCount; i++) response[i] -= unit[i] * share;
  }
  return response;
}

/** Puts a heater's power into the one layer of the surface it heats, after the solve. */
function heatSurface(network: Network, state: HeatState, i: number, power: number): void {
  const node = network.layerFrom[i];
  state.layerRight[node] += power;
  state.source[i] += (power * network.layerLink[node]) / state.layerTotal[node];
}
