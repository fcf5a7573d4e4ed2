import type { WeatherYear } from '../../core/index.ts';

const hourMs = 3_600_000;
/** November to February, May to August south of the equator: the months in which lamps and heaters both run. */
const northMonths: readonly number[] = [10, 11, 0, 1];
const southMonths: readonly number[] = [4, 5, 6, 7];

/** Mean outdoor temperature of each hour of a winter's day, standard time, hour 0 first [°C]. */
export function winterHours(weather: WeatherYear): number[] {
  const months = weather.latitude >= 0 ? northMonths : southMonths;
  const sums = new Float64Array(24);
  const counts = new Float64Array(24);
  for (let k = 0; k < weather.hours; k++) {
    const middle = new Date(weather.startMs + (k + 0.5 + weather.utcOffsetHours) * hourMs);
    if (!months.includes(middle.getUTCMonth())) continue;
    sums[middle.getUTCHours()] += weather.dryBulb[k];
    counts[middle.getUTCHours()] += 1;
  }
  return Array.from(sums, (sum, hour) => sum / Math.max(1, counts[hour]));
}
