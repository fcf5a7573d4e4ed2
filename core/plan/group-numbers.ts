import type { Figure, PlantGroup } from './group.ts';

/**
 * A plant group as plain numbers, the form the engine computes with and the user edits. Temperatures [°C],
 * the first five 24-h means; light [mol m⁻² d⁻¹]; null where the group has no such need.
 */
export interface GroupNumbers {
  readonly baseTemperature: number;
  readonly optimumLow: number;
  readonly optimumHigh: number;
  readonly slowAbove: number;
  readonly ceiling: number;
  readonly damageColdDry: number;
  readonly damageColdWet: number;
  readonly damageHot: number;
  /** Kelvin hardier when hardened; mean at which hardening begins [°C] and how far below it is complete [K]. */
  readonly hardenGain: number;
  readonly hardenBelow: number;
  readonly hardenSpan: number;
  readonly winterHold: number;
  readonly lightHold: number;
  readonly lightStretch: number;
  readonly lightGood: number;
  readonly lightGoodHigh: number;
  readonly lightMost: number;
  /** 1 where it stands still when warm and below the hold light, 0 where it stretches. */
  readonly canRestDim: number;
  /** Time constants of the plant's memory and of the drying mix [d]. */
  readonly inertiaDays: number;
  readonly waterDays: number;
  /** Days of warm means, and of hot days above `hotDay` [°C leaf], that bring heat rest; days to decline [d]. */
  readonly heatDays: number;
  readonly hotDay: number;
  readonly hotDays: number;
  readonly declineDays: number;
  /** Warm days after which it is dead [d]. */
  readonly killDays: number;
  readonly wetColdBelow: number;
  readonly restBelow: number | null;
  readonly restWeeks: number | null;
  readonly chillBelow: number | null;
  /** Degree-hours of chill that injure [K h]. */
  readonly chillDose: number | null;
  /** Day length [h] under (short) or over (long) which flowers are set; null where day length does not matter. */
  readonly criticalDayLength: number | null;
  /** 1 long-day, -1 short-day, 0 neither. */
  readonly dayLengthKind: number;
  readonly dryFromMonth: number | null;
  readonly dryToMonth: number | null;
  /** Night temperature of most carbon gain [°C], kelvin to half of it either way, and its shift with growth warmth [K K⁻¹]. */
  readonly carbonNight: number | null;
  readonly carbonCool: number | null;
  readonly carbonWarm: number | null;
  readonly carbonShift: number | null;
}

export type GroupNumberName = keyof GroupNumbers;

/** Where each plain number lies in the catalogue, for showing its source beside it; null where it has no figure. */
export const groupFigure: { readonly [Name in GroupNumberName]: (group: PlantGroup) => Figure | null } = {
  baseTemperature: (group) => group.temperature.base,
  optimumLow: (group) => group.temperature.optimumLow,
  optimumHigh: (group) => group.temperature.optimumHigh,
  slowAbove: (group) => group.temperature.slow,
  ceiling: (group) => group.temperature.ceiling,
  damageColdDry: (group) => group.damage.coldDry,
  damageColdWet: (group) => group.damage.coldWet,
  damageHot: (group) => group.damage.hot,
  hardenGain: (group) => group.hardening.gain,
  hardenBelow: (group) => group.hardening.below,
  hardenSpan: (group) => group.hardening.span,
  winterHold: (group) => group.winterHold,
  lightHold: (group) => group.light.hold,
  lightStretch: (group) => group.light.stretch,
  lightGood: (group) => group.light.good,
  lightGoodHigh: (group) => group.light.goodHigh,
  lightMost: (group) => group.light.most,
  canRestDim: ({ canRestDim }) => ({
    value: canRestDim.value ? 1 : 0,
    source: `${canRestDim.reason} (${canRestDim.source})`,
    confidence: canRestDim.confidence,
  }),
  inertiaDays: (group) => group.inertiaDays,
  waterDays: (group) => group.waterDays,
  heatDays: (group) => group.heatDose.days,
  hotDay: (group) => group.heatDose.hotDay,
  hotDays: (group) => group.heatDose.hotDays,
  declineDays: (group) => group.heatDose.declineDays,
  killDays: (group) => group.heatDose.killDays,
  wetColdBelow: (group) => group.wetColdBelow,
  restBelow: (group) => group.rest?.below ?? null,
  restWeeks: (group) => group.rest?.weeks ?? null,
  chillBelow: (group) => group.chill?.below ?? null,
  chillDose: (group) => group.chill?.dose ?? null,
  criticalDayLength: (group) => group.dayLength.critical,
  dayLengthKind: ({ dayLength }) => ({
    value: dayLength.kind === 'long' ? 1 : dayLength.kind === 'short' ? -1 : 0,
    source: dayLength.critical?.source ?? 'no day-length cue known',
    confidence: dayLength.critical?.confidence ?? 'low',
  }),
  dryFromMonth: (group) => group.dryMonths?.from ?? null,
  dryToMonth: (group) => group.dryMonths?.to ?? null,
  carbonNight: (group) => group.carbon?.night ?? null,
  carbonCool: (group) => group.carbon?.cool ?? null,
  carbonWarm: (group) => group.carbon?.warm ?? null,
  carbonShift: (group) => group.carbon?.shift ?? null,
};

