import { describe, expect, it } from 'vitest';
import {
  dailyLight,
  dailyLightOfRadiation,
  energyPerMole,
  footCandlesOf,
  luxOf,
  luxOfFootCandles,
  luxPerFootCandle,
  photonsPerParJoule,
  photonsPerSolarJoule,
  ppfdForDailyLight,
  ppfdOfLux,
} from '../../core/light/index.ts';
import { lampTechnology } from '../../core/plan/lamps.ts';

describe('daily light', () => {
  // A light-sensor maker's table (its 100 µmol, 16 h entry of 5.67 and 600 µmol entry of 34.58 are misprints of
  // 5.76 and 34.56) and an agricultural college's example of 38.1 µmol for 12 h.
  it.each([
    [38.1, 12, 1.646],
    [100, 24, 8.64],
    [200, 24, 17.28],
    [600, 24, 51.84],
    [1000, 24, 86.4],
    [100, 16, 5.76],
    [200, 16, 11.52],
    [300, 16, 17.28],
    [600, 16, 34.56],
    [1000, 16, 57.6],
    [100, 12, 4.32],
    [300, 12, 12.96],
    [600, 12, 25.92],
    [1300, 12, 56.16],
    [250, 16, 14.4],
    [1, 24, 0.0864],
  ])('%d µmol for %d h is %d mol', (ppfd, hours, mol) => {
    expect(Math.abs(dailyLight(ppfd, hours) - mol)).toBeLessThan(5e-4);
    expect(ppfdForDailyLight(dailyLight(ppfd, hours), hours)).toBeCloseTo(ppfd, 9);
  });

  it('needs 463 µmol more to go from 15 to 25 mol in 6 h (derived)', () => {
    expect(Math.abs(ppfdForDailyLight(10, 6) - 462.96)).toBeLessThan(0.01);
  });

  // Faust & Logan 2018 (HortScience 53:1250) print 0.007265 mol per Wh and "0.45 × 4.48", whose product is
  // 0.0072576: 0.1 % apart, and the rounded 2.02 used here is another 0.1 %.
  it('turns global radiation to photons within 0.2 % of Faust & Logan 2018', () => {
    expect(Math.abs((photonsPerSolarJoule * 0.0036) / 0.007265 - 1)).toBeLessThan(0.002);
    expect(Math.abs(dailyLightOfRadiation(10) - 20.2)).toBeLessThan(0.05);
    expect(Math.abs(dailyLightOfRadiation(4 * 3.6) - 29.06)).toBeLessThan(0.04);
  });

  it.each([
    [1.02, 0.2723],
    [1.7, 0.1634],
    [2.3, 0.1208],
    [2.8, 0.0992],
  ])('a lamp of %d µmol/J needs %d kWh a mole (derived)', (efficacy, energy) => {
    expect(Math.abs(energyPerMole(efficacy) - energy)).toBeLessThan(6e-5);
  });
});

describe('illuminance', () => {
  // Thimijan & Heins 1983; foot-candle factors of Torres & Lopez (Purdue HO-238-W), from memory, to two decimals.
  it.each([
    ['hps-electronic', 82, 0.131],
    ['metal-halide', 71, 0.152],
    ['t5-fluorescent', 74, 0.145],
    ['incandescent', 50, 0.215],
  ])('%s gives %d lux per µmol and %d µmol per foot-candle', (id, lux, perFootCandle) => {
    const factor = lampTechnology(id).luxPerMicromole.value;
    expect(factor).toBe(lux);
    expect(Math.abs(ppfdOfLux(luxOfFootCandles(1), factor) - perFootCandle)).toBeLessThan(6e-4);
  });

  it('makes 108,000 lux of full sun 2,000 µmol (a light-sensor maker’s table)', () => {
    expect(ppfdOfLux(108000)).toBeCloseTo(2000, 6);
    expect(luxOf(2000)).toBeCloseTo(108000, 6);
  });

  it('goes from lux to foot-candles and back', () => {
    expect(footCandlesOf(luxOfFootCandles(123))).toBeCloseTo(123, 10);
    expect(luxOfFootCandles(1)).toBeCloseTo(10.764, 3);
  });
});

