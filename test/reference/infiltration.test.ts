/**
 * Leakage against published formulas: Sherman & Grimsrud 1980 in the form of ASHRAE Fundamentals 2001 ch. 26,
 * Q [m³/s] = A[cm²]/1000·√(Cs·ΔT + Cw·v²); EN 15242; the factors of two older programs.
 */
import { describe, expect, it } from 'vitest';
import { leakageFactor } from '../../core/heat/index.ts';

/** Stack coefficients of one, two and three storeys; wind coefficients of one storey, shelter class 1 to 5 (ASHRAE). */
const stack = [0.000145, 0.00029, 0.000435];
const wind = [0.000319, 0.000246, 0.000174, 0.000104, 0.000032];

const shermanGrimsrud = (area: number, difference: number, speed: number, shelter = 3, storeys = 1) =>
  (area / 1000) * Math.sqrt(stack[storeys - 1] * difference + wind[shelter - 1] * speed * speed);

describe('leakage', () => {
  it('the formula gives its published numbers: 120.3 m³/h; 183 m³/h and 0.54 changes an hour in 340 m³', () => {
    expect(shermanGrimsrud(500, 20, 3) * 3600).toBeCloseTo(120.3, 1);
    // ASHRAE's own example, shelter class 4, 39 K and 6.7 m/s (from memory).
    const example = shermanGrimsrud(500, 39, 6.7, 4) * 3600;
    expect(Math.abs(example - 183)).toBeLessThan(0.5);
    expect((example / 340).toFixed(2)).toBe('0.54');
  });

  it('is 1 at 20 K and 3 m/s, where leakage is stated', () =>
    expect(leakageFactor(20, 3)).toBeCloseTo(1, 12));

  it.each([
    [0, 3],
    [20, 0],
    [5, 1],
    [39, 6.7],
    [-12, 2],
  ])('follows the formula at %d K and %d m/s', (difference, wind) => {
    const expected = shermanGrimsrud(500, Math.abs(difference), wind) / shermanGrimsrud(500, 20, 3);
    expect(leakageFactor(difference, wind)).toBeCloseTo(expected, 12);
  });

  it('EN 15242, another model, grows alike: from 20 K and 3 m/s to still air and to twice the wind, within a factor 1.8', () => {
    const en15242 = (difference: number, wind: number) => {
      const stack = 0.0146 * 100 * (0.7 * 2.5 * difference) ** 0.667;
      const windFlow = 0.0769 * 100 * (0.75 * wind * wind) ** 0.667;
      return Math.max(stack, windFlow) + (0.14 * stack * windFlow) / 100;
    };
    // Furthest apart at 6 m/s (1.76): the standard's wind is that of an unsheltered wall, here it is shelter class 3.
    expect(0.0146 * 100 * (0.7 * 2.5 * 20) ** 0.667).toBeCloseTo(15.64, 2);
    expect(0.0769 * 100 * (0.75 * 9) ** 0.667).toBeCloseTo(27.48, 2);
    expect(en15242(20, 3)).toBeCloseTo(28.09, 1);
    for (const [difference, wind] of [
      [20, 0],
      [20, 6],
      [10, 3],
      [30, 2],
    ]) {
      const ratio = leakageFactor(difference, wind) / (en15242(difference, wind) / en15242(20, 3));
      expect(ratio).toBeGreaterThan(1 / 1.8);
      expect(ratio).toBeLessThan(1.8);
    }
  });

  it.each([250, 500, 1000])('of %d cm²: flow is the factor times that at 20 K and 3 m/s', (area) => {
    const stated = shermanGrimsrud(area, 20, 3);
    for (const [difference, speed] of [
      [10, 0],
      [0, 5],
      [30, 4],
    ]) {
      const flow = stated * leakageFactor(difference, speed);
      expect(flow / shermanGrimsrud(area, difference, speed)).toBeCloseTo(1, 12);
    }
  });

  it('more shelter and fewer storeys leak less; the class used lies in the middle of five', () => {
    const flows = wind.map((_, i) => shermanGrimsrud(500, 20, 6, i + 1));
    expect(flows).toEqual([...flows].sort((a, b) => b - a));
    expect(shermanGrimsrud(500, 20, 0, 3, 2)).toBeCloseTo(shermanGrimsrud(500, 20, 0) * Math.SQRT2, 9);
    const ours = shermanGrimsrud(500, 20, 3) * leakageFactor(20, 6);
    expect(ours).toBeLessThan(flows[1]);
    expect(ours).toBeGreaterThan(flows[3]);
  });

  it('two older programs: 1 at 0 K and 3.35 m/s, 2.77 and 1.79 at 40 K and 6 m/s; ours lies between', () => {
    const blast = (difference: number, speed: number) => 0.606 + 0.03636 * difference + 0.1177 * speed;
    const doe = (speed: number) => 0.224 * speed;
    expect(blast(0, 3.35)).toBeCloseTo(1, 3);
    expect(blast(40, 6)).toBeCloseTo(2.767, 3);
    expect([doe(3.35), doe(6), doe(4.47)].map((value) => value.toFixed(2))).toEqual(['0.75', '1.34', '1.00']);
    const ours = leakageFactor(40, 6) / leakageFactor(0, 3.35);
    expect(ours).toBeGreaterThan(doe(6) / doe(3.35));
    expect(ours).toBeLessThan(blast(40, 6) / blast(0, 3.35));
  });

  it('a trap: warm air leaks out of a cold house as it leaks in; the sign of the difference does not count', () => {
    expect(leakageFactor(-15, 2)).toBe(leakageFactor(15, 2));
    expect(leakageFactor(0, 0)).toBe(0);
  });
});
