/** The day's temperature: sine by day, decay by night. Values read in, or derived from, other programs. */
import { describe, expect, it } from 'vitest';
import { diurnalTemperature, partonLogan } from '../../core/weather/index.ts';
import { expectClose } from '../sun/errors.ts';

const day = { sunrise: 6, sunset: 18, minimum: 10, maximum: 30 };

describe('daily cycle, 10 to 30 °C, sun 6 to 18 h', () => {
  it('Parton & Logan’s form met at the minimum, a 2.0, b 2.2, c 1.0 (a crop model’s variant; derived from its formula)', () => {
    const shape = { lag: 2, decay: 2.2, minimumLag: 1, meetsMinimum: true };
    const table: [number, number][] = [
      [0, 14.703],
      [3, 12.005],
      [6, 10.382],
      [7, 10],
      [9, 17.654],
      [15, 30],
      [18, 26.629],
      [22, 17.432],
    ];
    const pairs = table.map(([hour, t]): [number, number] => [
      diurnalTemperature(hour, day, day, day, shape),
      t,
    ]);
    expectClose('temperature [°C]', pairs, { mean: 0.0003, max: 0.0005 });
  });

  it('Wann et al. 1985’s constants (2.59, 1.55, 2.2), night left unmet as in the program quoted', () => {
    // There 2.59 h is the lag of the maximum after noon and 1.55 h that of the minimum: a = 2.59 − 1.55.
    const shape = { lag: 2.59 - 1.55, decay: 2.2, minimumLag: 1.55, meetsMinimum: false };
    const table: [number, number][] = [
      [11, 23.91954],
      [20, 20.46866],
      [3, 13.35971],
    ];
    const pairs = table.map(([hour, t]): [number, number] => [
      diurnalTemperature(hour, day, day, day, shape),
      t,
    ]);
    expectClose('temperature [°C]', pairs, { mean: 0.000003, max: 0.000005 });
  });

  it('joins at sunset and at the minimum, and never leaves its limits', () => {
    const warmer = { ...day, minimum: 14, maximum: 24 };
    const at = (hour: number) => diurnalTemperature(hour, day, day, warmer, partonLogan);
    expect(Math.abs(at(18) - at(18.0001))).toBeLessThan(0.001);
    const low = day.sunrise + partonLogan.minimumLag;
    expect(Math.abs(at(low) - 10)).toBeLessThan(1e-9);
    expect(Math.abs(at(low - 1e-6) - 10)).toBeLessThan(0.001);
    expect(Math.abs(at(23.999) - diurnalTemperature(0, day, warmer, warmer))).toBeLessThan(0.01);
    for (let hour = 0; hour < 24; hour += 0.25) {
      expect(at(hour)).toBeGreaterThanOrEqual(10);
      expect(at(hour)).toBeLessThanOrEqual(30);
    }
  });
});
