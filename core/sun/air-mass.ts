import { standardPressure } from './refraction.ts';
import { radians } from './angle.ts';

/**
 * Relative optical air mass at an apparent zenith [degrees], Kasten & Young 1989 (Applied Optics 28, 4735).
 * Beyond 90° the value at the horizon.
 */
export function airMass(apparentZenith: number): number {
  const zenith = Math.min(90, apparentZenith);
  return 1 / (Math.cos(zenith * radians) + 0.50572 * (96.07995 - zenith) ** -1.6364);
}

/** Air mass scaled with the pressure of the standard atmosphere at a height [m]. */
export function absoluteAirMass(apparentZenith: number, elevation: number): number {
  return (airMass(apparentZenith) * standardPressure(elevation)) / 101325;
}
