import { groupFigure, groupNumberNames } from '../plan/groups.ts';
import type { Confidence, GroupNumberName, GroupNumbers, PlantGroup } from '../plan/groups.ts';
import type { RandomStream } from '../weather/index.ts';

/**
 * How far a number of a plant group may lie from what the catalogue says: kelvin, hours, or a share of the number.
 * All deviations here are judgement, no source. They are meant to hold both the doubt about the figure and the
 * difference between the plants of a group: workers who measured the same species give base and optimum temperatures
 * some 1–3 K apart and light needs often a fifth to a third apart (from memory). Two trials put good light for kalanchoes
 * at 8–10 mol (Mortensen, ten pot plants by light and temperature) and at 15–20 mol (Mortensen 2014, Rosa and Kalanchoe):
 * two draws that far apart, ln(17.5/9) = 0.66, are of a share of 0.47, so that 0.3 is no wide spread for a light that
 * nobody measured. No base temperature of a succulent is
 * published: for an echeveria practice would put it at 5 °C, while growth as good at 10 as at 20 °C (Erwin et al.,
 * constant-temperature trial) needs 0–3 °C.
 */
export type SpreadKind = 'warmth' | 'damage' | 'light' | 'dose' | 'day-length' | 'none';

/** Standard deviation: in the number's own unit, or as a share of it. */
export interface Spread {
  readonly deviation: number;
  readonly of: 'value' | 'share';
}

/** The family of each number: those of one family miss together in part. */
export const spreadKind: { readonly [Name in GroupNumberName]: SpreadKind } = {
  baseTemperature: 'warmth',
  optimumLow: 'warmth',
  optimumHigh: 'warmth',
  slowAbove: 'warmth',
  ceiling: 'warmth',
  damageColdDry: 'damage',
  damageColdWet: 'damage',
  damageHot: 'damage',
  hardenGain: 'dose',
  hardenBelow: 'warmth',
  hardenSpan: 'dose',
  winterHold: 'warmth',
  lightHold: 'light',
  lightStretch: 'light',
  lightGood: 'light',
  lightGoodHigh: 'light',
  lightMost: 'light',
  canRestDim: 'none',
  inertiaDays: 'dose',
  waterDays: 'dose',
  heatDays: 'dose',
  hotDay: 'warmth',
  hotDays: 'dose',
  declineDays: 'dose',
  killDays: 'dose',
  wetColdBelow: 'damage',
  restBelow: 'warmth',
  restWeeks: 'dose',
  chillBelow: 'damage',
  chillDose: 'dose',
  criticalDayLength: 'day-length',
  dayLengthKind: 'none',
  dryFromMonth: 'none',
  dryToMonth: 'none',
  carbonNight: 'warmth',
  carbonCool: 'dose',
  carbonWarm: 'dose',
  carbonShift: 'none',
};

/**
 * Standard deviations by confidence, judgement, no source: cardinal temperatures [K], limits of damage [K] (hardiness
 * lists differ by more, and plants of a group most of all), light (share), times, doses and other spans (share), day length [h].
 * `own` is for a number that the user has set: a thermometer's or a light meter's error, no more.
 */
const deviations: Record<Exclude<SpreadKind, 'none'>, Record<Confidence | 'own', number>> = {
  warmth: { high: 0.7, medium: 1.2, low: 2, own: 0.5 },
  damage: { high: 1, medium: 1.5, low: 2.5, own: 0.5 },
  light: { high: 0.12, medium: 0.2, low: 0.3, own: 0.1 },
  dose: { high: 0.15, medium: 0.25, low: 0.35, own: 0.1 },
  'day-length': { high: 0.25, medium: 0.35, low: 0.5, own: 0.15 },
};

/** Draws go no further than so many deviations: a group is not another group. */
const furthest = 2;

/** Part of the variance that numbers of a family have in common: a plant's whole curve lies warmer or cooler. */
const sharedVariance = 0.5;

