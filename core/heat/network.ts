import { nodeCount } from './nodes.ts';

/** What lies behind the last layer of a surface, as the step needs it. */
export const OUTDOORS = 0;
export const ROOM = 1;
export const GROUND = 2;
export const NOTHING = 3;

/** Which way a face looks, for its convection. */
export const LEVEL_DOWN = -1;
export const UPRIGHT = 0;
export const LEVEL_UP = 1;

/** Surfaces of a place, struct of arrays of length `surfaceCount`; layers of surface i are nodes `layerFrom[i]` … of `layer*`. */
export interface Surfaces {
  readonly surfaceCount: number;
  readonly surfaceNames: readonly string[];
  /** Part of the account a surface's heat is booked under: surfaces of one name are one part. */
  readonly surfaceParts: readonly { readonly name: string; readonly kind: 'surface' | 'ground' | 'room' }[];
  /** Net area [m²], view of the sky 0–1, what is behind. */
  readonly area: Float64Array;
  readonly skyView: Float64Array;
  readonly behind: Uint8Array;
  /** Inside convection: coefficients of |ΔT|^⅓ [W m⁻² K^(−4/3)] where the air layer is unstable and stable, and the way the face looks. */
  readonly convectionUnstable: Float64Array;
  readonly convectionStable: Float64Array;
  readonly facing: Int8Array;
  /** Node of the air before the face, without and with fleece laid; conductance of the face to pots standing on it [W K⁻¹]. */
  readonly airNode: Uint8Array;
  readonly airNodeFleece: Uint8Array;
  readonly toPots: Float64Array;
  /** Radiating area towards the star node [m²], screen open and closed, and the share of it that passes straight through to what is behind [m²]. */
  readonly radiantOpen: Float64Array;
  readonly radiantClosed: Float64Array;
  readonly throughOpen: Float64Array;
  readonly throughClosed: Float64Array;
  readonly outsideEmissivity: Float64Array;
  /** Factor of the wind's convection at the outer face: 1 smooth glass and film, 1.6 walls. */
  readonly roughness: Float64Array;
  /** Resistance from the inner face, or from the last layer's node where there are layers, to the outer face [m² K W⁻¹], screen open and closed. */
  readonly resistanceOpen: Float64Array;
  readonly resistanceClosed: Float64Array;
  /** The same from inner to outer face whole, layers included, screen closed: for the handbook sum [m² K W⁻¹]. */
  readonly wholeResistance: Float64Array;
  /** Emissivity of the inner face, and area times long-wave transmittance [m²], screen closed: for the handbook sum. */
  readonly insideEmissivity: Float64Array;
  readonly straightArea: Float64Array;
  /** Share of the sun falling on the outer face that is taken up there, and at the innermost layer (second pane, lining), 0–1. */
  readonly solarAbsorptance: Float64Array;
  readonly solarInner: Float64Array;
  /** 1 where snow stays lying. */
  readonly holdsSnow: Uint8Array;
  /** Conductance of the last layer to the deep ground and to the outdoor air at the floor's edge [W K⁻¹]; 0 where no ground is behind. */
  readonly deepGround: Float64Array;
  readonly edge: Float64Array;
  /** Shares of the sun taken up inside by floors, and by walls, that falls to this surface; each adds up to 1 or is all 0. */
  readonly floorShare: Float64Array;
  readonly wallShare: Float64Array;
  /** Area of the face that is wet all winter and evaporates [m²]. */
  readonly wetFace: Float64Array;
  readonly layerFrom: Uint16Array;
  readonly layerCount: Uint8Array;
  /** Capacity of each layer's node [J K⁻¹] and its conductance to the node before it, or to the inner face [W K⁻¹]. */
  readonly layerCapacity: Float64Array;
  readonly layerLink: Float64Array;
}

