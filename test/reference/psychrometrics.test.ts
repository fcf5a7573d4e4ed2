/** ASHRAE Handbook of Fundamentals 2017, ch. 1, as quoted with its tables in other test suites; other libraries where said. */
import { describe, expect, it } from 'vitest';
import { saturationRatio } from '../../core/heat/index.ts';
import { standardPressure } from '../../core/sun/index.ts';
import {
  airDensity,
  dewPoint,
  dewPointOfHumidity,
  enthalpy,
  humidityRatio,
  humidityRatioOfWetBulb,
  relativeHumidity,
  saturationPressure,
  saturationPressureFao,
  specificVolume,
  vapourDensity,
  vapourPressure,
  wetBulb,
} from '../../core/weather/index.ts';
import { expectClose } from '../sun/errors.ts';

describe('moist air', () => {
  it('table 3: saturation pressure over ice and water [share]', () => {
    const table: [number, number][] = [
      [-20, 103.24],
      [-5, 401.74],
      [5, 872.6],
      [25, 3169.7],
      [50, 12351.3],
    ];
    const pairs = table.map(([t, pascal]): [number, number] => [saturationPressure(t) / pascal, 1]);
    expectClose('ratio', pairs, { mean: 0.00015, max: 0.0002 });
    // Ice at −10 °C 259.9 Pa (derived).
    expect(Math.abs(saturationPressure(-10) - 259.9)).toBeLessThan(0.1);
  });

  it('table 2: humidity ratio and enthalpy of saturated air at 101 325 Pa', () => {
    const table: [number, number][] = [
      [-20, 0.0006373],
      [-5, 0.0024863],
      [5, 0.005425],
      [25, 0.020173],
      [50, 0.086863],
    ];
    const pairs = table.map(([t, ratio]): [number, number] => [
      humidityRatio(saturationPressure(t), 101325) / ratio,
      1,
    ]);
    // The table is for real air; ideal gases give half a per cent less.
    expectClose('ratio', pairs, { mean: 0.005, max: 0.0065 });
    const saturated = (t: number) => enthalpy(t, humidityRatio(saturationPressure(t), 101325));
    expect(Math.abs(saturated(5) / 18639 - 1)).toBeLessThan(0.01);
    expect(Math.abs(saturated(25) / 76504 - 1)).toBeLessThan(0.01);
    expect(Math.abs(specificVolume(25, 0, 101325) - 0.8443)).toBeLessThan(0.0005);
    expect(Math.abs(enthalpy(25, 0) - 25148)).toBeLessThan(5);
  });

  it('example 1: 40 °C dry bulb, 20 °C wet bulb', () => {
    const ratio = humidityRatioOfWetBulb(40, 20, 101325);
    // Read off the chart in the handbook; the formulas give 0.0066.
    expect(Math.abs(ratio - 0.0065)).toBeLessThan(0.0001);
    const vapour = vapourPressure(ratio, 101325);
    expect(Math.abs(dewPoint(vapour) - 7)).toBeLessThan(0.5);
    expect(Math.abs(vapour / saturationPressure(40) - 0.14)).toBeLessThan(0.005);
    expect(Math.abs(enthalpy(40, ratio) / 1000 - 56.7)).toBeLessThan(0.4);
    expect(Math.abs(specificVolume(40, ratio, 101325) - 0.896)).toBeLessThan(0.001);
  });

  it('wet bulb and dew point as other libraries have them', () => {
    const ratioAt = (t: number, humidity: number, pressure: number) =>
      humidityRatio(humidity * saturationPressure(t), pressure);
    expect(Math.abs(wetBulb(7, ratioAt(7, 0.61, 100000), 100000) - 3.9267)).toBeLessThan(0.02);
    expect(Math.abs(wetBulb(20, ratioAt(20, 0.5, 101325), 101325) - 13.756)).toBeLessThan(0.05);
    expect(Math.abs(ratioAt(20, 0.5, 101325) - 0.00726)).toBeLessThan(0.00001);
    const dews: [number, number, number][] = [
      [30, 0.5, 18.447],
      [20, 0.5, 9.272],
      [31.6, 0.596, 22.78],
      [10, 0.5, 0.064],
      [40, 0.5, 27.59],
    ];
    const pairs = dews.flatMap(([t, humidity, dew]): [number, number][] => [
      [dewPoint(humidity * saturationPressure(t)), dew],
      [dewPointOfHumidity(t, humidity), dew],
    ]);
    expectClose('dew point [°C]', pairs, { mean: 0.006, max: 0.015 });
    // Over ice the frost point; the library quoted gives −27.02 for −20 °C and 50 %.
    expect(Math.abs(dewPoint(0.5 * saturationPressure(-20)) + 27.02)).toBeLessThan(0.05);
  });

  it('pressure with height: 95 461 Pa at 500 m, 89 875 at 1000 m', () => {
    expect(Math.abs(standardPressure(500) - 95461)).toBeLessThan(2);
    expect(Math.abs(standardPressure(1000) - 89875)).toBeLessThan(2);
  });

  it('water in air [g m⁻³]: 17.28 and 9.40 saturated at 20 and 10 °C, 4.85 at 0 °C (derived)', () => {
    expectClose(
      'vapour density [g m⁻³]',
      [
        [vapourDensity(20, saturationPressure(20)) * 1000, 17.28],
        [vapourDensity(10, saturationPressure(10)) * 1000, 9.4],
        [vapourDensity(0, saturationPressure(0)) * 1000, 4.85],
      ],
      { mean: 0.004, max: 0.008 },
    );
  });

  it('turns back on itself', () => {
    for (let t = -30; t <= 40; t += 3.5) {
      expect(dewPoint(saturationPressure(t))).toBeCloseTo(t, 5);
      expect(relativeHumidity(t, dewPointOfHumidity(t, 0.63))).toBeCloseTo(0.63, 9);
      expect(vapourPressure(humidityRatio(900, 99000), 99000)).toBeCloseTo(900, 6);
    }
    expect(airDensity(20, 0.007, 101325)).toBeLessThan(airDensity(20, 0, 101325));
    expect(() => dewPoint(0)).toThrow('expected a vapour pressure');
  });
});

