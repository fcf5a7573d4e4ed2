import type { GroupNumbers, PlantGroup } from '../plan/groups.ts';
import type { PlantDays } from './day.ts';
import type { PlantResult } from './state.ts';
import { restingCold, restingDry } from './words.ts';

export interface FlowerOutlook {
  /** What sets flower in this group; 'unknown' where no rule is known, and nothing else is then given. */
  readonly cue: 'cool rest' | 'day length' | 'unknown';
  /** Days towards the cue, and how many it takes [d]. */
  readonly days: number;
  readonly needed: number;
  /** Day on which the cue is met; null where it is not. */
  readonly metOn: number | null;
  /** Days between which flower may be expected; may lie beyond the series; null where not met or not known. */
  readonly window: { readonly from: number; readonly to: number } | null;
}

const unknown: FlowerOutlook = { cue: 'unknown', days: 0, needed: 0, metOn: null, window: null };

/** First day of the cue's last needed day, walking `counts`; `running` starts again at each day that does not count. */
function meets(count: number, needed: number, running: boolean, counts: (day: number) => boolean) {
  let [reached, most] = [0, 0];
  let metOn: number | null = null;
  for (let day = 0; day < count; day += 1) {
    reached = counts(day) ? reached + 1 : running ? 0 : reached;
    most = Math.max(most, reached);
    if (reached >= needed) metOn ??= day;
  }
  return { days: most, metOn };
}

function windowFrom(group: PlantGroup, start: number | null): FlowerOutlook['window'] {
  const weeks = group.flowering.weeksAfterCue;
  if (start === null || weeks === null) return null;
  return { from: start + 7 * weeks[0], to: start + 7 * weeks[1] };
}

/** How far a group has come towards what sets its flower, by its days alone. */
export type FlowerCue = Omit<FlowerOutlook, 'window'>;

function cueOfDayLength(group: PlantGroup, numbers: GroupNumbers, days: CueDays, needed: number): FlowerCue {
  const coolBelow = group.dayLength.coolBelow?.value ?? Number.NEGATIVE_INFINITY;
  const noneBelow = group.dayLength.noneBelow?.value ?? Number.NEGATIVE_INFINITY;
  const critical = numbers.criticalDayLength as number;
  const { metOn, days: reached } = meets(days.meanLeaf.length, needed, true, (day) => {
    const mean = days.meanLeaf[day] as number;
    const over = (days.photoperiod[day] as number) - critical;
    return mean >= noneBelow && (mean <= coolBelow || (numbers.dayLengthKind > 0 ? over > 0 : over < 0));
  });
  return { cue: 'day length', days: reached, needed, metOn };
}

function cueOfRest(numbers: GroupNumbers, days: CueDays): FlowerCue {
  const below = numbers.restBelow as number;
  const needed = Math.round(7 * (numbers.restWeeks as number));
  const counts = (day: number) => (days.meanLeaf[day] as number) < below;
  const { metOn, days: reached } = meets(days.meanLeaf.length, needed, false, counts);
  return { cue: 'cool rest', days: reached, needed, metOn };
}

/** Means of the day and its length, which are all that a cue goes by. */
type CueDays = Pick<PlantDays, 'meanLeaf' | 'photoperiod'>;

/** Whether and when a group's cue for flower is met, by its days alone: no flower can come where it is not. */
export function flowerCue(group: PlantGroup, numbers: GroupNumbers, days: CueDays): FlowerCue {
  const inductive = group.dayLength.days;
  if (inductive !== null && numbers.criticalDayLength !== null) {
    return cueOfDayLength(group, numbers, days, inductive.value);
  }
  if (numbers.restBelow === null || numbers.restWeeks === null || group.flowering.weeksAfterCue === null) {
    const { cue, days: none, needed, metOn } = unknown;
    return { cue, days: none, needed, metOn };
  }
  return cueOfRest(numbers, days);
}

/** Day on which the plant leaves its rest after the cue: warmer than the rest and neither cold nor dry; null where it never does. */
function restEnds(result: PlantResult, metOn: number, below: number): number | null {
  for (let day = metOn + 1; day < result.state.length; day += 1) {
    const state = result.state[day] as number;
    if ((result.rememberedLeaf[day] as number) >= below && state !== restingCold && state !== restingDry)
      return day;
  }
  return null;
}

/**
 * When flowers may be expected: after enough days of the right length running, or after a cool rest of enough days in
 * the season has ended. The rules are coarse (most are common practice); a group without a rule gives 'unknown'.
 */
export function flowerOutlook(
  group: PlantGroup,
  numbers: GroupNumbers,
  days: PlantDays,
  result: PlantResult,
): FlowerOutlook {
  const cue = flowerCue(group, numbers, days);
  const { metOn } = cue;
  if (cue.cue === 'unknown') return unknown;
  const rests = cue.cue === 'cool rest' && metOn !== null;
  const start = rests ? restEnds(result, metOn, numbers.restBelow as number) : metOn;
  return { ...cue, window: windowFrom(group, start) };
}

/** Days in which two groups may flower together, for crossing; null where they do not meet. */
export function flowersTogether(
  one: FlowerOutlook,
  other: FlowerOutlook,
): { readonly from: number; readonly to: number } | null {
  if (one.window === null || other.window === null) return null;
  const from = Math.max(one.window.from, other.window.from);
  const to = Math.min(one.window.to, other.window.to);
  return from <= to ? { from, to } : null;
}
