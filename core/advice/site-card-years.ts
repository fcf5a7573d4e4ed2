import { monthStarts, outdoorSteps } from '../weather/index.ts';
import type { WeatherYear } from '../weather/index.ts';

/** Air at or below this is a frost, at or above that a hot day [°C]. */
const frost = 0;
const hot = 30;

/** Air in which winter chill is counted [°C]: 0 to 7.2 (45 °F, Weinberger 1950; the frost end as in later counts). */
const chillFrom = 0;
const chillTo = 7.2;

/** What one year is to plants. */
export interface CardYear {
  /** Least and most air of each day [°C], 1 January first. */
  readonly least: Float64Array;
  readonly most: Float64Array;
  readonly minimum: number;
  readonly frostDays: number;
  readonly hotDays: number;
  /** [K d] */
  readonly growingDegrees5: number;
  readonly growingDegrees10: number;
  /** [h], in the winter half-year. */
  readonly chillHours: number;
  /** Mean daily global radiation of each month [MJ m⁻² d⁻¹]. */
  readonly radiation: readonly number[];
}

/**
 * Reduces a year.
 * @param frostHollow how much colder than the station the garden is on a clear still night [K]
 * @param inWinter 1 for the days of the year that are of the winter half-year
 */
export function cardYear(weather: WeatherYear, frostHollow: number, inWinter: Uint8Array): CardYear {
  const air = gardenAir(weather, frostHollow);
  const least = new Float64Array(365);
  const most = new Float64Array(365);
  let chillHours = 0;
  for (let day = 0; day < 365; day++) {
    const hours = air.subarray(day * 24, day * 24 + 24);
    least[day] = Math.min(...hours);
    most[day] = Math.max(...hours);
    if (inWinter[day] === 1)
      for (const value of hours) if (value >= chillFrom && value <= chillTo) chillHours += 1;
  }
  return {
    least,
    most,
    minimum: Math.min(...least),
    frostDays: count(least, (value) => value <= frost),
    hotDays: count(most, (value) => value >= hot),
    growingDegrees5: growingDegrees(least, most, 5),
    growingDegrees10: growingDegrees(least, most, 10),
    chillHours,
    radiation: monthRadiation(weather.globalHorizontal),
  };
}

/** Air of the garden at the end of each hour [°C]: the station's, chilled on clear still nights as the season does it. */
function gardenAir(weather: WeatherYear, frostHollow: number): Float64Array {
  const station = weather.dryBulb;
  if (frostHollow === 0) return station;
  const { dryBulb } = outdoorSteps(weather, { frostHollow }, { stepMinutes: 60 });
  // A step stands for the middle of its hour: the chill there is what it lies below its neighbours' mean.
  return station.map((value, i) => {
    const middle = 0.5 * (station[(i + station.length - 1) % station.length] + value);
    return value - (middle - dryBulb[i]);
  });
}

function count(values: Float64Array, is: (value: number) => boolean): number {
  let days = 0;
  for (const value of values) if (is(value)) days += 1;
  return days;
}

/** Sum of the mean of least and most above a base, days below it counting nothing [K d] (McMaster & Wilhelm 1997, method 1). */
function growingDegrees(least: Float64Array, most: Float64Array, base: number): number {
  return least.reduce((sum, low, day) => sum + Math.max(0, 0.5 * (low + most[day]) - base), 0);
}

function monthRadiation(global: Float64Array): number[] {
  return Array.from({ length: 12 }, (_, month) => {
    const hours = global.subarray(monthStarts[month] * 24, monthStarts[month + 1] * 24);
    return (hours.reduce((sum, watts) => sum + watts, 0) * 0.0036 * 24) / hours.length;
  });
}

/** First and last frost of a year run from the height of its summer on, as days from there; null without frost. */
export function frostSpan(least: Float64Array, summer: number): { first: number; last: number } | null {
  let first = -1;
  let last = -1;
  for (let day = 0; day < 365; day++) {
    if (!(least[(summer + day) % 365] <= frost)) continue;
    if (first < 0) first = day;
    last = day;
  }
  return first < 0 ? null : { first, last };
}
