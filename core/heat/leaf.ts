/** Share of the growing area covered by leaves (rosettes touching; estimate, no source). */
export const leafCover = 0.7;

/** Air speed among plants under cover [m s⁻¹] and leaf size [m] (still house, rosette leaf; common practice, no source). */
const airSpeed = 0.1;
const leafSize = 0.05;

/**
 * Forced convection at one side of a leaf [W m⁻² K⁻¹]: gHa = 0.135 √(u/d) mol m⁻² s⁻¹ (Campbell & Norman
 * 1998, eq. 7.30), times 1.4 outdoors-turbulence left out under cover, times 29.3 J mol⁻¹ K⁻¹.
 */
export const leafConvection = 0.135 * Math.sqrt(airSpeed / leafSize) * 29.3;
