import { describe, expect, it } from 'vitest';
import { demonstrationPlan, parsePlan, plantGroups, planGroups, planNumbers } from '../../core/index.ts';
import type { Plan } from '../../core/index.ts';
import { withNumber, withNumbers } from '../../renderer/plants/numbers.ts';
import {
  copyOf,
  lotsFor,
  ownGroup,
  parentOf,
  withLotGroup,
  withoutOwnGroup,
  withOwnGroup,
  withOwnPart,
} from '../../renderer/plants/own-groups.ts';

const read = (plan: Plan): Plan => {
  const reading = parsePlan(plan);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
};
const copy = copyOf(demonstrationPlan, 'echeveria');
const plan = read(withOwnGroup(demonstrationPlan, copy));

describe('a group of one’s own', () => {
  it('is a copy under a name and an id of its own, listed first', () => {
    expect(copy).toMatchObject({ from: 'echeveria', numbers: {} });
    expect(plantGroups.some((group) => group.id === copy.id || group.name === copy.name)).toBe(false);
    expect(planGroups(plan)[0]).toMatchObject({ id: copy.id, name: copy.name });
    expect(planNumbers(plan, copy.id)).toEqual(planNumbers(plan, 'echeveria'));
    expect(parentOf(plan, copy.id)?.id).toBe('echeveria');
  });
  it('can be made of every group of the catalogue, and of each other', () => {
    for (const { id } of plantGroups) read(withOwnGroup(plan, copyOf(plan, id)));
    const second = copyOf(plan, copy.id);
    expect(second.from).toBe('echeveria');
    expect([second.id, second.name]).not.toContain(copy.id);
    expect(second.name).not.toBe(copy.name);
    read(withOwnGroup(plan, second));
  });
  it('takes along the numbers the user had given the group it is made from', () => {
    const edited = withNumber(demonstrationPlan, 'echeveria', 'lightGood', 12);
    const made = read(withOwnGroup(edited, copyOf(edited, 'echeveria')));
    expect(planNumbers(made, made.ownGroups[0].id).lightGood).toBe(12);
  });
  it('is changed without touching the group it was made from, and back without a trace', () => {
    const changed = read(withNumber(plan, copy.id, 'baseTemperature', 2));
    expect(planNumbers(changed, copy.id).baseTemperature).toBe(2);
    expect(planNumbers(changed, 'echeveria')).toEqual(planNumbers(plan, 'echeveria'));
    expect(changed.groupEdits).toEqual({});
    expect(withNumber(changed, copy.id, 'baseTemperature', null)).toEqual(plan);
    expect(withNumbers(changed, copy.id, {})).toEqual(plan);
  });
  it('is renamed without losing its numbers', () => {
    const renamed = withOwnPart(withNumber(plan, copy.id, 'baseTemperature', 2), copy.id, {
      name: 'Hardy ones',
    });
    expect(ownGroup(read(renamed), copy.id)).toEqual({
      ...copy,
      name: 'Hardy ones',
      numbers: { baseTemperature: 2 },
    });
  });
  it('may be used for the lots of the group it was made from', () => {
    const could = lotsFor(plan, copy).map((lot) => lot.id);
    expect(could).toEqual(plan.lots.filter((lot) => lot.group === 'echeveria').map((lot) => lot.id));
    expect(could.length).toBeGreaterThan(1);
    const used = read(withLotGroup(plan, could[0], copy.id));
    expect(used.lots.find((lot) => lot.id === could[0])?.group).toBe(copy.id);
    expect(lotsFor(used, copy).map((lot) => lot.id)).toEqual(could);
  });
  it('gives its lots back to the group it was made from when it is deleted', () => {
    const used = withLotGroup(plan, 'echeverias', copy.id);
    expect(read(withoutOwnGroup(used, copy.id))).toEqual(demonstrationPlan);
    expect(() => withoutOwnGroup(plan, 'echeveria')).toThrow('expected an own group');
  });
});
