/** Ratio of the molar masses of water and dry air. */
const massRatio = 0.621945;

/** Gas constant of dry air [J kg⁻¹ K⁻¹]. */
const dryAirConstant = 287.042;

/**
 * Saturation vapour pressure [Pa] at a temperature [°C]: over ice below 0 °C, over water above. Hyland & Wexler 1983
 * as in ASHRAE Handbook of Fundamentals 2017, ch. 1, eqs 5 and 6 (coefficients from memory, checked on its table 3).
 */
export function saturationPressure(temperature: number): number {
  const T = temperature + 273.15;
  return Math.exp(temperature < 0 ? logOverIce(T) : logOverWater(T));
}

function logOverIce(T: number): number {
  const power = 6.3925247 + T * (-9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13)));
  return -5674.5359 / T + power + 4.1635019 * Math.log(T);
}

function logOverWater(T: number): number {
  const power = 1.3914993 + T * (-4.8640239e-2 + T * (4.1764768e-5 - T * 1.4452093e-8));
  return -5800.2206 / T + power + 6.5459673 * Math.log(T);
}

/** Saturation vapour pressure over water [Pa] at any temperature: Tetens as in FAO-56 eq. 11. */
export function saturationPressureFao(temperature: number): number {
  return 610.8 * Math.exp((17.27 * temperature) / (temperature + 237.3));
}

/** Slope of the saturation curve over water [Pa K⁻¹], FAO-56 eq. 13. */
export function saturationSlope(temperature: number): number {
  return (4098 * saturationPressureFao(temperature)) / (temperature + 237.3) ** 2;
}

/** Dew point, or frost point below 0 °C [°C], of a vapour pressure [Pa]: the temperature whose `saturationPressure` it is. */
export function dewPoint(vapourPressure: number): number {
  if (!(vapourPressure > 0))
    throw new RangeError(`expected a vapour pressure above 0, got ${vapourPressure}`);
  // A start by Tetens' formula turned round, then Newton on the logarithm: it is almost straight in 1/T.
  const start = Math.log(vapourPressure / 610.8);
  let t = Math.max(-90, (237.3 * start) / (17.27 - start));
  for (let round = 0; round < 8; round++) {
    const here = Math.log(saturationPressure(t));
    const slope = (Math.log(saturationPressure(t + 0.001)) - here) / 0.001;
    const move = (Math.log(vapourPressure) - here) / slope;
    t += move;
    if (Math.abs(move) < 1e-7) break;
  }
  return t;
}

/**
 * Dew point [°C] at a temperature [°C] and a relative humidity 0–1. Weather stations take relative humidity over
 * water at all temperatures (WMO-No. 8), so both steps are over water here: Tetens' formula and its inverse.
 */
export function dewPointOfHumidity(temperature: number, relativeHumidity: number): number {
  const logarithm =
    Math.log(Math.max(0.001, Math.min(1, relativeHumidity))) + (17.27 * temperature) / (temperature + 237.3);
  return (237.3 * logarithm) / (17.27 - logarithm);
}

/** Relative humidity over water, 0–1, from temperature and dew point over water [°C]. */
export function relativeHumidity(temperature: number, dew: number): number {
  return saturationPressureFao(dew) / saturationPressureFao(temperature);
}

/** Humidity ratio [kg water / kg dry air] from vapour pressure and pressure [Pa] (ASHRAE 2017 ch. 1 eq. 20). */
export function humidityRatio(vapourPressure: number, pressure: number): number {
  return (massRatio * vapourPressure) / (pressure - vapourPressure);
}

/** Vapour pressure [Pa] from humidity ratio and pressure [Pa]; the inverse of `humidityRatio`. */
export function vapourPressure(ratio: number, pressure: number): number {
  return (pressure * ratio) / (massRatio + ratio);
}

/** Specific volume of moist air [m³ per kg dry air] (ASHRAE 2017 ch. 1 eq. 26). */
export function specificVolume(temperature: number, ratio: number, pressure: number): number {
  return (dryAirConstant * (temperature + 273.15) * (1 + 1.607858 * ratio)) / pressure;
}

/** Density of moist air [kg m⁻³], the water in it counted. */
export function airDensity(temperature: number, ratio: number, pressure: number): number {
  return (1 + ratio) / specificVolume(temperature, ratio, pressure);
}

/** Enthalpy of moist air [J per kg dry air], zero for dry air at 0 °C (ASHRAE 2017 ch. 1 eq. 30). */
export function enthalpy(temperature: number, ratio: number): number {
  return 1006 * temperature + ratio * (2.501e6 + 1860 * temperature);
}

/** Water vapour in air [kg m⁻³] at a temperature [°C] and vapour pressure [Pa]: the gas law, 461.52 J kg⁻¹ K⁻¹. */
export function vapourDensity(temperature: number, pressure: number): number {
  return pressure / (461.52 * (temperature + 273.15));
}

/** Humidity ratio left when air of a dry and a wet bulb [°C] is brought to saturation (ASHRAE 2017 ch. 1 eqs 33 and 35). */
export function humidityRatioOfWetBulb(temperature: number, wetBulb: number, pressure: number): number {
  const saturated = humidityRatio(saturationPressure(wetBulb), pressure);
  if (wetBulb >= 0) {
    const heat = (2501 - 2.326 * wetBulb) * saturated - 1.006 * (temperature - wetBulb);
    return heat / (2501 + 1.86 * temperature - 4.186 * wetBulb);
  }
  const heat = (2830 - 0.24 * wetBulb) * saturated - 1.006 * (temperature - wetBulb);
  return heat / (2830 + 1.86 * temperature - 2.1 * wetBulb);
}

/** Wet bulb [°C] of air at a temperature [°C], humidity ratio and pressure [Pa], by bisection of the relation above. */
export function wetBulb(temperature: number, ratio: number, pressure: number): number {
  let low = temperature - 60;
  let high = temperature;
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (humidityRatioOfWetBulb(temperature, middle, pressure) > ratio) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
