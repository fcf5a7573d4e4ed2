import type { FuelNight, FuelUse } from '../../core/index.ts';
import { formatNumber } from '../state/units.ts';
import { clockAt } from './night.ts';

/** `1.4 kg`, `0.35 litres`. */
export function fuelAmount(amount: number, unit: FuelUse['unit']): string {
  return `${formatNumber(amount, amount < 1 ? 2 : amount < 100 ? 1 : 0)}\u00a0${unit}`;
}

/** Propane is sold by the bottle and weighed, paraffin stands in a tank. */
const vessel = (unit: FuelUse['unit']) => (unit === 'kg' ? 'bottle' : 'tank');

/** Whether a full bottle or tank lasts: `A full bottle of 11.0 kg lasts till morning`. */
export function fuelNightWords(fuel: FuelNight, timeZone: string): string {
  const burnt = `${fuelAmount(fuel.amount, fuel.unit)} tonight`;
  if (fuel.tank === null) return burnt;
  const full = `a full ${vessel(fuel.unit)} of ${fuelAmount(fuel.tank, fuel.unit)}`;
  return fuel.emptyAtMs === null
    ? `${burnt}; ${full} lasts till morning`
    : `${burnt}; ${full} is empty at ${clockAt(fuel.emptyAtMs, timeZone)}`;
}

/** What a season takes of a bottle or tank: `filled 3 times, most in a day 1.2 kg`. */
export function fuelSeasonWords(fuel: FuelUse): string {
  const most = `most in a day ${fuelAmount(fuel.mostInADay, fuel.unit)}`;
  if (fuel.fillings === null) return most;
  const count = Math.ceil(fuel.fillings);
  const times = count === 1 ? 'one' : String(count);
  return `${times} full ${vessel(fuel.unit)}${count === 1 ? '' : 's'}, ${most}`;
}
