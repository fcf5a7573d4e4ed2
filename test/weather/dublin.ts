import { existsSync, readFileSync } from 'node:fs';
import { monthStarts, type ClimateNormals, type WeatherYear } from '../../core/weather/index.ts';

/** One day of air: month 0–11, least and most [°C], wind [m s⁻¹] and global radiation [MJ m⁻² d⁻¹] where known. */
export interface DublinDay {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly least: number;
  readonly most: number;
  readonly wind: number;
  readonly radiation: number;
}

export const dublinSite = { latitude: 53.428, longitude: -6.241, elevation: 71, timeZone: 'Europe/Dublin' };

const file = '../shared/data/climate/dublin-airport-daily.csv';
const monthNames = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const knots = 0.514444;

/** Days of Dublin Airport from 1942 on (Met Éireann, CC BY 4.0); null where the file is missing. */
export function dublinDays(): DublinDay[] | null {
  if (!existsSync(file)) return null;
  const lines = readFileSync(file, 'utf8').split(/\r?\n/);
  const head = lines.findIndex((line) => line.startsWith('date,'));
  const columns = lines[head].split(',');
  const at = ['maxtp', 'mintp', 'wdsp', 'g_rad'].map((name) => columns.indexOf(name));
  return lines
    .slice(head + 1)
    .filter((line) => line !== '')
    .map((line) => {
      const cells = line.split(',');
      const [day, month, year] = cells[0].split('-');
      const [most, least, wind, radiation] = at.map((k) => (cells[k].trim() === '' ? NaN : Number(cells[k])));
      return {
        year: Number(year),
        month: monthNames.indexOf(month.toLowerCase()),
        day: Number(day),
        least,
        most,
        wind: wind * knots,
        // J cm⁻² to MJ m⁻².
        radiation: radiation / 100,
      };
    });
}

/** Days of a drawn year, counted as year 2000 + index. */
export function daysOf(weather: WeatherYear, index: number): DublinDay[] {
  return Array.from({ length: 365 }, (_, day) => {
    const hours = weather.dryBulb.subarray(day * 24, day * 24 + 24);
    const month = monthStarts.findIndex((start, k) => day >= start && day < monthStarts[k + 1]);
    return {
      year: 2000 + index,
      month,
      day: day - monthStarts[month] + 1,
      least: Math.min(...hours),
      most: Math.max(...hours),
      wind: NaN,
      radiation: NaN,
    };
  });
}

export const meanOf = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

export function sdOf(values: readonly number[]): number {
  const mean = meanOf(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
}

/** The value below which a share of the values lies (the nearest one of them). */
export function quantileOf(values: readonly number[], share: number): number {
  return [...values].sort((one, other) => one - other)[Math.floor(share * (values.length - 1))];
}

/** Mean of (least + most) / 2 over the given months of each year; a December counts to the year after. */
export function seasonMeans(days: readonly DublinDay[], months: readonly number[]): number[] {
  const winter = months.includes(11);
  const years = new Map<number, number[]>();
  for (const { year, month, least, most } of days) {
    if (!months.includes(month)) continue;
    const counted = winter && month === 11 ? year + 1 : year;
    years.set(counted, [...(years.get(counted) ?? []), (least + most) / 2]);
  }
  return [...years.values()].filter((values) => values.length >= 85).map(meanOf);
}

/** Whole winters, July to June, by the year they end in. */
export function wintersOfDays(days: readonly DublinDay[]): DublinDay[][] {
  const winters = new Map<number, DublinDay[]>();
  for (const day of days) {
    const ends = day.month >= 6 ? day.year + 1 : day.year;
    const winter = winters.get(ends);
    if (winter === undefined) winters.set(ends, [day]);
    else winter.push(day);
  }
  return [...winters.values()].filter((winter) => winter.length >= 365);
}

export const yearlyLows = (days: readonly DublinDay[]) =>
  wintersOfDays(days).map((winter) => Math.min(...winter.map(({ least }) => least)));

/** Normals of the given years: means by month, and the lows of half of the winters and of one in ten. */
export function dublinNormals(days: readonly DublinDay[]): ClimateNormals & {
  readonly typicalLow: number;
  readonly rareLow: number;
} {
  const known = (values: number[]) => meanOf(values.filter(Number.isFinite));
  const lows = yearlyLows(days);
  return {
    months: monthNames.map((_, month) => {
      const here = days.filter((day) => day.month === month);
      return {
        meanMinimum: meanOf(here.map((day) => day.least)),
        meanMaximum: meanOf(here.map((day) => day.most)),
        globalRadiation: known(here.map((day) => day.radiation)),
        wind: known(here.map((day) => day.wind)),
      };
    }),
    typicalLow: quantileOf(lows, 0.5),
    rareLow: quantileOf(lows, 0.1),
  };
}
