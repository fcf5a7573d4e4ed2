import { describe, expect, it } from 'vitest';
import {
  dailyFromMonthly,
  monthStarts,
  randomStream,
  weatherFromNormals,
  type ClimateNormals,
  type WeatherYear,
} from '../../core/weather/index.ts';
import { expectClose } from '../sun/errors.ts';

const site = { latitude: 54, longitude: -7, elevation: 60, timeZone: 'Europe/Dublin' };
const minima = [1.5, 1.4, 2.4, 3.8, 6.3, 9, 11, 10.8, 8.9, 6.4, 3.6, 2];
const maxima = [7.4, 8, 9.7, 12.2, 15, 17.5, 19, 18.7, 16.6, 13, 9.7, 7.7];
const radiation = [2, 4.3, 8, 12.8, 16.7, 17.3, 16, 13.2, 9.5, 5.4, 2.6, 1.6];
const normals: ClimateNormals = {
  months: minima.map((meanMinimum, k) => ({
    meanMinimum,
    meanMaximum: maxima[k],
    globalRadiation: radiation[k],
    wind: 4,
  })),
  typicalLow: -6,
  rareLow: -10,
};

const seeds = Array.from({ length: 200 }, (_, k) => k + 1);
const years = seeds.map((seed) => weatherFromNormals(normals, site, seed));
const low = (year: WeatherYear): number => Math.min(...year.dryBulb);

/** Mean over a month of a daily figure of the hours. */
function monthly(month: number, daily: (hours: Float64Array) => number, column: Float64Array): number {
  let sum = 0;
  for (let day = monthStarts[month]; day < monthStarts[month + 1]; day++)
    sum += daily(column.subarray(day * 24, day * 24 + 24));
  return sum / (monthStarts[month + 1] - monthStarts[month]);
}

