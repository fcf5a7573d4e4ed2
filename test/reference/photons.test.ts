import { describe, expect, it } from 'vitest';
import {
  luxOfFootCandles,
  photonsPerParJoule,
  ppfdOfLux,
  sunLuxPerMicromole,
} from '../../core/light/index.ts';
import { blackBody, photonsPerJouleAt, spectralFactors } from '../../core/light/spectrum.ts';
import type { Spectrum } from '../../core/light/spectrum.ts';
import { eyeSensitivity } from '../../core/light/spectrum-vision.ts';
import { lampTechnologies, lampTechnology } from '../../core/plan/lamps.ts';

/** Gaussian bands: peak [nm], full width at half height [nm], height. Invented, for the shape alone. */
function bands(...peaks: readonly (readonly [number, number, number])[]): Spectrum {
  const wavelengths = Array.from({ length: 201 }, (_, i) => 380 + 2 * i);
  const values = wavelengths.map((nm) =>
    peaks.reduce(
      (sum, [peak, width, height]) => sum + height * Math.exp(-4 * Math.LN2 * ((nm - peak) / width) ** 2),
      0,
    ),
  );
  return { wavelengths, values, of: 'energy' };
}

const near = (got: number, wanted: number, share: number) =>
  expect(Math.abs(got / wanted - 1), `${got} for ${wanted}`).toBeLessThan(share);

describe('photons of one wavelength', () => {
  // λ ÷ (h c N_A), exact constants of the SI; derived.
  it.each([
    [450, 3.762],
    [555, 4.639],
    [660, 5.517],
    [730, 6.102],
  ])('%d nm: %d µmol/J', (wavelength, expected) => {
    expect(Math.abs(photonsPerJouleAt(wavelength) - expected)).toBeLessThan(6e-4);
  });
});

describe('flat spectra from 400 to 700 nm', () => {
  it('flat in photons is exactly 300 ÷ ln(7/4) ÷ 119.627 = 4.4812 µmol/J, the 4.48 in use for global radiation', () => {
    const { photonsPerJoule } = spectralFactors({ wavelengths: [400, 700], values: [1, 1], of: 'photons' });
    expect(Math.abs(photonsPerJoule - 4.4812)).toBeLessThan(2e-4);
    expect(Math.abs(photonsPerJoule - 300 / Math.log(7 / 4) / 119.626566)).toBeLessThan(1e-5);
  });
  it('flat in energy is 550 ÷ 119.627 = 4.5976 µmol/J', () => {
    const { photonsPerJoule } = spectralFactors({ wavelengths: [400, 700], values: [1, 1], of: 'energy' });
    expect(Math.abs(photonsPerJoule - 4.5976)).toBeLessThan(1e-4);
  });
  it('counts only its own part of a wider table', () => {
    const whole = spectralFactors({ wavelengths: [300, 800], values: [1, 1], of: 'energy' });
    expect(whole.parShare).toBeCloseTo(300 / 500, 9);
    expect(Math.abs(whole.photonsPerJoule - 4.5976)).toBeLessThan(1e-4);
  });
  it('does not depend on how finely a straight table is written, nor on its scale', () => {
    const coarse = spectralFactors({ wavelengths: [400, 700], values: [1, 3], of: 'energy' });
    const wavelengths = Array.from({ length: 121 }, (_, i) => 400 + 2.5 * i);
    const fine = spectralFactors({
      wavelengths,
      values: wavelengths.map((nm) => 40 * (1 + (nm - 400) / 150)),
      of: 'energy',
    });
    expect(fine.photonsPerJoule).toBeCloseTo(coarse.photonsPerJoule, 9);
    expect(fine.luxPerMicromole).toBeCloseTo(coarse.luxPerMicromole, 9);
  });
});

describe('the eye', () => {
  it('follows CIE 1924 V(λ): sum of the 5 nm values 21.371, one at 555 nm, half at 510 and 610 nm', () => {
    let sum = 0;
    for (let nm = 380; nm <= 780; nm += 5) sum += eyeSensitivity(nm);
    expect(Math.abs(sum - 21.3714)).toBeLessThan(2e-4);
    expect(eyeSensitivity(555)).toBe(1);
    expect(eyeSensitivity(510)).toBe(0.503);
    expect(eyeSensitivity(610)).toBe(0.503);
    expect(eyeSensitivity(379)).toBe(0);
    expect(eyeSensitivity(781)).toBe(0);
  });
  // Overall luminous efficacy of a black body, from memory: 4,000 K 54.7, 5,800 K 93, 7,000 K 95 lm/W.
  it.each([
    [2800, 15, 0.02],
    [4000, 54.7, 0.01],
    [5800, 93, 0.01],
    [7000, 95, 0.02],
  ])('a black body of %d K gives %d lm/W of all its radiation', (kelvin, expected, share) => {
    near(spectralFactors(blackBody(kelvin, 200, 30000, 10)).lumensPerWatt, expected, share);
  });
});

