import { describe, expect, it } from 'vitest';
import { energyPerMole } from '../../core/light/index.ts';
import { lampTechnologies, lampTechnology } from '../../core/plan/lamps.ts';

const rangeOf = (id: string) => lampTechnology(id).efficacy;

describe('photon efficacy of whole fittings', () => {
  // Nelson & Bugbee 2014, PLoS ONE 9(6):e99010, abstract; 0.94 and 0.84 of its table 1 from memory.
  it.each([
    ['hps-magnetic', 1.02],
    ['hps-magnetic', 0.94],
    ['hps-electronic', 1.66],
    ['hps-electronic', 1.7],
    ['led-older', 1.66],
    ['led-older', 1.7],
    ['ceramic-metal-halide', 1.46],
    ['induction', 0.95],
    ['t8-fluorescent', 0.84],
  ])('%s spans the measured %d µmol/J', (id, measured) => {
    expect(measured).toBeGreaterThanOrEqual(rangeOf(id).low);
    expect(measured).toBeLessThanOrEqual(rangeOf(id).high);
  });

  // Nelson & Bugbee 2013: an electronic ballast and a good reflector give +27 % on a magnetic sodium fitting.
  it('a screw-base sodium lamp gains 27 % by an electronic ballast and a good reflector', () => {
    expect(
      Math.abs(rangeOf('hps-screw-electronic').typical / rangeOf('hps-magnetic').typical - 1.27),
    ).toBeLessThan(0.01);
  });

  // A growers' listing asked 1.90 up to 2023 and 2.30 since, +21 %, "35 % above" gas lamps of 1.70; 70 % of 1,473
  // fittings lay within 2–3 in 2020 (Paucek et al.).
  it('a recent LED passes the listing threshold of 2.3, an older one need not pass that of 1.9', () => {
    expect(rangeOf('led-white').low).toBeGreaterThan(2.3);
    expect(rangeOf('led-older').high).toBeLessThanOrEqual(1.9);
    expect(Math.abs(2.3 / rangeOf('hps-electronic').typical - 1.35)).toBeLessThan(0.03);
    for (const id of ['led-white', 'led-bars', 'led-red-blue']) {
      expect(rangeOf(id).typical).toBeGreaterThanOrEqual(2);
      expect(rangeOf(id).typical).toBeLessThanOrEqual(3);
    }
  });

  // Kusuma, Pattison & Bugbee 2020 (Horticulture Research): limits of fittings.
  it('none passes the limits of 3.4 µmol/J white with red and 4.1 blue with red', () => {
    expect(rangeOf('led-bars').high).toBeLessThan(3.4);
    expect(rangeOf('led-white').high).toBeLessThan(3.4);
    expect(rangeOf('led-red-blue').high).toBeLessThan(4.1);
  });
});

describe('lumens by the catalogue’s lux per micromole', () => {
  // Bare lamps, lumens of a lamp maker's table; the micromoles are derived with 82 and 71 lm s µmol⁻¹.
  it.each([
    ['hps-magnetic', 130000, 1585],
    ['hps-magnetic', 89000, 1085],
    ['hps-magnetic', 50000, 610],
    ['hps-magnetic', 28500, 348],
    ['metal-halide', 110000, 1549],
    ['metal-halide', 36000, 507],
  ])('%s: %d lm are %d µmol/s', (id, lumens, photons) => {
    expect(Math.abs(lumens / lampTechnology(id).luxPerMicromole.value - photons)).toBeLessThan(0.6);
  });

  it('a 400 W sodium lamp of 50,000 lm at 460 W and 0.8 leaving the fitting makes 1.06 µmol/J, as measured ones do', () => {
    const efficacy = (0.8 * 50000) / lampTechnology('hps-magnetic').luxPerMicromole.value / 460;
    expect(Math.abs(efficacy - 1.06)).toBeLessThan(0.005);
    expect(efficacy).toBeLessThan(rangeOf('hps-magnetic').high);
    expect(efficacy).toBeGreaterThan(rangeOf('hps-magnetic').low);
  });
});

