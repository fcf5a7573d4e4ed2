/**
 * The network in the steady state against the sum a hand would make: each surface's own balance of inside film,
 * resistance and outside film, found by bisection; long-wave straight through a film; and the air that leaks. Sky and
 * surroundings are as cold as the air outside; air and radiant node are tied together so that the inside film is free
 * convection and long-wave to one temperature; the ground is cut off.
 */
import { describe, expect, it } from 'vitest';
import { airDensity, airHeat, buildNetwork, leakageFactor, steadyPower } from '../../core/heat/index.ts';
import { link } from '../../core/heat/linear.ts';
import { OUTDOORS } from '../../core/heat/network.ts';
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
  const cut = new Float64Array(network.surfaceCount);
  return { ...network, fixed, deepGround: cut.map(() => 1e-9), edge: cut };
}

/** Flux σ(T₁⁴ − T₂⁴) of black faces [W m⁻²]. */
const black = (a: number, b: number) => 5.670374419e-8 * ((a + 273.15) ** 4 - (b + 273.15) ** 4);

/** 4σT³ [W m⁻² K⁻¹]. */
const radiation = (celsius: number) => 4 * 5.670374419e-8 * (celsius + 273.15) ** 3;

/** Walton's free convection to a face colder than the air [W m⁻² K⁻¹]: unstable under a cover that faces up, the usual case here. */
const convection = (colder: number, tilt: number) =>
  (9.482 / (7.238 - Math.abs(Math.cos((tilt * Math.PI) / 180)))) * Math.cbrt(Math.max(0.3, colder));

/** Outside convection [W m⁻² K⁻¹] in the DOE-2 form of Yazdanian & Klems 1994: mean of windward and leeward, and natural flow. */
function outerFilm(warmer: number, felt: number, roughness: number): number {
  const forced = (3.26 * felt ** 0.89 + 3.55 * felt ** 0.617) / 2;
  const natural = 1.31 * Math.cbrt(Math.abs(warmer));
  return natural + roughness * (Math.hypot(natural, forced) - natural);
}

/** Tilt of the slope of the bare house's roof, else upright [degrees]. */
const tiltOf = (name: string) =>
  name.includes('roof') ? (Math.atan2(2.2 - 1.5, 2.4 / 2) * 180) / Math.PI : 90;

/** Heat through a surface [W], by bisection on its inner face between the two airs. */
function through(network: Network, i: number, felt: number): number {
  const area = network.area[i];
  const longWave = radiation(inside) * (network.radiantOpen[i] - network.throughOpen[i]);
  const inward = (face: number) =>
    (convection(inside - face, tiltOf(network.surfaceNames[i])) * area + longWave) * (inside - face);
  const outward = (outer: number) =>
    area *
    (outerFilm(outer - outside, felt, network.roughness[i]) * (outer - outside) +
      network.outsideEmissivity[i] * black(outer, outside));
  let [low, high] = [outside, inside];
  for (let round = 0; round < 60; round++) {
    const face = (low + high) / 2;
    const outer = face - (inward(face) / area) * network.wholeResistance[i];
    if (inward(face) > outward(outer)) low = face;
    else high = face;
  }
  return inward(low) + network.throughOpen[i] * black(inside, outside);
}

function handSum(network: Network): number {
  const felt = wind * network.windShare;
  let sum = 0;
  for (let i = 0; i < network.surfaceCount; i++) {
    if (network.behind[i] === OUTDOORS) sum += through(network, i, felt);
  }
  const changes = network.leakage * leakageFactor(inside - outside, felt);
  const air = (changes * network.volume * airDensity(inside, 101325) * airHeat) / 3600;
  return sum + air * (inside - outside);
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
