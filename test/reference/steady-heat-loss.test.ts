/**
 * Steady losses by the handbook sum Σ U·A·ΔT + 0.33·n·V·ΔT (ISO 13789; extension bulletins), in SI and in BTU/h.
 * The four houses are derived, not published. Also: stored heat, fuel, degree-days.
 */
import { describe, expect, it } from 'vitest';
import { handbookLoss } from '../../core/heat/index.ts';
import { OUTDOORS } from '../../core/heat/network.ts';
import { paraffinHeat, paraffinVapour, propaneHeat, propaneVapour } from '../../core/plan/fuels.ts';
import { waterStores } from '../../core/heat/masses.ts';
import { oneNode } from '../heat/hand-made.ts';
import { bareHouse, planOf } from '../support/plans.ts';

/** 1 BTU/h in watts (international table). */
const btuPerHour = 0.29307107;

/** A house of one surface of `area` with U by EN 673 films 8 and 23. */
function house(area: number, volume: number, u: number, changes: number) {
  const resistance = Float64Array.of(1 / u - 1 / 8 - 1 / 23);
  return oneNode(1, 0, {
    surfaceCount: 1,
    surfaceNames: ['Cover'],
    area: Float64Array.of(area),
    behind: Uint8Array.of(OUTDOORS),
    resistanceOpen: resistance,
    resistanceClosed: resistance,
    volume,
    leakage: changes,
    leakageClosed: changes,
  });
}

describe('steady loss of a house', () => {
  it.each([
    ['1.9 × 2.5 m of glass', 19, 9, 6.0, 1.5, 10, 1184.6, 4042],
    ['the same with bubble lining', 19, 9, 4.2, 1, 10, 827.7, 2824],
    ['3 × 6 m tunnel of double polythene', 45, 36, 4.0, 0.75, 15, 2833.7, 9669],
    ['1.2 × 1.2 × 2 m tent', 12.48, 2.88, 5.0, 3, 8, 522.0, 1781],
  ])('%s', (_, area, volume, u, changes, difference, watts, btu) => {
    const sum = handbookLoss(house(area, volume, u, changes), 0, 5 + difference, 5, null);
    expect(sum.loss).toBeCloseTo(watts, 0);
    expect(Math.abs(sum.loss / btuPerHour - btu)).toBeLessThan(1);
  });

  it('a window of 2.5 m², U 3, 15 K: 112.5 W and 2.7 kWh a day; U 5: 187.5 W (worked example)', () => {
    const at = (u: number) => handbookLoss(house(2.5, 1, u, 0), 0, 20, 5, null).loss;
    expect(at(3)).toBeCloseTo(112.5, 9);
    expect((at(3) * 24) / 1000).toBeCloseTo(2.7, 9);
    expect(at(5)).toBeCloseTo(187.5, 9);
  });

  it('80 ft² of single pane, U 1.1 BTU/(h ft² °F), 20 °F: 1760 BTU/h (worked example)', () => {
    const loss = handbookLoss(house(80 * 0.09290304, 1, 1.1 * 5.678263, 0), 0, 20 / 1.8, 0, null).loss;
    expect(loss / btuPerHour).toBeCloseTo(1760, 0);
  });

  it('air alone: 30 m³, one change an hour, 15 K: 148.5 W', () => {
    expect(handbookLoss(house(0, 30, 5, 1), 0, 15, 0, null).loss).toBeCloseTo(148.5, 9);
  });

  it('a tunnel of 30 × 100 ft, 60 °F: air 15 % of 240,000 BTU/h by its volume of 33,300 ft³ (extension bulletin)', () => {
    // 36,000 BTU/h of 240,000; with 0.33 W h m⁻³ K⁻¹ for the bulletin's 0.018 BTU ft⁻³ °F⁻¹, which is 2 % less.
    const loss = handbookLoss(house(0, 33_300 * 0.0283168, 5, 1), 0, 60 / 1.8, 0, null).loss / btuPerHour;
    expect(Math.abs(loss / 36_000 - 1)).toBeLessThan(0.025);
  });

  it('is in proportion to the difference and never less than nothing', () => {
    const glass = house(19, 9, 6, 1.5);
    expect(handbookLoss(glass, 3, 20, 0, null).loss).toBeCloseTo(
      2 * handbookLoss(glass, 3, 10, 0, null).loss,
      9,
    );
    expect(handbookLoss(glass, 3, 5, 12, null).loss).toBe(0);
  });
});

