import type { PlantResult } from './state.ts';
import { plantStates } from './words.ts';

export interface PlantWeek {
  readonly week: number;
  readonly firstDay: number;
  readonly days: number;
  /** The state of most days of the week, the later one where two are level: an index into `plantStates`. */
  readonly state: number;
  /** The factor that held on the last day in that state: an index into `limitingFactors`. */
  readonly limiting: number;
  /** Days of each state, indexed as `plantStates`. */
  readonly stateDays: readonly number[];
  readonly growthIndex: number;
  /** Means over the days in that state, as in the daily result. */
  readonly marginKelvin: number;
  readonly marginLight: number;
}

function weekFrom(result: PlantResult, week: number, firstDay: number, days: number): PlantWeek {
  const stateDays = plantStates.map(() => 0);
  let growth = 0;
  for (let day = firstDay; day < firstDay + days; day += 1) {
    const state = result.state[day] as number;
    stateDays[state] = (stateDays[state] as number) + 1;
    growth += result.growthIndex[day] as number;
  }
  const most = Math.max(...stateDays);
  let [state, limiting, kelvin, light, counted] = [-1, 0, 0, 0, 0];
  for (let day = firstDay + days - 1; day >= firstDay; day -= 1) {
    const its = result.state[day] as number;
    if (state === -1 && stateDays[its] === most) [state, limiting] = [its, result.limiting[day] as number];
    if (its !== state) continue;
    kelvin += result.marginKelvin[day] as number;
    light += result.marginLight[day] as number;
    counted += 1;
  }
  return {
    week,
    firstDay,
    days,
    state,
    limiting,
    stateDays,
    growthIndex: growth / days,
    marginKelvin: kelvin / counted,
    marginLight: light / counted,
  };
}

/** The result by weeks of seven days from the first day; the last may be shorter. */
export function weeklyStates(result: PlantResult): readonly PlantWeek[] {
  const count = result.state.length;
  return Array.from({ length: Math.ceil(count / 7) }, (_, week) =>
    weekFrom(result, week, week * 7, Math.min(7, count - week * 7)),
  );
}
