import { AIR, LEAF, POTS } from './nodes.ts';
import type { Network } from './network.ts';
import type { Drive, HeatState } from './state.ts';
import type { Burnt } from './control.ts';
import {
  airDensity,
  airHeat,
  dewPointOfRatio,
  latentHeat,
  outdoorCarbonDioxide,
  saturationRatio,
  saturationSlope,
} from './air.ts';

/** Convective coefficient over moist mix and floors [W m⁻² K⁻¹] used with the Lewis relation (still air inside; ASHRAE ch. 6). */
const mixConvection = 3;

/** Parts by volume of carbon dioxide for each part by mass of air (molar masses 28.96 and 44.01). */
const partsByVolume = 28.96 / 44.01;

/**
 * Water-vapour balance of the inside air over one step, implicit in the humidity ratio: evaporation from moist
 * mix and wet floors, vapour from burnt fuel, exchange with outdoors and room, condensation on faces and leaves
 * below the dew point (mass transfer by the Lewis relation h/cp). Sets condensation and evaporation [W] and how
 * they fall with the face's own temperature for the next step, and carries the carbon dioxide of flames along with the air.
 */
export function stepVapour(
  network: Network,
  state: HeatState,
  drive: Drive,
  outdoorFlow: number,
  roomFlow: number,
  burnt: Burnt,
): void {
  const { pressure } = network;
  const mass = network.volume * airDensity(state.temperature[AIR], pressure);
  const before = state.humidity;
  const flow = outdoorFlow + roomFlow;
  let gain =
    (mass / drive.seconds) * before +
    outdoorFlow * drive.humidity +
    roomFlow * drive.roomHumidity +
    burnt.vapour;
  let loss = mass / drive.seconds + flow;
  const evaporating = (network.wetArea * drive.wetness * mixConvection) / airHeat;
  const mixRatio = saturationRatio(state.temperature[POTS], pressure);
  if (mixRatio > before) {
    gain += evaporating * mixRatio;
    loss += evaporating;
  }
  const dewBefore = dewPointOfRatio(before, pressure);
  for (let i = 0; i < network.surfaceCount; i++) {
    const wet = (network.wetFace[i] * mixConvection) / airHeat;
    const forms = state.face[i] < dewBefore;
    if (!forms && wet <= 0) continue;
    const transfer = forms ? state.toAir[i] / airHeat : wet;
    gain += transfer * saturationRatio(state.face[i], pressure);
    loss += transfer;
  }
  const leafTransfer = network.leafToAir / airHeat;
  const leafRatio = saturationRatio(state.temperature[LEAF], pressure);
  if (state.temperature[LEAF] < dewBefore) {
    gain += leafTransfer * leafRatio;
    loss += leafTransfer;
  }
  state.saturation = saturationRatio(state.temperature[AIR], pressure);
  const humidity = Math.min(gain / loss, state.saturation);
  state.humidity = humidity;
  state.evaporation = mixRatio > before ? evaporating * Math.max(0, mixRatio - humidity) * latentHeat : 0;
  state.mixSlope =
    state.evaporation > 0 ? evaporating * latentHeat * saturationSlope(state.temperature[POTS], mixRatio) : 0;
  const dew = dewPointOfRatio(humidity, pressure);
  state.condensing = false;
  for (let i = 0; i < network.surfaceCount; i++) {
    state.condensation[i] = state.faceEvaporation[i] = state.latentSlope[i] = 0;
    const wet = network.wetFace[i];
    if (state.face[i] < dew) {
      const ratio = saturationRatio(state.face[i], pressure);
      const transfer = (state.toAir[i] / airHeat) * latentHeat;
      state.condensation[i] = transfer * Math.max(0, humidity - ratio);
      state.latentSlope[i] = transfer * saturationSlope(state.face[i], ratio);
      state.condensing ||= network.layerCount[i] === 0;
    } else if (wet > 0) {
      const ratio = saturationRatio(state.face[i], pressure);
      const transfer = ((wet * mixConvection) / airHeat) * latentHeat;
      state.faceEvaporation[i] = transfer * Math.max(0, ratio - humidity);
      state.latentSlope[i] = transfer * saturationSlope(state.face[i], ratio);
    }
  }
  state.leafWet = state.temperature[LEAF] < dew;
  state.leafCondensation = state.leafWet ? leafTransfer * Math.max(0, humidity - leafRatio) * latentHeat : 0;
  state.leafSlope = state.leafWet
    ? leafTransfer * latentHeat * saturationSlope(state.temperature[LEAF], leafRatio)
    : 0;
  const held = mass / drive.seconds;
  state.carbonDioxide =
    (held * state.carbonDioxide + flow * outdoorCarbonDioxide + burnt.carbonDioxide * partsByVolume * 1e6) /
    (held + flow);
}

/** Relative humidity of the inside air, 0–1. */
export function relativeHumidity(state: HeatState): number {
  return Math.min(1, state.humidity / state.saturation);
}
