import { AIR, STAR, kelvin, nodeCount, stefanBoltzmann } from './nodes.ts';
import { OUTDOORS } from './network.ts';
import type { Network } from './network.ts';
import type { Drive, HeatState } from './state.ts';

/** Conductance of a face toward a room: convection 3 and long-wave 5 [W m⁻² K⁻¹] (ISO 6946: 1/0.13 = 7.7). */
const roomConvection = 2.6;

/**
 * Share of its long-wave transmittance that a film keeps under a layer of water: condensate cuts thermal
 * radiation loss through polythene by up to half (University of Wisconsin extension). What it no longer
 * passes it takes up.
 */
const wetPasses = 0.5;

/** Secant coefficient of long-wave exchange between two temperatures [°C] → [W m⁻² K⁻¹] for black faces. */
export function radiantCoefficient(a: number, b: number): number {
  const ka = a + kelvin;
  const kb = b + kelvin;
  return stefanBoltzmann * (ka * ka + kb * kb) * (ka + kb);
}

/** Outside convection [W m⁻² K⁻¹] at a wind at the cover [m s⁻¹]: 4 + 4 v (ISO 6946 annex A, ISO 15099). */
export function outsideConvection(wind: number): number {
  return 4 + 4 * wind;
}

/**
 * Eliminates the massless inner and outer face of every cover surface and adds what is left to the matrix
 * and right-hand side of air and radiant node. Outer face: wind convection, long-wave to sky (by view) and
 * to surroundings at air temperature, absorbed sun. Inner face: convection, long-wave to the radiant node,
 * condensation heat of the step before. Long-wave transmittance couples the radiant node to the sky directly.
 */
export function addCovers(network: Network, state: HeatState, drive: Drive, radiantInside: number): void {
  const { matrix, right, sumConductance, outConductance, outTemperature, condensation } = state;
  const resistance = drive.screenClosed ? network.resistanceClosed : network.resistanceOpen;
  const longWave = drive.screenClosed ? network.longWaveClosed : network.longWaveOpen;
  const inside = drive.screenClosed ? network.emissivityClosed : network.emissivityOpen;
  const convection = outsideConvection(drive.wind * network.windShare);
  const toSky = radiantCoefficient(drive.outdoor, drive.sky);
  const toAir = radiantCoefficient(drive.outdoor, drive.outdoor);
  const toRoom = radiantCoefficient(drive.room, drive.room);
  let air = 0;
  let star = 0;
  let cross = 0;
  let airRight = 0;
  let starRight = 0;
  for (let i = 0; i < network.surfaceCount; i++) {
    const area = network.area[i];
    const passed = condensation[i] > 0 ? wetPasses : 1;
    const caught = longWave[i] * (1 - passed);
    const emissivity = network.outsideEmissivity[i];
    let film: number;
    let equivalent: number;
    if (network.behind[i] === OUTDOORS) {
      const view = network.skyView[i];
      const sky = toSky * emissivity * view;
      const surroundings = toAir * emissivity * (1 - view);
      film = convection + sky + surroundings;
      equivalent =
        ((convection + surroundings) * drive.outdoor +
          sky * drive.sky +
          network.solarAbsorptance[i] * drive.sunOnSurface[i]) /
        film;
      const through = longWave[i] * area * passed;
      if (through > 0) {
        const skyGain = toSky * through * view;
        const airGain = toAir * through * (1 - view);
        star += skyGain + airGain;
        starRight += skyGain * drive.sky + airGain * drive.outdoor;
      }
    } else {
      film = roomConvection + toRoom * emissivity;
      equivalent = drive.room;
      const through = longWave[i] * area * passed * toRoom;
      star += through;
      starRight += through * drive.room;
    }
    const out = area / (resistance[i] + 1 / film);
    const toAirNode = network.insideConvection[i] * area;
    const toStarNode = radiantInside * (inside[i] + caught) * area;
    const sum = out + toAirNode + toStarNode;
    const source = out * equivalent + condensation[i];
    air += toAirNode - (toAirNode * toAirNode) / sum;
    star += toStarNode - (toStarNode * toStarNode) / sum;
    cross += (toAirNode * toStarNode) / sum;
    airRight += (toAirNode * source) / sum;
    starRight += (toStarNode * source) / sum;
    sumConductance[i] = sum;
    outConductance[i] = out;
    outTemperature[i] = equivalent;
  }
  matrix[AIR * nodeCount + AIR] += air;
  matrix[STAR * nodeCount + STAR] += star;
  matrix[STAR * nodeCount + AIR] -= cross;
  right[AIR] += airRight;
  right[STAR] += starRight;
}

/** Back-substitution: inner face temperatures and the heat that leaves through each surface [W]. */
export function readCovers(network: Network, state: HeatState, drive: Drive, radiantInside: number): void {
  const longWave = drive.screenClosed ? network.longWaveClosed : network.longWaveOpen;
  const inside = drive.screenClosed ? network.emissivityClosed : network.emissivityOpen;
  const toSky = radiantCoefficient(drive.outdoor, drive.sky);
  const toAir = radiantCoefficient(drive.outdoor, drive.outdoor);
  const toRoom = radiantCoefficient(drive.room, drive.room);
  const air = state.temperature[AIR];
  const star = state.temperature[STAR];
  for (let i = 0; i < network.surfaceCount; i++) {
    const area = network.area[i];
    const toAirNode = network.insideConvection[i] * area;
    const passed = state.condensation[i] > 0 ? wetPasses : 1;
    const toStarNode = radiantInside * (inside[i] + longWave[i] * (1 - passed)) * area;
    const source = state.outConductance[i] * state.outTemperature[i] + state.condensation[i];
    const face = (toAirNode * air + toStarNode * star + source) / state.sumConductance[i];
    state.face[i] = face;
    let heat = toAirNode * (air - face) + toStarNode * (star - face);
    const through = longWave[i] * area * passed;
    if (through > 0) {
      heat +=
        network.behind[i] === OUTDOORS
          ? through *
            (toSky * network.skyView[i] * (star - drive.sky) +
              toAir * (1 - network.skyView[i]) * (star - drive.outdoor))
          : through * toRoom * (star - drive.room);
    }
    state.surfaceHeat[i] = heat;
  }
}
