import { describe, expect, it } from 'vitest';
import { buildNetwork } from '../../core/index.ts';
import type { Network } from '../../core/index.ts';
import { planOf } from '../support/plans.ts';

/** Steady conductance from the inside (films in one, 1/0.17) through the floor to outdoors and ground [W K⁻¹], read from the network. */
function floorOf(network: Network, area: number): number {
  const [FLOOR, SUBSOIL, n] = [2, 3, 10];
  const between = -network.fixed[SUBSOIL * n + FLOOR];
  return 1 / (0.17 / area + 1 / between + 1 / (network.deepGround + network.edge));
}

describe('a soil floor in the steady state equals ISO 13370 (derived: network conductances in series)', () => {
  for (const [length, width] of [
    [3, 2.4],
    [6, 4],
    [12, 8],
    [20, 8],
  ]) {
    it(`${length} × ${width} m`, () => {
      const house = {
        id: 'house',
        name: 'House',
        shape: { kind: 'even-span', length, width, eavesHeight: 2, ridgeHeight: 3, azimuth: 180 },
        covering: 'glass-3',
        leakage: 1,
        growingArea: 4,
      };
      const plan = planOf(house);
      const network = buildNetwork(plan.places[0], plan.site, 101325);
      expect(floorOf(network, length * width) / network.groundConductance).toBeCloseTo(1, 6);
    });
  }
});
