/** Glazing by EN 673: films 8 inside (3.6 + 4.4·ε/0.84 at ε 0.84) and 23 outside [W m⁻² K⁻¹]. */
import { describe, expect, it } from 'vitest';
import { buildNetwork, handbookLoss } from '../../core/heat/index.ts';
import { bareHouse, planOf } from '../support/plans.ts';

function networkOf(covering: string) {
  const plan = planOf({ ...bareHouse, covering, leakage: 0 });
  return buildNetwork(plan.places[0], plan.site, 101325);
}

/** U by the handbook sum, from a loss: all of it through the cover. */
function handbookU(covering: string): number {
  const network = networkOf(covering);
  const area = network.area.reduce((sum, value) => sum + value, 0);
  return handbookLoss(network, 0, 11, 1, null).loss / area / 10;
}

describe('EN 673', () => {
  it('single 4 mm glass: U 5.8 (1/(1/23 + 0.004/1 + 1/8) = 5.797)', () => {
    expect(handbookU('glass-4')).toBeCloseTo(1 / (1 / 23 + 0.004 + 1 / 8), 2);
    expect(handbookU('glass-4').toFixed(1)).toBe('5.8');
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
