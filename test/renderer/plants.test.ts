import { describe, expect, it } from 'vitest';
import {
  demonstrationPlan,
  groupNumberNames,
  groupNumbers,
  parsePlan,
  plantGroup,
  plantGroups,
  planNumbers,
} from '../../core/index.ts';
import type { GroupNumberName, SeasonResult } from '../../core/index.ts';
import { groupCurves } from '../../renderer/plants/curves.ts';
import { midWinterOf } from '../../renderer/plants/midwinter.ts';
import { companies, habits, manners, numberSections } from '../../renderer/plants/number-sections.ts';
import { rangeOf, withNumber } from '../../renderer/plants/numbers.ts';

const rows = numberSections.flatMap((section) => section.rows);

describe('the numbers of a group', () => {
  it('are all shown once: as a quantity, or as a manner with its answers', () => {
    const shown = [...rows, ...manners].map((row) => row.name);
    expect([...shown].sort()).toEqual([...groupNumberNames].sort());
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
  it('have an answer for every manner of every group', () => {
    for (const group of plantGroups)
      for (const { name, answers } of manners)
        expect(answers.map((answer) => answer.value)).toContain(groupNumbers(group)[name]);
  });
  it('have every group under one of the habits listed', () => {
    const listed = new Set(habits.map((habit) => habit.id));
    expect(plantGroups.filter((group) => !listed.has(group.habit))).toEqual([]);
  });
  it('have each curve drawn beside a section once', () => {
    const beside = numberSections.flatMap((section) => section.curves);
    expect([...beside].sort()).toEqual(groupCurves.map((curve) => curve.id).sort());
  });
});

describe('an edit', () => {
  const edited = withNumber(demonstrationPlan, 'echeveria', 'lightGood', 12);
  it('changes the one number, in a plan that still reads', () => {
    expect(planNumbers(edited, 'echeveria')).toEqual({
      ...planNumbers(demonstrationPlan, 'echeveria'),
      lightGood: 12,
    });
    expect(parsePlan(edited)).toMatchObject({ ok: true });
  });
  it('leaves no trace when the catalogue’s value is put back', () => {
    const { value } = plantGroup('echeveria')!.light.good;
    expect(value).not.toBe(12);
    expect(withNumber(edited, 'echeveria', 'lightGood', null)).toEqual(demonstrationPlan);
    expect(withNumber(edited, 'echeveria', 'lightGood', value)).toEqual(demonstrationPlan);
  });
});

describe('a figure that the catalogue does not have', () => {
  const lacking = (names: readonly GroupNumberName[]) =>
    plantGroups.find((group) => names.every((name) => groupNumbers(group)[name] === null));

  it.each(companies)('comes with what it is of no use without, and goes with it (%o …)', (...company) => {
    const names = company.map((one) => one.name);
    const group = lacking(names);
    expect(group, names.join()).toBeDefined();
    for (const { name, first } of company) {
      const value = first === 0 ? 0.2 : first;
      const given = withNumber(demonstrationPlan, group!.id, name, value);
      expect(parsePlan(given)).toMatchObject({ ok: true });
      for (const other of company)
        expect(planNumbers(given, group!.id)[other.name]).toBe(other.name === name ? value : other.first);
      expect(withNumber(given, group!.id, name, null)).toEqual(demonstrationPlan);
    }
  });
  it('keeps what was given before, and leaves figures of the catalogue alone', () => {
    const group = lacking(['chillBelow', 'chillDose'])!;
    const once = withNumber(demonstrationPlan, group.id, 'chillDose', 200);
    expect(planNumbers(withNumber(once, group.id, 'chillBelow', 9), group.id)).toMatchObject({
      chillBelow: 9,
      chillDose: 200,
    });
    const rests = plantGroups.find((each) => each.rest !== null)!;
    const edited = withNumber(demonstrationPlan, rests.id, 'restWeeks', 11);
    expect(edited.groupEdits[rests.id]).toEqual({ restWeeks: 11 });
  });
});

describe('mid-winter of a lot', () => {
  const series = (value: number) => new Float64Array(365).fill(value);
  const middleOnly = (value: (day: number) => number) =>
    Float64Array.from({ length: 365 }, (_, day) => (day >= 138 && day < 166 ? value(day) : 99));
  const state = new Uint8Array(365).fill(2);
  state.fill(6, 150, 156);
  const lot = {
    lotId: 'echeverias',
    groupId: 'echeveria',
    placeId: 'outdoors',
    stays: [
      { placeId: 'outdoors', from: 0, to: 79 },
      { placeId: 'bright-tent', from: 80, to: 364 },
    ],
    lived: {
      leafMean: middleOnly((day) => 10 + (day % 2)),
      leafNight: middleOnly(() => 6),
      dailyLight: middleOnly((day) => 8 + 2 * (day % 2)),
    },
    carbonIndex: series(0.6),
    state,
  };
  const season = {
    plan: demonstrationPlan,
    winterFrom: 61,
    winterTo: 243,
    days: 365,
    lots: [lot],
    // What the places say is not asked: a lot lives where it stands and at its own spot.
    places: [{ placeId: 'bright-tent', daily: { leafMean: series(-40), daylight: series(70) }, lots: [lot] }],
  } as unknown as SeasonResult;

  it('is the mean of what it lived over four weeks around the middle, with the state of most days', () => {
    const [found, ...others] = midWinterOf(season, 'echeveria');
    expect(others).toEqual([]);
    expect(found).toMatchObject({
      leaf: 10.5,
      night: 6,
      light: 9,
      state: 2,
      lotName: 'Echeverias',
      day: 152,
    });
    expect(found.carbon).toBeCloseTo(0.6, 12);
    expect(midWinterOf(season, 'aeonium')).toEqual([]);
  });
  it('is where it has been carried by then', () => {
    expect(midWinterOf(season, 'echeveria')[0].placeId).toBe('bright-tent');
  });
});
