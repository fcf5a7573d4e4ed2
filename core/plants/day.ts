/**
 * What a group of plants lives through, a day an entry: days of 24 h by the site's civil day. Temperatures are
 * leaf temperatures [°C]; light is at the plant, sky and lamps together [mol m⁻² d⁻¹].
 */
export interface PlantDays {
  readonly meanLeaf: Float64Array;
  readonly leastLeaf: Float64Array;
  readonly mostLeaf: Float64Array;
  /** Mean over the dark hours [°C]. */
  readonly meanNightLeaf: Float64Array;
  readonly dailyLight: Float64Array;
  /** Hours that plants count as day [h]. */
  readonly photoperiod: Float64Array;
  /** 1 on days with water in the mix as recorded; where absent the watering option decides. */
  readonly watered?: Uint8Array;
}

const series = ['meanLeaf', 'leastLeaf', 'mostLeaf', 'meanNightLeaf', 'dailyLight', 'photoperiod'] as const;

/** Number of days; throws where the series differ in length, are empty or hold something not finite. */
export function dayCount(days: PlantDays): number {
  const count = days.meanLeaf.length;
  if (!(count > 0)) throw new RangeError(`expected at least one day, got ${count}`);
  for (const name of series) {
    const values = days[name];
    if (values.length !== count)
      throw new RangeError(`expected ${count} days of ${name}, got ${values.length}`);
    for (let day = 0; day < count; day += 1) {
      const value = values[day] as number;
      if (!Number.isFinite(value))
        throw new RangeError(`expected a finite ${name} on day ${day}, got ${value}`);
    }
  }
  if (days.watered !== undefined && days.watered.length !== count) {
    throw new RangeError(`expected ${count} days of watered, got ${days.watered.length}`);
  }
  return count;
}

/** The same day over and over: for trials, tests and curves. */
export function constantDays(
  count: number,
  day: Readonly<Record<(typeof series)[number], number>>,
): PlantDays {
  const fill = (value: number) => new Float64Array(count).fill(value);
  return {
    meanLeaf: fill(day.meanLeaf),
    leastLeaf: fill(day.leastLeaf),
    mostLeaf: fill(day.mostLeaf),
    meanNightLeaf: fill(day.meanNightLeaf),
    dailyLight: fill(day.dailyLight),
    photoperiod: fill(day.photoperiod),
  };
}

/** Days before each month of a common year. */
const daysBefore = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/** 1 August, as day of a common year (0 = 1 January). */
export const firstOfAugust = 212;

/** Month of a day of the common year, 0–11. */
function monthOf(ofYear: number): number {
  let month = 0;
  while (month < 11 && ofYear >= (daysBefore[month + 1] as number)) month += 1;
  return month;
}

/**
 * Month of a season's day as a northern grower counts, 1–12: the month in which a season begins counts as August,
 * wherever it is, so that winter is October to March, and months begin where those of the site's calendar do.
 * @param day days after the season's first day, any whole number
 * @param startDay the season's first day as day of a common year, 0 = 1 January
 */
export function seasonMonth(day: number, startDay = firstOfAugust): number {
  const inYear = (((startDay + day) % 365) + 365) % 365;
  return ((monthOf(inYear) - monthOf(startDay) + 19) % 12) + 1;
}
