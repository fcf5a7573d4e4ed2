import { describe, expect, it } from 'vitest';
import { compareLamps, createSeasonCache, demonstrationPlan, weatherFromPlan } from '../../core/index.ts';
import type { Lamp, WeatherYear } from '../../core/index.ts';

const plan = demonstrationPlan;
const cache = createSeasonCache();
const setting = { plan, weather: weatherFromPlan(plan) as WeatherYear, placeId: 'bright-tent', cache };
const lamp = plan.places[2].lamps[0];
const option = (name: string, changes: Partial<Lamp> = {}) => ({ name, lamps: [{ ...lamp, ...changes }] });
const compare = (...changes: Partial<Lamp>[]) =>
  compareLamps(
    changes.map((each, index) => option(`option ${index}`, each)),
    setting,
  );

describe('comparing lamps', () => {
  it('more watts of the same lamp: in step more light, energy and cost, warmer air, no fewer growing days', () => {
    const rows = compare(...[20, 40, 75].map((watts) => ({ watts })));
    for (let at = 1; at < rows.length; at++) {
      const [less, more] = [rows[at - 1], rows[at]];
      const ratio = more.watts / less.watts;
      expect(more.average / less.average).toBeCloseTo(ratio, 9);
      expect(more.dailyLight / less.dailyLight).toBeCloseTo(ratio, 9);
      expect(more.kwhWinter / less.kwhWinter).toBeCloseTo(ratio, 9);
      expect(more.costWinter / less.costWinter).toBeCloseTo(ratio, 9);
      expect(more.airDayChange).toBeGreaterThan(less.airDayChange);
      expect(more.evenness).toBeCloseTo(less.evenness, 9);
      // Up to 75 W; at twice that the tent is too warm for conophytums, which then only grow slowly.
      more.lots.forEach((lot, index) =>
        expect(lot.growingDays).toBeGreaterThanOrEqual(less.lots[index].growingDays),
      );
    }
  });

  it('a better lamp of the same watts gives more light, costs the same, and a mole of light costs less', () => {
    const [plain, better] = compare({ efficacy: 1.6 }, { efficacy: 2.8 });
    expect(better.average).toBeGreaterThan(plain.average);
    expect(better.kwhWinter).toBe(plain.kwhWinter);
    expect(better.costPerMole).toBeLessThan(plain.costPerMole);
  });

  it('energy is watts times hours, and light is photons times hours', () => {
    const [row] = compare({});
    const days = 242 - 61 + 1;
    expect(row.hours).toBeCloseTo(12, 9);
    expect(row.kwhWinter).toBeCloseTo((75 * 12 * days) / 1000, 6);
    // The average is the mean of the map here and an integral in the season: 0.06 % apart (limit 0.5 %).
    expect(row.dailyLight / ((row.average * 12 * 3600) / 1e6)).toBeCloseTo(1, 2);
    expect(row.photonsOnArea).toBeCloseTo(row.average * plan.places[2].growingArea, 9);
  });

  it('map, average, least and most agree', () => {
    const [row] = compare({});
    expect(row.map).toHaveLength(row.columns * row.rows);
    // The map's cells are points, the average an integral: within 0.5 %.
    const mean = row.map.reduce((sum, value) => sum + value, 0) / row.map.length;
    expect(mean / row.average).toBeCloseTo(1, 2);
    expect(Math.min(...row.map)).toBe(row.least);
    expect(Math.max(...row.map)).toBe(row.most);
    expect(row.areaLength * row.areaWidth).toBeCloseTo(plan.places[2].growingArea, 6);
  });

  it('the first option differs from itself by nothing and repays nothing', () => {
    const [row] = compare({});
    expect(row).toMatchObject({ airDayChange: 0, airNightChange: 0, yearsToRepay: null });
  });

  it('a dearer lamp that saves is repaid after its price over its saving', () => {
    const [plain, thrifty] = compare({ watts: 100, price: 50 }, { watts: 50, efficacy: 3, price: 150 });
    const yearly = (watts: number) => (watts * 12 * 365 * plan.tariff.dayPrice) / 1000;
    expect(plain.yearsToRepay).toBeNull();
    // The tent has no heater; only its fan, which runs on warm days alone, can move the sum.
    expect(thrifty.yearsToRepay).toBeCloseTo(100 / (yearly(100) - yearly(50)), 0);
  });

  it('no lamp at all is an option like any other', () => {
    const [row] = compareLamps([{ name: 'none', lamps: [] }], setting);
    expect(row).toMatchObject({
      watts: 0,
      average: 0,
      dailyLight: 0,
      kwhWinter: 0,
      costPerMole: 0,
      evenness: 0,
      hours: 0,
    });
  });
});
