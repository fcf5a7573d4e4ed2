import { describe, expect, it } from 'vitest';
import { lampTechnologies, lampTechnology, wattShares } from '../../core/plan/lamps.ts';
import type { LampTechnology } from '../../core/plan/lamps.ts';

const each = lampTechnologies.map((one) => [one.id, one] as const);

describe('the lamps of the catalogue', () => {
  it('are every kind a grower meets, each once', () => {
    const wanted = [
      'led-white',
      'led-bars',
      'led-older',
      'led-red-blue',
      'led-tube',
      'led-bulb',
      'hps-electronic',
      'hps-screw-electronic',
      'hps-magnetic',
      'ceramic-metal-halide',
      'metal-halide',
      'induction',
      't5-fluorescent',
      't8-fluorescent',
      'compact-fluorescent',
      'incandescent',
    ];
    expect(lampTechnologies.map((one) => one.id).sort()).toEqual([...wanted].sort());
    expect(new Set(lampTechnologies.map((one) => one.name)).size).toBe(wanted.length);
  });

  it.each(each)(
    '%s: every number has a source, and says so where it is from memory or practice',
    (_id, one) => {
      const figures = Object.values(one).filter((part) => typeof part === 'object' && part !== null);
      expect(figures).toHaveLength(10);
      for (const { source } of figures) expect(source.length).toBeGreaterThan(5);
      const unsure = Object.values(one).filter(
        (part) =>
          typeof part === 'object' &&
          'confidence' in part &&
          /from memory|practice|estimate/.test(part.source),
      );
      for (const part of unsure) expect((part as { confidence: string }).confidence).not.toBe('high');
    },
  );
});

describe('where the watts go', () => {
  it.each(each)('%s: shares of light, radiation, driver and air are 0–1 and sum to one', (_id, one) => {
    for (const efficacy of [one.efficacy.low, one.efficacy.typical, one.efficacy.high, 4.2]) {
      const { light, infrared, driver, air } = wattShares(one, efficacy);
      for (const share of [light, infrared, driver, air]) {
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      }
      expect(light + infrared + driver + air).toBeCloseTo(1, 12);
    }
  });

  it.each(each)('%s: something is left to warm the air at every efficacy sold', (_id, one) => {
    expect(wattShares(one, one.efficacy.high).air).toBeGreaterThan(0.02);
  });

  // Efficacy ÷ photons a joule, derived: HPS 1.70 ÷ 4.98 = 34 %; LED 2.8 ÷ 5.0 = 56 % (here ÷ 4.8: 58 %).
  it('high-pressure sodium of 1.70 µmol/J turns 34 % of its watts to light, a white LED of 2.8 some 58 %', () => {
    expect(Math.abs(wattShares(lampTechnology('hps-electronic'), 1.7).light - 0.3414)).toBeLessThan(1e-3);
    expect(Math.abs(wattShares(lampTechnology('led-white'), 2.8).light - 0.5833)).toBeLessThan(1e-3);
  });

  // Lopez 2015 (growers' alert): sodium lamps with magnetic ballasts and early electronic ones turn 25–30 % to light.
  // The mogul lamp with its magnetic ballast at 1.02 µmol/J is 20 %; with an electronic one 26 %.
  it('screw-base sodium lamps turn a fifth to a third of their watts to light', () => {
    const { light } = wattShares(lampTechnology('hps-screw-electronic'));
    expect(light).toBeGreaterThan(0.25);
    expect(light).toBeLessThan(0.3);
    expect(wattShares(lampTechnology('hps-magnetic')).light).toBeGreaterThan(0.2);
  });

  // Kusuma, Pattison & Bugbee 2020: packages convert at most 93 % blue, 76 % white, 81 % red.
  it('no LED fitting turns more of its watts to light than the best packages do', () => {
    const most = (id: string) => wattShares(lampTechnology(id), lampTechnology(id).efficacy.high).light;
    expect(most('led-white')).toBeLessThan(0.76);
    expect(most('led-bars')).toBeLessThan(0.76);
    expect(most('led-red-blue')).toBeLessThan(0.81);
  });

  it('a filament sheds most radiation, a sodium lamp more than any LED', () => {
    const order = ['incandescent', 'hps-electronic', 'metal-halide', 't8-fluorescent', 'led-white'];
    const shed = order.map((id) => lampTechnology(id).infraredShare.value);
    expect([...shed].sort((a, b) => b - a)).toEqual(shed);
    const leds = lampTechnologies.filter((one) => one.id.startsWith('led'));
    for (const led of leds) {
      expect(led.infraredShare.value).toBeLessThan(lampTechnology('t8-fluorescent').infraredShare.value);
    }
  });

  // A gas lamp's heat to leaves a micromole is what Nelson & Bugbee 2015 found: above an LED's.
  it('heat on a leaf a micromole rises from LED by fluorescent and sodium to the filament', () => {
    const heat = (one: LampTechnology) => {
      const { light, infrared } = wattShares(one);
      return (0.85 * light + one.infraredAbsorptance.value * infrared) / one.efficacy.typical;
    };
    const order = ['led-white', 'hps-electronic', 't5-fluorescent', 'incandescent'].map((id) =>
      heat(lampTechnology(id)),
    );
    expect([...order].sort((a, b) => a - b)).toEqual(order);
  });
});
