import type { Climate, MonthNormals, SeasonResult } from '../../../core/index.ts';
import { dateOf } from '../../sheet/time.ts';

type Normals = Extract<Climate, { kind: 'normals' }>;

/** How much colder one winter in ten is than a usual one at its coldest [K] (common practice, no source). */
const rareBelowTypical = 4;

const rounded = (value: number) => Math.round(value * 10) / 10;
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Monthly figures read off the season that a weather file gave: mean daily least and most, the coldest night. */
export function normalsOfSeason(season: SeasonResult): Normals {
  const least: number[][] = Array.from({ length: 12 }, () => []);
  const most: number[][] = Array.from({ length: 12 }, () => []);
  for (let day = 0; day < season.days; day += 1) {
    const month = dateOf(season.startDate, day).getUTCMonth();
    least[month].push(season.outdoor.least[day]);
    most[month].push(season.outdoor.most[day]);
  }
  const months = least.map((values, month): MonthNormals => ({
    meanMinimum: rounded(mean(values)),
    meanMaximum: rounded(mean(most[month])),
    globalRadiation: null,
    sunshineHours: null,
    wind: null,
  }));
  const typicalLow = rounded(Math.min(...season.outdoor.least));
  return { kind: 'normals', months, typicalLow, rareLow: typicalLow - rareBelowTypical, seed: 1 };
}
