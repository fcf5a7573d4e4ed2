import type { GroupNumbers, Habit } from '../plan/groups.ts';
import { lackEnds, lightNeeded, thresholdsOf } from '../plants/thresholds.ts';
import { restingCold, restingDim, restingDry, stretching } from '../plants/words.ts';
import type { WinterFit } from './rank-result.ts';

/** What of a winter counts for how well a group spends it; days and doses of the winter half-year. */
export interface WinterFacts {
  /** Days of each state, indexed as `plantStates`, and days of the half-year [d]. */
  readonly stateDays: readonly number[];
  readonly days: number;
  /** Days with a 24-h mean below the group's rest, on which it does not stretch [d]. */
  readonly coolDays: number;
  /**
   * Of the days of rest from cold and from dark, those that its light holds it through [d]: a day at or below the coldest
   * that darkness does no harm counts whole, a warmer one as the share of the hold light that the plant has.
   */
  readonly heldCold: number;
  readonly heldDim: number;
  /** Of the days of stretching, how many it is drawn up for in full [d]: see `drawnUp`. */
  readonly drawn: number;
  /** Held dry in months in which the group is kept dry anyway, with light enough to stay compact [d]. */
  readonly dryInSeason: number;
  /** Least distance of the leaf from the cold limit of its day [K]. */
  readonly sparedKelvin: number;
  /** Frost and heat [K h], the most chill carried at once [K h], the others [d]. */
  readonly harm: Readonly<Record<HarmId, number>>;
}

export type HarmId = 'frost' | 'chill' | 'heat' | 'wetCold' | 'decline' | 'scorch';

/** What the group is, for the score. */
export interface WinterWant {
  readonly numbers: GroupNumbers;
  readonly habit: Habit;
  /** Its flowers follow the cool rest, so that it is missed where it fails. */
  readonly flowersAfterRest: boolean;
}

/** Dose that just counts as damage [K h] and each further dose that halves what is left of the score [K h] (judgement, no source). */
const damageDose = 1;
const deepDose = 12;
/** Share of the chill dose from which it is harm: warned of at 100 of 500 K h (placeholder of the threshold collection). */
const chillWarning = 0.2;
/** Days of wet cold, decline and scorch that put the plant in danger [d] (judgement, no source). */
const dangerDays = { wetCold: 14, decline: 21, scorch: 42 };
/** Bleaching takes about a week of too much light [d] (Nobel & Hartsock 1983, prickly pear); fewer days are not counted. */
const bleachingDays = 7;
/** Scorch marks leaves but does not kill: it never makes a place unsafe (judgement, no source). */
const mostScorch = 0.5;

/** How grave each harm is: 0 none, from 1 on the plant is not safe. */
export function gravities(facts: WinterFacts, want: WinterWant): Record<HarmId, number> {
  const { harm } = facts;
  const burnt = (dose: number) => (dose >= damageDose ? 1 + dose / deepDose : 0);
  const chill = want.numbers.chillDose === null ? 0 : harm.chill / want.numbers.chillDose;
  return {
    frost: burnt(harm.frost),
    chill: chill >= chillWarning ? chill : 0,
    heat: burnt(harm.heat),
    wetCold: harm.wetCold / dangerDays.wetCold,
    decline: harm.decline / dangerDays.decline,
    scorch: harm.scorch < bleachingDays ? 0 : Math.min(mostScorch, harm.scorch / dangerDays.scorch),
  };
}

/**
 * What a day in each state is worth, in the order of `plantStates`: growing, slow, resting from cold, from heat, from
 * dark, held dry, stretching where it is not drawn up (judgement, no source). A safe rest is as good as growing, but not for winter growers.
 */
const worth = {
  usual: [1, 0.9, 0.95, 0.5, 0.45, 0.5, 0.9],
  winterGrower: [1, 0.85, 0.45, 0.3, 0.3, 0.35, 0.85],
};
/**
 * What a day of rest from dark is worth to a plant that stands unchanged in the dark, where its light holds it or it is
 * cold (judgement, no source).
 */
const standingStill = 0.75;
/**
 * Mean of day and night at and below which a plant at rest may stand in the dark [°C]: common practice, no source, has dry
 * cactuses and agaves through the winter in a cellar below 10 °C, and those that rest warmer below the mean of their rest.
 */
