import type { Tariff } from '../plan/schema.ts';
import { minutesOf } from '../plan/fields.ts';
import { paraffinHeat, propaneHeat } from '../plan/fuels.ts';

export type Fuel = 'electricity' | 'propane' | 'paraffin';

/** Price of one kilowatt-hour of heat from a fuel at an electricity price [currency per kWh]. */
export function heatPrice(fuel: Fuel, tariff: Tariff, electricity: number): number {
  if (fuel === 'propane') return tariff.propanePrice / propaneHeat;
  if (fuel === 'paraffin') return tariff.paraffinPrice / paraffinHeat;
  return electricity;
}

/** Length of a daily span [min]: a whole day from 00:00 to 24:00, none where both are the same time. */
export function spanMinutes(on: string, off: string): number {
  const [from, to] = [minutesOf(on), minutesOf(off)];
  if (from === to) return 0;
  return to > from ? to - from : to - from + 1440;
}

/** Hours of a daily span `on`–`off` that fall under the night price [h], and the whole span [h]. */
export function spanHours(on: string, off: string, tariff: Tariff): { total: number; night: number } {
  const from = minutesOf(on);
  const length = spanMinutes(on, off);
  const nightFrom = minutesOf(tariff.nightFrom);
  const nightLength = tariff.nightPrice === null ? 0 : spanMinutes(tariff.nightFrom, tariff.nightTo);
  let night = 0;
  for (let minute = 0; minute < length; minute++) {
    if ((from + minute - nightFrom + 2880) % 1440 < nightLength) night += 1;
  }
  return { total: length / 60, night: night / 60 };
}

/** Running cost of `watts` over a daily span [currency per day]. */
export function dailyCost(watts: number, on: string, off: string, tariff: Tariff): number {
  const hours = spanHours(on, off, tariff);
  const dear = hours.total - hours.night;
  return (watts / 1000) * (dear * tariff.dayPrice + hours.night * (tariff.nightPrice ?? tariff.dayPrice));
}
