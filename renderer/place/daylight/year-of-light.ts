import type { PlaceSeason, SeasonResult } from '../../../core/index.ts';
import { dateOf, monthsOf } from '../../sheet/time.ts';

/** Mean daily light of a month [mol m⁻² d⁻¹]: outdoors on the level, and at the plants by where it comes from. */
export interface LightMonth {
  /** Short name for a column, long name for a sentence. */
  readonly name: string;
  readonly longName: string;
  /** Its middle day of the season. */
  readonly middle: number;
  readonly outdoors: number;
  readonly daylight: number;
  readonly lamps: number;
  /** Daylight at the plants as a share of that outdoors, 0–1. */
  readonly share: number;
}

const longMonth = new Intl.DateTimeFormat(undefined, { month: 'long', timeZone: 'UTC' });

function meanOf(series: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let day = from; day < to; day += 1) sum += series[day];
  return sum / (to - from);
}

/** The months of the season in their order, from its daily series. */
export function lightMonths(season: SeasonResult, { daily }: PlaceSeason): LightMonth[] {
  return monthsOf(season.startDate).map(({ name, fromDay, toDay }) => {
    const outdoors = meanOf(season.outdoor.daylight, fromDay, toDay);
    const daylight = meanOf(daily.daylight, fromDay, toDay);
    return {
      name,
      longName: longMonth.format(dateOf(season.startDate, fromDay)),
      middle: Math.floor((fromDay + toDay) / 2),
      outdoors,
      daylight,
      lamps: meanOf(daily.lampLight, fromDay, toDay),
      share: outdoors > 0 ? daylight / outdoors : 0,
    };
  });
}

/** The month in which the plants have least light of all kinds. */
export function leastMonth(months: readonly LightMonth[]): LightMonth {
  return months.reduce((least, month) =>
    month.daylight + month.lamps < least.daylight + least.lamps ? month : least,
  );
}