describe('a year from monthly normals', () => {
  it('is the same for the same seed and another for another', () => {
    expect(weatherFromNormals(normals, site, 7)).toEqual(years[6]);
    expect(weatherFromNormals(normals, site, 8).dryBulb).not.toEqual(years[6].dryBulb);
  });

  it('meets the usual low in half of the winters and the rare low in one of ten', () => {
    const share = (limit: number) => years.filter((year) => low(year) <= limit).length / years.length;
    // Two hundred winters: three standard errors are 0.11 and 0.064.
    expect(Math.abs(share(-6) - 0.5)).toBeLessThan(0.11);
    expect(Math.abs(share(-10) - 0.1)).toBeLessThan(0.064);
  });

  it('keeps the normals over many seeds: daily minimum and maximum of each month', () => {
    const pairs: [number, number][] = [];
    for (let month = 0; month < 12; month++) {
      const over = (daily: (hours: Float64Array) => number) =>
        years.reduce((sum, year) => sum + monthly(month, daily, year.dryBulb), 0) / years.length;
      pairs.push(
        [over((hours) => Math.min(...hours)), minima[month]],
        [over((hours) => Math.max(...hours)), maxima[month]],
      );
    }
    // A calendar day's extremes reach into its neighbours' nights: minima come out some tenths lower.
    expectClose('month means [°C]', pairs, { mean: 0.14, max: 0.35 });
  });

  it('keeps each month’s radiation, in every seed', () => {
    const pairs = years
      .slice(0, 20)
      .flatMap((year) =>
        radiation.map((value, month): [number, number] => [
          monthly(
            month,
            (hours) => hours.reduce((sum, watts) => sum + watts * 0.0036, 0),
            year.globalHorizontal,
          ),
          value,
        ]),
      );
    expectClose('month means [MJ m⁻² d⁻¹]', pairs, { mean: 0.000001, max: 0.000005 });
  });

  it('has colder nights under clear skies in winter', () => {
    let clear = 0;
    let clearDays = 0;
    let dull = 0;
    let dullDays = 0;
    for (const year of years.slice(0, 40)) {
      for (let day = 0; day < 59; day++) {
        const least = Math.min(...year.dryBulb.subarray(day * 24, day * 24 + 12));
        const cover = year.cloudCover[day * 24 + 11];
        if (cover < 0.5) [clear, clearDays] = [clear + least, clearDays + 1];
        if (cover > 0.9) [dull, dullDays] = [dull + least, dullDays + 1];
      }
    }
    expect(clearDays).toBeGreaterThan(50);
    expect(dull / dullDays - clear / clearDays).toBeGreaterThan(1);
  });

  it('is whole: finite, closed, dew below the air, light only by day, no step at the year’s end', () => {
    const year = years[3];
    for (const values of Object.values(year)) {
      if (values instanceof Float64Array)
        expect(values.length === 8760 && values.every(Number.isFinite)).toBe(true);
    }
    for (let i = 0; i < 8760; i++) {
      expect(year.dewPoint[i]).toBeLessThanOrEqual(year.dryBulb[i]);
      expect(year.diffuseHorizontal[i]).toBeLessThanOrEqual(year.globalHorizontal[i] + 0.001);
    }
    expect(year.globalHorizontal.subarray(0, 6).every((value) => value === 0)).toBe(true);
    expect(Math.abs(year.dryBulb[0] - year.dryBulb[8759])).toBeLessThan(1.5);
  });

  it('estimates radiation from sunshine or the temperature range, and says so', () => {
    const sunny = {
      ...normals,
      months: normals.months.map((m) => ({ ...m, globalRadiation: null, sunshineHours: 3.5 })),
    };
    const bare = {
      months: normals.months.map(({ meanMinimum, meanMaximum }) => ({ meanMinimum, meanMaximum })),
    };
    expect(weatherFromNormals(sunny, site, 1).notes.join()).toContain('Ångström');
    const year = weatherFromNormals(bare, site, 1);
    expect(year.notes.join()).toContain('Hargreaves');
    expect(year.notes.join()).toContain('Low of a usual winter taken');
    const total = year.globalHorizontal.reduce((sum, value) => sum + value, 0) / 1000;
    expect(total).toBeGreaterThan(750);
    expect(total).toBeLessThan(1200);
  });

  it('works beyond the polar circle and south of the equator', () => {
    const north = weatherFromNormals(
      normals,
      { ...site, latitude: 69.6, longitude: 19, timeZone: 'Europe/Oslo' },
      2,
    );
    expect(north.utcOffsetHours).toBe(1);
    expect(north.globalHorizontal.every(Number.isFinite)).toBe(true);
    const south = weatherFromNormals(
      { ...normals, months: normals.months.map((_, k) => normals.months[(k + 6) % 12]) },
      { ...site, latitude: -42, longitude: 147, timeZone: 'Australia/Hobart' },
      2,
    );
    expect(south.utcOffsetHours).toBe(10);
    let coldest = 0;
    for (let i = 0; i < 8760; i++) if (south.dryBulb[i] < south.dryBulb[coldest]) coldest = i;
    expect(coldest / 24).toBeGreaterThan(120);
    expect(coldest / 24).toBeLessThan(270);
  });

  it('refuses months that are none', () => {
    expect(() => weatherFromNormals({ months: normals.months.slice(1) }, site, 1)).toThrow(
      'expected twelve months',
    );
    const wrong = normals.months.with(4, { meanMinimum: 9, meanMaximum: 3 });
    expect(() => weatherFromNormals({ months: wrong }, site, 1)).toThrow('in month 5');
    expect(() => weatherFromNormals({ ...normals, typicalLow: NaN }, site, 1)).toThrow('finite winter lows');
    expect(() => weatherFromNormals(normals, site, 1.5)).toThrow('whole-number seed');
  });
});

describe('its pieces', () => {
  it('daily values keep the monthly means and run smoothly', () => {
    for (const positive of [false, true]) {
      const days = dailyFromMonthly(maxima, positive);
      for (let month = 0; month < 12; month++) {
        const part = days.subarray(monthStarts[month], monthStarts[month + 1]);
        expect(part.reduce((sum, value) => sum + value, 0) / part.length).toBeCloseTo(maxima[month], 9);
      }
      for (let d = 0; d < 365; d++) expect(Math.abs(days[(d + 1) % 365] - days[d])).toBeLessThan(0.25);
    }
    expect(() => dailyFromMonthly([1, 2])).toThrow('expected twelve');
  });

  it('random numbers are those of the seed, even and normal', () => {
    const stream = randomStream(42);
    const uniform = Array.from({ length: 20_000 }, () => stream.uniform());
    const normal = Array.from({ length: 20_000 }, () => stream.normal());
    const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    expect(Math.abs(mean(uniform) - 0.5)).toBeLessThan(0.01);
    expect(Math.abs(mean(normal))).toBeLessThan(0.03);
    expect(Math.abs(mean(normal.map((value) => value * value)) - 1)).toBeLessThan(0.04);
    expect(uniform.every((value) => value >= 0 && value < 1)).toBe(true);
    expect(randomStream(42).uniform()).toBe(uniform[0]);
  });
});
