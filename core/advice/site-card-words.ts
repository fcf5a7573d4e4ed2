import { leastSwing, tropic } from '../season/index.ts';

/**
 * By what the winter half-year was found.
 * @param months mean temperature of each month [°C]
 */
export function winterWords(latitude: number, months: readonly number[]): string {
  if (!(Math.abs(latitude) < tropic)) {
    return latitude >= 0
      ? 'October to March, as everywhere north of the tropics'
      : 'April to September, as everywhere south of the tropics';
  }
  if (Math.max(...months) - Math.min(...months) >= leastSwing) {
    return 'the coolest six months running, as this is between the tropics';
  }
  return `the half-year of the ${latitude >= 0 ? 'northern' : 'southern'} winter, as all months here are alike`;
}
