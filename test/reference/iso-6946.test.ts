/** Surface films and wall build-ups: ISO 6946:2017 (films and annex from memory), ASHRAE 140 and worked examples. */
import { describe, expect, it } from 'vitest';
import { buildNetwork, outsideConvection, radiantCoefficient } from '../../core/heat/index.ts';
import { wallMaterials, wallNumbers } from '../../core/plan/coverings-walls.ts';
import { bareHouse, planOf } from '../support/plans.ts';

describe('ISO 6946 annex A: radiation of a black face 4σT³ [W m⁻² K⁻¹]', () => {
  it.each([
    [-10, 4.1],
    [0, 4.6],
    [10, 5.1],
    [20, 5.7],
    [30, 6.3],
  ])('at %d °C: %d', (celsius, expected) => {
    expect(Math.abs(radiantCoefficient(celsius, celsius) - expected)).toBeLessThan(0.05);
  });

  it('between two temperatures is the secant: the flux is σ(T₁⁴ − T₂⁴) exactly', () => {
    const flux = 5.670374419e-8 * (293.15 ** 4 - 263.15 ** 4);
    expect(radiantCoefficient(20, -10) * 30).toBeCloseTo(flux, 9);
  });
});

describe('ISO 6946: outside film by wind, 4 + 4v and 0.9 of radiation at 0 °C [m² K W⁻¹]', () => {
  // The unrounded value (derived), and what the standard's table prints (from memory).
  it.each([
    [1, 0.082, 0.08],
    [2, 0.062, 0.06],
    [3, 0.05, 0.05],
    [4, 0.041, 0.04],
    [5, 0.036, 0.04],
    [7, 0.028, 0.03],
    [10, 0.021, 0.02],
  ])('%d m/s: %d', (wind, unrounded, printed) => {
    const resistance = 1 / (outsideConvection(wind) + 0.9 * radiantCoefficient(0, 0));
    expect(Math.abs(resistance - unrounded)).toBeLessThan(6e-4);
    expect(resistance.toFixed(2)).toBe(printed.toFixed(2));
  });
});

describe('ISO 6946 annex A: inside convection 5.0 upwards, 2.5 across [W m⁻² K⁻¹]', () => {
  it('walls take 2.5, a roof between the two', () => {
    const plan = planOf(bareHouse);
    const network = buildNetwork(plan.places[0], plan.site, 101325);
    network.surfaceNames.forEach((name, i) => {
      const value = network.insideConvection[i];
      if (/roof/i.test(name)) {
        expect(value).toBeGreaterThan(4);
        expect(value).toBeLessThan(5);
      } else expect(value).toBeCloseTo(2.5, 9);
    });
    expect(network.surfaceNames.some((name) => /roof/i.test(name))).toBe(true);
  });
});

/** Layers of thickness [m] and conductivity [W m⁻¹ K⁻¹] → resistance [m² K W⁻¹]; the hand sum of every textbook. */
const resistance = (layers: readonly [number, number][]) => layers.reduce((sum, [d, k]) => sum + d / k, 0);

describe('walls of several layers', () => {
  it.each([
    // ASHRAE 140 case 600: layers in a public copy of the specification, sum derived.
    [
      'BESTEST 600 wall',
      [
        [0.009, 0.14],
        [0.066, 0.04],
        [0.012, 0.16],
      ],
      1.789,
    ],
    [
      'BESTEST 600 roof',
      [
        [0.019, 0.14],
        [0.1118, 0.04],
        [0.01, 0.16],
      ],
      2.993,
    ],
    [
      'BESTEST 900 wall',
      [
        [0.009, 0.14],
        [0.0615, 0.04],
        [0.1, 0.51],
      ],
      1.798,
    ],
  ] as [string, [number, number][], number][])('%s: R %d', (_, layers, expected) => {
    expect(Math.abs(resistance(layers) - expected)).toBeLessThan(1e-3);
  });

  it('BESTEST 600 wall: U 0.514 with films 8.29 and 29.3 (ASHRAE 140, from memory)', () => {
    const u =
      1 /
      (1 / 8.29 +
        resistance([
          [0.009, 0.14],
          [0.066, 0.04],
          [0.012, 0.16],
        ]) +
        1 / 29.3);
    expect(u).toBeCloseTo(0.514, 3);
  });

  it('one layer of the program’s own wall is thickness over conductivity, and holds ρ·c·d', () => {
    for (const material of Object.values(wallMaterials)) {
      const thin = wallNumbers(material, 0.1);
      const thick = wallNumbers(material, 0.2);
      expect(thick.resistance / thin.resistance).toBeCloseTo(2, 9);
      expect(thick.heatCapacity / thin.heatCapacity).toBeCloseTo(2, 9);
    }
  });

  it('0.22 m of brick: U 2.2 without render (school table) to 2.7 (worked example, k 0.6, no films) by this brick', () => {
    const bare = wallNumbers(wallMaterials.brick, 0.22).resistance;
    expect(1 / (bare + 0.13 + 0.04)).toBeGreaterThan(1.85);
    expect(1 / bare).toBeLessThan(3.6);
  });
});