// Thimijan & Heins 1983, HortScience 18:818.
describe('black bodies against published light', () => {
  it('a filament of 2,856 K (CIE illuminant A) is their incandescent lamp: 5.00 µmol/J, 50 lux per µmol', () => {
    const factors = spectralFactors(blackBody(2856));
    near(factors.photonsPerJoule, 5, 0.004);
    near(factors.luxPerMicromole, 50, 0.01);
  });
  it.each([5500, 5800, 6500])('%d K is near their sun and sky: 4.57 µmol/J, 54 lux per µmol', (kelvin) => {
    const factors = spectralFactors(blackBody(kelvin));
    near(factors.photonsPerJoule, photonsPerParJoule, 0.02);
    near(factors.luxPerMicromole, sunLuxPerMicromole, 0.03);
  });
  // Blue sky is no black body: 4.24 is met at 20,000 K, 52 lux only within a tenth (48).
  it('20,000 K is near their blue sky in photons, 4.24 µmol/J, and less so to the eye, 52 lux per µmol', () => {
    const factors = spectralFactors(blackBody(20000));
    near(factors.photonsPerJoule, 4.24, 0.002);
    near(factors.luxPerMicromole, 52, 0.1);
  });
});

describe('lamps by their spectrum', () => {
  it('white LED of a blue chip and two phosphors, of usual and of fine colour, stand on either side of the catalogue’s', () => {
    const { photonsPerJoule, luxPerMicromole } = lampTechnology('led-white');
    const usual = spectralFactors(bands([450, 20, 0.75], [540, 110, 0.45], [615, 120, 0.6]));
    const fine = spectralFactors(bands([450, 20, 0.7], [535, 110, 0.55], [630, 110, 0.7]));
    near(usual.photonsPerJoule, photonsPerJoule.value, 0.02);
    near(fine.photonsPerJoule, photonsPerJoule.value, 0.01);
    expect(usual.luxPerMicromole).toBeGreaterThan(luxPerMicromole.value);
    expect(fine.luxPerMicromole).toBeLessThan(luxPerMicromole.value);
    near(usual.luxPerMicromole, luxPerMicromole.value, 0.05);
    near(fine.luxPerMicromole, luxPerMicromole.value, 0.05);
  });
  it('red at 660 nm added to it, a quarter and then half again of its watts, brackets the bars', () => {
    const { photonsPerJoule, luxPerMicromole } = lampTechnology('led-bars');
    const some = spectralFactors(bands([450, 20, 0.7], [535, 110, 0.55], [620, 110, 0.65], [660, 20, 1.2]));
    const more = spectralFactors(bands([450, 20, 0.7], [535, 110, 0.55], [620, 110, 0.65], [660, 20, 2.4]));
    expect(some.luxPerMicromole).toBeGreaterThan(luxPerMicromole.value);
    expect(more.luxPerMicromole).toBeLessThan(luxPerMicromole.value);
    expect(some.photonsPerJoule).toBeLessThan(photonsPerJoule.value);
    expect(more.photonsPerJoule).toBeGreaterThan(photonsPerJoule.value);
  });
  it('four fifths of the watts red at 660 nm and one fifth blue at 450 nm are the catalogue’s red and blue LED', () => {
    const factors = spectralFactors(bands([660, 20, 0.8], [450, 20, 0.2]));
    near(factors.photonsPerJoule, lampTechnology('led-red-blue').photonsPerJoule.value, 0.01);
    near(factors.luxPerMicromole, lampTechnology('led-red-blue').luxPerMicromole.value, 0.03);
  });
  it('a sodium arc of broadened lines gives near 5 µmol/J and more lux a micromole than any white lamp', () => {
    const arc = spectralFactors(bands([569, 6, 1], [583, 8, 2], [600, 14, 3], [616, 5, 1.2], [600, 90, 0.6]));
    near(arc.photonsPerJoule, lampTechnology('hps-magnetic').photonsPerJoule.value, 0.02);
    near(arc.luxPerMicromole, lampTechnology('hps-magnetic').luxPerMicromole.value, 0.1);
  });

  // Thimijan & Heins 1983.
  it.each([
    ['hps-magnetic', 4.98],
    ['hps-electronic', 4.98],
    ['metal-halide', 4.59],
    ['t8-fluorescent', 4.59],
    ['incandescent', 5],
  ])('%s: %d µmol a joule of its 400–700 nm light', (id, expected) => {
    expect(lampTechnology(id).photonsPerJoule.value).toBe(expected);
  });

  it('no lamp’s photons a joule lie outside those of deep blue and deep red', () => {
    for (const { photonsPerJoule } of lampTechnologies) {
      expect(photonsPerJoule.value).toBeGreaterThan(photonsPerJouleAt(450));
      expect(photonsPerJoule.value).toBeLessThan(photonsPerJouleAt(660));
    }
  });
});

