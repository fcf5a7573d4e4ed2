import { nodeCount } from './nodes.ts';

/** What lies behind a cover surface, as the step needs it. */
export const OUTDOORS = 0;
export const ROOM = 1;

/**
 * One place as the network sees it: constant numbers only, built once from the plan (`build.ts`).
 * Surfaces are struct-of-arrays of length `surfaceCount`.
 */
export interface Network {
  /** Nodes in use, from the first: 6 to 10. */
  readonly size: number;
  readonly surfaceCount: number;
  readonly surfaceNames: readonly string[];
  /** Net area [m²], view of the sky 0–1, what is behind (OUTDOORS or ROOM). */
  readonly area: Float64Array;
  readonly skyView: Float64Array;
  readonly behind: Uint8Array;
  /** Inside convection coefficient [W m⁻² K⁻¹] (ISO 6946 annex A by direction of heat flow). */
  readonly insideConvection: Float64Array;
  /** Emissivity of the inner face, screen open and closed, and of the outer face, 0–1. */
  readonly emissivityOpen: Float64Array;
  readonly emissivityClosed: Float64Array;
  readonly outsideEmissivity: Float64Array;
  /** Resistance from inner to outer face [m² K W⁻¹] and long-wave transmittance, screen open and closed. */
  readonly resistanceOpen: Float64Array;
  readonly resistanceClosed: Float64Array;
  readonly longWaveOpen: Float64Array;
  readonly longWaveClosed: Float64Array;
  /** Share of the sun falling on the surface that it absorbs, 0–1. */
  readonly solarAbsorptance: Float64Array;
  /** Air enclosed [m³], floor area [m²], growing area [m²]. */
  readonly volume: number;
  readonly floorArea: number;
  readonly growingArea: number;
  /** Heat capacities of the nodes [J K⁻¹]. */
  readonly capacity: Float64Array;
  /** Conductances between nodes that do not change [W K⁻¹], lower triangle, without and with fleece laid. */
  readonly fixed: Float64Array;
  readonly fixedFleece: Float64Array;
  /** Radiating areas between nodes [m²] (times 4σT³ gives W K⁻¹), without and with fleece laid. */
  readonly radiant: Float64Array;
  readonly radiantFleece: Float64Array;
  /** Conductance of node to fixed temperatures [W K⁻¹]: subsoil to deep ground, floor edge to outdoors, wall to behind, air to room. */
  readonly deepGround: number;
  readonly edge: number;
  /** Whole floor by ISO 13370 [W K⁻¹], for the handbook sum; 0 for a raised floor. */
  readonly groundConductance: number;
  readonly wallBehind: number;
  /** Back wall's middle to the inside, films in one [W K⁻¹], for the handbook sum. */
  readonly wallFront: number;
  readonly wallBehindRoom: boolean;
  readonly roomAir: number;
  readonly roomRadiant: number;
  /** Leakage at 20 K and 3 m s⁻¹ [1/h], screen open and closed, and whether it draws room air. */
  readonly leakage: number;
  readonly leakageClosed: number;
  readonly leakageFromRoom: boolean;
  /** Share of outside wind felt at the cover, 0–1.5. */
  readonly windShare: number;
  /** Vent: largest flow coefficient area × √height [m^2.5], opening temperature and band; 0 area where none. */
  readonly ventArea: number;
  readonly ventHeight: number;
  readonly ventOpenAt: number;
  readonly ventBand: number;
  /** Fan: flow [m³ h⁻¹], switching, electric power [W]; 0 flow where none. */
  readonly fanFlow: number;
  readonly fanOnAt: number;
  readonly fanBand: number;
  readonly fanWatts: number;
  /** Air heaters in order of priority (highest night set point first) and mats. */
  readonly heaters: readonly HeaterNumbers[];
  /** Site pressure [Pa]. */
  readonly pressure: number;
  /** Area of mix that evaporates when wet, and of floor taken as wet all winter [m²]. */
  readonly wetArea: number;
  readonly wetFloor: number;
}

export interface HeaterNumbers {
  readonly name: string;
  readonly power: number;
  /** Mean the thermostat holds by day and by night, and how far below it switches on [°C, °C, K]. */
  readonly day: number;
  readonly night: number;
  readonly swing: number;
  readonly mat: boolean;
  readonly fuel: 'electricity' | 'propane' | 'paraffin';
  /** Water vapour given per joule of heat [kg J⁻¹]. */
  readonly vapour: number;
}

/** A fresh lower-triangle matrix of zeros. */
export function emptyMatrix(): Float64Array {
  return new Float64Array(nodeCount * nodeCount);
}
