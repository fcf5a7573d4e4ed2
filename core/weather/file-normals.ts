import { dailyFromMonthly, monthOfDay } from './monthly.ts';
import type { ClimateNormals } from './normals.ts';
import { relativeHumidity } from './humidity.ts';
import { monthStarts, type WeatherYear } from './year.ts';

/**
 * How much colder the rare low is than the usual one, in standard deviations of the nights' least temperature about
 * its course through the three coldest months: 2.8 K to 3.3 K at Dublin Airport 1991–2020; derived.
 */
const rareBelowUsual = 0.85;

/** Monthly normals read off one year of hours: its least temperature stands for the low of a usual winter. */
export function normalsOfYear(weather: WeatherYear): ClimateNormals {
  const least = daily(weather.dryBulb, (hours) => Math.min(...hours));
  const most = daily(weather.dryBulb, (hours) => Math.max(...hours));
  const minimum = monthly(least);
  const maximum = monthly(most);
  const radiation = monthly(daily(weather.globalHorizontal, (hours) => sum(hours) * 0.0036));
  const wind = monthly(daily(weather.windSpeed, (hours) => sum(hours) / 24));
  const humidity = monthly(
    daily(
      weather.dryBulb.map((air, i) => relativeHumidity(air, weather.dewPoint[i])),
      (hours) => sum(hours) / 24,
    ),
  );
  const typicalLow = Math.min(...least);
  return {
    months: minimum.map((meanMinimum, month) => ({
      meanMinimum,
      meanMaximum: maximum[month],
      globalRadiation: Math.min(45, radiation[month]),
      wind: wind[month],
      humidity: Math.max(0.01, Math.min(1, humidity[month])),
    })),
    typicalLow,
    rareLow: typicalLow - Math.max(0.5, rareBelowUsual * coldNightSpread(least, minimum)),
  };
}

/** Standard deviation of the nights of the three coldest months about their smooth course [K]. */
function coldNightSpread(least: Float64Array, minimum: readonly number[]): number {
  const course = dailyFromMonthly(minimum);
  const coldest = [...minimum.keys()].sort((one, other) => minimum[one] - minimum[other]).slice(0, 3);
  let squares = 0;
  let days = 0;
  for (let day = 0; day < 365; day++) {
    if (!coldest.includes(monthOfDay[day])) continue;
    squares += (least[day] - course[day]) ** 2;
    days += 1;
  }
  return Math.sqrt(squares / days);
}

/** A figure of each day's 24 hours. */
function daily(hourly: Float64Array, figure: (hours: Float64Array) => number): Float64Array {
  return Float64Array.from({ length: 365 }, (_, day) => figure(hourly.subarray(day * 24, day * 24 + 24)));
}

function monthly(days: Float64Array): number[] {
  return Array.from({ length: 12 }, (_, month) => {
    const part = days.subarray(monthStarts[month], monthStarts[month + 1]);
    return sum(part) / part.length;
  });
}

const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);