describe('lux and foot-candles of published tables', () => {
  // A light-sensor maker's table of µmol for a lux, to three figures.
  it.each([
    [54, 0.0185],
    [74, 0.0135],
    [82, 0.0122],
    [71, 0.0141],
    [77, 0.013],
    [65, 0.0154],
  ])('%d lux per µmol is %d µmol per lux', (lux, expected) => {
    expect(Math.abs(ppfdOfLux(1, lux) - expected)).toBeLessThan(5.1e-5);
  });
  // The same table prints 0.0170 for 59 lux, which is 0.01695; and 40,800 lux for 200 µmol of sun, a misprint of
  // 10,800 that is not reproduced.
  it('59 lux is 0.01695 µmol per lux and 200 µmol of sun 10,800 lux', () => {
    expect(Math.abs(ppfdOfLux(1, 59) - 0.01695)).toBeLessThan(1e-5);
    expect(ppfdOfLux(10800)).toBeCloseTo(200, 9);
  });

  // Deitzer's factors, µmol for a foot-candle. They come of other lamps than Thimijan & Heins's: within 6 %.
  it.each([
    ['sun', 54, 0.195, 0.03],
    ['incandescent', 50, 0.219, 0.02],
    ['cool-white fluorescent', 74, 0.137, 0.065],
    ['high-pressure sodium', 82, 0.129, 0.02],
    ['metal halide', 71, 0.144, 0.06],
  ])('%s: %d lux per µmol is near %d µmol a foot-candle', (_name, lux, expected, share) => {
    near(ppfdOfLux(luxOfFootCandles(1), lux), expected, share);
  });

  // Runkle divides foot-candles of HPS by 7.6 to µmol.
  it('500 foot-candles of high-pressure sodium are 65.8 µmol', () => {
    near(ppfdOfLux(luxOfFootCandles(500), 82), 65.8, 0.003);
  });

  // Coombs et al. 1985: 950 W/m² of full sun are 95,000 lux, 1,800 µmol and 399 W/m² of 400–700 nm. Their own
  // 399 W/m² and 1,800 µmol make 4.51 µmol/J, 1.3 % off 4.57.
  it('full sun: 95,000 lux near 1,800 µmol, 399 W/m² of 400–700 nm', () => {
    near(ppfdOfLux(95000), 1800, 0.03);
    near(399 * photonsPerParJoule, 1800, 0.015);
  });
});

describe('a table that cannot be read', () => {
  const of = 'energy';
  it.each([
    [{ wavelengths: [500], values: [1], of }, 'two or more wavelengths'],
    [{ wavelengths: [500, 600], values: [1], of }, 'two or more wavelengths'],
    [
      { wavelengths: [600, 500], values: [1, 1], of },
      'expected rising wavelengths in nm, got 500 at place 2',
    ],
    [{ wavelengths: [NaN, 500], values: [1, 1], of }, 'expected rising wavelengths in nm, got NaN'],
    [{ wavelengths: [500, 600], values: [1, -1], of }, 'expected light of 0 or more at 600 nm, got -1'],
    [{ wavelengths: [500, 600], values: [NaN, 1], of }, 'expected light of 0 or more at 500 nm, got NaN'],
    [{ wavelengths: [800, 900], values: [1, 1], of }, 'light between 400 and 700 nm'],
    [{ wavelengths: [500, 600], values: [0, 0], of }, 'light between 400 and 700 nm'],
  ] as const)('%j is refused', (table, words) => {
    expect(() => spectralFactors(table)).toThrow(words);
  });
  it('a black body needs a temperature', () => {
    expect(() => blackBody(NaN)).toThrow('expected a temperature above 0 K, got NaN');
  });
});
