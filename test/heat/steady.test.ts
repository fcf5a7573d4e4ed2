/**
 * The network in the steady state against the sum a hand would make: Σ A·ΔT/(1/hi + R + 1/he), long-wave straight
 * through a film, and the air that leaks. Sky and surroundings are as cold as the air outside; air and inner
 * surfaces are tied together so that one inside film, convection and long-wave, holds; the ground is cut off.
 */
import { describe, expect, it } from 'vitest';
import { airDensity, airHeat, buildNetwork, leakageFactor, steadyPower } from '../../core/heat/index.ts';
import { link } from '../../core/heat/linear.ts';
import type { Network } from '../../core/heat/network.ts';
import { AIR, STAR } from '../../core/heat/nodes.ts';
import { bareHouse, planOf } from '../support/plans.ts';

const inside = 8;
const outside = -4;
const wind = 3;

function tied(place: unknown): Network {
  const plan = planOf(place);
  const network = buildNetwork(plan.places[0], plan.site, 101325);
  const fixed = network.fixed.slice();
  link(fixed, AIR, STAR, 1e9);
  return { ...network, fixed, deepGround: 1e-9, edge: 0 };
}

/** 4σT³ [W m⁻² K⁻¹]. */
const radiation = (celsius: number) => 4 * 5.670374419e-8 * (celsius + 273.15) ** 3;

function handSum(network: Network): number {
  const felt = wind * network.windShare;
  let sum = 0;
  for (let i = 0; i < network.surfaceCount; i++) {
    const film = network.insideConvection[i] + radiation(inside) * network.emissivityOpen[i];
    const outer = 4 + 4 * felt + radiation(outside) * network.outsideEmissivity[i];
    sum += network.area[i] / (1 / film + network.resistanceOpen[i] + 1 / outer);
    sum += network.area[i] * network.longWaveOpen[i] * radiation(outside);
  }
  const changes = network.leakage * leakageFactor(inside - outside, felt);
  const air = (changes * network.volume * airDensity(inside, 101325) * airHeat) / 3600;
  return (sum + air) * (inside - outside);
}

const conditions = {
  outdoor: outside,
  sky: outside,
  deepGround: outside,
  wind,
  room: null,
  fleeceLaid: false,
  screenClosed: false,
};

describe('steady state equals the hand sum', () => {
  it.each([
    ['single glass', bareHouse],
    ['glass and bubble lining', { ...bareHouse, lining: 'bubble-lining' }],
    ['twin-wall sheet', { ...bareHouse, covering: 'twin-wall-10' }],
    ['polythene, half open to the sky', { ...bareHouse, covering: 'polythene' }],
    ['a brick base wall', { ...bareHouse, baseWall: { height: 0.6, covering: 'brick-102' } }],
  ])('%s, within 1e-6', (_, place) => {
    const network = tied(place);
    const hand = handSum(network);
    expect(hand).toBeGreaterThan(200);
    expect(Math.abs(steadyPower(network, inside, conditions) / hand - 1)).toBeLessThan(1e-6);
  });

  it('a colder sky asks for more, and needs nothing where all is equally warm', () => {
    const network = tied(bareHouse);
    const at = (sky: number) => steadyPower(network, inside, { ...conditions, sky });
    expect(at(-20)).toBeGreaterThan(at(outside));
    const warm = { ...conditions, outdoor: inside, sky: inside, deepGround: inside };
    // The tie of 1e9 W/K leaves about 1e-6 W of rounding.
    expect(Math.abs(steadyPower(network, inside, warm))).toBeLessThan(1e-5);
  });
});
