import { describe, expect, it } from 'vitest';
import { plantGroups } from '../../core/plan/groups.ts';
import { constantDays, runPlants } from '../../core/plants/index.ts';
import { numbersOf } from './days.ts';

const at = { leastLeaf: 21, mostLeaf: 30, meanNightLeaf: 22, dailyLight: 15, photoperiod: 13 };
const fresh = { spinUpDays: 0, cyclic: false } as const;

describe('days that count', () => {
  it('a plant declines from the day after its days of heat are full, and is dead on the last', () => {
    for (const { id } of plantGroups) {
      const group = numbersOf(id);
      const hot = { ...at, meanLeaf: group.slowAbove + 0.5, mostLeaf: group.slowAbove + 1 };
      const { decline, declineShare } = runPlants(group, constantDays(120, hot), fresh);
      expect(decline.indexOf(1), id).toBe(group.declineDays);
      expect(declineShare.indexOf(1), id).toBe(group.killDays - 1);
    }
  });
  it('mix counts as wet until half of its moisture is gone, by the group’s own days', () => {
    for (const { id } of plantGroups) {
      const group = numbersOf(id);
      const meanLeaf = (group.optimumLow + group.optimumHigh) / 2;
      const watered = Uint8Array.from({ length: 60 }, (_, day) => (day === 0 ? 1 : 0));
      const days = { ...constantDays(60, { ...at, meanLeaf }), watered };
      const { wet } = runPlants(group, days, fresh);
      const whole = 1 + Math.floor(group.waterDays * Math.LN2);
      expect(wet.indexOf(0), id).toBe(whole);
      expect(
        wet.subarray(whole).every((each) => each === 0),
        id,
      ).toBe(true);
    }
  });
});
