import { radiantCoefficient } from './surfaces.ts';

/** Share of the growing area covered by leaves (rosettes touching; estimate, no source). */
export const leafCover = 0.7;

/** Long-wave emissivity of leaves (Campbell & Norman 1998: 0.94–0.99). */
export const leafEmissivity = 0.95;

/** Air speed among plants under cover [m s⁻¹] and leaf size [m] (still house, rosette leaf; common practice, no source). */
const airSpeedInside = 0.1;
const leafSize = 0.05;

/** Boundary layers outdoors are thinner by this than over a plate in smooth flow (Campbell & Norman 1998, §7.9). */
const outdoorTurbulence = 1.4;

/**
 * Forced convection at one side of a leaf [W m⁻² K⁻¹]: gHa = 0.135 √(u/d) mol m⁻² s⁻¹ (Campbell & Norman
 * 1998, eq. 7.30), times 29.3 J mol⁻¹ K⁻¹. @param airSpeed [m s⁻¹] @param size along the flow [m]
 */
export function leafBoundary(airSpeed: number, size = leafSize): number {
  return 0.135 * Math.sqrt(airSpeed / size) * 29.3;
}

/** The same for a leaf under cover, where a circulation fan keeps `airSpeed` or nothing stirs. */
export const leafConvection = leafBoundary(airSpeedInside);

/** Wind at a plant's height as a share of that at 10 m: log profile over short grass, 0.3 m to 10 m (Campbell & Norman 1998, ch. 5; derived). */
const windAtPlants = 0.35;

/** Least air movement outdoors on a still night [m s⁻¹]: slope and buoyancy flows (estimate, no source). */
const stillAir = 0.2;

/**
 * Temperature of a level leaf standing in the open [°C]: long-wave to the sky above and to the ground below at air
 * temperature, convection at both sides, sun taken up; no transpiration, no dew.
 * @param outdoor air [°C] @param sky sky temperature [°C] @param wind at 10 m [m s⁻¹] @param size [m]
 * @param sun sunlight the leaf takes up [W m⁻²]
 */
export function outdoorLeaf(outdoor: number, sky: number, wind: number, size = leafSize, sun = 0): number {
  const speed = Math.max(stillAir, windAtPlants * wind);
  const convection = 2 * outdoorTurbulence * leafBoundary(speed, size);
  let leaf = outdoor;
  for (let round = 0; round < 4; round++) {
    const up = leafEmissivity * radiantCoefficient(leaf, sky);
    const down = leafEmissivity * radiantCoefficient(leaf, outdoor);
    leaf = (up * sky + (down + convection) * outdoor + sun) / (up + down + convection);
  }
  return leaf;
}
