import type { Place } from '../plan/schema.ts';
import type { Enclosure } from '../fabric/index.ts';
import type { SubLayer } from './elements.ts';

/**
 * Soil by moisture: conductivity of the whole ground for ISO 13370 [W m⁻¹ K⁻¹] (clay or silt 1.5, its table 1; dry
 * and wet from memory), and conductivity and capacity [J m⁻³ K⁻¹] of the topsoil that takes up a day's warmth (clay
 * of de Vries 1963: at 0.2 of water 0.9 and 2.27e6, at 0.4 1.4 and 3.1e6; dry between its sand and clay).
 */
export const soils = {
  dry: { ground: 0.8, conductivity: 0.25, capacity: 1.35e6 },
  moist: { ground: 1.5, conductivity: 0.9, capacity: 2.27e6 },
  wet: { ground: 2.0, conductivity: 1.4, capacity: 3.1e6 },
} as const;

/** What the floor is made of over the soil: conductivity, capacity, thickness [m]; `insulation` is foam under it [m² K W⁻¹] (slab: ISO 10456 concrete 2000; gravel: dry, de Vries 1963; foam 50 mm of 0.036). */
const toppings = {
  soil: null,
  slab: { conductivity: 1.35, capacity: 2.0e6, thickness: 0.1, insulation: 0 },
  'insulated-slab': { conductivity: 1.35, capacity: 2.0e6, thickness: 0.1, insulation: 0.05 / 0.036 },
  gravel: { conductivity: 0.7, capacity: 1.6e6, thickness: 0.1, insulation: 0 },
} as const;

/** A shelf, tray or boarded floor: 18 mm board (ISO 10456 timber 500). */
export const board = { resistance: 0.018 / 0.13, capacity: 0.018 * 500 * 1600 };

/** Depths of the soil's slices [m] and of the undisturbed ground. */
const soilSlices = [0.04, 0.1, 0.3];
const undisturbedDepth = 1;

/** Thickness of a small house's wall or footing for ISO 13370 [m], and conductivity of edge boards [W m⁻¹ K⁻¹]. */
const footing = 0.1;
const boardConductivity = 0.036;

/** Share of a floor's resistance that slices may make up; in a small place, whose edge is near, they conduct more than flat soil would. */
const mostInSlices = 0.9;

/** Share of a floor that is wet all winter: earth, paving, gravel (estimates, no source); times the ground's moisture. */
const wetShares = { soil: 0.3, slab: 0.03, 'insulated-slab': 0.03, gravel: 0.1 } as const;
const moistures = { dry: 0.2, moist: 1, wet: 2 } as const;

/** A floor on the ground, a square metre of it. */
export interface FloorBuild {
  readonly layers: readonly SubLayer[];
  /** From the last slice's node to deep ground and to the open air at the edge [W m⁻² K⁻¹]. */
  readonly deepGround: number;
  readonly edge: number;
  /** The whole by ISO 13370 [W m⁻² K⁻¹] and share of it that is wet. */
  readonly transmittance: number;
  readonly wetShare: number;
}

/**
 * A floor on the ground whose steady loss is that of ISO 13370: slices of topping and soil, then what is left of
 * the whole resistance, part of it to the undisturbed ground a metre down and the rest to the air at the edge.
 */
