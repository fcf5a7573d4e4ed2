import { plainHeater } from '../../core/heat/heaters.ts';
import { emptyMatrix } from '../../core/heat/network.ts';
import type { HeaterNumbers, Network, Surfaces } from '../../core/heat/network.ts';
import { AIR, nodeCount } from '../../core/heat/nodes.ts';

/** Link that ties nodes without a task to the air, so that the matrix can be solved; it carries no heat in the end [W K⁻¹]. */
const tie = 1;

/** Air, star, pots and leaf: the nodes of a place without a fleece. */
const size = 4;

const none = () => new Float64Array(0);
const noBytes = () => new Uint8Array(0);

/** A place of no surface at all. */
export const noSurfaces = (): Surfaces => ({
  surfaceCount: 0,
  surfaceNames: [],
  surfaceParts: [],
  area: none(),
  skyView: none(),
  behind: noBytes(),
  convectionUnstable: none(),
  convectionStable: none(),
  facing: new Int8Array(0),
  airNode: noBytes(),
  airNodeFleece: noBytes(),
  toPots: none(),
  radiantOpen: none(),
  radiantClosed: none(),
  throughOpen: none(),
  throughClosed: none(),
  outsideEmissivity: none(),
  roughness: none(),
  resistanceOpen: none(),
  resistanceClosed: none(),
  insideEmissivity: none(),
  straightArea: none(),
  wholeResistance: none(),
  solarAbsorptance: none(),
  solarInner: none(),
  holdsSnow: noBytes(),
  deepGround: none(),
  edge: none(),
  floorShare: none(),
  wallShare: none(),
  wetFace: none(),
  layerFrom: new Uint16Array(0),
  layerCount: noBytes(),
  layerCapacity: none(),
  layerLink: none(),
});

/**
 * A network made by hand: air alone, with `capacity` [J K⁻¹], one conductance `toRoom` [W K⁻¹] to the room's
 * temperature, no surface, no ground, no leakage. The other nodes hold nothing and follow the air.
 */
export function oneNode(capacity: number, toRoom: number, changes: Partial<Network> = {}): Network {
  const fixed = emptyMatrix();
  for (let node = 1; node < size; node++) {
    fixed[node * nodeCount + node] += tie;
    fixed[AIR] += tie;
    fixed[node * nodeCount + AIR] -= tie;
  }
  const capacities = new Float64Array(nodeCount);
  capacities[AIR] = capacity;
  return {
    ...noSurfaces(),
    size,
    volume: 1,
    floorArea: 1,
    growingArea: 1,
    plantLevel: 0,
    ridge: 1,
    capacity: capacities,
    fixed,
    fixedFleece: fixed,
    radiant: emptyMatrix(),
    radiantFleece: emptyMatrix(),
    leafArea: 0,
    leafToAir: 0,
    groundConductance: 0,
    roomAir: toRoom,
    roomRadiant: 0,
    roomAirClosed: toRoom,
    roomRadiantClosed: 0,
    leakage: 0,
    leakageClosed: 0,
    leakageFromRoom: false,
    windShare: 0,
    vents: [],
    door: null,
    fan: null,
    circulation: null,
    heaters: [],
    pressure: 101325,
    wetArea: 0,
    ...changes,
  };
}

/** A plain electric heater with changes: a name, a fuel, hours. */
export function heater(power: number, setPoint: number, changes: Partial<HeaterNumbers> = {}): HeaterNumbers {
  return { ...plainHeater(power, setPoint), ...changes };
}

/** Heat [W] that left a place in its last step through all surfaces, air and room. */
export function lossOf(state: { surfaceHeat: Float64Array; airHeat: number; roomHeat: number }): number {
  return state.surfaceHeat.reduce((sum, watts) => sum + watts, state.airHeat + state.roomHeat);
}