/**
 * How far a number may lie off; null where the group has no such number or it does not vary (yes and no, months, a
 * slope).
 * @param own whether the user has set it
 */
export function spreadOf(group: PlantGroup, name: GroupNumberName, own = false): Spread | null {
  const kind = spreadKind[name];
  const figure = groupFigure[name](group);
  if (kind === 'none' || figure === null) return null;
  const deviation = deviations[kind][own ? 'own' : figure.confidence];
  return { deviation, of: kind === 'light' || kind === 'dose' ? 'share' : 'value' };
}

/** Numbers that must keep their order, each chain rising; the one at `anchor` stays where it was drawn. */
const chains: readonly { readonly names: readonly GroupNumberName[]; readonly anchor: number }[] = [
  { names: ['baseTemperature', 'optimumLow', 'optimumHigh', 'slowAbove', 'ceiling'], anchor: 1 },
  { names: ['damageColdDry', 'damageColdWet', 'damageHot'], anchor: 1 },
  { names: ['declineDays', 'killDays'], anchor: 0 },
  { names: ['lightHold', 'lightStretch', 'lightGood', 'lightGoodHigh', 'lightMost'], anchor: 2 },
];

/** Thresholds that differ are kept apart by no less than this, so that rounding does not make them one. */
const leastDistance = 1e-9;

type Draft = Record<GroupNumberName, number | null>;

/**
 * A group's numbers as they might be: each moved within its spread, shares by the exponential of a normal so that
 * they stay above zero. A threshold that comes too near its neighbour is pushed off to half of the distance they
 * had, so that a drawn group is always one that the catalogue could hold. The same stream gives the same draw, and
 * a number that the user changes leaves the draws of the others as they are.
 * @param numbers the plan's numbers for the group; what differs from the catalogue is the user's own
 * @param scale multiplies every deviation: 0 draws the numbers themselves
 */
export function drawNumbers(
  group: PlantGroup,
  numbers: GroupNumbers,
  stream: RandomStream,
  scale = 1,
): GroupNumbers {
  if (!(scale >= 0)) throw new RangeError(`expected a scale of 0 or more, got ${scale}`);
  const families = new Map(Object.keys(deviations).map((kind) => [kind, stream.normal()]));
  const drawn: Draft = { ...numbers };
  for (const name of groupNumberNames) {
    const alone = stream.normal();
    const value = numbers[name];
    const spread = spreadOf(group, name, value !== groupFigure[name](group)?.value);
    if (value === null || spread === null) continue;
    const together = families.get(spreadKind[name]) as number;
    const normal = Math.sqrt(sharedVariance) * together + Math.sqrt(1 - sharedVariance) * alone;
    const off = scale * spread.deviation * Math.max(-furthest, Math.min(furthest, normal));
    drawn[name] = spread.of === 'share' ? value * Math.exp(off) : value + off;
  }
  for (const { names, anchor } of chains) keepOrder(drawn, numbers, names, anchor);
  return drawn as unknown as GroupNumbers;
}

/** Pushes the thresholds of a chain apart, from its anchor outwards. */
function keepOrder(
  drawn: Draft,
  numbers: GroupNumbers,
  names: readonly GroupNumberName[],
  anchor: number,
): void {
  const half = (low: number) => {
    const [a, b] = [numbers[names[low]] as number, numbers[names[low + 1]] as number];
    return a < b ? Math.max((b - a) / 2, leastDistance) : 0;
  };
  for (let at = anchor + 1; at < names.length; at += 1) {
    const least = (drawn[names[at - 1]] as number) + half(at - 1);
    drawn[names[at]] = Math.max(drawn[names[at]] as number, least);
  }
  for (let at = anchor - 1; at >= 0; at -= 1) {
    const most = (drawn[names[at + 1]] as number) - half(at);
    drawn[names[at]] = Math.min(drawn[names[at]] as number, most);
  }
}
