import { AIR, FLOOR, POTS } from './nodes.ts';
import type { Network } from './network.ts';
import type { Drive, HeatState } from './state.ts';
import { airDensity, airHeat, dewPointOfRatio, latentHeat, saturationRatio } from './air.ts';

/** Convective coefficient over moist mix [W m⁻² K⁻¹] used with the Lewis relation (still air inside; ASHRAE ch. 6). */
const mixConvection = 3;

/**
 * Water-vapour balance of the inside air over one step, implicit in the humidity ratio: evaporation from
 * moist mix, vapour from burnt fuel, exchange with outdoors and room, condensation on cover faces below the
 * dew point (mass transfer by the Lewis relation h/cp). Sets condensation and evaporation [W] for the next step.
 */
export function stepVapour(
  network: Network,
  state: HeatState,
  drive: Drive,
  outdoorFlow: number,
  roomFlow: number,
  fuelVapour: number,
): void {
  const pressure = network.pressure;
  const mass = network.volume * airDensity(state.temperature[AIR], pressure);
  const evaporating = (network.wetArea * drive.wetness * mixConvection) / airHeat;
  const mixRatio = saturationRatio(state.temperature[POTS], pressure);
  const before = state.humidity;
  let gain =
    (mass / drive.seconds) * before +
    outdoorFlow * drive.humidity +
    roomFlow * drive.roomHumidity +
    fuelVapour;
  let loss = mass / drive.seconds + outdoorFlow + roomFlow;
  if (mixRatio > before) {
    gain += evaporating * mixRatio;
    loss += evaporating;
  }
  const floorRatio = saturationRatio(state.temperature[FLOOR], pressure);
  const floorTransfer = floorRatio > before ? (network.wetFloor * mixConvection) / airHeat : 0;
  gain += floorTransfer * floorRatio;
  loss += floorTransfer;
  const dewBefore = dewPointOfRatio(before, pressure);
  for (let i = 0; i < network.surfaceCount; i++) {
    if (state.face[i] >= dewBefore) continue;
    const transfer = (network.insideConvection[i] * network.area[i]) / airHeat;
    gain += transfer * saturationRatio(state.face[i], pressure);
    loss += transfer;
  }
  state.saturation = saturationRatio(state.temperature[AIR], pressure);
  const humidity = Math.min(gain / loss, state.saturation);
  state.humidity = humidity;
  state.evaporation = mixRatio > before ? evaporating * Math.max(0, mixRatio - humidity) * latentHeat : 0;
  state.floorEvaporation = floorTransfer * Math.max(0, floorRatio - humidity) * latentHeat;
  state.condensing = false;
  const dew = dewPointOfRatio(humidity, pressure);
  for (let i = 0; i < network.surfaceCount; i++) {
    state.condensation[i] = 0;
    if (state.face[i] >= dew) continue;
    const transfer = (network.insideConvection[i] * network.area[i]) / airHeat;
    state.condensation[i] = transfer * (humidity - saturationRatio(state.face[i], pressure)) * latentHeat;
    state.condensing = true;
  }
}

/** Relative humidity of the inside air, 0–1. */
export function relativeHumidity(state: HeatState): number {
  return Math.min(1, state.humidity / state.saturation);
}
