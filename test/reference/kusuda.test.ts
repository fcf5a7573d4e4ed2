/** Kusuda & Achenbach 1965 (NBS Report 8972): ground temperature. Values read in other programs' tests. */
import { describe, expect, it } from 'vitest';
import {
  groundFromWeather,
  groundTemperature,
  usualDiffusivity,
  weatherFromNormals,
} from '../../core/weather/index.ts';
import { expectClose } from '../sun/errors.ts';

describe('ground temperature', () => {
  it('at 1 m by hours of the year (pydhn: 0.0151685 m² d⁻¹, mean 10.2777, amplitude 14.1606, coldest day 10 counted from 0)', () => {
    const wave = { mean: 10.2777, amplitude: 14.1606, coldestDay: 10, diffusivity: 1.7556e-7 };
    const table: [number, number][] = [
      [0, 6.2675],
      [30, 4.1606],
      [100, 5.6136],
      [180, 14.0551],
      [240, 16.931],
      [300, 13.3183],
      [364, 6.3598],
    ];
    const pairs = table.map(([day, t]): [number, number] => [groundTemperature(1, day, wave), t]);
    expectClose('temperature [°C]', pairs, { mean: 0.00005, max: 0.0001 });
  });

  it('by depth at Boston (mean 284.23 K, amplitude 11.57 K, phase 9 944 640 s, k 1.58, ρ 1600, c 1150)', () => {
    // That form counts a year of 365.2422 days and its phase as a sine's lag; both are brought to ours.
    const wave = {
      mean: 284.23,
      amplitude: 11.57,
      coldestDay: 0,
      diffusivity: (1.58 / (1600 * 1150)) * (365 / 365.2422),
    };
    const quarter = 365 / 4;
    const phase = (9_944_640 / 86400) * (365 / 365.2422);
    const table: [number, number][] = [
      [0, 273.615],
      [2, 281.523],
      [5, 285.316],
      [9, 284.741],
    ];
    const pairs = table.map(([depth, kelvin]): [number, number] => [
      groundTemperature(depth, 0, { ...wave, coldestDay: phase - quarter }),
      kelvin,
    ]);
    expectClose('temperature [K]', pairs, { mean: 0.002, max: 0.004 });
  });

  it('fits mean, amplitude and coldest day of a year', () => {
    const months = Array.from({ length: 12 }, (_, k) => {
      const t = 10 - 8 * Math.cos((2 * Math.PI * (k + 0.5 - 20 / 30.4)) / 12);
      return { meanMinimum: t - 3, meanMaximum: t + 3 };
    });
    const site = { latitude: 54, longitude: -7, elevation: 50, timeZone: 'Europe/Dublin' };
    const waves = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) =>
      groundFromWeather(weatherFromNormals({ months, typicalLow: -6, rareLow: -10 }, site, seed)),
    );
    // Single winters differ by a kelvin; over eight the normals show.
    const over = (pick: (wave: (typeof waves)[number]) => number) =>
      waves.reduce((sum, wave) => sum + pick(wave), 0) / 8;
    const wave = {
      mean: over((w) => w.mean),
      amplitude: over((w) => w.amplitude),
      coldestDay: over((w) => w.coldestDay),
      diffusivity: usualDiffusivity,
    };
    expect(Math.abs(wave.mean - 10)).toBeLessThan(0.1);
    expect(Math.abs(wave.amplitude - 8)).toBeLessThan(0.5);
    expect(Math.abs(wave.coldestDay - 21)).toBeLessThan(2);
    expect(() => groundTemperature(-1, 1, wave)).toThrow('expected a depth');
    expect(() => groundTemperature(1, 1, { ...wave, diffusivity: 0 })).toThrow('expected a diffusivity');
  });
});

describe('how deep a year reaches', () => {
  it.each([
    // Diffusivity [m² s⁻¹] (de Vries 1963) and damping depth √(α·P/π) [m] (derived).
    ['moist sand', 0.99e-6, 3.15],
    ['moist clay', 0.4e-6, 2.01],
    ['wet peat', 0.12e-6, 1.1],
  ])('%s: the swing falls to 1/e at the damping depth', (_, diffusivity, depth) => {
    // The table rounds, the clay from 2.004.
    expect(Math.abs(Math.sqrt((diffusivity * 365 * 86400) / Math.PI) - depth)).toBeLessThan(0.0065);
    const wave = { mean: 10, amplitude: 8, coldestDay: 20, diffusivity };
    let [least, most] = [Infinity, -Infinity];
    for (let day = 1; day <= 365; day++) {
      const t = groundTemperature(depth, day, wave);
      [least, most] = [Math.min(least, t), Math.max(most, t)];
    }
    expect((most - least) / 2 / 8).toBeCloseTo(Math.exp(-1), 2);
  });

  it('the soil used here lies among them: 4 to 10 · 10⁻⁷ m² s⁻¹ for moist soils', () => {
    expect(usualDiffusivity).toBeGreaterThan(4e-7);
    expect(usualDiffusivity).toBeLessThan(10e-7);
  });
});
