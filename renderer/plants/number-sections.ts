import type { GroupNumberName, Habit } from '../../core/index.ts';
import type { CurveId } from './curves.ts';

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
  /** Unit of the field, as `units.ts` reads it; '' for shares and months. */
  readonly unit: '°C' | 'K' | 'mol' | 'days' | 'weeks' | 'h' | 'K h' | '';
  /** Whether only whole numbers count. */
  readonly integer?: boolean;
  /** What to say where it does not fit numbers that are not its neighbours. */
  readonly misfit?: string;
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
  /** The curves these numbers shape, by their ids in `curves.ts`. */
  readonly curves: readonly CurveId[];
}

/** A number that stands for a manner: one of a few answers. */
export interface MannerRow {
  readonly name: GroupNumberName;
  readonly words: string;
  readonly answers: readonly { readonly value: number; readonly words: string }[];
}

export const manners: readonly MannerRow[] = [
  {
    name: 'canRestDim',
    words: 'Warm and too dim, it',
    answers: [
      { value: 1, words: 'stands still' },
      { value: 0, words: 'stretches' },
    ],
  },
  {
    name: 'dayLengthKind',
    words: 'Sets flower in',
    answers: [
      { value: -1, words: 'short days' },
      { value: 1, words: 'long days' },
      { value: 0, words: 'days of any length' },
    ],
  },
];

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
const kelvin = (name: GroupNumberName, words: string, [least, most]: Range): NumberRow => ({
  name,
  words,
  unit: 'K',
  least,
  most,
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
    curves: ['development'],
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
    title: 'Nights',
    note: 'Leaf temperature by night, for the substance it gains; new growth goes by the whole day',
    curves: ['carbon'],
    rows: [
      degrees('carbonNight', 'Gains most in nights of', [-5, 35]),
      kelvin('carbonCool', 'Half of it when cooler by', [1, 25]),
      kelvin('carbonWarm', 'Half of it when warmer by', [1, 25]),
      {
        name: 'carbonShift',
        words: 'Each degree of growth warmth moves it by',
        unit: '',
        least: 0,
        most: 0.99,
      },
    ],
  },
  {
    title: 'Light',
    note: 'Light at the plant, mol/m² a day',
    curves: ['light', 'needed'],
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
    curves: [],
    rows: [
      degrees('damageColdDry', 'Cold, kept dry', [-60, 20], undefined, 'damageColdWet'),
      degrees('damageColdWet', 'Cold, moist or soft', [-60, 25], 'damageColdDry', 'damageHot'),
      degrees('damageHot', 'Heat', [25, 70], 'damageColdWet'),
      degrees('hardenBelow', 'Hardens below a mean of', [-10, 40]),
      kelvin('hardenSpan', 'Fully hardened when colder by', [0.5, 60]),
      {
        ...kelvin('hardenGain', 'Hardened, it bears colder by', [0, 30]),
        misfit: 'It must fit between the cold it bears kept dry and the cold it bears moist.',
      },
      degrees('wetColdBelow', 'Wet mix rots below a mean of', [-20, 25]),
      degrees('chillBelow', 'Chills below', [0, 25]),
      { name: 'chillDose', words: 'Chill that injures', unit: 'K h', least: 1, most: 5000 },
    ],
  },
  {
    title: 'Rest and seasons',
    note: 'What starts and ends a rest',
    curves: [],
    rows: [
      degrees('restBelow', 'A cool rest is below', [-10, 25]),
      time('restWeeks', 'A cool rest lasts at least', 'weeks', 40),
      degrees('hotDay', 'A hot day is above', [20, 55]),
      time('hotDays', 'Hot days that bring heat rest', 'days', 60),
      time('heatDays', 'Warm days and nights that bring it', 'days', 120),
      { ...time('declineDays', 'Heat rest that does harm', 'days', 240), below: 'killDays' },
      { ...time('killDays', 'Heat rest that kills', 'days', 400), above: 'declineDays' },
      time('inertiaDays', 'Answers to a change within', 'days', 90),
      time('waterDays', 'Pots dry out in', 'days', 120),
      { name: 'criticalDayLength', words: 'Day length that sets flower', unit: 'h', least: 6, most: 18 },
      { name: 'dryFromMonth', words: 'Kept dry from month', unit: '', integer: true, least: 1, most: 12 },
      { name: 'dryToMonth', words: 'Kept dry to month', unit: '', integer: true, least: 1, most: 12 },
    ],
  },
];

/**
 * Numbers that are of use together only, with the values they begin at in a group of which none is known (common
 * practice, no source; chill and nights as in the catalogue's usual groups). Whoever gives one gives all of them.
 */
export const companies: readonly (readonly { readonly name: GroupNumberName; readonly first: number }[])[] = [
  [
    { name: 'restBelow', first: 10 },
    { name: 'restWeeks', first: 6 },
  ],
  [
    { name: 'chillBelow', first: 12 },
    { name: 'chillDose', first: 500 },
  ],
  [
    { name: 'dryFromMonth', first: 11 },
    { name: 'dryToMonth', first: 2 },
  ],
  [
    { name: 'carbonNight', first: 14 },
    { name: 'carbonCool', first: 9 },
    { name: 'carbonWarm', first: 9 },
    { name: 'carbonShift', first: 0 },
  ],
];
