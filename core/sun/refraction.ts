import { radians } from './angle.ts';

/** Pressure of the standard atmosphere at a height [Pa] (ICAO; 288.15 K, 6.5 K km⁻¹). `elevation` [m]. */
export function standardPressure(elevation: number): number {
  return 101325 * (1 - 2.25577e-5 * elevation) ** 5.2559;
}

/**
 * Atmospheric refraction [degrees] at a geometric `elevation` [degrees], as in the NREL Solar Position Algorithm
 * (Reda & Andreas 2004, NREL/TP-560-34302, eq. 42, after Bennett 1982). `pressure` [Pa], `temperature` [°C].
 * Zero where the sun's upper limb is below the horizon with the usual 0.5667° of refraction there.
 */
export function refraction(elevation: number, pressure: number, temperature: number): number {
  if (!(elevation >= -0.26667 - 0.5667)) return 0;
  const shape = 1.02 / (60 * Math.tan((elevation + 10.3 / (elevation + 5.11)) * radians));
  return (pressure / 101000) * (283 / (273 + temperature)) * shape;
}