describe('stored heat', () => {
  it('200 l of water cooled by 10 K give 2.33 kWh; a litre and kelvin 1.163 Wh', () => {
    const plan = planOf({ ...bareHouse, water: [{ name: 'Drum', litres: 200, count: 1 }] });
    const { capacity } = waterStores(plan.places[0]);
    expect((capacity * 10) / 3.6e6).toBeCloseTo(2.33, 2);
    expect(capacity / 200 / 3600).toBeCloseTo(1.163, 3);
  });

  it('a drum of 55 US gallons: 0.242 kWh a kelvin, about 25 ft² of face (forum, recomputed)', () => {
    const plan = planOf({ ...bareHouse, water: [{ name: 'Drum', litres: 208.2, count: 1 }] });
    const { capacity, area } = waterStores(plan.places[0]);
    expect(capacity / 3.6e6).toBeCloseTo(0.242, 3);
    // The base stands on the floor and is left out here: top and side of the drum are 1.73 m², its whole face 2.1.
    expect(Math.abs(area / (25 * 0.0929) - 1)).toBeLessThan(0.27);
  });
});

describe('fuel: water and heat by stoichiometry', () => {
  /** Molar masses [g mol⁻¹] (IUPAC, rounded). */
  const mass = { carbon: 12.011, hydrogen: 1.008, water: 18.015 };
  const waterPerKilogram = (carbon: number, hydrogen: number) =>
    ((hydrogen / 2) * mass.water) / (carbon * mass.carbon + hydrogen * mass.hydrogen);

  it('propane C₃H₈: 1.634 kg of water a kilogram, 127 g a net kWh', () => {
    expect(waterPerKilogram(3, 8)).toBeCloseTo(1.634, 3);
    expect(propaneVapour * 3.6e6 * propaneHeat).toBeCloseTo(waterPerKilogram(3, 8), 2);
  });

  it('propane: 46.35 MJ kg⁻¹ net by heats of formation (−103.8, −393.5, −241.8 kJ mol⁻¹)', () => {
    const molar = 3 * 393.51 + 4 * 241.83 - 103.8;
    expect(molar / 44.097 / 3.6 / propaneHeat).toBeCloseTo(1, 2);
  });

  it('paraffin as C₁₂H₂₆: 1.37 kg of water a kilogram, 112 g a net kWh within 3 %', () => {
    expect(waterPerKilogram(12, 26)).toBeCloseTo(1.375, 2);
    const perKilowattHour = (waterPerKilogram(12, 26) * 0.8) / paraffinHeat;
    expect(Math.abs((paraffinVapour * 3.6e6) / perKilowattHour - 1)).toBeLessThan(0.03);
  });

  it('an unvented burner of 400,000 BTU/h of gas gives up to 5 US gallons of water an hour (bulletin; derived 4.5–4.8 for methane)', () => {
    const kilowatts = (400_000 * btuPerHour) / 1000;
    const gallons = (kilowatts * propaneVapour * 3.6e6) / 3.785;
    expect(gallons).toBeGreaterThan(3.5);
    expect(gallons).toBeLessThan(5);
  });
});

describe('degree-days', () => {
  it('50 W K⁻¹ through 319 K d (Thames Valley, January, base 15.5): 382.8 kWh', () => {
    const perKelvin = handbookLoss(house(10, 1, 5, 0), 0, 1, 0, null).loss;
    expect((24 * perKelvin * 319) / 1000).toBeCloseTo(382.8, 6);
  });
});
