/** Carroll's factors and the star network against cases with an exact answer. */
import { describe, expect, it } from 'vitest';
import { carrollFactors, radiatingArea } from '../../core/heat/radiant.ts';

/** Two faces joined at the star: conductance as a radiating area [m²]. */
const between = (a: number, b: number) => 1 / (1 / a + 1 / b);

describe('Carroll’s factors', () => {
  it.each([0.1, 0.5, 0.84, 0.9, 1])(
    'two equal plates of emissivity %d exchange as σA/(2/ε − 1), exactly',
    (emissivity) => {
      const [one, other] = carrollFactors([3, 3]);
      const area = between(radiatingArea(3, emissivity, one), radiatingArea(3, emissivity, other));
      expect(area).toBeCloseTo(3 / (2 / emissivity - 1), 12);
    },
  );

  it('two plates of unlike emissivity as σA/(1/ε₁ + 1/ε₂ − 1)', () => {
    const [one, other] = carrollFactors([3, 3]);
    const area = between(radiatingArea(3, 0.4, one), radiatingArea(3, 0.9, other));
    expect(area).toBeCloseTo(3 / (1 / 0.4 + 1 / 0.9 - 1), 12);
  });

  it('every face of a cube has 1.2', () => {
    for (const factor of carrollFactors(Array<number>(6).fill(2.5))) expect(factor).toBeCloseTo(1.2, 9);
  });

  it('two opposite faces of a black cube exchange directly 0.2 (exact 0.1998), a sixth part of all round the star', () => {
    // View factor of opposite faces of a cube 0.1998 and of neighbours 0.2000 (Howell’s catalogue, from memory): the
    // star gives one number for both, A·1.2/6.
    const area = radiatingArea(1, 1, carrollFactors(Array<number>(6).fill(1))[0]);
    expect((area * area) / (6 * area)).toBeCloseTo(0.2, 9);
  });

  it('the factor is at its own equation: 1/(1 − A F/ΣA F)', () => {
    const areas = [7.2, 7.2, 4.5, 4.5, 5, 5, 3];
    const factors = carrollFactors(areas);
    const sum = areas.reduce((total, area, i) => total + area * factors[i], 0);
    areas.forEach((area, i) => expect(factors[i]).toBeCloseTo(1 / (1 - (area * factors[i]) / sum), 9));
  });

  it.each([2, 3, 10, 100])(
    'a small black body in a room %d times as large sees all of it: its own area, within 1e-9',
    (times) => {
      const [room, body] = carrollFactors([times, 1]);
      expect(Math.abs(between(times * room, body) - 1)).toBeLessThan(1e-9);
    },
  );

  it('one face alone has no partner, and a face that neither takes up nor passes long-wave has no part', () => {
    expect(carrollFactors([4])).toEqual([1]);
    expect(radiatingArea(4, 0, 1.2)).toBe(0);
  });

  it('a trap: without the factors two black plates would exchange half of what they do', () => {
    const [one, other] = carrollFactors([1, 1]);
    expect(between(one, other) / between(1, 1)).toBeCloseTo(2, 12);
  });
});