describe('ballasts and drivers', () => {
  // Utility and retailers' wattage tables: lamp watts → input watts. The share lost falls as lamps grow.
  it.each([
    ['metal-halide', 175, 210, 215],
    ['metal-halide', 250, 295, 295],
    ['metal-halide', 400, 458, 461],
    ['metal-halide', 1000, 1080, 1080],
    ['hps-magnetic', 250, 295, 295],
    ['hps-magnetic', 400, 460, 465],
    ['hps-magnetic', 750, 840, 840],
    ['hps-magnetic', 1000, 1100, 1100],
  ])('%s of %d W draws %d–%d W: within 6 points of the catalogue’s loss', (id, lamp, low, high) => {
    for (const input of [low, high]) {
      expect(Math.abs((input - lamp) / input - lampTechnology(id).driverLoss.value)).toBeLessThan(0.06);
    }
  });
  it('400 W on a magnetic ballast draws 460 W by the catalogue, to 1 W', () => {
    for (const id of ['hps-magnetic', 'metal-halide']) {
      expect(Math.abs(400 / (1 - lampTechnology(id).driverLoss.value) - 460)).toBeLessThan(1);
    }
  });
  // Electronic ballasts 5–6 %, LED drivers 90–95 %: from memory.
  it('electronic ballasts lose 5–6 %, LED drivers 5–12 %', () => {
    for (const id of ['hps-electronic', 'hps-screw-electronic', 'ceramic-metal-halide', 'induction']) {
      expect(lampTechnology(id).driverLoss.value).toBeGreaterThanOrEqual(0.05);
      expect(lampTechnology(id).driverLoss.value).toBeLessThanOrEqual(0.06);
    }
    for (const led of lampTechnologies.filter((one) => one.dimmer === 'led')) {
      expect(led.driverLoss.value).toBeGreaterThanOrEqual(0.05);
      expect(led.driverLoss.value).toBeLessThanOrEqual(0.12);
    }
  });
  // Two F40 lamps on an electronic ballast draw 68–71 W; on a magnetic one each takes 8–10 W more than its 40.
  it('fluorescent ballasts lie between the electronic and the magnetic', () => {
    const { value } = lampTechnology('t8-fluorescent').driverLoss;
    expect(value).toBeGreaterThan(0.05);
    expect(value).toBeLessThan(10 / 50);
  });
});

describe('energy', () => {
  it('one watt is 3.412 Btu/h: fittings of 1,060, 550 and 335 W are 3,617, 1,877 and 1,143 Btu/h', () => {
    // A lamp seller's page, arithmetic rechecked: what a lamp draws is what it heats, whatever its kind. 1 Btu = 1055.056 J.
    for (const [watts, btu] of [
      [1060, 3617],
      [550, 1877],
      [335, 1143],
    ]) {
      expect(Math.abs((watts * 3600) / 1055.056 - btu)).toBeLessThan(0.6);
    }
  });
  it('a mole by the catalogue: sodium on a magnetic ballast 0.27 kWh, a recent LED 0.10, a filament over 1', () => {
    expect(Math.abs(energyPerMole(rangeOf('hps-magnetic').typical) - 0.2723)).toBeLessThan(1e-4);
    expect(Math.abs(energyPerMole(rangeOf('led-white').typical) - 0.1029)).toBeLessThan(1e-4);
    expect(energyPerMole(rangeOf('incandescent').typical)).toBeGreaterThan(1);
  });
});

describe('ageing', () => {
  // Catalogue lives and what is left of the light: sodium 0.90 at 12,000 h and 0.80 at 24,000; metal halide −25…−30 %
  // over 8,000–10,000 h; fluorescent −5…−10 %; horticultural LED −10 % at 45,000 h (Paucek et al. 2020).
  it.each([
    ['hps-magnetic', 0.8, 0.8],
    ['hps-electronic', 0.9, 0.9],
    ['metal-halide', 0.7, 0.75],
    ['t5-fluorescent', 0.9, 0.95],
    ['t8-fluorescent', 0.9, 0.95],
    ['led-white', 0.9, 0.9],
  ])('%s keeps %d–%d of its light', (id, low, high) => {
    const { value } = lampTechnology(id).maintenance;
    expect(value).toBeGreaterThanOrEqual(low);
    expect(value).toBeLessThanOrEqual(high);
  });
});