export function floorBuild(place: Place, fabric: Enclosure): FloorBuild {
  const kind = place.floor === 'raised' ? 'soil' : place.floor;
  const topping = toppings[kind];
  const soil = soils[place.ground];
  const layers: SubLayer[] = [];
  if (topping !== null) {
    const half = topping.thickness / 2 / topping.conductivity;
    const capacity = (topping.thickness / 2) * topping.capacity;
    layers.push({ resistance: half, capacity }, { resistance: half + topping.insulation, capacity });
  }
  const insulation = topping?.insulation ?? 0;
  const transmittance = groundTransmittance(place, fabric, soil.ground, insulation);
  const above = layers.reduce((sum, layer) => sum + layer.resistance, 0);
  const depths = topping === null ? soilSlices : soilSlices.slice(1);
  const soilWhole = depths.reduce((sum, depth) => sum + depth, 0) / soil.conductivity;
  const room = mostInSlices * (1 / transmittance - 0.17) - above;
  const pressed = Math.min(1, Math.max(0.1, room / soilWhole));
  for (const depth of depths) {
    layers.push({ resistance: (pressed * depth) / soil.conductivity, capacity: depth * soil.capacity });
  }
  const inLayers = layers.reduce((sum, layer) => sum + layer.resistance, 0);
  const last = layers[layers.length - 1].resistance / 2;
  const rest = Math.max(last, 1 / transmittance - 0.17 - inLayers + last);
  const reached = soilSlices.reduce((sum, depth) => sum + depth, 0) - soilSlices[2] / 2;
  const below = soil.ground / (undisturbedDepth - reached);
  const deepGround = Math.min(below, 1 / rest);
  return {
    layers,
    deepGround,
    edge: 1 / rest - deepGround,
    transmittance,
    wetShare: Math.min(1, wetShares[kind] * moistures[place.ground]),
  };
}

/** The whole floor between inside and the year's mean outdoors [W m⁻² K⁻¹]: ISO 13370:2017 with edge boards where there are any. */
function groundTransmittance(
  place: Place,
  fabric: Enclosure,
  conductivity: number,
  insulation: number,
): number {
  const characteristic = fabric.floorArea / (0.5 * Math.max(fabric.perimeter, 1e-6));
  const thickness = footing + conductivity * (0.17 + insulation + 0.04);
  const bare = groundU(characteristic, thickness, conductivity);
  const boards = place.edgeInsulation;
  if (boards === null) return bare;
  const edge = edgeTransmittance(thickness, conductivity, boards.thickness, boards.depth);
  return Math.max(0.1 * bare, bare + (2 * edge) / characteristic);
}

/**
 * Linear transmittance of boards standing down the floor's edge [W m⁻¹ K⁻¹], negative: ISO 13370:2017 annex B,
 * −λ/π · (ln(2D/d_t + 1) − ln(2D/(d_t + d′) + 1)) with d′ = R′λ and R′ = R_n − d_n/λ.
 */
export function edgeTransmittance(
  equivalentThickness: number,
  conductivity: number,
  boardThickness: number,
  depth: number,
): number {
  const extra = (boardThickness / boardConductivity - boardThickness / conductivity) * conductivity;
  const bare = Math.log((2 * depth) / equivalentThickness + 1);
  const lined = Math.log((2 * depth) / (equivalentThickness + extra) + 1);
  return (-conductivity / Math.PI) * (bare - lined);
}

/**
 * Conductance of a ground floor between inside and the year's mean outdoors [W K⁻¹]: ISO 13370:2017, slab on
 * ground, with B' = A / (P/2) and total equivalent thickness dt = w + λ (Rsi + Rse), Rsi 0.17, Rse 0.04.
 */
export function groundFloorConductance(
  area: number,
  perimeter: number,
  wall: number,
  conductivity: number,
): number {
  const characteristic = area / (0.5 * perimeter);
  const thickness = wall + conductivity * (0.17 + 0.04);
  return area * groundU(characteristic, thickness, conductivity);
}

/** U-value of a slab on ground [W m⁻² K⁻¹] from characteristic dimension and equivalent thickness [m] (ISO 13370). */
export function groundU(characteristic: number, thickness: number, conductivity: number): number {
  if (thickness < characteristic) {
    const ratio = (Math.PI * characteristic) / thickness;
    return ((2 * conductivity) / (Math.PI * characteristic + thickness)) * Math.log(ratio + 1);
  }
  return conductivity / (0.457 * characteristic + thickness);
}
