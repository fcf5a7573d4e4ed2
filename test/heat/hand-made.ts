import { emptyMatrix } from '../../core/heat/network.ts';
import type { HeaterNumbers, Network } from '../../core/heat/network.ts';
import { AIR, nodeCount } from '../../core/heat/nodes.ts';

/** Link that ties nodes without a task to the air, so that the matrix can be solved; it carries no heat in the end [W K⁻¹]. */
const tie = 1;

/** The nodes every network has; those after them are left out here. */
const size = 6;

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
  const none = () => new Float64Array(0);
  return {
    size,
    surfaceCount: 0,
    surfaceNames: [],
    area: none(),
    skyView: none(),
    behind: new Uint8Array(0),
    insideConvection: none(),
    emissivityOpen: none(),
    emissivityClosed: none(),
    outsideEmissivity: none(),
    resistanceOpen: none(),
    resistanceClosed: none(),
    longWaveOpen: none(),
    longWaveClosed: none(),
    solarAbsorptance: none(),
    volume: 1,
    floorArea: 1,
    growingArea: 1,
    capacity: capacities,
    fixed,
    fixedFleece: fixed,
    radiant: emptyMatrix(),
    radiantFleece: emptyMatrix(),
    deepGround: 0,
    edge: 0,
    groundConductance: 0,
    wallBehind: 0,
    wallFront: 0,
    wallBehindRoom: false,
    roomAir: toRoom,
    roomRadiant: 0,
    leakage: 0,
    leakageClosed: 0,
    leakageFromRoom: false,
    windShare: 0,
    ventArea: 0,
    ventHeight: 0,
    ventOpenAt: 0,
    ventBand: 1,
    fanFlow: 0,
    fanOnAt: 0,
    fanBand: 1,
    fanWatts: 0,
    heaters: [],
    pressure: 101325,
    wetArea: 0,
    wetFloor: 0,
    ...changes,
  };
}

/** An electric air heater with one set point [°C] day and night. */
export function heater(power: number, setPoint: number): HeaterNumbers {
  return {
    name: '',
    power,
    day: setPoint,
    night: setPoint,
    swing: 0,
    mat: false,
    fuel: 'electricity',
    vapour: 0,
  };
}
