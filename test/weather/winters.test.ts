import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  normalsOfYear,
  readEpwBytes,
  weatherFromNormals,
  wintersOf,
  type WeatherYear,
} from '../../core/weather/index.ts';
import {
  daysOf,
  dublinDays,
  dublinNormals,
  dublinSite,
  meanOf,
  sdOf,
  seasonMeans,
  yearlyLows,
} from './dublin.ts';

const days = dublinDays();
const missing = '../shared/data/climate/dublin-airport-daily.csv is missing';

describe.skipIf(days === null)(
  `winters drawn from Dublin Airport’s own normals${days ? '' : ` (${missing})`}`,
  () => {
    const real = (days ?? []).filter((day) => day.year >= 1991 && day.year <= 2020);
    const normals = { ...dublinNormals(real), seed: 1 };
    const shown = weatherFromNormals(normals, dublinSite, 1);
    const winters = wintersOf(normals, shown, dublinSite);
    const drawnDays = Array.from({ length: 120 }, (_, k) => daysOf(winters.winter(k + 1), k)).flat();

    it('differ from one another as winters do: mean of December to February', () => {
      // Thirty winters give their own sd to within 13 % (one standard error), a hundred and twenty to 6 %.
      const measured = sdOf(seasonMeans(real, [11, 0, 1]));
      const drawn = sdOf(seasonMeans(drawnDays, [11, 0, 1]));
      expect(measured).toBeCloseTo(0.98, 2);
      expect(Math.abs(drawn - measured)).toBeLessThan(0.15);
    });

    it('and as the other seasons do', () => {
      for (const months of [
        [2, 3, 4],
        [5, 6, 7],
        [8, 9, 10],
      ]) {
        const measured = sdOf(seasonMeans(real, months));
        expect(Math.abs(sdOf(seasonMeans(drawnDays, months)) - measured)).toBeLessThan(0.2);
      }
    });

    it('have yearly lows about those measured, in the middle, in one of ten, and apart', () => {
      const [measured, drawn] = [yearlyLows(real), yearlyLows(drawnDays)];
      expect(meanOf(measured)).toBeCloseTo(-5.44, 2);
      expect(Math.abs(meanOf(drawn) - meanOf(measured))).toBeLessThan(0.5);
      // Drawn lows lie closer together than measured ones, 1.7 K to 2.2 K: thirty winters give their sd to within 0.3 K.
      expect(sdOf(measured)).toBeCloseTo(2.22, 2);
      expect(Math.abs(sdOf(drawn) - sdOf(measured))).toBeLessThan(0.65);
    });

    it('keep the mean of the normals: hourly means over many years', () => {
      const many = Array.from({ length: 60 }, (_, k) => winters.winter(k + 1));
      const mean = meanOf(many.map((year) => meanOf([...year.dryBulb])));
      expect(Math.abs(mean - meanOf([...shown.dryBulb]))).toBeLessThan(0.25);
      const light = many.map((year) => meanOf([...year.globalHorizontal.subarray(334 * 24)]));
      // December's global radiation there: 11 % from year to year.
      expect(sdOf(light) / meanOf(light)).toBeGreaterThan(0.07);
      expect(sdOf(light) / meanOf(light)).toBeLessThan(0.15);
    });

    it('begin with the year shown, and are the same when asked again', () => {
      expect(winters.winter(0)).toBe(shown);
      expect(winters.winter(4)).toEqual(wintersOf(normals, shown, dublinSite).winter(4));
      expect(winters.winter(4).dryBulb).not.toEqual(winters.winter(5).dryBulb);
      expect(winters.origin).toBe('drawn from the climate');
      expect(winters.count).toBeNull();
      expect(() => winters.winter(-1)).toThrow('expected a winter from 0 on, got -1');
      expect(() => winters.winter(NaN)).toThrow('got NaN');
    });
  },
);

const files = ['sand-point-55N', 'international-falls-49N', 'las-vegas-36N', 'pvgis-45N-8E'].map(
  (name) => `../shared/data/weather/${name}.epw`,
);

describe.skipIf(!files.every((file) => existsSync(file)))(
  'winters drawn from the months of a file (../shared/data/weather)',
  () => {
    const years = () =>
      files.map((file): WeatherYear => {
        const reading = readEpwBytes(readFileSync(file));
        if (!reading.ok) throw new Error(`expected a weather file, got ${file}`);
        return reading.weather;
      });

    it('keep its months: radiation, wind and hourly mean temperature over twenty years', () => {
      for (const file of years()) {
        const winters = wintersOf(null, file, dublinSite);
        expect(winters.winter(0)).toBe(file);
        expect(winters.origin).toBe('drawn from the months of the file');
        const many = Array.from({ length: 20 }, (_, k) => winters.winter(k + 1));
        const over = (pick: (year: WeatherYear) => Float64Array) =>
          meanOf(many.map((year) => meanOf([...pick(year)])));
        expect(over((year) => year.globalHorizontal) / meanOf([...file.globalHorizontal])).toBeCloseTo(1, 1);
        expect(Math.abs(over((year) => year.dryBulb) - meanOf([...file.dryBulb]))).toBeLessThan(0.9);
        expect(over((year) => year.windSpeed) / meanOf([...file.windSpeed])).toBeCloseTo(1, 1);
        const lows = many.map((year) => Math.min(...year.dryBulb)).sort((one, other) => one - other);
        expect(Math.abs(lows[10] - Math.min(...file.dryBulb))).toBeLessThan(2.5);
        for (const year of many) expect(year.dryBulb.every(Number.isFinite)).toBe(true);
      }
    });

    it('stand where the file does, sun and clock, and say that they are of a file', () => {
      const [file] = years();
      const year = wintersOf(null, file, dublinSite).winter(3);
      for (const key of [
        'latitude',
        'longitude',
        'elevation',
        'utcOffsetHours',
        'startMs',
        'origin',
      ] as const) {
        expect(year[key]).toBe(file[key]);
      }
    });

    it('take the file’s least night as the usual low, and a rarer one by the spread of its cold nights', () => {
      for (const file of years()) {
        const { typicalLow, rareLow } = normalsOfYear(file);
        expect(typicalLow).toBe(Math.min(...file.dryBulb));
        // Between one and eight kelvin from a mild to a continental winter.
        expect((typicalLow ?? NaN) - (rareLow ?? NaN)).toBeGreaterThan(0.9);
        expect((typicalLow ?? NaN) - (rareLow ?? NaN)).toBeLessThan(8);
      }
    });
  },
);
