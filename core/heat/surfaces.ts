import { AIR, POTS, STAR, kelvin, nodeCount, stefanBoltzmann } from './nodes.ts';
import { GROUND, OUTDOORS, ROOM } from './network.ts';
import type { Network } from './network.ts';
import type { Drive, HeatState } from './state.ts';
import { freeConvection, mixedConvection } from './convection.ts';

/** Convection at a face toward a room [W m⁻² K⁻¹] (ISO 6946: 2.5 at a wall). */
const roomConvection = 2.5;

/**
 * Share of its long-wave transmittance that a film keeps under a layer of water: condensate cuts thermal
 * radiation loss through polythene by up to half (University of Wisconsin extension). What it no longer
 * passes it takes up.
 */
const wetPasses = 0.5;

/** Condensation at which the whole film counts as wet [W m⁻²]; below it only a part of it (estimate, no source). */
const wholeFilm = 4;

/** Conductivity of snow on a roof [W m⁻¹ K⁻¹]: fresh 0.1 (de Vries list), settling upwards; and its reflectance for the sun. */
const snowConductivity = 0.15;
const snowReflectance = 0.8;

/** Secant coefficient of long-wave exchange between two temperatures [°C] → [W m⁻² K⁻¹] for black faces. */
export function radiantCoefficient(a: number, b: number): number {
  const ka = a + kelvin;
  const kb = b + kelvin;
  return stefanBoltzmann * (ka * ka + kb * kb) * (ka + kb);
}

/** Outside convection of ISO 6946 annex A and ISO 15099 [W m⁻² K⁻¹] at a wind at the cover [m s⁻¹]: 4 + 4 v; the standards' design value. */
export function outsideConvection(wind: number): number {
  return 4 + 4 * wind;
}

/** Part of the wind in the convection at smooth faces [W m⁻² K⁻¹]: mean of windward 3.26 v^0.89 and leeward 3.55 v^0.617 (Yazdanian & Klems 1994, measured at windows; coefficients from memory). */
export function windConvection(wind: number): number {
  return wind > 0 ? 0.5 * (3.26 * wind ** 0.89 + 3.55 * wind ** 0.617) : 0;
}

/**
 * Outside convection [W m⁻² K⁻¹] as natural and forced flow together, the forced part larger at rough faces (the
 * DOE-2 form of Yazdanian & Klems 1994): n + r (√(n² + f²) − n), n = 1.31 |ΔT|^⅓. ISO's 4 + 4 v is about twice
 * what is measured at smooth glass; held against ASHRAE 140-2020 cases 195 to 250, 600 and 900.
 * @param forced part of the wind, from `windConvection` @param difference of face and air [K]
 * @param roughness 1 for glass and film, 1.6 for boards, render and brick
 */
export function outerConvection(forced: number, difference: number, roughness: number): number {
  const natural = 1.31 * Math.cbrt(Math.max(0.1, Math.abs(difference)));
  return natural + roughness * (Math.sqrt(natural * natural + forced * forced) - natural);
}

/**
 * Eliminates every surface of the place and adds what is left of it to the matrix and right-hand side of air,
 * radiant node and pots.
 *
 * Outer face: wind convection, long-wave to sky (by view) and to surroundings at air temperature, absorbed sun;
 * or a room; or the ground. Between: the layers' nodes, each with its capacity, folded from the outside in
 * (Thomas algorithm of the implicit step). Inner face: convection, long-wave to the star node, contact with
 * pots, absorbed sun, condensation heat of the step before. Long-wave transmittance couples the star node to
 * what is behind directly.
 */
export function addSurfaces(network: Network, state: HeatState, drive: Drive, radiantInside: number): void {
  const { matrix, right, temperature } = state;
  const through = drive.screenClosed ? network.throughClosed : network.throughOpen;
  const radiant = drive.screenClosed ? network.radiantClosed : network.radiantOpen;
  const airNodes = drive.fleeceLaid ? network.airNodeFleece : network.airNode;
  const forced = network.circulation !== null && drive.circulating ? network.circulation.convection : 0;
  state.windConvection = windConvection(drive.wind * network.windShare);
  for (let i = 0; i < network.surfaceCount; i++) {
    outerFace(network, state, drive, i);
    let conductance = state.outConductance[i];
    let source = conductance * state.outTemperature[i];
    const from = network.layerFrom[i];
    for (let c = from + network.layerCount[i] - 1; c >= from; c--) {
      const store = network.layerCapacity[c] / drive.seconds;
      const link = network.layerLink[c];
      const total = store + conductance + link;
      const known = store * state.layer[c] + source;
      state.layerTotal[c] = total;
      state.layerRight[c] = known;
      conductance = (link * (store + conductance)) / total;
      source = (link * known) / total;
    }
    const airNode = airNodes[i];
    let convection = freeConvection(
      state.face[i] - temperature[airNode],
      network.convectionUnstable[i],
      network.convectionStable[i],
      network.facing[i],
    );
    if (forced > 0 && airNode === AIR) convection = mixedConvection(convection, forced);
    const straight = passes(network, state, drive, through[i], i);
    const toAir = convection * network.area[i];
    const toStar = radiantInside * (radiant[i] - straight);
    const toPots = network.toPots[i];
    const sum = conductance + toAir + toStar + toPots + state.latentSlope[i];
    source +=
      state.condensation[i] -
      state.faceEvaporation[i] +
      state.latentSlope[i] * state.face[i] +
      network.floorShare[i] * drive.sunFloor +
      network.solarInner[i] * network.area[i] * drive.sunOnSurface[i] +
      network.wallShare[i] * drive.sunWall;
    state.toAir[i] = toAir;
    state.toStar[i] = toStar;
    state.sum[i] = sum;
    state.source[i] = source;
    matrix[airNode * nodeCount + airNode] += toAir - (toAir * toAir) / sum;
    right[airNode] += (toAir * source) / sum;
    if (toStar > 0) {
      matrix[STAR * nodeCount + STAR] += toStar - (toStar * toStar) / sum;
      couple(matrix, airNode, STAR, (toAir * toStar) / sum);
      right[STAR] += (toStar * source) / sum;
    }
    if (toPots > 0) {
      matrix[POTS * nodeCount + POTS] += toPots - (toPots * toPots) / sum;
      couple(matrix, airNode, POTS, (toAir * toPots) / sum);
      couple(matrix, STAR, POTS, (toStar * toPots) / sum);
      right[POTS] += (toPots * source) / sum;
    }
  }
}

