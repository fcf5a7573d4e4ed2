import { describe, expect, it } from 'vitest';
import { plantGroups } from '../../core/plan/groups.ts';
import { coldLimitAt, coldLimits, hardeningTarget, runPlants } from '../../core/plants/index.ts';
import { daysOf, numbersOf, steady } from './days.ts';

const repeat = (value: number, count: number) => Array<number>(count).fill(value);
const flat = { cyclic: false, watering: 'dry' } as const;
/** Cold limit of each day, kept dry [°C]. */
const limitsOf = (id: string, means: number[]) => {
  const group = numbersOf(id);
  return coldLimits(group, runPlants(group, daysOf(means, repeat(12, means.length)), flat));
};

describe('hardening to cold', () => {
  it('Coryphantha: 7 K over a fall of 40 K in weekly steps of 10 K, about 1.7 K a week (freezing trial)', () => {
    const means = [
      ...repeat(25, 14),
      ...repeat(15, 7),
      ...repeat(5, 7),
      ...repeat(-5, 7),
      ...repeat(-15, 35),
    ];
    const limits = limitsOf('hardy-cacti', means);
    const before = limits[13] as number;
    const gained = [20, 27, 34, 41, 48, 69].map((day) => before - (limits[day] as number));
    expect(before).toBeCloseTo(-7, 1);
    const weekly = gained.slice(0, 5).map((gain, week) => gain - (gained[week - 1] ?? 0));
    // Reached 0.6, 1.2, 1.5, 1.6 and 1.1 K in the first five weeks, 6.9 K in the end.
    expect(Math.max(...weekly)).toBeGreaterThan(1.4);
    expect(Math.max(...weekly)).toBeLessThan(2);
    expect(gained[5]).toBeGreaterThan(6.6);
    expect(gained[5]).toBeLessThanOrEqual(7);
  });

  it('citrus begins to harden at 12.8 °C, bears −4.4 °C soft and −9 hardened, and softens faster than it hardens', () => {
    const citrus = numbersOf('citrus');
    expect(hardeningTarget(citrus, 12.8)).toBe(0);
    expect(hardeningTarget(citrus, 12)).toBeGreaterThan(0);
    const limits = limitsOf('citrus', [...repeat(15, 20), ...repeat(2, 60), ...repeat(15, 20)]);
    expect(limits[19]).toBeCloseTo(-4.4, 6);
    expect(limits[79]).toBeCloseTo(-9, 1);
    const [hardened, softened] = [limits[26] as number, limits[86] as number];
    // A week of cold brings less than half of the gain; a week of warmth takes more than half of it away.
    expect(hardened).toBeGreaterThan(-4.4 - 2.3);
    expect(softened).toBeGreaterThan(-9 + 2.3);
    expect(limits[99]).toBeCloseTo(-4.4, 1);
  });

  it('Sempervivum is 15 K hardier in winter than in summer (both limits are placeholders)', () => {
    const limits = limitsOf('sempervivum', [...repeat(18, 30), ...repeat(-2, 90)]);
    expect(limits[29]).toBeCloseTo(-10, 6);
    expect(limits[119]).toBeCloseTo(-25, 1);
  });

  it('lies between the dry and the wet limit in every group, soft and wet the tenderest', () => {
    for (const { id } of plantGroups) {
      const group = numbersOf(id);
      expect(coldLimitAt(group, 1, false), id).toBeCloseTo(group.damageColdDry, 9);
      expect(coldLimitAt(group, 0, true), id).toBeCloseTo(group.damageColdWet, 9);
      for (const wet of [false, true]) {
        for (let hardening = 0; hardening <= 1; hardening += 0.25) {
          const limit = coldLimitAt(group, hardening, wet);
          expect(limit, id).toBeGreaterThanOrEqual(group.damageColdDry - 1e-9);
          expect(limit, id).toBeLessThanOrEqual(group.damageColdWet + 1e-9);
          expect(limit, id).toBeLessThanOrEqual(coldLimitAt(group, hardening, true));
        }
      }
    }
  });

  it('a gain larger than the room that the user has left is cut to the room', () => {
    const group = numbersOf('echeveria', { damageColdWet: -3 });
    expect(coldLimitAt(group, 0, false)).toBeCloseTo(-3, 9);
    expect(coldLimitAt(group, 1, true)).toBeCloseTo(-4, 9);
  });

  it('stays within 0 and 1, and warmer days never harden more', () => {
    const means = Array.from(
      { length: 120 },
      (_, day) => 12 - 12 * Math.sin(day / 19) + 4 * Math.sin(day * 12.9),
    );
    for (const { id } of plantGroups) {
      const cool = runPlants(numbersOf(id), daysOf(means, repeat(12, 120)));
      const warm = runPlants(
        numbersOf(id),
        daysOf(
          means.map((mean) => mean + 2),
          repeat(12, 120),
        ),
      );
      for (let day = 0; day < 120; day += 1) {
        const [less, more] = [warm.hardening[day] as number, cool.hardening[day] as number];
        expect(less).toBeLessThanOrEqual(more);
        expect(less).toBeGreaterThanOrEqual(0);
        expect(more).toBeLessThanOrEqual(1);
      }
    }
    expect(runPlants(numbersOf('echeveria'), steady(30, 20, 12)).hardening[29]).toBe(0);
  });
});