/** Names of the numbers, in the order in which they are shown. */
export const groupNumberNames = Object.keys(groupFigure) as readonly GroupNumberName[];

/** Pairs that must not fall: the first at most the second, and whether they may be equal. */
const order: readonly (readonly [GroupNumberName, GroupNumberName, boolean])[] = [
  ['baseTemperature', 'optimumLow', false],
  ['optimumLow', 'optimumHigh', true],
  ['optimumHigh', 'slowAbove', true],
  ['slowAbove', 'ceiling', false],
  ['damageColdDry', 'damageColdWet', true],
  ['damageColdWet', 'damageHot', false],
  ['declineDays', 'killDays', true],
  ['lightHold', 'lightStretch', true],
  ['lightStretch', 'lightGood', true],
  ['lightHold', 'lightGood', false],
  ['lightGood', 'lightGoodHigh', true],
  ['lightGoodHigh', 'lightMost', true],
];
/** Numbers that must be above zero: time constants [d], doses, hold light. */
const positive: readonly GroupNumberName[] = [
  'inertiaDays',
  'waterDays',
  'heatDays',
  'hotDays',
  'declineDays',
  'hardenSpan',
  'carbonCool',
  'carbonWarm',
  'lightHold',
  'restWeeks',
  'chillDose',
];
const months: readonly GroupNumberName[] = ['dryFromMonth', 'dryToMonth'];

/** What is wrong with a set of numbers, in plain sentences; empty where nothing is. */
export function groupNumberProblems(numbers: GroupNumbers): string[] {
  const problems: string[] = [];
  for (const name of groupNumberNames) {
    const value = numbers[name];
    if (value !== null && !Number.isFinite(value))
      problems.push(`expected ${name} to be a finite number, got ${value}`);
  }
  for (const [low, high, mayEqual] of order) {
    const [a, b] = [numbers[low] as number, numbers[high] as number];
    if (!(a < b || (mayEqual && a === b))) {
      problems.push(`expected ${low} ${mayEqual ? 'at most' : 'below'} ${high}, got ${a} and ${b}`);
    }
  }
  for (const name of positive) {
    const value = numbers[name];
    if (value !== null && !(value > 0)) problems.push(`expected ${name} above 0, got ${value}`);
  }
  if (!(numbers.hardenGain >= 0)) {
    problems.push(`expected hardenGain at least 0, got ${numbers.hardenGain}`);
  }
  const shift = numbers.carbonShift;
  if (shift !== null && !(shift >= 0 && shift < 1)) {
    problems.push(`expected carbonShift from 0 to below 1, got ${shift}`);
  }
  for (const name of months) {
    const value = numbers[name];
    if (value !== null && !(Number.isInteger(value) && value >= 1 && value <= 12)) {
      problems.push(`expected ${name} to be a month from 1 to 12, got ${value}`);
    }
  }
  return problems;
}

/** The user's own numbers over a group's: number name → value. */
export type GroupEdits = Readonly<Record<string, number>>;

/** Which edits name no number of a group, or a number that the group does not have; empty where all fit. */
export function groupEditProblems(group: PlantGroup, edits: GroupEdits): string[] {
  const unknown = Object.keys(edits).filter((name) => !Object.hasOwn(groupFigure, name));
  if (unknown.length > 0) {
    return unknown.map((name) => `expected the name of a number of a plant group, got '${name}'`);
  }
  const numbers: GroupNumbers = { ...catalogueNumbers(group), ...edits };
  return [...groupNumberProblems(numbers), ...gainProblems(numbers, edits)];
}

/**
 * A gain of the user's own must fit between the dry and the wet limit. Where only the limits were moved the gain is
 * held to what is between them (see `hardeningGain`), so that a plan with limits of its own stays readable.
 */
function gainProblems({ hardenGain, damageColdDry, damageColdWet }: GroupNumbers, edits: GroupEdits) {
  const room = damageColdWet - damageColdDry;
  if (!Object.hasOwn(edits, 'hardenGain') || hardenGain <= room + 1e-9) return [];
  return [`expected hardenGain at most damageColdWet less damageColdDry, got ${hardenGain} and ${room}`];
}

const plain = new WeakMap<PlantGroup, GroupNumbers>();

/** The catalogue's figures of a group as plain numbers; a group never changes, so they are read once. */
function catalogueNumbers(group: PlantGroup): GroupNumbers {
  const known = plain.get(group);
  if (known !== undefined) return known;
  const entries = groupNumberNames.map((name) => [name, groupFigure[name](group)?.value ?? null] as const);
  const numbers = Object.fromEntries(entries) as unknown as GroupNumbers;
  plain.set(group, numbers);
  return numbers;
}

/**
 * The numbers the engine computes with: the catalogue's, with the user's own in their place.
 * @throws where an edit names no number or breaks the order of the thresholds; ask `groupEditProblems` first
 */
export function groupNumbers(group: PlantGroup, edits: GroupEdits = {}): GroupNumbers {
  const problems = groupEditProblems(group, edits);
  if (problems.length > 0) throw new RangeError(`plant group '${group.id}': ${problems.join('; ')}`);
  return { ...catalogueNumbers(group), ...edits };
}