/** One place as the network sees it: constant numbers only, built once from the plan (`build.ts`). */
export interface Network extends Surfaces {
  /** Nodes solved together, from the first: 4, or 6 with a fleece. */
  readonly size: number;
  /** Air enclosed [m³], floor area [m²], growing area [m²]; heights of the plants' level and of the ridge over the floor [m]. */
  readonly volume: number;
  readonly floorArea: number;
  readonly growingArea: number;
  readonly plantLevel: number;
  readonly ridge: number;
  /** Heat capacities of the nodes [J K⁻¹]. */
  readonly capacity: Float64Array;
  /** Conductances between nodes that do not change [W K⁻¹], lower triangle, without and with fleece laid. */
  readonly fixed: Float64Array;
  readonly fixedFleece: Float64Array;
  /** Radiating areas between nodes [m²] (times 4σT³ gives W K⁻¹), without and with fleece laid. */
  readonly radiant: Float64Array;
  readonly radiantFleece: Float64Array;
  /** Area of leaves [m²] and their conductance to the air around them [W K⁻¹]. */
  readonly leafArea: number;
  readonly leafToAir: number;
  /** Whole floor by ISO 13370 [W K⁻¹], for the handbook sum; 0 for a raised floor. */
  readonly groundConductance: number;
  /** Open side towards a room [W K⁻¹] and its radiating area [m²], curtain open and drawn. */
  readonly roomAir: number;
  readonly roomRadiant: number;
  readonly roomAirClosed: number;
  readonly roomRadiantClosed: number;
  /** Leakage at 20 K and 3 m s⁻¹ [1/h], screen open and closed, and whether it draws room air. */
  readonly leakage: number;
  readonly leakageClosed: number;
  readonly leakageFromRoom: boolean;
  /** Share of outside wind felt at the cover, 0–1.5. */
  readonly windShare: number;
  readonly vents: readonly VentNumbers[];
  readonly door: { readonly area: number; readonly height: number } | null;
  readonly fan: FanNumbers | null;
  /** Electricity [W] of the circulation fan and forced convection it keeps at every face [W m⁻² K⁻¹]; null where there is none. */
  readonly circulation: { readonly watts: number; readonly convection: number } | null;
  readonly heaters: readonly HeaterNumbers[];
  /** Site pressure [Pa]. */
  readonly pressure: number;
  /** Area of mix that evaporates when wet [m²]. */
  readonly wetArea: number;
}

/** Vents of one position: opening [m²], height between inlet and outlet [m], opening temperature and band [°C, K]. */
export interface VentNumbers {
  readonly area: number;
  readonly height: number;
  readonly openAt: number;
  readonly band: number;
}

/** A fan: flow at full speed [m³ h⁻¹], temperature it starts at and band [°C, K], electricity at full speed [W], least speed 0–1. */
export interface FanNumbers {
  readonly flow: number;
  readonly onAt: number;
  readonly band: number;
  readonly watts: number;
  readonly leastSpeed: number;
  readonly fromRoom: boolean;
}

export interface HeaterNumbers {
  readonly id: string;
  readonly name: string;
  readonly power: number;
  /** Mean the thermostat holds by day, by night and on frost watch (null: off then), and how far below it switches on [°C, °C, °C, K]. */
  readonly day: number;
  readonly night: number;
  readonly frostWatch: number | null;
  readonly swing: number;
  readonly mat: boolean;
  /** Share of the heat given as long-wave, 0–1. */
  readonly radiantShare: number;
  /** Surface the heat goes through, for a heater full of oil; −1 for the others. */
  readonly surface: number;
  readonly fuel: 'electricity' | 'propane' | 'paraffin';
  /** Water vapour and carbon dioxide given to the inside air per joule of heat [kg J⁻¹]. */
  readonly vapour: number;
  readonly carbonDioxide: number;
  /** Heat inside per energy taken: 1 for a resistance, less with a flue. */
  readonly efficiency: number;
  /** Coefficients of a heat pump at 7 and −7 °C outdoors; null for the others. */
  readonly coefficients: { readonly at7: number; readonly atMinus7: number } | null;
}

/** A fresh lower-triangle matrix of zeros. */
export function emptyMatrix(): Float64Array {
  return new Float64Array(nodeCount * nodeCount);
}
