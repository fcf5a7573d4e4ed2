/** Air properties and air exchange of a place. */

/** Specific heat of air [J kg⁻¹ K⁻¹]; latent heat of vaporisation [J kg⁻¹] at 10 °C (ASHRAE Fundamentals ch. 1). */
export const airHeat = 1006;
export const latentHeat = 2.477e6;
const dryAirConstant = 287.055;

/** Carbon dioxide of the open air [ppm by volume] (2020s, rounded; from memory). */
export const outdoorCarbonDioxide = 420;

/** Density of dry air [kg m⁻³] at a temperature [°C] and pressure [Pa]. */
export function airDensity(temperature: number, pressure: number): number {
  return pressure / (dryAirConstant * (temperature + 273.15));
}

/**
 * Saturation humidity ratio [kg kg⁻¹] over water by the Magnus form (Alduchov & Eskridge 1996), −45…60 °C; beyond
 * 81 °C, where vapour would be half the air, it stays there.
 */
export function saturationRatio(temperature: number, pressure: number): number {
  const magnus = 610.94 * Math.exp((17.625 * temperature) / (temperature + 243.04));
  const vapour = Math.min(magnus, pressure / 2);
  return (0.621945 * vapour) / (pressure - vapour);
}

/** Slope of `saturationRatio` with temperature [K⁻¹], given the ratio there (derivative of the Magnus form). */
export function saturationSlope(temperature: number, ratio: number): number {
  const from = temperature + 243.04;
  return (ratio * (1 + ratio / 0.621945) * 17.625 * 243.04) / (from * from);
}

/** Dew point [°C] of a humidity ratio [kg kg⁻¹]: the inverse of `saturationRatio`. */
export function dewPointOfRatio(ratio: number, pressure: number): number {
  const vapour = (ratio * pressure) / (0.621945 + ratio);
  const logarithm = Math.log(Math.max(vapour, 1e-3) / 610.94);
  return (243.04 * logarithm) / (17.625 - logarithm);
}

/**
 * Air changes an hour from leakage given at 20 K and 3 m s⁻¹.
 * Stack and wind combine as in Sherman & Grimsrud 1980 (ASHRAE Fundamentals 2001 ch. 26), with the
 * one-storey stack coefficient 0.000145 and shelter class 3 wind coefficient 0.000174, normalised to 1 there.
 */
export function leakageFactor(difference: number, wind: number): number {
  const stack = 0.000145;
  const windTerm = 0.000174;
  const reference = stack * 20 + windTerm * 9;
  return Math.sqrt((stack * Math.abs(difference) + windTerm * wind * wind) / reference);
}

/**
 * Flow through a vent fully open [m³ s⁻¹]: stack between heights and wind, added in quadrature.
 * Stack Cd·A·√(2 g h ΔT/T) with Cd 0.6 on half the area in and half out; wind 0.25·A·v for oblique wind
 * (ASHRAE Fundamentals ch. 16).
 */
export function ventFlow(area: number, height: number, difference: number, wind: number): number {
  const stack = 0.6 * (area / 2) * Math.sqrt((2 * 9.81 * height * Math.abs(difference)) / 290);
  const windFlow = 0.25 * (area / 2) * wind;
  return Math.sqrt(stack * stack + windFlow * windFlow);
}

/**
 * Air exchanged through one open door or window [m³ h⁻¹]: 1800 A √(0.01 + 0.001 v² + 0.0035 H |ΔT|)
 * (EN 15242:2007, 6.5.1); area [m²], height [m], wind [m s⁻¹], difference [K].
 */
export function singleSidedFlow(area: number, height: number, wind: number, difference: number): number {
  return 1800 * area * Math.sqrt(0.01 + 0.001 * wind * wind + 0.0035 * height * Math.abs(difference));
}
