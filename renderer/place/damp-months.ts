import type { DailySeries } from '../../core/index.ts';
import { monthsOf } from '../sheet/time.ts';

/** What is counted of damp, the mildest first. */
export const dampMeasures = [
  { id: 'dampHours', name: 'Damp air, 90 % or more' },
  { id: 'dewHours', name: 'Water on the cover' },
  { id: 'leafDewHours', name: 'Dew on leaves' },
  { id: 'mouldHours', name: 'Grey mould may start' },
] as const;
export type DampMeasure = (typeof dampMeasures)[number]['id'];

export interface DampRow {
  readonly id: DampMeasure;
  readonly name: string;
  /** Hours in each month of the season, and all of them together [h]. */
  readonly months: readonly number[];
  readonly total: number;
}

/** Hours of each measure in each month of the season. */
export function dampRows(daily: DailySeries, startDate: string): DampRow[] {
  const months = monthsOf(startDate);
  return dampMeasures.map(({ id, name }) => {
    const hours = months.map(({ fromDay, toDay }) =>
      daily[id].subarray(fromDay, toDay).reduce((sum, value) => sum + value, 0),
    );
    return { id, name, months: hours, total: hours.reduce((sum, value) => sum + value, 0) };
  });
}

/** Hours in a month as they are read: nothing below half an hour. */
export function hoursText(hours: number, format: (value: number) => string): string {
  return hours < 0.5 ? '' : format(hours);
}