// Photons of global radiation by 400–700 nm share × µmol per joule of it. Sources differ by a seventh: it is a parameter.
describe('global radiation by other sources’ factors', () => {
  it.each([
    // Faust & Logan 2018: 0.45 × 4.48 = 2.016; printed 2.018 as 0.007265 mol/Wh.
    ['Faust & Logan 2018', 0.45 * 4.48, 2.018, 0.002],
    // An earlier version of their maps: 7.058 mol per kWh.
    ['maps before 2018', 7.058 / 3.6, 1.961, 0.0005],
    // Thimijan & Heins 1983 with 0.45 of the energy, printed to two decimals.
    ['0.45 × 4.57', 0.45 * photonsPerParJoule, 2.06, 0.005],
    // An ecology package's default, 0.5 × 4.6.
    ['0.5 × 4.6', 0.5 * 4.6, 2.3, 1e-9],
    // Coombs et al. 1985: 1,800 µmol of 950 W/m².
    ['full sun', 1800 / 950, 1.895, 0.0005],
  ])('%s: %d is %d µmol/J', (_source, factor, expected, tolerance) => {
    expect(Math.abs(factor - expected)).toBeLessThanOrEqual(tolerance + 1e-12);
    // One in use here lies within the spread of them all.
    expect(photonsPerSolarJoule / factor).toBeGreaterThan(0.87);
    expect(photonsPerSolarJoule / factor).toBeLessThan(1.08);
  });

  it('500 W/m² at 2.3 µmol/J are 1,150 µmol, and 300 W/m² of grey sky at 0.60 × 4.6 are 828', () => {
    // 1 J s⁻¹ over a day is 0.0864 MJ; dailyLightOfRadiation in MJ gives mol.
    const ppfd = (watts: number, factor: number) =>
      ppfdForDailyLight(dailyLightOfRadiation(watts * 0.0864, factor), 24);
    expect(ppfd(500, 2.3)).toBeCloseTo(1150, 6);
    expect(ppfd(300, 0.6 * 4.6)).toBeCloseTo(828, 6);
  });

  it('10 MJ m⁻² d⁻¹ (1,000 J cm⁻²) at 2.018 under a house that passes 0.7 are 14.1 mol (derived)', () => {
    expect(Math.abs(0.7 * dailyLightOfRadiation(10, 2.018) - 14.1)).toBeLessThan(0.03);
  });

  // A light-sensor maker's note: 50–60 mol on a sunny summer day outdoors; 30 MJ m⁻² d⁻¹ is one at 50° N.
  it('a sunny summer day of 27–30 MJ m⁻² is 50–61 mol', () => {
    expect(dailyLightOfRadiation(27)).toBeGreaterThan(50);
    expect(dailyLightOfRadiation(30)).toBeLessThan(61);
  });
});

describe('misprints that are not reproduced', () => {
  // A light-sensor maker's table for 16 h: 100 → 5.67 and 10 → 0.567 (5.76 and 0.576), 600 → 34.58 (34.56).
  it.each([
    [100, 5.67],
    [10, 0.567],
    [600, 34.58],
  ])('%d µmol for 16 h is not %d mol', (ppfd, misprint) => {
    expect(Math.abs(dailyLight(ppfd, 16) - misprint)).toBeGreaterThan(0.005);
    expect(dailyLight(ppfd, 16)).toBeCloseTo(ppfd * 0.0576, 9);
  });
  it('200 µmol of sun are 10,800 lux, not 40,800', () => {
    expect(luxOf(200)).toBe(10800);
  });
});

describe('foot-candles', () => {
  // One lumen a square foot; the foot is 0.3048 m exactly.
  it('are 1 ÷ 0.09290304 lux', () => {
    expect(luxPerFootCandle).toBeCloseTo(1 / 0.09290304, 12);
    expect(Math.abs(luxOfFootCandles(1000) - 10763.91)).toBeLessThan(0.005);
  });
  // Torres & Lopez (Purdue HO-238-W), from memory, recomputed: 0.20 sun, 0.13 sodium, 0.15 metal halide.
  it.each([
    [54, 0.2],
    [82, 0.13],
    [71, 0.15],
  ])('by light of %d lux a micromole are %d µmol each, to two figures', (lux, expected) => {
    expect(Math.abs(ppfdOfLux(luxOfFootCandles(1), lux) - expected)).toBeLessThan(0.005);
  });
});
