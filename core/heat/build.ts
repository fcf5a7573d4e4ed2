import type { Place } from '../plan/schema.ts';
import type { PlanSite } from '../plan/site.ts';
import { covering } from '../plan/coverings.ts';
import type { Covering } from '../plan/coverings.ts';
import { surfacesOf } from '../fabric/index.ts';
import { solarAbsorptance } from '../light/index.ts';
import type { Enclosure, Surface } from '../fabric/index.ts';
import { AIR, FLEECE, FLOOR, LEAF, POTS, STAR, SUBSOIL, UNDER, WALL, WATER, nodeCount } from './nodes.ts';
import { OUTDOORS, ROOM, emptyMatrix } from './network.ts';
import type { Network } from './network.ts';
import { link } from './linear.ts';
import { airDensity, airHeat } from './air.ts';
import { backWall, floorKinds, groundFloorConductance, potCapacity, waterStores } from './masses.ts';
import { heaterNumbers } from './heaters.ts';
import { leafConvection, leafCover } from './leaf.ts';

/** Conductance between the bay and the room through an open side [W m⁻² K⁻¹]: slow air in a bay; estimate, no source. */
const openExchange = 20;

/** Convection at floors, benches and pots [W m⁻² K⁻¹], free, mean of heat up and down (ISO 6946 annex A: 5.0 and 0.7). */
const contentsConvection = 3;

/** Long-wave conductance at a back wall for the elimination of its face [W m⁻² K⁻¹] (ISO 6946, 10 °C). */
const wallRadiation = 5.1 * 0.9;

/** Depths of the floor's two layers and of the undisturbed ground [m]. */
const subsoilThickness = 0.4;
const undisturbedDepth = 1;

/** Link that keeps an unused node at air temperature so that the matrix stays regular [W K⁻¹]; it carries no heat. */
const idle = 1;

/** Face of pots and bench toward the air for each square metre of growing area: tops, sides and undersides (estimate). */
const potFaces = 2;

/** Share of a floor that is wet all winter: earth, paving, gravel, a shelf (estimates, no source). */
const floorWetness = { soil: 0.3, slab: 0.03, 'insulated-slab': 0.03, gravel: 0.1, raised: 0 } as const;

/** Air plus light contents: the heat capacity of the air times this (common practice in building models, no source). */
const airContents = 4;

/** Builds a place's network from the plan. @param pressure site pressure [Pa] */
export function buildNetwork(place: Place, site: PlanSite, pressure: number): Network {
  const fabric = surfacesOf(place);
  const openings = fabric.surfaces.filter((surface) => surface.covering.id === 'open');
  const massive = fabric.surfaces.find((surface) => surface.part === 'wall');
  const covers = coverSurfaces(fabric);
  const openArea = openings.reduce((sum, surface) => sum + surface.area, 0);
  const sheltered = !covers.some((surface) => surface.behind === 'outdoors');
  const fleece = place.fleece === null ? null : covering(place.fleece.covering);
  const capacity = new Float64Array(nodeCount);
  const fixed = emptyMatrix();
  const radiant = emptyMatrix();
  const floor = floorKinds[place.floor];
  const raised = place.floor === 'raised' || fabric.floorBehind === 'room';
  capacity[AIR] = fabric.volume * airDensity(10, pressure) * airHeat * airContents;
  capacity[FLOOR] = fabric.floorArea * floor.top * floor.capacity;
  capacity[SUBSOIL] = raised ? 0 : fabric.floorArea * subsoilThickness * floor.capacity;
  capacity[POTS] = potCapacity(place);
  const water = waterStores(place);
  capacity[WATER] = water.capacity;
  contents(place, fabric.floorArea, water.area, fixed, radiant);
  const wall = wallLinks(place, massive, capacity, fixed);
  const ground = groundLinks(place, fabric, raised, fixed);
  const fixedFleece = fixed.slice();
  const radiantFleece = radiant.slice();
  plantsInTheOpen(place, fixed, radiant);
  if (fleece !== null && place.fleece !== null) {
    plantsUnderFleece(place, fleece, place.fleece.layers, fixedFleece, radiantFleece);
  } else plantsInTheOpen(place, fixedFleece, radiantFleece);
  const size = sizeOf(fleece !== null, water.area > 0, massive !== undefined);
  for (const matrix of [fixed, fixedFleece]) keepRegular(matrix, size);
  return {
    size,
    ...coverNumbers(place, covers),
    volume: fabric.volume,
    floorArea: fabric.floorArea,
    growingArea: place.growingArea,
    capacity,
    fixed,
    fixedFleece,
    radiant,
    radiantFleece,
    ...ground,
    ...wall,
    wallBehindRoom: place.shape.kind === 'lean-to' && place.shape.wall.behind === 'room',
    roomAir: openArea * openExchange,
    roomRadiant: openArea,
    leakage: place.leakage * fabric.airShareOpen,
    leakageClosed: place.leakage * fabric.airShareClosed,
    leakageFromRoom: sheltered,
    windShare: sheltered ? 0 : site.windShare,
    ventArea: place.vents[0]?.area ?? 0,
    ventHeight: place.vents[0]?.height ?? 0,
    ventOpenAt: place.vents[0]?.openAt ?? 0,
    ventBand: place.vents[0]?.band ?? 1,
    fanFlow: place.fan?.flow ?? 0,
    fanOnAt: place.fan?.onAt ?? 0,
    fanBand: place.fan?.band ?? 1,
    fanWatts: place.fan?.watts ?? 0,
    heaters: heaterNumbers(place.heaters),
    pressure,
    wetArea: place.growingArea,
    wetFloor: raised ? 0 : fabric.floorArea * floorWetness[place.floor],
  };
}

