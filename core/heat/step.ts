import { AIR, FLEECE, LEAF, POTS, STAR, kelvin, nodeCount, stefanBoltzmann } from './nodes.ts';
import type { Network } from './network.ts';
import type { Drive, HeatState } from './state.ts';
import { airDensity, airHeat, leakageFactor, singleSidedFlow } from './air.ts';
import { addSurfaces, readSurfaces } from './surfaces.ts';
import { factor, solve } from './linear.ts';
import { holdTemperature, openVents } from './control.ts';
import { stepVapour } from './vapour.ts';

const n = nodeCount;

/**
 * Advances one place by one step (implicit Euler; unconditionally stable), thermostat and vents solved
 * exactly within the step: air temperature is affine in heat given to the air, so heater power and vent
 * opening follow from the answer without heater and the answer to one watt.
 */
export function stepHeat(network: Network, state: HeatState, drive: Drive): void {
  const { matrix, right, temperature } = state;
  const { size } = network;
  const meanKelvin = temperature[STAR] + kelvin;
  const radiantInside = 4 * stefanBoltzmann * meanKelvin * meanKelvin * meanKelvin;
  const fixed = drive.fleeceLaid ? network.fixedFleece : network.fixed;
  const radiant = drive.fleeceLaid ? network.radiantFleece : network.radiant;
  for (let i = 0; i < size; i++) {
    const row = i * n;
    for (let j = 0; j <= i; j++) matrix[row + j] = fixed[row + j] + radiantInside * radiant[row + j];
    const store = network.capacity[i] / drive.seconds;
    matrix[row + i] += store;
    right[i] = store * temperature[i];
  }
  addSurfaces(network, state, drive, radiantInside);
  addRoom(network, state, drive, radiantInside);
  const density = airDensity(temperature[AIR], network.pressure);
  const leakTo = network.leakageFromRoom ? drive.room : drive.outdoor;
  const leakFlow = leakage(network, state, drive, density, leakTo);
  matrix[AIR * n + AIR] += leakFlow * airHeat;
  right[AIR] += leakFlow * airHeat * leakTo + drive.lampAir;
  const leafBefore = temperature[LEAF];
  const potsBefore = temperature[POTS];
  matrix[LEAF * n + LEAF] += state.leafSlope;
  right[LEAF] += drive.sunLeaf + drive.lampLeaf + state.leafCondensation + state.leafSlope * leafBefore;
  matrix[POTS * n + POTS] += state.mixSlope;
  right[POTS] += drive.sunPots + drive.lampPots - state.evaporation + state.mixSlope * potsBefore;
  if (size > FLEECE) right[FLEECE] += drive.onFleece;
  factor(matrix, size);
  solve(matrix, right, size);
  state.unitKnown = false;
  const flows = openVents(network, state, drive, density);
  const burnt = holdTemperature(network, state, drive, (flows.outdoor + flows.room) * airHeat);
  for (let i = 0; i < size; i++) temperature[i] = right[i];
  readSurfaces(network, state, drive);
  const air = temperature[AIR];
  let latent =
    state.evaporation +
    state.mixSlope * (temperature[POTS] - potsBefore) -
    (state.leafCondensation - state.leafSlope * (temperature[LEAF] - leafBefore));
  for (let i = 0; i < network.surfaceCount; i++) latent -= state.latentHeat[i];
  state.airHeat =
    leakFlow * airHeat * (air - leakTo) +
    flows.outdoor * airHeat * (air - drive.outdoor) +
    flows.room * airHeat * (air - drive.room) +
    latent;
  const roomAir = drive.curtainClosed ? network.roomAirClosed : network.roomAir;
  const roomRadiant = drive.curtainClosed ? network.roomRadiantClosed : network.roomRadiant;
  state.roomHeat =
    roomAir * (air - drive.room) + radiantInside * roomRadiant * (temperature[STAR] - drive.room);
  const fromOutdoors = flows.outdoor + (network.leakageFromRoom ? 0 : leakFlow);
  const fromRoom = flows.room + (network.leakageFromRoom ? leakFlow : 0) + roomAir / airHeat;
  stepVapour(network, state, drive, fromOutdoors, fromRoom, burnt);
}

/** Air let in through gaps and by an open door [kg s⁻¹]. */
function leakage(network: Network, state: HeatState, drive: Drive, density: number, outside: number): number {
  const difference = state.temperature[AIR] - outside;
  const wind = network.leakageFromRoom ? 0 : drive.wind * network.windShare;
  const changes =
    (drive.screenClosed ? network.leakageClosed : network.leakage) * leakageFactor(difference, wind);
  let volume = changes * network.volume;
  if (drive.doorOpen && network.door !== null) {
    volume += singleSidedFlow(network.door.area, network.door.height, wind, difference);
  }
  return (volume * density) / 3600;
}

/** The open side towards a room, or the curtain before it. */
function addRoom(network: Network, state: HeatState, drive: Drive, radiantInside: number): void {
  const { matrix, right } = state;
  const air = drive.curtainClosed ? network.roomAirClosed : network.roomAir;
  const radiant = radiantInside * (drive.curtainClosed ? network.roomRadiantClosed : network.roomRadiant);
  matrix[AIR * n + AIR] += air;
  right[AIR] += air * drive.room;
  matrix[STAR * n + STAR] += radiant;
  right[STAR] += radiant * drive.room;
}
