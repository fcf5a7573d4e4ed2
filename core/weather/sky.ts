import { saturationPressureFao } from './humidity.ts';

/** Stefan–Boltzmann constant [W m⁻² K⁻⁴] (CODATA). */
export const stefanBoltzmann = 5.670374419e-8;

/**
 * Emissivity of a cloudless sky: Berdahl & Martin 1984 (Solar Energy 32, 663–664). `dew` dew point [°C];
 * `solarHour` [h after solar midnight] and `pressure` [Pa] add the daily and the pressure term where given.
 */
export function clearSkyEmissivity(
  dew: number,
  solarHour: number | null = null,
  pressure: number | null = null,
): number {
  const d = dew / 100;
  const hourly = solarHour === null ? 0 : 0.013 * Math.cos((2 * Math.PI * solarHour) / 24);
  const height = pressure === null ? 0 : 0.00012 * (pressure / 100 - 1000);
  return 0.711 + 0.56 * d + 0.73 * d * d + hourly + height;
}

/** Berdahl & Martin's form with the coefficients of Li, Jiang & Coimbra 2017 (Solar Energy 144, 40–48). */
export function clearSkyEmissivityLi(dew: number): number {
  const d = dew / 100;
  return 0.758 + 0.521 * d + 0.625 * d * d;
}

/** Brunt's form as fitted by Li et al. 2017; `vapour` [Pa]. */
export function clearSkyEmissivityBrunt(vapour: number): number {
  return 0.618 + 0.056 * Math.sqrt(vapour / 100);
}

/** Idso's form as fitted by Li et al. 2017; `temperature` [°C], `vapour` [Pa]. */
export function clearSkyEmissivityIdso(temperature: number, vapour: number): number {
  return 0.685 + 3.2e-5 * (vapour / 100) * Math.exp(1699 / (temperature + 273.15));
}

/** Clark & Allen 1978; `dew` dew point [°C]. */
export function clearSkyEmissivityClarkAllen(dew: number): number {
  return 0.787 + 0.764 * Math.log((dew + 273.15) / 273);
}

/** Brutsaert 1975 (Water Resources Research 11, 742); `temperature` [°C], dew point [°C]. */
export function clearSkyEmissivityBrutsaert(temperature: number, dew: number): number {
  return 1.24 * (saturationPressureFao(dew) / 100 / (temperature + 273.15)) ** (1 / 7);
}

/**
 * Share of the gap to a black sky that a full cloud cover closes: Martin & Berdahl 1984 (Solar Energy 33, 321–336),
 * black cloud with its base at 2 km, exp(−2/8.2). Programs use 0.47 to 0.9.
 */
export const cloudGain = Math.exp(-2 / 8.2);

/** Emissivity of a sky with a cloud cover of 0–1. */
export function skyEmissivity(clear: number, cloudCover: number): number {
  return clear + (1 - clear) * cloudGain * cloudCover;
}

/** Long-wave of the sky on the horizontal [W m⁻²]: air temperature [°C], emissivity. */
export function skyLongWave(temperature: number, emissivity: number): number {
  return emissivity * stefanBoltzmann * (temperature + 273.15) ** 4;
}

/** Temperature of a black sky that sends the same long-wave [°C]. */
export function skyTemperature(longWave: number): number {
  return (longWave / stefanBoltzmann) ** 0.25 - 273.15;
}

/** Cloud cover 0–1 that explains a measured long-wave [W m⁻²] at an air temperature and dew point [°C]. */
export function coverFromLongWave(longWave: number, temperature: number, dew: number): number {
  const clear = clearSkyEmissivity(dew);
  const seen = longWave / (stefanBoltzmann * (temperature + 273.15) ** 4);
  return Math.max(0, Math.min(1, (seen - clear) / ((1 - clear) * cloudGain)));
}
