import { groupFigure, groupNumbers, plantGroup } from '../../core/index.ts';
import type { GroupNumberName, GroupNumbers, Habit, Plan, PlantGroup } from '../../core/index.ts';

export const habits: readonly { id: Habit; words: string }[] = [
  { id: 'winter', words: 'Winter growers' },
  { id: 'spring-and-autumn', words: 'Grow in spring and autumn' },
  { id: 'summer', words: 'Summer growers' },
  { id: 'warm-season', words: 'Grow in warmth' },
  { id: 'cool-season', words: 'Grow in the cool' },
  { id: 'all-year', words: 'Grow all year if warm' },
];

/** How a number is shown and between which others it must stay. */
export interface NumberRow {
  readonly name: GroupNumberName;
  readonly words: string;
  /** Unit of the field, as `units.ts` reads it; '' for counts and months. */
  readonly unit: '°C' | 'mol' | 'days' | 'weeks' | 'h' | 'K h' | '';
  readonly least: number;
  readonly most: number;
  /** Names of the numbers it may not fall below and not rise above. */
  readonly above?: GroupNumberName;
  readonly below?: GroupNumberName;
}
export interface NumberSection {
  readonly title: string;
  readonly note: string;
  readonly rows: readonly NumberRow[];
}

type Range = readonly [number, number];
const degrees = (
  name: GroupNumberName,
  words: string,
  [least, most]: Range,
  above?: GroupNumberName,
  below?: GroupNumberName,
): NumberRow => ({
  name,
  words,
  unit: '°C',
  least,
  most,
  above,
  below,
});
const light = (
  name: GroupNumberName,
  words: string,
  above?: GroupNumberName,
  below?: GroupNumberName,
): NumberRow => ({
  name,
  words,
  unit: 'mol',
  least: 0.1,
  most: 80,
  above,
  below,
});
const time = (name: GroupNumberName, words: string, unit: 'days' | 'weeks', most: number): NumberRow => ({
  name,
  words,
  unit,
  least: 0.5,
  most,
});

/** All numbers of a group that are quantities, as a grower would look for them. */
export const numberSections: readonly NumberSection[] = [
  {
    title: 'Warmth',
    note: 'Leaf temperature, mean of 24 hours',
    rows: [
      degrees('baseTemperature', 'Growth begins at', [-5, 30], undefined, 'optimumLow'),
      degrees('optimumLow', 'Best from', [0, 40], 'baseTemperature', 'optimumHigh'),
      degrees('optimumHigh', 'Best up to', [0, 45], 'optimumLow', 'slowAbove'),
      degrees('slowAbove', 'Slows above', [5, 50], 'optimumHigh', 'ceiling'),
      degrees('ceiling', 'Growth ends at', [10, 55], 'slowAbove'),
      degrees('winterHold', 'Careful winter minimum', [-30, 25]),
    ],
  },
  {
    title: 'Light',
    note: 'Daily light at the plant',
    rows: [
      light('lightHold', 'Holds when cool with', undefined, 'lightStretch'),
      light('lightStretch', 'Stays compact when warm with', 'lightHold', 'lightGood'),
      light('lightGood', 'Grows well from', 'lightStretch', 'lightGoodHigh'),
      light('lightGoodHigh', 'Grows well up to', 'lightGood', 'lightMost'),
      light('lightMost', 'Bleaches above', 'lightGoodHigh'),
    ],
  },
  {
    title: 'Damage',
    note: 'Leaf temperature borne for a few hours, unless said',
    rows: [
      degrees('damageColdDry', 'Cold, kept dry', [-60, 20], undefined, 'damageColdWet'),
      degrees('damageColdWet', 'Cold, moist or soft', [-60, 25], 'damageColdDry', 'damageHot'),
      degrees('damageHot', 'Heat', [25, 70], 'damageColdWet'),
      degrees('wetColdBelow', 'Wet mix rots below a mean of', [-20, 25]),
      degrees('chillBelow', 'Chills below', [0, 25]),
      { name: 'chillDose', words: 'Chill that injures', unit: 'K h', least: 1, most: 5000 },
    ],
  },
  {
    title: 'Rest and seasons',
    note: 'What starts and ends a rest',
    rows: [
      degrees('restBelow', 'A cool rest is below', [-10, 25]),
      time('restWeeks', 'for at least', 'weeks', 40),
      degrees('hotDay', 'A hot day is above', [20, 55]),
      time('hotDays', 'Hot days that bring heat rest', 'days', 60),
      time('heatDays', 'Warm days and nights that bring it', 'days', 120),
      time('declineDays', 'Heat rest that does harm', 'days', 240),
      time('inertiaDays', 'Answers to a change within', 'days', 90),
      time('waterDays', 'Pots dry out in', 'days', 120),
      { name: 'criticalDayLength', words: 'Day length that sets flower', unit: 'h', least: 6, most: 18 },
      { name: 'dryFromMonth', words: 'Kept dry from month', unit: '', least: 1, most: 12 },
      { name: 'dryToMonth', words: 'Kept dry to month', unit: '', least: 1, most: 12 },
    ],
  },
];

/** Least and most that a number may have beside its neighbours in the group. */
export function rangeOf(row: NumberRow, numbers: GroupNumbers): [number, number] {
  const low = row.above === undefined ? null : numbers[row.above];
  const high = row.below === undefined ? null : numbers[row.below];
  return [
    low === null ? row.least : Math.max(row.least, low),
    high === null ? row.most : Math.min(row.most, high),
  ];
}

/** The plan with one number of a group set to the user's own value, or back to the catalogue's where `value` is null. */
export function withNumber(plan: Plan, groupId: string, name: GroupNumberName, value: number | null): Plan {
  const group = plantGroup(groupId);
  if (!group) throw new Error(`expected a known plant group, got ${groupId}`);
  const edits: Record<string, number> = { ...plan.groupEdits[groupId] };
  if (value === null || value === groupFigure[name](group)?.value) delete edits[name];
  else edits[name] = value;
  const others = Object.fromEntries(Object.entries(plan.groupEdits).filter(([id]) => id !== groupId));
  return { ...plan, groupEdits: Object.keys(edits).length > 0 ? { ...others, [groupId]: edits } : others };
}

/** The numbers of a group as the plan has them. */
export function numbersIn(plan: Plan, group: PlantGroup): GroupNumbers {
  return groupNumbers(group, plan.groupEdits[group.id] ?? {});
}