/** Ties nodes in use that nothing is linked to, to the air, so that the matrix can be solved. */
function keepRegular(matrix: Float64Array, size: number): void {
  for (let node = 0; node < size; node++) {
    if (matrix[node * nodeCount + node] === 0 && node !== STAR) link(matrix, node, AIR, idle);
  }
}

/** Nodes in use: those a place lacks stand at the end of the list. */
function sizeOf(fleece: boolean, water: boolean, wall: boolean): number {
  if (fleece) return nodeCount;
  if (water) return WATER + 1;
  return wall ? WALL + 1 : WALL;
}

/** Surfaces that are covers in the network's sense: not the massive back wall, not an open side, not the ground. */
export function coverSurfaces(fabric: Enclosure): Surface[] {
  return fabric.surfaces.filter(
    (surface) => surface.part !== 'wall' && surface.behind !== 'ground' && surface.covering.id !== 'open',
  );
}

function coverNumbers(place: Place, covers: readonly Surface[]) {
  const count = covers.length;
  const array = () => new Float64Array(count);
  const numbers = {
    surfaceCount: count,
    surfaceNames: covers.map((surface) => surface.name),
    area: array(),
    skyView: array(),
    behind: new Uint8Array(count),
    insideConvection: array(),
    emissivityOpen: array(),
    emissivityClosed: array(),
    outsideEmissivity: array(),
    resistanceOpen: array(),
    resistanceClosed: array(),
    longWaveOpen: array(),
    longWaveClosed: array(),
    solarAbsorptance: array(),
  };
  covers.forEach((surface, i) => {
    numbers.area[i] = surface.area;
    numbers.skyView[i] = surface.skyView;
    numbers.behind[i] = surface.behind === 'outdoors' ? OUTDOORS : ROOM;
    numbers.insideConvection[i] = insideConvection(surface.tilt);
    numbers.emissivityOpen[i] = surface.emissivityInsideOpen;
    numbers.emissivityClosed[i] = surface.emissivityInsideClosed;
    numbers.outsideEmissivity[i] = surface.emissivityOutside;
    numbers.resistanceOpen[i] = surface.resistanceOpen;
    numbers.resistanceClosed[i] = surface.resistanceClosed;
    numbers.longWaveOpen[i] = surface.longWaveOpen;
    numbers.longWaveClosed[i] = surface.longWaveClosed;
    numbers.solarAbsorptance[i] = solarAbsorptance(layersOf(place, surface));
  });
  return numbers;
}

/** Convection at the inner face by tilt [W m⁻² K⁻¹]: 5.0 under a roof, 2.5 at a wall, heat going out (ISO 6946 annex A). */
function insideConvection(tilt: number): number {
  return 2.5 + 2.5 * Math.max(0, Math.cos((tilt * Math.PI) / 180));
}

/** Links of floor, pots and water to air and radiant node. */
function contents(
  place: Place,
  floorArea: number,
  waterArea: number,
  fixed: Float64Array,
  radiant: Float64Array,
): void {
  link(fixed, FLOOR, AIR, contentsConvection * floorArea);
  link(radiant, FLOOR, STAR, 0.9 * floorArea);
  if (waterArea > 0) {
    link(fixed, WATER, AIR, contentsConvection * 1.3 * waterArea);
    link(radiant, WATER, STAR, 0.9 * waterArea);
  }
  link(radiant, POTS, FLOOR, 0.8 * place.growingArea);
}

