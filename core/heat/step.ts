import {
  AIR,
  FLEECE,
  FLOOR,
  LEAF,
  POTS,
  STAR,
  SUBSOIL,
  WALL,
  kelvin,
  nodeCount,
  stefanBoltzmann,
} from './nodes.ts';
import type { Network } from './network.ts';
import type { Drive, HeatState } from './state.ts';
import { airDensity, airHeat, leakageFactor } from './air.ts';
import { addCovers, readCovers } from './covers.ts';
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
  const meanKelvin = temperature[STAR] + kelvin;
  const radiantInside = 4 * stefanBoltzmann * meanKelvin * meanKelvin * meanKelvin;
  const fixed = drive.fleeceLaid ? network.fixedFleece : network.fixed;
  const radiant = drive.fleeceLaid ? network.radiantFleece : network.radiant;
  const { size } = network;
  for (let i = 0; i < size; i++) {
    const row = i * n;
    for (let j = 0; j <= i; j++) matrix[row + j] = fixed[row + j] + radiantInside * radiant[row + j];
    const store = network.capacity[i] / drive.seconds;
    matrix[row + i] += store;
    right[i] = store * temperature[i];
  }
  addCovers(network, state, drive, radiantInside);
  addBoundaries(network, state, drive, radiantInside);
  const density = airDensity(temperature[AIR], network.pressure);
  const leakTo = network.leakageFromRoom ? drive.room : drive.outdoor;
  const wind = network.leakageFromRoom ? 0 : drive.wind * network.windShare;
  const leakage = drive.screenClosed ? network.leakageClosed : network.leakage;
  const changes = leakage * leakageFactor(temperature[AIR] - leakTo, wind);
  const leakFlow = (changes * network.volume * density) / 3600;
  matrix[AIR * n + AIR] += leakFlow * airHeat;
  right[AIR] += leakFlow * airHeat * leakTo;
  right[AIR] += drive.lampAir;
  right[LEAF] += drive.sunLeaf + drive.lampLeaf;
  right[POTS] += drive.sunPots + drive.lampPots - state.evaporation;
  right[FLOOR] += drive.sunFloor - state.floorEvaporation;
  if (size > WALL) right[WALL] += drive.sunWall;
  if (size > FLEECE) right[FLEECE] += drive.onFleece;
  const evaporated = state.evaporation + state.floorEvaporation;
  factor(matrix, size);
  solve(matrix, right, size);
  state.unitKnown = false;
  const ventFlow = openVents(network, state, drive, density);
  const fuelVapour = holdTemperature(network, state, drive, ventFlow * airHeat);
  for (let i = 0; i < size; i++) temperature[i] = right[i];
  readCovers(network, state, drive, radiantInside);
  const air = temperature[AIR];
  state.airHeat =
    leakFlow * airHeat * (air - leakTo) +
    ventFlow * airHeat * (air - ventOutside(network, drive)) +
    evaporated;
  state.groundHeat =
    network.deepGround * (temperature[SUBSOIL] - drive.deepGround) +
    network.edge * (temperature[SUBSOIL] - drive.outdoor);
  state.roomHeat =
    network.roomAir * (air - drive.room) +
    radiantInside * network.roomRadiant * (temperature[STAR] - drive.room);
  state.wallHeat =
    network.wallBehind * (temperature[WALL] - (network.wallBehindRoom ? drive.room : drive.outdoor));
  const outdoorFlow = network.leakageFromRoom ? 0 : leakFlow + ventFlow;
  const roomFlow = (network.leakageFromRoom ? leakFlow + ventFlow : 0) + network.roomAir / airHeat;
  stepVapour(network, state, drive, outdoorFlow, roomFlow, fuelVapour);
}

/** Temperature of the air that vents and fan draw in [°C]. */
export function ventOutside(network: Network, drive: Drive): number {
  return network.leakageFromRoom ? drive.room : drive.outdoor;
}

function addBoundaries(network: Network, state: HeatState, drive: Drive, radiantInside: number): void {
  const { matrix, right } = state;
  matrix[SUBSOIL * n + SUBSOIL] += network.deepGround + network.edge;
  right[SUBSOIL] += network.deepGround * drive.deepGround + network.edge * drive.outdoor;
  if (network.wallBehind > 0) {
    matrix[WALL * n + WALL] += network.wallBehind;
    right[WALL] += network.wallBehind * (network.wallBehindRoom ? drive.room : drive.outdoor);
  }
  matrix[AIR * n + AIR] += network.roomAir;
  right[AIR] += network.roomAir * drive.room;
  const openRadiant = radiantInside * network.roomRadiant;
  matrix[STAR * n + STAR] += openRadiant;
  right[STAR] += openRadiant * drive.room;
}
