import type { GroupNumbers, PlantGroup } from '../plan/groups.ts';
import type { LotSeason } from '../season/result.ts';
import { isDryMonth, plantStates, seasonMonth } from '../plants/index.ts';
import { restingCold, restingDim, restingDry, stretching } from '../plants/words.ts';
import { drawnUp, heldAtRest, scoreOf } from './rank-score.ts';
import type { WinterFacts, WinterWant } from './rank-score.ts';
import { harmsOf, winterWords } from './rank-words.ts';
import { mean, sum } from './winter-sums.ts';
import type { WinterFit } from './rank-result.ts';

/** First and last day of the winter half-year, and the season's first day as day of a common year (1 August where not given). */
interface Winter {
  readonly from: number;
  readonly to: number;
  readonly startDay?: number;
}

/** What of a lot's winter half-year counts for the score. */
export function winterFacts(
  lot: LotSeason,
  numbers: GroupNumbers,
  { from, to, startDay }: Winter,
): WinterFacts {
  const stateDays = plantStates.map(() => 0);
  let [coolDays, dryInSeason, heldCold, heldDim, drawn, sparedKelvin] = [0, 0, 0, 0, 0, Infinity];
  for (let day = from; day <= to; day++) {
    const state = lot.state[day];
    stateDays[state] += 1;
    if (numbers.restBelow !== null && state !== stretching && lot.lived.leafMean[day] < numbers.restBelow)
      coolDays += 1;
    const lit = lot.rememberedLight[day] >= numbers.lightHold;
    if (state === restingDry && lit && isDryMonth(numbers, seasonMonth(day, startDay))) dryInSeason += 1;
    const remembered = [lot.rememberedLeaf[day], lot.rememberedLight[day]] as const;
    const held = heldAtRest(...remembered, numbers);
    if (state === stretching) drawn += drawnUp(...remembered, numbers);
    if (state === restingCold) heldCold += held;
    if (state === restingDim) heldDim += held;
    sparedKelvin = Math.min(sparedKelvin, lot.lived.leafLeast[day] - lot.coldLimit[day]);
  }
  const daysOf = (doses: Float64Array) => doses.subarray(from, to + 1).filter((dose) => dose > 0).length;
  const harm = {
    frost: sum(lot.frostDose, from, to),
    chill: lot.chillLoad.subarray(from, to + 1).reduce((most, load) => Math.max(most, load), 0),
    heat: sum(lot.heatDose, from, to),
    wetCold: daysOf(lot.wetColdDose),
    decline: daysOf(lot.declineDose),
    scorch: daysOf(lot.scorchDose),
  };
  return {
    stateDays,
    days: to - from + 1,
    coolDays,
    heldCold,
    heldDim,
    drawn,
    dryInSeason,
    sparedKelvin,
    harm,
  };
}

/** What a group wants of a winter. */
export function winterWant(group: PlantGroup, numbers: GroupNumbers): WinterWant {
  const byDayLength = group.dayLength.days !== null && numbers.criticalDayLength !== null;
  const flowersAfterRest = !byDayLength && group.flowering.weeksAfterCue !== null;
  return { numbers, habit: group.habit, flowersAfterRest };
}

/** How a lot's winter goes, summed, scored and said. */
export function winterFit(
  lot: LotSeason,
  group: PlantGroup,
  numbers: GroupNumbers,
  winter: Winter,
): WinterFit {
  const facts = winterFacts(lot, numbers, winter);
  const want = winterWant(group, numbers);
  const span = (values: Float64Array) => values.subarray(winter.from, winter.to + 1);
  const leastLeaf = span(lot.lived.leafLeast).reduce((least, value) => Math.min(least, value), Infinity);
  const mostLeaf = span(lot.lived.leafMost).reduce((most, value) => Math.max(most, value), -Infinity);
  const light = mean(lot.lived.dailyLight, winter.from, winter.to);
  return {
    stateDays: facts.stateDays,
    leastLeaf,
    sparedKelvin: facts.sparedKelvin,
    light,
    harms: harmsOf(facts, want),
    ...scoreOf(facts, want),
    words: winterWords(facts, want, { leastLeaf, mostLeaf, light }),
  };
}
