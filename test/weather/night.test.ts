import { describe, expect, it } from 'vitest';
import { daylight } from '../../core/sun/index.ts';
import {
  nightWeather,
  outdoorSteps,
  planeSteps,
  readEpw,
  skyTemperature,
  type WeatherYear,
} from '../../core/weather/index.ts';
import { epwText } from './epw-rows.ts';

const site = { latitude: 54, longitude: -7, elevation: 60, timeZone: 'Europe/Dublin' };
const forecast = { dateISO: '2025-01-14', duskTemperature: 4, low: -6, cloudOktas: 0, wind: 1 };
const least = (values: Float64Array): number => Math.min(...values);

describe('the weather of a night', () => {
  const night = nightWeather(forecast, site);

  it('runs from sunset to ten, from dusk to the low at sunrise, and up again', () => {
    const dusk = daylight('2025-01-14', site).sunsetMs as number;
    const sunrise = daylight('2025-01-15', site).sunriseMs as number;
    expect(Math.abs(night.startMs - dusk)).toBeLessThan(300_000);
    expect(night.startMs + night.n * 300_000).toBe(Date.UTC(2025, 0, 15, 10));
    expect(Math.abs(night.dryBulb[0] - 4)).toBeLessThan(0.1);
    expect(Math.abs(least(night.dryBulb) + 6)).toBeLessThan(0.03);
    const at = night.dryBulb.indexOf(least(night.dryBulb));
    expect(Math.abs(night.startMs + at * 300_000 - sunrise) / 60_000).toBeLessThan(6);
    expect(night.dryBulb[night.n - 1]).toBeGreaterThan(-5);
    for (const values of Object.values(night)) {
      if (values instanceof Float64Array)
        expect(values.length === night.n && values.every(Number.isFinite)).toBe(true);
    }
  });

  it('has a colder sky the clearer it is, and no sun in it', () => {
    const cloudy = nightWeather({ ...forecast, cloudOktas: 8 }, site);
    const clearSky = skyTemperature(night.skyLongWave[100]);
    const cloudSky = skyTemperature(cloudy.skyLongWave[100]);
    expect(clearSky).toBeLessThan(night.dryBulb[100] - 15);
    expect(cloudSky).toBeGreaterThan(night.dryBulb[100] - 8);
    for (let j = 0; j < night.n; j++)
      if (night.sunElevation[j] < -1) expect(night.globalHorizontal[j]).toBe(0);
    expect(cloudy.globalHorizontal[night.n - 1]).toBeLessThan(0.3 * night.globalHorizontal[night.n - 1]);
  });

  it('takes the hour of the low, an hourly table, and another step', () => {
    const early = nightWeather({ ...forecast, lowHour: 2 }, site);
    const at = early.startMs + early.dryBulb.indexOf(least(early.dryBulb)) * 300_000;
    expect(Math.abs(at - Date.UTC(2025, 0, 15, 2)) / 60_000).toBeLessThan(6);
    const evening = nightWeather({ ...forecast, lowHour: 22 }, site);
    expect(
      Math.abs(
        evening.startMs +
          evening.dryBulb.indexOf(least(evening.dryBulb)) * 300_000 -
          Date.UTC(2025, 0, 14, 22),
      ),
    ).toBeLessThan(360_000);
    const hourly = [
      { epochMs: Date.UTC(2025, 0, 14, 16), temperature: 3 },
      { epochMs: Date.UTC(2025, 0, 15, 4), temperature: -9 },
      { epochMs: Date.UTC(2025, 0, 15, 10), temperature: 0 },
    ];
    const table = nightWeather({ ...forecast, hourly }, site, { stepMinutes: 1 });
    expect(Math.abs(least(table.dryBulb) + 9)).toBeLessThan(0.02);
    expect(table.n).toBeGreaterThan(1000);
  });

  it('stands in polar night and on a night without one', () => {
    const arctic = { latitude: 69.6, longitude: 19, elevation: 0, timeZone: 'Europe/Oslo' };
    for (const dateISO of ['2025-12-21', '2025-06-21']) {
      const steps = nightWeather({ ...forecast, dateISO }, arctic);
      expect(steps.n).toBeGreaterThan(100);
      expect(steps.dryBulb.every(Number.isFinite)).toBe(true);
    }
  });

  it('is colder in a frost hollow, and refuses what is no forecast', () => {
    const hollow = nightWeather(forecast, { ...site, frostHollow: 3 });
    expect(Math.abs(least(hollow.dryBulb) - least(night.dryBulb) + 3)).toBeLessThan(0.2);
    const windy = nightWeather({ ...forecast, wind: 6 }, { ...site, frostHollow: 3 });
    expect(least(windy.dryBulb)).toBeCloseTo(least(night.dryBulb), 9);
    expect(() => nightWeather({ ...forecast, low: 5 }, site)).toThrow('expected low at most');
    expect(() => nightWeather({ ...forecast, low: NaN }, site)).toThrow('expected low');
    expect(() => nightWeather({ ...forecast, cloudOktas: 9 }, site)).toThrow('expected cloudOktas');
    expect(() => nightWeather({ ...forecast, dateISO: '2025-13-01' }, site)).toThrow('expected a date');
  });
});

