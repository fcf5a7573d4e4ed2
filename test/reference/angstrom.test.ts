/** Days of Dublin Airport 1991–2020 (Met Éireann, CC BY 4.0): global radiation against sunshine, and what drawn years owe to them. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { dayOfYear, faoDaylightHours, faoExtraterrestrial } from '../../core/sun/index.ts';
import { monthStarts, weatherFromNormals } from '../../core/weather/index.ts';
import { describeWithData } from '../support/shared-data.ts';

interface Day {
  readonly month: number;
  readonly maximum: number;
  readonly minimum: number;
  readonly sunshine: number;
  /** Share of the extraterrestrial radiation. */
  readonly clearness: number;
  readonly longest: number;
}

const latitude = 53.428;

function readDays(file: string): Day[] {
  const days: Day[] = [];
  for (const line of readFileSync(file, 'utf8').split(/\r?\n/)) {
    const cells = line.split(',').map((cell) => cell.trim());
    const at = Date.parse(`${cells[0]} UTC`);
    const year = new Date(at).getUTCFullYear();
    const values = [2, 4, 17, 19].map((k) => (cells[k] === '' ? NaN : Number(cells[k])));
    if (!(year >= 1991 && year <= 2020) || values.some((value) => !Number.isFinite(value))) continue;
    const [maximum, minimum, sunshine, joules] = values;
    const day = dayOfYear(at);
    const clearness = (joules * 0.01) / faoExtraterrestrial(latitude, day);
    days.push({
      month: new Date(at).getUTCMonth(),
      maximum,
      minimum,
      sunshine,
      clearness,
      longest: faoDaylightHours(latitude, day),
    });
  }
  return days;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const spread = (values: readonly number[]): number =>
  Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)));

/** Slope and intercept of y on x. */
function line(x: readonly number[], y: readonly number[]): { slope: number; intercept: number } {
  const [mx, my] = [mean(x), mean(y)];
  const slope =
    mean(x.map((value, k) => (value - mx) * (y[k] - my))) / mean(x.map((value) => (value - mx) ** 2));
  return { slope, intercept: my - slope * mx };
}

describeWithData('climate/dublin-airport-daily.csv', 'Dublin Airport', (file) => {
  const days = readDays(file);

  it('Ångström–Prescott: a 0.216 to 0.224 and b 0.540 to 0.584 at Irish stations', () => {
    expect(days.length).toBeGreaterThan(10_000);
    const fit = line(
      days.map((day) => day.sunshine / day.longest),
      days.map((day) => day.clearness),
    );
    expect(Math.abs(fit.intercept - 0.22)).toBeLessThan(0.004);
    expect(Math.abs(fit.slope - 0.562)).toBeLessThan(0.023);
  });

  it('drawn years spread like the measured days: clearness, and minimum temperature in winter', () => {
    const inMonth = (month: number) => days.filter((day) => day.month === month);
    const months = Array.from({ length: 12 }, (_, month) => {
      const part = inMonth(month);
      const above = (monthStarts[month] + monthStarts[month + 1]) / 2;
      return {
        meanMinimum: mean(part.map((day) => day.minimum)),
        meanMaximum: mean(part.map((day) => day.maximum)),
        globalRadiation: mean(part.map((day) => day.clearness)) * faoExtraterrestrial(latitude, above),
      };
    });
    const site = { latitude, longitude: -6.241, elevation: 71, timeZone: 'Europe/Dublin' };
    const years = Array.from({ length: 20 }, (_, seed) =>
      weatherFromNormals({ months, typicalLow: -5.1, rareLow: -7.9 }, site, seed),
    );
    for (const month of [0, 3, 6, 11]) {
      const clearness: number[] = [];
      const minima: number[] = [];
      for (const year of years) {
        for (let day = monthStarts[month]; day < monthStarts[month + 1]; day++) {
          const hours = year.globalHorizontal.subarray(day * 24, day * 24 + 24);
          clearness.push(
            (hours.reduce((sum, watts) => sum + watts, 0) * 0.0036) / faoExtraterrestrial(latitude, day + 1),
          );
          minima.push(Math.min(...year.dryBulb.subarray(day * 24, day * 24 + 24)));
        }
      }
      const measured = inMonth(month);
      const ratio = spread(clearness) / spread(measured.map((day) => day.clearness));
      const colder = spread(minima) / spread(measured.map((day) => day.minimum));
      if (process.env.SHOW_ERRORS)
        console.log(`month ${month + 1}: clearness ${ratio.toFixed(2)}, minimum ${colder.toFixed(2)}`);
      expect(Math.abs(ratio - 1)).toBeLessThan(0.15);
      // The departures are sized by the two lows, whose tail is shorter here than a normal one: the spread between
      // comes out a fifth to a quarter too small.
      expect(Math.abs(colder - 1)).toBeLessThan(0.24);
    }
  });
});
