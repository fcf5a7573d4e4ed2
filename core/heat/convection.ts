import { LEVEL_DOWN, LEVEL_UP, UPRIGHT } from './network.ts';

/**
 * Free convection at inner faces by Walton 1983 (TARP; ASHRAE Fundamentals' turbulent plates): for an unstable
 * air layer 9.482 / (7.238 − |cos t|) · |ΔT|^⅓, for a stable one 1.810 / (1.382 + |cos t|) · |ΔT|^⅓ with the
 * tilt t; a level plate 1.52 and an upright one 1.31, as ASHRAE has them. Coefficients from memory.
 */
export function convectionCoefficients(tilt: number): { unstable: number; stable: number; facing: number } {
  const level = Math.cos((tilt * Math.PI) / 180);
  const unstable = 9.482 / (7.238 - Math.abs(level));
  const stable = 1.81 / (1.382 + Math.abs(level));
  const facing = level > 0.01 ? LEVEL_DOWN : level < -0.01 ? LEVEL_UP : UPRIGHT;
  return { unstable, stable, facing };
}

/** Least difference between face and air that free convection is reckoned with [K]: air is never quite still (estimate, no source). */
const leastDifference = 0.3;

/** Convection at a face [W m⁻² K⁻¹] that is `difference` [K] warmer than the air before it. */
export function freeConvection(difference: number, unstable: number, stable: number, facing: number): number {
  const size = Math.max(leastDifference, Math.abs(difference));
  const rises = facing === UPRIGHT || difference * facing > 0;
  return (rises ? unstable : stable) * Math.cbrt(size);
}

/**
 * Forced convection over faces and pots by a circulation fan [W m⁻² K⁻¹]: laminar flow along a plate 0.5 m
 * long, Nu = 0.664 Re^½ Pr^⅓ (Incropera & DeWitt), air at 15 °C.
 */
export function forcedConvection(airSpeed: number): number {
  const length = 0.5;
  const reynolds = (airSpeed * length) / 1.47e-5;
  return ((0.664 * Math.sqrt(reynolds) * Math.cbrt(0.71)) / length) * 0.0253;
}

/** Free and forced convection together: the cube root of the sum of cubes (Churchill 1977). */
export function mixedConvection(free: number, forced: number): number {
  return Math.cbrt(free * free * free + forced * forced * forced);
}
