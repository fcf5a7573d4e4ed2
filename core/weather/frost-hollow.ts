import type { OutdoorSteps } from './outdoor.ts';

/** Hours in which a hollow's pool of cold air builds after sunset and drains after sunrise [h] (common practice, no source). */
const buildingHours = 3;
const drainingHours = 1;

/** Wind below which the pool is whole and above which it is swept away [m s⁻¹ at 10 m] (common practice, no source). */
const stillWind = 1;
const sweepingWind = 5;

/** Share of a garden's full chill that a night's cloud (0–1) and wind [m s⁻¹] allow. */
export function chillShare(cloudCover: number, wind: number): number {
  const calm = Math.max(0, Math.min(1, (sweepingWind - wind) / (sweepingWind - stillWind)));
  return (1 - cloudCover) * calm;
}

/**
 * Lowers the air of a frost hollow below the station's on clear still nights, up to `kelvin`; the dew point is held
 * at or below the air. A negative `kelvin` is a slope warmer than its station. Works on the steps in place.
 */
export function nightChill(steps: OutdoorSteps, kelvin: number): void {
  const hours = steps.stepMinutes / 60;
  let pool = 0;
  for (let j = 0; j < steps.n; j++) {
    const night = steps.sunElevation[j] <= 0;
    const target = night ? kelvin * chillShare(steps.cloudCover[j], steps.windSpeed[j]) : 0;
    pool += (target - pool) * (1 - Math.exp(-hours / (night ? buildingHours : drainingHours)));
    steps.dryBulb[j] -= pool;
    steps.dewPoint[j] = Math.min(steps.dewPoint[j], steps.dryBulb[j]);
  }
}
