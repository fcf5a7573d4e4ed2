/** Ground floors by ISO 13370:2017 (formulas from memory; numbers worked from them by hand). */
import { describe, expect, it } from 'vitest';
import { groundFloorConductance, groundU } from '../../core/heat/masses.ts';

/** Equivalent thickness w + λ(Rsi + Rf + Rse), Rsi 0.17 and Rse 0.04 [m]. */
const thickness = (wall: number, conductivity: number, floor = 0) =>
  wall + conductivity * (0.17 + floor + 0.04);

describe('ISO 13370 slab on ground: U [W m⁻² K⁻¹]', () => {
  it.each([
    // Size [m], wall [m], λ [W m⁻¹ K⁻¹], floor's own resistance, U.
    ['10 × 10 m, λ 2', 10, 10, 0.3, 2, 0, 0.7615],
    ['10 × 10 m, clay λ 1.5', 10, 10, 0.3, 1.5, 0, 0.6026],
    ['10 × 10 m, λ 2, insulated R 2', 10, 10, 0.3, 2, 2, 0.2869],
    ['3 × 2 m, λ 2', 3, 2, 0.1, 2, 0, 1.9676],
  ])('%s', (_, length, width, wall, conductivity, floor, expected) => {
    const characteristic = (length * width) / (length + width);
    const value = groundU(characteristic, thickness(wall, conductivity, floor), conductivity);
    expect(Math.abs(value - expected)).toBeLessThan(5e-5);
    if (floor > 0) return;
    const perimeter = 2 * (length + width);
    const whole = groundFloorConductance(length * width, perimeter, wall, conductivity);
    expect(whole / (length * width)).toBeCloseTo(value, 9);
  });

  it('ASHRAE 140 GC10a, 12 × 12 m, 20 K, λ 1.9, wall 0.24 m: 2509 W, 3.1 % above the exact 2432.6 W', () => {
    // GC10a has perfect films, so that the equivalent thickness is the wall alone. Exact answer: annex B8, from memory;
    // three numerical programs gave 2415 to 2432 W.
    const watts = groundU(3 * 2, 0.24, 1.9) * 144 * 20;
    expect(groundU(6, 0.24, 1.9)).toBeCloseTo(0.8711, 4);
    expect(watts).toBeCloseTo(2509, 0);
    expect((watts / 2432.6 - 1) * 100).toBeCloseTo(3.1, 1);
  });

  it('the two formulas meet where thickness equals characteristic dimension, within 2 %', () => {
    const [below, above] = [groundU(3.0001, 3, 2), groundU(2.9999, 3, 2)];
    expect(Math.abs(below / above - 1)).toBeLessThan(0.02);
  });

  it('a larger floor of one shape loses less a square metre, more in all', () => {
    const u = [2, 4, 8, 16].map(
      (side) => groundFloorConductance(side * side, 4 * side, 0.1, 1.5) / (side * side),
    );
    expect(u).toEqual([...u].sort((a, b) => b - a));
    const whole = u.map((value, index) => value * 4 * 4 ** index);
    expect(whole).toEqual([...whole].sort((a, b) => a - b));
  });
});
