import type { WeatherYear } from './year.ts';

/** A year's wave of temperature at the surface of the ground. */
export interface GroundWave {
  /** Mean over the year and half the yearly swing [°C, K]. */
  readonly mean: number;
  readonly amplitude: number;
  /** Day of the year on which the surface is coldest, counted as `dayOfYear` is. */
  readonly coldestDay: number;
  /** Thermal diffusivity of the soil [m² s⁻¹]. */
  readonly diffusivity: number;
}

/**
 * Diffusivity of moist garden soil [m² s⁻¹]: 0.025 ft² h⁻¹ (from memory; moist soils run from 4e-7 to 1e-6). Weather-file
 * headers print the figure as 2.3226e-3 m² per day, which would leave no swing at 2 m; the temperatures printed there
 * agree with neither unit, so they are not used.
 */
export const usualDiffusivity = 2.322576e-3 / 3600;

/**
 * Temperature of undisturbed ground [°C] at a depth [m] on a day of the year: Kusuda & Achenbach 1965
 * (NBS Report 8972), a yearly wave damped and delayed with depth.
 */
export function groundTemperature(depth: number, dayOfYear: number, wave: GroundWave): number {
  if (!(depth >= 0)) throw new RangeError(`expected a depth of 0 or more, got ${depth}`);
  if (!(wave.diffusivity > 0))
    throw new RangeError(`expected a diffusivity above 0, got ${wave.diffusivity}`);
  const perDay = wave.diffusivity * 86400;
  const damping = depth * Math.sqrt(Math.PI / (365 * perDay));
  const delay = (depth / 2) * Math.sqrt(365 / (Math.PI * perDay));
  const phase = ((2 * Math.PI) / 365) * (dayOfYear - wave.coldestDay - delay);
  return wave.mean - wave.amplitude * Math.exp(-damping) * Math.cos(phase);
}

/** The ground wave of a weather year: the yearly harmonic of its air temperature, by least squares. */
export function groundFromWeather(weather: WeatherYear, diffusivity = usualDiffusivity): GroundWave {
  const hours = weather.dryBulb.length;
  let sum = 0;
  let cosine = 0;
  let sine = 0;
  for (let i = 0; i < hours; i++) {
    const angle = (2 * Math.PI * (i + 1)) / hours;
    sum += weather.dryBulb[i];
    cosine += weather.dryBulb[i] * Math.cos(angle);
    sine += weather.dryBulb[i] * Math.sin(angle);
  }
  const [a, b] = [(2 * cosine) / hours, (2 * sine) / hours];
  // T = mean + a·cos + b·sin is least where the angle points away from (a, b); hour 0 is the beginning of day 1.
  const coldest = (Math.atan2(-b, -a) / (2 * Math.PI)) * 365;
  return {
    mean: sum / hours,
    amplitude: Math.hypot(a, b),
    coldestDay: (coldest < 0 ? coldest + 365 : coldest) + 1,
    diffusivity,
  };
}
