import { describe, expect, it } from 'vitest';
import {
  demonstrationPlan,
  groupNumberNames,
  groupNumbers,
  parsePlan,
  plantGroup,
  plantGroups,
} from '../../core/index.ts';
import type { SeasonResult } from '../../core/index.ts';
import { midWinterOf } from '../../renderer/plants/midwinter.ts';
import { habits, numberSections, numbersIn, rangeOf, withNumber } from '../../renderer/plants/numbers.ts';

const rows = numberSections.flatMap((section) => section.rows);

describe('the numbers of a group', () => {
  it('are all shown once, but for the two that are a manner and not a quantity', () => {
    const shown = rows.map((row) => row.name);
    const manners = ['canRestDim', 'dayLengthKind'];
    expect([...shown, ...manners].sort()).toEqual([...groupNumberNames].sort());
  });
  it('lie within the range of their field in every group', () => {
    for (const group of plantGroups) {
      const numbers = groupNumbers(group);
      for (const row of rows) {
        const value = numbers[row.name];
        if (value === null) continue;
        const [least, most] = rangeOf(row, numbers);
        expect(value, `${group.name}: ${row.words}`).toBeGreaterThanOrEqual(least);
        expect(value, `${group.name}: ${row.words}`).toBeLessThanOrEqual(most);
      }
    }
  });
  it('have every group under one of the habits listed', () => {
    const listed = new Set(habits.map((habit) => habit.id));
    expect(plantGroups.filter((group) => !listed.has(group.habit))).toEqual([]);
  });
});

describe('an edit', () => {
  const edited = withNumber(demonstrationPlan, 'echeveria', 'lightGood', 12);
  it('changes the one number, in a plan that still reads', () => {
    const group = plantGroup('echeveria')!;
    expect(numbersIn(edited, group)).toEqual({ ...numbersIn(demonstrationPlan, group), lightGood: 12 });
    expect(parsePlan(edited)).toMatchObject({ ok: true });
  });
  it('leaves no trace when the catalogue’s value is put back', () => {
    expect(withNumber(edited, 'echeveria', 'lightGood', null)).toEqual(demonstrationPlan);
    expect(withNumber(edited, 'echeveria', 'lightGood', 10)).toEqual(demonstrationPlan);
  });
});

describe('mid-winter of a lot', () => {
  it('is the mean over four weeks around the middle, with the state of most days', () => {
    const series = (value: number) => new Float64Array(365).fill(value);
    const state = new Uint8Array(365).fill(2);
    state.fill(6, 150, 156);
    const lot = { lotId: 'echeverias', groupId: 'echeveria', placeId: 'bright-tent', state };
    const leafMean = Float64Array.from({ length: 365 }, (_, day) =>
      day >= 138 && day < 166 ? 10 + (day % 2) : 99,
    );
    const season = {
      winterFrom: 61,
      winterTo: 243,
      days: 365,
      places: [
        {
          placeId: 'bright-tent',
          daily: { leafMean, daylight: series(1), lampLight: series(8) },
          lots: [lot],
        },
      ],
    } as unknown as SeasonResult;
    const [found, ...others] = midWinterOf(demonstrationPlan, season, 'echeveria');
    expect(others).toEqual([]);
    expect(found).toMatchObject({ leaf: 10.5, light: 9, state: 2, lotName: 'Echeverias', day: 152 });
    expect(midWinterOf(demonstrationPlan, season, 'aeonium')).toEqual([]);
  });
});
