import type { PlaceSeason, SeasonResult } from '../../core/index.ts';
import { dateOf } from '../sheet/time.ts';

/** What the season's model has at a place round a date [mol m⁻² d⁻¹]. */
export interface ModelLight {
  /** Mean, dullest and brightest of the fortnight round the date. */
  readonly mean: number;
  readonly least: number;
  readonly most: number;
}

/** Days on either side of the date. */
const reach = 7;

/** Day of the season that has a month and day `12-21`; 29 February counts as 1 March in a common year. */
export function seasonDay(season: Pick<SeasonResult, 'startDate'>, monthDay: string): number {
  const start = dateOf(season.startDate, 0);
  const [month, day] = monthDay.split('-').map(Number);
  const inYear = (year: number) => (Date.UTC(year, month - 1, day) - start.getTime()) / 86_400_000;
  const first = inYear(start.getUTCFullYear());
  return Math.min(364, first >= 0 ? first : inYear(start.getUTCFullYear() + 1));
}

/** The model's daylight or lamp light at a place in the fortnight round a day of the season. */
export function modelLight(result: PlaceSeason, kind: 'daylight' | 'lamp', day: number): ModelLight {
  const series = kind === 'lamp' ? result.daily.lampLight : result.daily.daylight;
  let [sum, least, most, count] = [0, Infinity, 0, 0];
  for (let at = Math.max(0, day - reach); at <= Math.min(364, day + reach); at += 1) {
    sum += series[at];
    least = Math.min(least, series[at]);
    most = Math.max(most, series[at]);
    count += 1;
  }
  return { mean: sum / count, least, most };
}
