import { AIR, POTS, nodeCount } from './nodes.ts';
import type { Network } from './network.ts';
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

/**
 * Opens vents and runs the fan where the air is above their opening temperature; changes the solved
 * temperatures and the one-watt response, and returns the mass flow [kg s⁻¹].
 */
export function openVents(network: Network, state: HeatState, drive: Drive, density: number): number {
  const outside = network.leakageFromRoom ? drive.room : drive.outdoor;
  const wind = network.leakageFromRoom ? 0 : drive.wind * network.windShare;
  state.vent = 0;
  state.fan = 0;
  let flow = 0;
  if (network.ventArea > 0 && state.right[AIR] > network.ventOpenAt) {
    const difference = Math.max(1, state.temperature[AIR] - outside);
    const most = density * ventFlow(network.ventArea, network.ventHeight, difference, wind);
    state.vent = exchange(state, network.size, most * airHeat, outside, network.ventOpenAt, network.ventBand);
    flow += most * state.vent;
  }
  if (drive.powered && network.fanFlow > 0 && state.right[AIR] > network.fanOnAt) {
    const most = (density * network.fanFlow) / 3600;
    state.fan = exchange(state, network.size, most * airHeat, outside, network.fanOnAt, network.fanBand);
    flow += most * state.fan;
  }
  return flow;
}

/** Applies a proportional exchange by the Sherman–Morrison update of the air node; returns the opening 0–1. */
function exchange(
  state: HeatState,
  size: number,
  most: number,
  outside: number,
  openAt: number,
  band: number,
): number {
  const response = airResponse(state, size)[AIR];
  const opening = proportionalOpening(state.right[AIR], response, most, outside, openAt, band);
  if (opening <= 0) return 0;
  const conductance = most * opening;
  const heat = (conductance * (outside - state.right[AIR])) / (1 + response * conductance);
  giveAir(state, heat);
  const shrink = 1 / (1 + response * conductance);
  for (let i = 0; i < nodeCount; i++) state.unit[i] *= shrink;
  return opening;
}

/**
 * Heaters in order of priority hold their set points, each up to its power; the differential enters as a
 * mean offset already in the set points. Mats hold the pots, the others the air. Returns vapour from fuel [kg s⁻¹].
 */
export function holdTemperature(
  network: Network,
  state: HeatState,
  drive: Drive,
  ventConductance: number,
): number {
  let vapour = 0;
  state.short = false;
  for (let h = 0; h < network.heaters.length; h++) {
    const heater = network.heaters[h];
    state.heaterPower[h] = 0;
    if (!drive.powered && heater.fuel === 'electricity') continue;
    const target = drive.night ? heater.night : heater.day;
    const node = heater.mat ? POTS : AIR;
    const need = target - state.right[node];
    if (!(need > 0)) continue;
    const response = heater.mat
      ? matResponse(state, network.size, ventConductance)
      : airResponse(state, network.size);
    const power = Math.min(heater.power, need / response[node]);
    for (let i = 0; i < nodeCount; i++) state.right[i] += response[i] * power;
    state.heaterPower[h] = power;
    vapour += power * heater.vapour;
    if (state.right[node] < target - 0.05) state.short = true;
  }
  return vapour;
}

/** Answer of all nodes to one watt in the pots, vents included (Sherman–Morrison). */
function matResponse(state: HeatState, size: number, ventConductance: number): Float64Array {
  const response = state.unitMat;
  response.fill(0);
  response[POTS] = 1;
  solve(state.matrix, response, size);
  if (ventConductance > 0) {
    const share = ventConductance * response[AIR];
    for (let i = 0; i < nodeCount; i++) response[i] -= state.unit[i] * share;
  }
  return response;
}
