/** Glazing by EN 673: films 8 inside (3.6 + 4.4·ε/0.84 at ε 0.84) and 23 outside [W m⁻² K⁻¹]. */
import { describe, expect, it } from 'vitest';
import { buildNetwork, handbookLoss } from '../../core/heat/index.ts';
import { bareHouse, planOf } from '../support/plans.ts';

function networkOf(covering: string) {
  const plan = planOf({ ...bareHouse, covering, leakage: 0 });
  return buildNetwork(plan.places[0], plan.site, 101325);
}

/** What a surface of the network has behind it where that is the open air. */
const outdoors = 0;

/** U by the handbook sum, from a loss: all of it through the cover. */
function handbookU(covering: string): number {
  const network = networkOf(covering);
  // The floor may be among the network's surfaces; what faces the open air is the cover.
  const area = network.area.reduce((sum, value, i) => sum + (network.behind[i] === outdoors ? value : 0), 0);
  return handbookLoss(network, 0, 11, 1, null).loss / area / 10;
}

/** U by the handbook sum of a house of one listed window. */
function paneU(build: object): number {
  const surfaces = [{ name: 'Pane', area: 10, tilt: 90, azimuth: 180, build, behind: 'outdoors' }];
  const shape = { kind: 'listed', floorArea: 1, volume: 1, surfaces };
  const plan = planOf({ ...bareHouse, shape, leakage: 0 });
  const network = buildNetwork(plan.places[0], plan.site, 101325);
  return handbookLoss(network, 0, 11, 1, null).fabric / 10;
}

describe('EN 673', () => {
  it('single 4 mm glass: U 5.8 (1/(1/23 + 0.004/1 + 1/8) = 5.797)', () => {
    expect(handbookU('glass-4')).toBeCloseTo(1 / (1 / 23 + 0.004 + 1 / 8), 2);
    expect(handbookU('glass-4').toFixed(1)).toBe('5.8');
  });

  it.each([
    // Gap by EN 673, 0.025/d and 3.7 of radiation between panes at 10 °C (derived); U by EN 673 (from memory); centre
    // of glass by ASHRAE Fundamentals 2009 ch. 15 table 4, which is for −18 °C outdoors and so a gap that resists more.
    ['6 mm of air', 0.127, 3.3, 3.12],
    ['12 mm of air', 0.174, 2.9, 2.73],
  ])('two panes with %s, %d m² K W⁻¹: U %d, ASHRAE %d', (_, gap, expected, ashrae) => {
    const build = { kind: 'panes', panes: 2, thickness: 0.004, extinction: 28, gapResistance: gap };
    expect(Math.abs(paneU(build) - expected)).toBeLessThan(0.05);
    expect(paneU(build) / ashrae).toBeGreaterThan(1);
    expect(paneU(build) / ashrae).toBeLessThan(1.07);
  });

  it('a trap: 1 mm of glass, 1 mm of argon, 1 mm of glass has U 15.5 without films and about 4.3 with (Sangster 2011)', () => {
    // 43 m² of a small house: 668 W K⁻¹ without films, 183 with 0.17 m² K W⁻¹ of them (derived). Argon 0.016 W m⁻¹ K⁻¹.
    const gap = 0.001 / 0.016;
    expect(1 / (0.002 + gap)).toBeCloseTo(15.5, 1);
    const build = { kind: 'panes', panes: 2, thickness: 0.001, extinction: 30, gapResistance: gap };
    expect(Math.abs((43 * paneU(build)) / 183 - 1)).toBeLessThan(0.02);
  });

  it('the inside film: 3.6 + 4.4·ε/0.84 is 8.0 at ε 0.84', () => {
    expect(3.6 + (4.4 * 0.84) / 0.84).toBeCloseTo(8, 9);
  });

  it('thinner glass is all but the same: films are 97 % of its resistance', () => {
    expect(handbookU('glass-3') / handbookU('glass-4')).toBeGreaterThan(1);
    expect(handbookU('glass-3') / handbookU('glass-4')).toBeLessThan(1.01);
  });

  it('4-16-4 with air: U 2.7', () => {
    expect(handbookU('double-glass').toFixed(1)).toBe('2.7');
  });
});