const darkBelow = 10;

/**
 * How badly a plant that stretches is drawn up, 0–1: in full at half the light that keeps it compact at its warmth (there
 * stretching is severe), not at all where its light is enough again (judgement, no source).
 */
export function drawnUp(warmth: number, light: number, numbers: GroupNumbers): number {
  const share = light / lightNeeded(numbers, thresholdsOf(numbers), warmth);
  return Math.min(1, Math.max(0, (lackEnds - share) / (lackEnds - 0.5)));
}

/** How far its light holds a plant at rest, 0–1: wholly where it is cold; else by its share of the hold light. */
export function heldAtRest(warmth: number, light: number, numbers: GroupNumbers): number {
  if (warmth <= Math.max(darkBelow, numbers.restBelow ?? darkBelow)) return 1;
  return light < numbers.lightHold ? light / numbers.lightHold : 1;
}
/** Share of the score that the cool rest has where flowers follow it, and where it is only of profit (judgement). */
const restShare = { flowers: 0.4, profit: 0.1 };
/** Kelvin above the cold limit that are enough for a winter colder than this one, and the share lost without any (judgement). */
export const enoughSpared = 4;
const sparedShare = 0.5;

export const growsInWinter = ({ habit }: WinterWant) => habit === 'winter';

/** Days of cool rest the group asks for [d]; 0 where it asks for none or grows in winter. */
export function restWanted(want: WinterWant): number {
  const { restBelow, restWeeks } = want.numbers;
  return restBelow === null || restWeeks === null || growsInWinter(want) ? 0 : 7 * restWeeks;
}

/**
 * Worth of its days, 0–1. A day of stretching is one of slow growth as far as it is not drawn up; as far as it is it takes
 * from the others too, since what is drawn stays drawn.
 */
function worthOfDays(facts: WinterFacts, want: WinterWant): number {
  const { stateDays, dryInSeason, heldCold, heldDim, drawn, days } = facts;
  const values = [...(growsInWinter(want) ? worth.winterGrower : worth.usual)];
  if (want.numbers.canRestDim === 1) values[restingDim] = standingStill;
  const counted = [...stateDays];
  [counted[restingCold], counted[restingDim]] = [heldCold, heldDim];
  counted[stretching] -= drawn;
  const sum = counted.reduce((total, count, state) => total + count * values[state], 0);
  const whole = sum + dryInSeason * (1 - values[restingDry]);
  return (whole / days) * (1 - drawn / days);
}

/** How well it lives, harms apart, 0–1: worth of its days, its rest, and the kelvin it has in hand. */
export function comfort(facts: WinterFacts, want: WinterWant): number {
  const wanted = restWanted(want);
  const weight = wanted === 0 ? 0 : want.flowersAfterRest ? restShare.flowers : restShare.profit;
  const rest = wanted === 0 ? 0 : Math.min(1, facts.coolDays / wanted);
  const spared = Math.min(1, Math.max(0, facts.sparedKelvin / enoughSpared));
  return ((1 - weight) * worthOfDays(facts, want) + weight * rest) * (1 - sparedShare * (1 - spared));
}

/**
 * Score and verdict of a winter. Where a harm is as grave as 1 the place is unsafe and the score is a quarter at most,
 * less the graver it is, whatever else is good there. Otherwise it is a quarter and, of the other three, the comfort
 * less what lighter harms take of it: under a half `poorly`, under three quarters `with care`, else `well`.
 */
export function scoreOf(facts: WinterFacts, want: WinterWant): Pick<WinterFit, 'score' | 'verdict'> {
  const grave = Object.values(gravities(facts, want));
  const beyond = grave.reduce((sum, value) => sum + Math.max(0, value - 1), 0);
  const left = grave.reduce((product, value) => product * Math.max(0, 1 - value), 1);
  const score = 0.25 / (1 + beyond) + 0.75 * comfort(facts, want) * left;
  if (grave.some((value) => !(value < 1))) return { score, verdict: 'unsafe' };
  return { score, verdict: score >= 0.75 ? 'well' : score >= 0.5 ? 'with-care' : 'poorly' };
}
