import { describe, expect, it } from 'vitest';
import { plantGroups } from '../../core/plan/groups.ts';
import { plantStates, runPlants, settleDays } from '../../core/plants/index.ts';
import { settleBelow } from '../../core/plants/settle.ts';
import { steadied } from '../../core/plants/verdict.ts';
import { daysOf, numbersOf, stateIdOn } from './days.ts';

const codes = (ids: string) =>
  Uint8Array.from(ids, (letter) => plantStates.findIndex((state) => state.letter === letter));
const letters = (state: Uint8Array) => Array.from(state, (code) => plantStates[code]?.letter).join('');
const steady = (ids: string, before = ids[0] as string, days = 3) => {
  const state = codes(ids);
  steadied(state, codes(before)[0] as number, days);
  return letters(state);
};

describe('settling', () => {
  it('takes two fifths of the memory, 2 to 7 days', () => {
    const of = (inertiaDays: number) => settleDays(numbersOf('echeveria', { inertiaDays }));
    expect([1, 3, 5, 7, 8, 10, 40].map(of)).toEqual([2, 2, 2, 3, 3, 4, 7]);
    for (const { id } of plantGroups) expect(settleDays(numbersOf(id)), id).toBeGreaterThanOrEqual(2);
  });
  it('a switch turns on the third of three days running, and a day between starts the count again', () => {
    const one = { on: false, turning: 0 };
    const since = new Float64Array(4).fill(1000);
    const seen = [4, 4, 6, 4, 4, 4, 6, 6, 9, 9, 9].map((value) => {
      settleBelow(one, value, 5, 8, 0, since, 3);
      return one.on ? 1 : 0;
    });
    expect(seen).toEqual([0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 0]);
  });
  it('a switch waits while one decided before it has just turned', () => {
    const one = { on: false, turning: 9 };
    const since = Float64Array.of(2, 1000, 1000, 1000);
    settleBelow(one, 4, 5, 8, 3, since, 3);
    expect(one.on).toBe(false);
    since[0] = 3;
    settleBelow(one, 4, 5, 8, 3, since, 3);
    expect([one.on, since[3]]).toEqual([true, 0]);
  });
  it('a cold week-end does not end growth; a cold fortnight does', () => {
    const cold = (count: number) => {
      const means = Array.from({ length: 60 }, (_, day) => (day >= 30 && day < 30 + count ? 4 : 18));
      return runPlants(numbersOf('echeveria'), daysOf(means, Array<number>(60).fill(14)), { cyclic: false });
    };
    expect(cold(2).transitions).toEqual([]);
    expect(stateIdOn(cold(14), 46)).toBe('resting-cold');
  });
});

describe('states too short to be one', () => {
  it('give way to what was before when something worse follows within days', () => {
    expect(steady('GGGGSSLLLL')).toBe('GGGGGGLLLL');
    expect(steady('GGGGSSSLLL')).toBe('GGGGSSSLLL');
    expect(steady('SSSSLCCCC')).toBe('SSSSSCCCC');
  });
  it('chains of them too, and a return joins what it parted', () => {
    expect(steady('GGGGSLCCCC')).toBe('GGGGGGCCCC');
    expect(steady('CCCCSSCCCCSGGG')).toBe('CCCCCCCCCCSGGG');
  });
  it('stirring in the dim just before light comes back is left out', () => {
    expect(steady('DDDDLSSSS')).toBe('DDDDDSSSS');
    expect(steady('DDDDLLLSSS')).toBe('DDDDLLLSSS');
  });
  it('heat rest that freezes off is not lengthened, and the first days may belong to a run before them', () => {
    expect(steady('HHHHSCCC')).toBe('HHHHSCCC');
    expect(steady('SCCCC', 'S')).toBe('SCCCC');
    expect(steady('SCCCC', 'G')).toBe('GCCCC');
  });
});