/** Takes a conductance off the place of two nodes in the lower triangle. */
function couple(matrix: Float64Array, a: number, b: number, conductance: number): void {
  matrix[a > b ? a * nodeCount + b : b * nodeCount + a] -= conductance;
}

/** Sets conductance [W K⁻¹] and temperature [°C] of what lies behind the last layer of surface `i`. */
function outerFace(network: Network, state: HeatState, drive: Drive, i: number): void {
  const area = network.area[i];
  const resistance = drive.screenClosed ? network.resistanceClosed[i] : network.resistanceOpen[i];
  switch (network.behind[i]) {
    case OUTDOORS: {
      const emissivity = network.outsideEmissivity[i];
      const view = network.skyView[i];
      const sky = radiantCoefficient(state.outer[i], drive.sky) * emissivity * view;
      const convection = outerConvection(
        state.windConvection,
        state.outer[i] - drive.outdoor,
        network.roughness[i],
      );
      const around = convection + radiantCoefficient(state.outer[i], drive.outdoor) * emissivity * (1 - view);
      const film = around + sky;
      const snow = network.holdsSnow[i] === 1 ? drive.snowDepth : 0;
      const taken = snow > 0 ? 1 - snowReflectance : network.solarAbsorptance[i];
      state.film[i] = film * area;
      state.outConductance[i] = area / (resistance + snow / snowConductivity + 1 / film);
      state.outTemperature[i] =
        (around * drive.outdoor + sky * drive.sky + taken * drive.sunOnSurface[i]) / film;
      return;
    }
    case ROOM: {
      const film = roomConvection + radiantCoefficient(drive.room, drive.room) * network.outsideEmissivity[i];
      state.film[i] = film * area;
      state.outConductance[i] = area / (resistance + 1 / film);
      state.outTemperature[i] = drive.room;
      return;
    }
    case GROUND: {
      const deep = network.deepGround[i];
      const edge = network.edge[i];
      state.outConductance[i] = deep + edge;
      state.outTemperature[i] = (deep * drive.deepGround + edge * drive.outdoor) / (deep + edge);
      return;
    }
    default:
      state.outConductance[i] = 0;
      state.outTemperature[i] = 0;
  }
}

/**
 * Couples the star node to what is behind a film that lets long-wave pass, and returns the area that passes
 * [m²]; a wet film and one under snow pass less or nothing, and take it up themselves.
 */
function passes(network: Network, state: HeatState, drive: Drive, through: number, i: number): number {
  if (through <= 0) return 0;
  state.passing[i] = state.passingTo[i] = 0;
  if (network.holdsSnow[i] === 1 && drive.snowDepth > 0) return 0;
  const wet = Math.min(1, state.condensation[i] / (wholeFilm * network.area[i]));
  const open = through * (1 - (1 - wetPasses) * wet);
  const { matrix, right } = state;
  const star = state.temperature[STAR];
  let gain: number;
  let known: number;
  if (network.behind[i] === OUTDOORS) {
    const view = network.skyView[i];
    const sky = radiantCoefficient(star, drive.sky) * open * view;
    const around = radiantCoefficient(star, drive.outdoor) * open * (1 - view);
    gain = sky + around;
    known = sky * drive.sky + around * drive.outdoor;
  } else {
    gain = radiantCoefficient(star, drive.room) * open;
    known = gain * drive.room;
  }
  matrix[STAR * nodeCount + STAR] += gain;
  right[STAR] += known;
  state.passing[i] = gain;
  state.passingTo[i] = known;
  return open;
}

/** Back-substitution: faces, layers and outer faces [°C] and the heat that leaves through each surface [W]. */
export function readSurfaces(network: Network, state: HeatState, drive: Drive): void {
  const { temperature } = state;
  const airNodes = drive.fleeceLaid ? network.airNodeFleece : network.airNode;
  const star = temperature[STAR];
  const through = drive.screenClosed ? network.throughClosed : network.throughOpen;
  for (let i = 0; i < network.surfaceCount; i++) {
    const face =
      (state.toAir[i] * temperature[airNodes[i]] +
        state.toStar[i] * star +
        network.toPots[i] * temperature[POTS] +
        state.source[i]) /
      state.sum[i];
    state.latentHeat[i] =
      state.condensation[i] - state.faceEvaporation[i] - state.latentSlope[i] * (face - state.face[i]);
    state.face[i] = face;
    let last = face;
    const from = network.layerFrom[i];
    const end = from + network.layerCount[i];
    for (let c = from; c < end; c++) {
      last = (state.layerRight[c] + network.layerLink[c] * last) / state.layerTotal[c];
      state.layer[c] = last;
    }
    const out = state.outConductance[i] * (last - state.outTemperature[i]);
    const net = out - network.solarInner[i] * network.area[i] * drive.sunOnSurface[i];
    if (network.behind[i] === OUTDOORS) state.outer[i] = state.outTemperature[i] + out / state.film[i];
    state.surfaceHeat[i] = through[i] > 0 ? net + state.passing[i] * star - state.passingTo[i] : net;
  }
}
