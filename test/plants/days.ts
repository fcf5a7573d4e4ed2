import type { GroupEdits } from '../../core/plan/groups.ts';
import { groupNumbers, plantGroup } from '../../core/plan/groups.ts';
import type { PlantDays, PlantResult } from '../../core/plants/index.ts';
import { plantStates } from '../../core/plants/index.ts';

/** Numbers of a group that the test knows to be there. */
export function numbersOf(id: string, edits: GroupEdits = {}) {
  const group = plantGroup(id);
  if (group === null) throw new RangeError(`expected a plant group, got ${id}`);
  return groupNumbers(group, edits);
}

/** Days from means and lights: night 2 K under the mean, extremes 3 K either side, 12 h of light. */
export function daysOf(means: readonly number[], lights: readonly number[], swing = 3): PlantDays {
  const from = (change: number) => Float64Array.from(means, (mean) => mean + change);
  return {
    meanLeaf: from(0),
    leastLeaf: from(-swing),
    mostLeaf: from(swing),
    meanNightLeaf: from(-2),
    dailyLight: Float64Array.from(lights),
    photoperiod: new Float64Array(means.length).fill(12),
  };
}

/** The same mean and light for `count` days. */
export const steady = (count: number, mean: number, light: number, swing = 3) =>
  daysOf(Array<number>(count).fill(mean), Array<number>(count).fill(light), swing);

/** State identifier of a day; the last where none is given. */
export function stateIdOn(result: PlantResult, day = result.state.length - 1): string {
  return plantStates[result.state[day] as number]?.id ?? 'none';
}

/** The states passed through, in order, each once. */
export const course = (result: PlantResult) => [
  stateIdOn(result, 0),
  ...result.transitions.filter(({ day }) => day > 0).map(({ to }) => plantStates[to]?.id),
];
