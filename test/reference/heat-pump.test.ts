/** Heat pumps between the rating points of EN 14511 (A7 and A−7), and what a resistance gives. */
import { describe, expect, it } from 'vitest';
import { heaterOf } from '../../core/index.ts';
import { heatPerEnergy, heaterNumbers } from '../../core/heat/heaters.ts';

const numbers = (kind: 'heat-pump' | 'fan', changes: object = {}) =>
  heaterNumbers(
    [heaterOf({ id: 'h', name: 'Heater', kind, power: 2000, setPointDay: 5, setPointNight: 5, ...changes })],
    new Map(),
  )[0];

describe('heat per electricity', () => {
  it('a resistance gives one for one at any temperature: 1 W is 3.412 BTU/h', () => {
    for (const outdoor of [-20, 0, 15]) expect(heatPerEnergy(numbers('fan'), outdoor)).toBe(1);
    expect(1 / 0.29307107).toBeCloseTo(3.41214, 4);
    // A garden page has 2,929 to 2,931 W for 10,000 BTU/h.
    expect(10_000 * 0.29307107).toBeGreaterThan(2929);
    expect(10_000 * 0.29307107).toBeLessThan(2931);
  });

  it('a heat pump meets both rating points and lies straight between them', () => {
    const pump = numbers('heat-pump', { coefficientAt7: 3.6, coefficientAtMinus7: 2.4 });
    expect(heatPerEnergy(pump, 7)).toBeCloseTo(3.6, 9);
    expect(heatPerEnergy(pump, -7)).toBeCloseTo(2.4, 9);
    expect(heatPerEnergy(pump, 0)).toBeCloseTo(3, 9);
  });

  it('never falls below a resistance nor beats Carnot at 20 °C indoors with a coil 10 K either side', () => {
    const pump = numbers('heat-pump');
    for (let outdoor = -30; outdoor <= 15; outdoor++) {
      const given = heatPerEnergy(pump, outdoor);
      const carnot = (20 + 10 + 273.15) / (20 + 10 - (outdoor - 10));
      expect(given, `${outdoor} °C`).toBeGreaterThanOrEqual(1);
      expect(given, `${outdoor} °C`).toBeLessThan(carnot);
      expect(given).toBeGreaterThanOrEqual(heatPerEnergy(pump, outdoor - 1));
    }
  });
});
