import { AIR } from './nodes.ts';
import { NOTHING, OUTDOORS, UPRIGHT } from './network.ts';
import type { Network } from './network.ts';
import type { Drive, HeatState } from './state.ts';

/** Air temperature by height, and in the middle and at the edge of the growing area [°C]. */
export interface AirHeights {
  readonly floor: number;
  readonly bench: number;
  readonly ridge: number;
  readonly middle: number;
  readonly edge: number;
}

/**
 * Stated layering of the air (the network itself has one air): warmer upwards by 0.5 K m⁻¹ for each kelvin the
 * cover's faces are warmer than the floor, up to the 1.5 K m⁻¹ measured in a film tunnel at night (Savage 1980);
 * a cover colder than the floor stirs the air and leaves a little the other way. A heater that gives warm air
 * adds up to 1 K m⁻¹ at full power, a circulation fan leaves a fifth (common practice, no source).
 */
const perKelvin = 0.5;
const mostUpwards = 1.5;
const mostDownwards = -0.3;
const fromHeater = 1;
const leftByFan = 0.2;

/**
 * Share of the difference between air and the upright covers' inner faces by which the edge is colder: faces some
 * 5 K colder made the edge of a 10 m tunnel 2 K colder than its middle (Wien, ASHS abstract; derived).
 */
const edgeShare = 0.35;

/** Layering for the state after a step. */
export function airHeights(network: Network, state: HeatState, drive: Drive): AirHeights {
  const air = state.temperature[AIR];
  const sums = { sides: 0, sideArea: 0, covers: 0, coverArea: 0, floors: 0, floorArea: 0 };
  for (let i = 0; i < network.surfaceCount; i++) {
    const area = network.area[i];
    if (network.behind[i] === OUTDOORS) {
      sums.covers += area * state.face[i];
      sums.coverArea += area;
      if (network.facing[i] === UPRIGHT || network.skyView[i] < 0.9) {
        sums.sides += area * state.face[i];
        sums.sideArea += area;
      }
    } else if (network.facing[i] > 0 && network.behind[i] !== NOTHING) {
      sums.floors += area * state.face[i];
      sums.floorArea += area;
    }
  }
  const mean = (sum: number, area: number) => (area > 0 ? sum / area : air);
  const lift = perKelvin * (mean(sums.covers, sums.coverArea) - mean(sums.floors, sums.floorArea));
  let slope = Math.min(mostUpwards, Math.max(mostDownwards, lift)) + heaterSlope(network, state);
  if (network.circulation !== null && drive.circulating) slope *= leftByFan;
  const middleHeight = network.ridge / 2;
  const at = (height: number) => air + slope * (height - middleHeight);
  const bench = at(network.plantLevel + 0.1);
  return {
    floor: at(0.05),
    bench,
    ridge: at(network.ridge),
    middle: bench,
    edge: bench - edgeShare * (air - mean(sums.sides, sums.sideArea)),
  };
}

function heaterSlope(network: Network, state: HeatState): number {
  let most = 0;
  for (let h = 0; h < network.heaters.length; h++) {
    const { power, mat, radiantShare, surface } = network.heaters[h];
    if (mat || surface >= 0) continue;
    most = Math.max(most, (state.heaterPower[h] / power) * (1 - radiantShare));
  }
  return fromHeater * most;
}
