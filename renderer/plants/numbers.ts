import { groupFigure, planEdits, planGroup } from '../../core/index.ts';
import type { GroupNumberName, GroupNumbers, Plan } from '../../core/index.ts';
import { fieldText, fieldUnit, formatNumber, formatTemperature } from '../state/units.ts';
import type { UnitPreferences } from '../state/units.ts';
import { companies } from './number-sections.ts';
import type { NumberRow } from './number-sections.ts';
import { ownGroup, withOwnPart } from './own-groups.ts';

/** Least and most that a number may have beside its neighbours in the group. */
export function rangeOf(row: NumberRow, numbers: GroupNumbers): [number, number] {
  const low = row.above === undefined ? null : numbers[row.above];
  const high = row.below === undefined ? null : numbers[row.below];
  return [
    low === null ? row.least : Math.max(row.least, low),
    high === null ? row.most : Math.min(row.most, high),
  ];
}

/**
 * The plan with one number of a group set to the user's own value, or back to the catalogue's where `value` is null.
 * Numbers of use together only come and go together where the catalogue has none. An own group keeps its numbers itself; those of a group of the catalogue are the plan's `groupEdits`.
 */
export function withNumber(plan: Plan, groupId: string, name: GroupNumberName, value: number | null): Plan {
  const group = planGroup(plan, groupId);
  if (!group) throw new Error(`expected a plant group of the plan, got ${groupId}`);
  const numbers: Record<string, number> = { ...planEdits(plan, groupId) };
  const known = groupFigure[name](group);
  if (value === null || value === known?.value) delete numbers[name];
  else numbers[name] = value;
  const company = companies.find((each) => each.some((one) => one.name === name)) ?? [];
  for (const { name: other, first } of company) {
    if (groupFigure[other](group) !== null) continue;
    if (value === null && known === null) delete numbers[other];
    if (value !== null) numbers[other] ??= first;
  }
  return withNumbers(plan, groupId, numbers);
}

/** The plan with all of a group's own numbers at once; none puts the catalogue's back. */
export function withNumbers(plan: Plan, groupId: string, numbers: Record<string, number>): Plan {
  if (ownGroup(plan, groupId)) return withOwnPart(plan, groupId, { numbers });
  const others = Object.fromEntries(Object.entries(plan.groupEdits).filter(([id]) => id !== groupId));
  const none = Object.keys(numbers).length === 0;
  return { ...plan, groupEdits: none ? others : { ...others, [groupId]: numbers } };
}

/** A number as a grower reads it, with its unit. */
export function showNumber(value: number, unit: NumberRow['unit'], units: UnitPreferences): string {
  const figure = (number: number) => formatNumber(number, Number.isInteger(number) ? 0 : 1);
  if (unit === '') return formatNumber(value, Number.isInteger(value) ? 0 : 2);
  if (unit === '°C') return formatTemperature(value, units, 1);
  return `${figure(Number(fieldText(value, unit, units, 1)))} ${fieldUnit(unit, units)}`.trim();
}
