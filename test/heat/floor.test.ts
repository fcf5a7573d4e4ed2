import { describe, expect, it } from 'vitest';
import { buildNetwork } from '../../core/index.ts';
import type { Network } from '../../core/index.ts';
import { edgeTransmittance } from '../../core/heat/floors.ts';
import { planOf } from '../support/plans.ts';

/** Resistance of the inside films in one (ISO 13370) [m² K W⁻¹]. */
const insideFilm = 0.17;

function floorNetwork(length: number, width: number, changes: object = {}): Network {
  const plan = planOf({
    id: 'house',
    name: 'House',
    shape: { kind: 'even-span', length, width, eavesHeight: 2, ridgeHeight: 3, azimuth: 180 },
    covering: 'glass-3',
    leakage: 1,
    growingArea: 4,
    ...changes,
  });
  return buildNetwork(plan.places[0], plan.site, 101325);
}

/** Steady conductance from the inside through every floor surface to outdoors and ground [W K⁻¹]: links in series, surfaces in parallel. */
function floorOf(network: Network): number {
  let sum = 0;
  network.surfaceNames.forEach((name, i) => {
    if (!name.startsWith('floor')) return;
    let resistance = insideFilm / network.area[i] + 1 / (network.deepGround[i] + network.edge[i]);
    const from = network.layerFrom[i];
    for (let c = from; c < from + network.layerCount[i]; c++) resistance += 1 / network.layerLink[c];
    sum += 1 / resistance;
  });
  return sum;
}

/** Floors that are not so small that their topsoil alone resists more than the standard has for the whole. */
const sizes = [
  [6, 4],
  [12, 8],
  [20, 8],
] as const;

describe('a floor in the steady state equals ISO 13370 (derived: network conductances in series)', () => {
  for (const [length, width] of sizes) {
    for (const floor of ['soil', 'slab', 'insulated-slab', 'gravel'] as const) {
      it(`${length} × ${width} m, ${floor}`, () => {
        const network = floorNetwork(length, width, { floor });
        expect(floorOf(network) / network.groundConductance).toBeCloseTo(1, 6);
      });
    }
  }

  // Reached 0.842 (gravel) to 0.997: with a footing of 0.1 m the standard has less resistance than the slices alone.
  it.each(['soil', 'slab', 'insulated-slab', 'gravel'])(
    '3 × 2.4 m, %s: up to a sixth less, never more',
    (floor) => {
      const network = floorNetwork(3, 2.4, { floor });
      expect(floorOf(network) / network.groundConductance).toBeLessThan(1 + 1e-6);
      expect(floorOf(network) / network.groundConductance).toBeGreaterThan(0.84);
    },
  );

  it('is the same where plants stand on a part of it as on a bench', () => {
    const [ground, bench] = ['ground', 'bench'].map((standing) => floorNetwork(6, 4, { standing }));
    const toPots = (network: Network) => network.toPots.reduce((sum, watts) => sum + watts, 0);
    expect(toPots(ground)).toBeGreaterThan(1.5 * toPots(bench));
    expect(floorOf(ground)).toBeCloseTo(floorOf(bench), 9);
  });

  it('loses more into wet soil than into moist, least into dry', () => {
    const [dry, moist, wet] = ['dry', 'moist', 'wet'].map((ground) =>
      floorOf(floorNetwork(6, 4, { ground })),
    );
    expect(dry).toBeLessThan(moist);
    expect(moist).toBeLessThan(wet);
  });
});

describe('boards down the edge: ISO 13370:2017 annex B (formula from memory)', () => {
  // λ 1.5, footing 0.1 m, Rsi + Rse 0.21: d_t 0.415. 50 mm of λ 0.036, 0.5 m deep: R_n 1.3889, R′ = R_n − 0.05/1.5 =
  // 1.3556, d′ 2.0333. ψ = −1.5/π · (ln(1/0.415 + 1) − ln(1/2.4483 + 1)) = −1.5/π · (1.2266 − 0.3423) = −0.4222.
  it('ψ of 50 mm of foam half a metre deep on moist soil is −0.422 W m⁻¹ K⁻¹, worked by hand', () => {
    expect(edgeTransmittance(0.415, 1.5, 0.05, 0.5)).toBeCloseTo(-0.4222, 3);
  });

  it('the floor of the network loses ψ times its edge less', () => {
    for (const [length, width] of sizes) {
      const bare = floorNetwork(length, width);
      const boards = floorNetwork(length, width, { edgeInsulation: { thickness: 0.05, depth: 0.5 } });
      const saved = floorOf(bare) - floorOf(boards);
      expect(saved / (0.4222 * 2 * (length + width))).toBeCloseTo(1, 3);
    }
  });

  it('thicker and deeper boards save more, boards of no more than soil save nothing', () => {
    expect(edgeTransmittance(0.4, 1.5, 0.1, 0.5)).toBeLessThan(edgeTransmittance(0.4, 1.5, 0.05, 0.5));
    expect(edgeTransmittance(0.4, 1.5, 0.05, 1)).toBeLessThan(edgeTransmittance(0.4, 1.5, 0.05, 0.5));
    expect(edgeTransmittance(0.4, 0.036, 0.05, 0.5)).toBeCloseTo(0, 12);
  });
});
