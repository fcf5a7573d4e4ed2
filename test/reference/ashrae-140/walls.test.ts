/**
 * Walls, roof and panes of ASHRAE Standard 140 listed as build-ups of a place: what the fabric makes of them.
 * (The slab of case GC10a stands with ISO 13370 in `iso-13370.test.ts`.)
 */
import { describe, expect, it } from 'vitest';
import type { Covering } from '../../../core/plan/coverings.ts';
import { surfacesOf } from '../../../core/fabric/index.ts';
import { assemblyTransmittance, coverAbsorptance } from '../../../core/light/index.ts';
import { cases, placeOfCase } from './cases.ts';

const surfaceOf = (name: keyof typeof cases, surface: string) => {
  const found = surfacesOf(placeOfCase(cases[name])).surfaces.find((each) => each.name === surface);
  if (found === undefined) throw new Error(`expected a surface ${surface}`);
  return found;
};

/** Films of the standard inside and outside, convection and long-wave together [W m⁻² K⁻¹] (from memory). */
const films = 1 / 8.29 + 1 / 29.3;

describe('BESTEST build-ups as listed surfaces', () => {
  it.each([
    // Case, surface, resistance [m² K W⁻¹] (sum of d/λ) and U with the films [W m⁻² K⁻¹] (from memory; heavy wall derived).
    ['600', 'north wall', 1.789, 0.514],
    ['600', 'roof', 2.993, 0.318],
    ['900', 'north wall', 1.798, 0.512],
    ['600', 'floor', 25.254, 0.039],
    ['900', 'floor', 25.246, 0.039],
  ] as const)('case %s %s: R %d, U %d', (name, surface, resistance, u) => {
    const { resistanceOpen } = surfaceOf(name as unknown as keyof typeof cases, surface);
    expect(Math.abs(resistanceOpen - resistance)).toBeLessThan(1e-3);
    expect(Math.abs(1 / (resistanceOpen + films) - u)).toBeLessThan(6e-4);
  });

  it('heavy walls hold 145 kJ m⁻² K⁻¹, light ones 14: the sums of d·ρ·c', () => {
    expect(surfaceOf(900, 'north wall').heatCapacity).toBeCloseTo(100 * 1400 + 61.5 * 14 + 9 * 477, 3);
    expect(surfaceOf(600, 'north wall').heatCapacity).toBeCloseTo(12 * 798 + 66 * 10.08 + 9 * 477, 3);
  });

  it('one pane passes 0.834 of normal sun, two 0.702 by Fresnel with absorption (derived) and turn off at 80°', () => {
    const two = surfaceOf(600, 'south windows').covering;
    const { optics } = two;
    if (optics.kind !== 'slab') throw new Error('expected panes');
    const one: Covering = { ...two, optics: { ...optics, layers: 1 } };
    expect(assemblyTransmittance(0, [one])).toBeCloseTo(0.834, 2);
    expect(assemblyTransmittance(0, [two])).toBeCloseTo(0.703, 2);
    expect(assemblyTransmittance(80, [two]) / assemblyTransmittance(0, [two])).toBeLessThan(0.4);
    expect(coverAbsorptance(0, two)).toBeGreaterThan(0.1);
  });
});