/** Plants with nothing over them: leaf and pots exchange with the air and the inner surfaces. */
function plantsInTheOpen(place: Place, fixed: Float64Array, radiant: Float64Array): void {
  const area = place.growingArea;
  canopy(area, fixed, AIR);
  link(radiant, LEAF, STAR, 0.95 * leafCover * area);
  link(radiant, POTS, STAR, 0.9 * (1 - leafCover) * area);
}

/** Fleece over the plants: a layer that passes some long-wave, exchanges with the air on both sides, and holds air still. */
function plantsUnderFleece(
  place: Place,
  cloth: Covering,
  layers: number,
  fixed: Float64Array,
  radiant: Float64Array,
): void {
  const area = place.growingArea;
  const through = Math.pow(cloth.longWaveTransmittance.value, layers);
  const porous = contentsConvection * Math.pow(cloth.airShare.value, layers);
  const faces = 1 / (2 / contentsConvection + cloth.resistance.value * layers);
  link(fixed, UNDER, AIR, (porous + faces) * area);
  link(fixed, FLEECE, UNDER, contentsConvection * area);
  link(fixed, FLEECE, AIR, contentsConvection * area);
  canopy(area, fixed, UNDER);
  const holds = 0.9 - through;
  link(radiant, FLEECE, STAR, holds * area);
  link(radiant, LEAF, FLEECE, holds * leafCover * area);
  link(radiant, POTS, FLEECE, holds * (1 - leafCover) * area);
  link(radiant, LEAF, STAR, 0.95 * through * leafCover * area);
  link(radiant, POTS, STAR, 0.9 * through * (1 - leafCover) * area);
}

function canopy(area: number, fixed: Float64Array, air: number): void {
  link(fixed, LEAF, air, 2 * leafConvection * leafCover * area);
  link(fixed, LEAF, POTS, 5.1 * 0.9 * leafCover * area);
  link(fixed, POTS, air, potFaces * contentsConvection * area);
}

/** The back wall of a lean-to as one node of its own; its inner face is eliminated by star–delta. Returns its conductances to what is behind and to the inside. */
function wallLinks(
  place: Place,
  wall: Surface | undefined,
  capacity: Float64Array,
  fixed: Float64Array,
): { wallBehind: number; wallFront: number } {
  if (wall === undefined || place.shape.kind !== 'lean-to') return { wallBehind: 0, wallFront: 0 };
  const { half, capacity: store } = backWall(place.shape);
  const convection = 2.5 * wall.area;
  const radiation = wallRadiation * wall.area;
  const inner = wall.area / half;
  const sum = convection + radiation + inner;
  link(fixed, WALL, AIR, (inner * convection) / sum);
  link(fixed, WALL, STAR, (inner * radiation) / sum);
  link(fixed, STAR, AIR, (convection * radiation) / sum);
  capacity[WALL] = store * wall.area;
  const film = place.shape.wall.behind === 'room' ? 7.7 : 25;
  return { wallBehind: wall.area / (half + 1 / film), wallFront: wall.area / (half + 1 / 7.7) };
}

/**
 * Floor to subsoil, subsoil to deep ground and to the edge, so that the whole equals ISO 13370 in the steady
 * state. A shelf, a tray, or any floor inside a room has the room (or the open air) below it instead.
 */
function groundLinks(place: Place, fabric: Enclosure, raised: boolean, fixed: Float64Array) {
  const { floorArea, perimeter } = fabric;
  const floor = floorKinds[place.floor];
  if (raised) {
    link(fixed, SUBSOIL, FLOOR, (floorArea * floor.conductivity) / floor.top);
    return { deepGround: floorArea * 7.7, edge: 0, groundConductance: 0 };
  }
  const ground = floorKinds.soil.conductivity;
  const between = floor.top / 2 / floor.conductivity + subsoilThickness / 2 / ground;
  link(fixed, FLOOR, SUBSOIL, floorArea / between);
  const whole = groundFloorConductance(floorArea, perimeter, 0.1, ground);
  const left = floorArea / whole - 0.17 - between;
  const rest = floorArea / Math.max(0.05, left);
  const below = (floorArea * ground) / (undisturbedDepth - floor.top - subsoilThickness / 2);
  const deepGround = Math.min(below, rest);
  const edge = rest - deepGround;
  return { deepGround, edge, groundConductance: whole };
}

/** The layers a surface's sun meets: cover, and lining where it is clear. */
function layersOf(place: Place, surface: Surface): Covering[] {
  const cover = surface.covering;
  return place.lining !== null && surface.transparent ? [cover, covering(place.lining)] : [cover];
}