describe('damp', () => {
  it('dew point of air at 20/80, 15/85, 12/90, 10/90 and 5 °C/95 %: 16.45, 12.50, 10.41, 8.44, 4.27 °C (derived)', () => {
    const rows: [number, number, number][] = [
      [20, 0.8, 16.45],
      [15, 0.85, 12.5],
      [12, 0.9, 10.41],
      [10, 0.9, 8.44],
      [5, 0.95, 4.27],
    ];
    const pairs = rows.map(([t, humidity, dew]): [number, number] => [dewPointOfHumidity(t, humidity), dew]);
    expectClose('dew point [°C]', pairs, { mean: 0.004, max: 0.006 });
  });

  it('air of 70 °F and 70 % wets a surface of 60 °F and below (North Carolina State, greenhouse ventilation)', () => {
    const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;
    const dew = dewPoint(0.7 * saturationPressure(celsius(70)));
    expect(dew * 1.8 + 32).toBeCloseTo(59.8, 0);
    expect(dew).toBeLessThan(celsius(60));
  });

  it('vapour pressure deficit: 1.267, 0.468 and 0.061 kPa at 25/60, 20/80 and 10 °C/95 % (derived)', () => {
    const deficit = (t: number, humidity: number) => ((1 - humidity) * saturationPressureFao(t)) / 1000;
    expect(deficit(25, 0.6)).toBeCloseTo(1.267, 3);
    expect(deficit(20, 0.8)).toBeCloseTo(0.468, 3);
    expect(deficit(10, 0.95)).toBeCloseTo(0.061, 3);
  });

  it('in inch-pounds: 0.058268, 0.12656 and 0.45973 psi at 23, 41 and 77 °F (ASHRAE 2017, IP edition)', () => {
    const psi = (fahrenheit: number) => saturationPressure((fahrenheit - 32) / 1.8) / 6894.757;
    expectClose(
      'ratio',
      [
        [psi(23) / 0.058268, 1],
        [psi(41) / 0.12656, 1],
        [psi(77) / 0.45973, 1],
      ],
      { mean: 0.0002, max: 0.0004 },
    );
  });

  it('a trap: over water the pressure at −10 °C is 285.7 Pa, 9.9 % above that over ice', () => {
    // Tetens with FAO-56's coefficients gives 286.8, with those of most tables 285.7.
    expect(Math.abs(saturationPressureFao(-10) - 285.7)).toBeLessThan(1.2);
    expect(saturationPressureFao(-10) / saturationPressure(-10) - 1).toBeGreaterThan(0.09);
    expect(saturationPressureFao(-10) / saturationPressure(-10) - 1).toBeLessThan(0.11);
  });

  it('the heat balance’s own saturation (Magnus, Alduchov & Eskridge 1996) within 0.3 % of the handbook’s, 0–45 °C', () => {
    for (let t = 0; t <= 45; t += 1) {
      const ratio = saturationRatio(t, 101325) / humidityRatio(saturationPressure(t), 101325);
      expect(Math.abs(ratio - 1), `${t} °C`).toBeLessThan(0.003);
    }
  });

  it('half-saturated air of 20 °C holds 8.64 g m⁻³ (derived)', () => {
    expect(vapourDensity(20, 0.5 * saturationPressure(20)) * 1000).toBeCloseTo(8.64, 2);
  });
});
