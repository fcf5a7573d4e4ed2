import { planGroup, planNumbers } from '../../core/index.ts';
import type { GroupNumberName, GroupNumbers, Plan } from '../../core/index.ts';
import type { UnitPreferences } from '../state/units.ts';
import { manners, numberSections } from './number-sections.ts';
import { showNumber } from './numbers.ts';

/** A group in a comparison: its letter, its name and its numbers in the plan. */
export interface Compared {
  readonly id: string;
  readonly letter: string;
  readonly name: string;
  readonly numbers: GroupNumbers;
}

/** Groups of a plan side by side, lettered in the order they were picked. */
export function comparedGroups(plan: Plan, ids: readonly string[]): Compared[] {
  return ids.map((id, index) => {
    const group = planGroup(plan, id);
    if (!group) throw new Error(`expected a plant group of the plan, got ${id}`);
    const letter = String.fromCharCode(65 + index);
    return { id, letter, name: group.name, numbers: planNumbers(plan, id) };
  });
}

export interface ComparedRow {
  readonly name: GroupNumberName;
  readonly words: string;
  /** As each group has it, in words; `none` where it has no such number. */
  readonly values: readonly string[];
  readonly differs: boolean;
  /** Whether a group's value is another than the first group's. */
  readonly others: readonly boolean[];
}
export interface ComparedSection {
  readonly title: string;
  readonly rows: readonly ComparedRow[];
}

function row(
  name: GroupNumberName,
  words: string,
  groups: readonly Compared[],
  say: (value: number) => string,
): ComparedRow {
  const numbers = groups.map((group) => group.numbers[name]);
  const others = numbers.map((value) => value !== numbers[0]);
  return {
    name,
    words,
    values: numbers.map((value) => (value === null ? 'none' : say(value))),
    differs: others.includes(true),
    others,
  };
}

/** All numbers of the groups in rows, section by section; rows that no group has are left out. */
export function comparedSections(groups: readonly Compared[], units: UnitPreferences): ComparedSection[] {
  const has = (name: GroupNumberName) => groups.some((group) => group.numbers[name] !== null);
  const sections = numberSections.map((section) => ({
    title: section.title,
    rows: section.rows
      .filter((each) => has(each.name))
      .map((each) => row(each.name, each.words, groups, (value) => showNumber(value, each.unit, units))),
  }));
  const manner = manners.map((each) =>
    row(
      each.name,
      each.words,
      groups,
      (value) => each.answers.find((answer) => answer.value === value)?.words ?? '',
    ),
  );
  return [...sections, { title: 'Manner', rows: manner }];
}
