import { monthOfSeasonDay } from '../season/index.ts';
import type { PlaceSeason, SeasonResult } from '../season/index.ts';
import type { LampMonth } from './result.ts';

/** Sum of a daily series from one day of the season to another, both counted. */
export function sum(values: Float64Array, from: number, to: number): number {
  let total = 0;
  for (let day = from; day <= to; day++) total += values[day];
  return total;
}

export const mean = (values: Float64Array, from: number, to: number) =>
  sum(values, from, to) / (to - from + 1);

/** Lamps' electricity and cost and the rest of the running cost for each calendar month of the winter half-year. */
export function monthsOf(season: SeasonResult, place: PlaceSeason): LampMonth[] {
  const months: LampMonth[] = [];
  const { daily } = place;
  for (let day = season.winterFrom; day <= season.winterTo; day++) {
    const month = monthOfSeasonDay(day, season.startDay);
    const last = months.at(-1);
    const cost = daily.lampCost[day];
    const before = last?.month === month ? last : { month, kwh: 0, cost: 0, heaterCost: 0 };
    const next = {
      month,
      kwh: before.kwh + daily.lampElectricity[day],
      cost: before.cost + cost,
      heaterCost: before.heaterCost + daily.cost[day] - cost,
    };
    if (before === last) months[months.length - 1] = next;
    else months.push(next);
  }
  return months;
}