describe('even steps of a year', () => {
  const reading = readEpw(
    epwText((fields, row) =>
      fields
        .with(6, String(row % 24))
        .with(23, '0')
        .with(21, '0.5'),
    ),
  );
  const weather = (reading as { weather: WeatherYear }).weather;

  it('run straight between the ends of hours', () => {
    const steps = outdoorSteps(weather, {}, { stepMinutes: 15 });
    // Row 1 ends at 02:00 with 1 °C, row 2 at 03:00 with 2 °C: the middle of the step from 02:30 is 02:37½.
    expect(steps.dryBulb[10]).toBeCloseTo(1 + 37.5 / 60, 9);
    expect(steps.n).toBe(35040);
    expect(() => outdoorSteps(weather, {}, { stepMinutes: 7 })).toThrow(
      'expected a step that divides the hour',
    );
  });

  it('are the same year at every step length', () => {
    const mean = (values: Float64Array): number =>
      values.reduce((sum, value) => sum + value, 0) / values.length;
    for (const stepMinutes of [5, 30, 60]) {
      const steps = outdoorSteps(weather, {}, { stepMinutes });
      expect(mean(steps.globalHorizontal)).toBeCloseTo(mean(weather.globalHorizontal), 9);
      expect(mean(steps.dryBulb)).toBeCloseTo(mean(weather.dryBulb), 1);
    }
  });

  it('are colder on clear still nights in a frost hollow, not by day', () => {
    const plain = outdoorSteps(weather, {}, { stepMinutes: 15 });
    const hollow = outdoorSteps(weather, { frostHollow: 4 }, { stepMinutes: 15 });
    expect(plain.dryBulb[16] - hollow.dryBulb[16]).toBeGreaterThan(2.5);
    expect(plain.dryBulb[56] - hollow.dryBulb[56]).toBeLessThan(0.3);
    expect(hollow.dewPoint.every((dew, j) => dew <= hollow.dryBulb[j])).toBe(true);
  });

  it('lose beam and sky to a skyline', () => {
    const steps = outdoorSteps(weather, {}, { stepMinutes: 15 });
    const wall = { tilt: 90, azimuth: 180 };
    const open = planeSteps(steps, wall);
    const shut = planeSteps(steps, wall, { horizon: [{ azimuth: 0, elevation: 25 }] });
    const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);
    expect(sum(shut.beam)).toBeLessThan(0.9 * sum(open.beam));
    expect(sum(shut.skyDiffuse)).toBeLessThan(0.8 * sum(open.skyDiffuse));
    expect(sum(shut.ground)).toBe(sum(open.ground));
  });

  it('behind trees a plane has the share of the beam they pass, and that share of the light round the sun', () => {
    const steps = outdoorSteps(weather, {}, { stepMinutes: 60 });
    const wall = { tilt: 90, azimuth: 180 };
    const behind = (passes: number) =>
      planeSteps(steps, wall, { horizon: [{ azimuth: 0, elevation: 25, passes }] });
    const [none, half, all, open] = [behind(0), behind(0.5), behind(1), planeSteps(steps, wall)];
    for (let j = 0; j < steps.n; j++) {
      expect(half.beam[j]).toBeCloseTo((none.beam[j] + all.beam[j]) / 2, 9);
      expect(all.beam[j]).toBe(open.beam[j]);
      expect(all.skyDiffuse[j]).toBeCloseTo(open.skyDiffuse[j], 9);
    }
    expect(none.beam.some((value, j) => value < all.beam[j])).toBe(true);
  });
});
