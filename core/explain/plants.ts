import type { Lot, Plan } from '../plan/schema.ts';
import { planEdits, planGroup, planNumbers } from '../plan/plan-groups.ts';
import { lightNeeded, limitingWords, plantStates, thresholdsOf } from '../plants/index.ts';
import type { LotSeason } from '../season/index.ts';
import { input, round } from './format.ts';
import type { Explanation } from './subject.ts';

/** Why a lot is in its state on a day. */
export function explainState(plan: Plan, lot: Lot, judged: LotSeason, day: number): Explanation {
  const group = planGroup(plan, lot.group);
  if (group === null) throw new RangeError(`expected a plant group of the plan, got ${lot.group}`);
  const numbers = planNumbers(plan, lot.group);
  const at = thresholdsOf(numbers);
  const leaf = judged.lived.leafMean[day];
  const light = judged.lived.dailyLight[day];
  const state = plantStates[judged.state[day]];
  const last = judged.transitions.filter((each) => each.day <= day).at(-1);
  const origin = (edited: boolean, source: string) => (edited ? 'your own number (plan)' : source);
  const edits = planEdits(plan, lot.group);
  return {
    title: `${lot.name}: ${state.name.toLowerCase()}`,
    formula:
      'growth index = temperature index × light index × water index, each 0–1; the state follows remembered temperature and light',
    inputs: [
      input('Mean leaf temperature of the day', leaf, '°C', 'heat balance of the place'),
      input('Daily light at the plants', light, 'mol/m²', 'daylight and lamps'),
      input(
        'No growth below',
        numbers.baseTemperature,
        '°C',
        origin('baseTemperature' in edits, group.temperature.base.source),
      ),
      input(
        'Best from',
        numbers.optimumLow,
        '°C',
        origin('optimumLow' in edits, group.temperature.optimumLow.source),
      ),
      input(
        'Least light for a compact plant',
        numbers.lightStretch,
        'mol/m²',
        origin('lightStretch' in edits, group.light.stretch.source),
      ),
    ],
    steps: [
      `Temperature index ${round(judged.temperatureIndex[day])} (cold rest begins below a mean of ${round(at.coldBegins)} °C)`,
      `Light index ${round(judged.lightIndex[day])} (${round(lightNeeded(numbers, at, leaf))} mol/m² keep it compact at this warmth)`,
      `Growth index ${round(judged.growthIndex[day])}`,
      limitingWords(judged.limiting[day]),
      ...(last === undefined ? [] : [last.because]),
    ],
    result: state.words,
    source:
      'Temperature response Yan & Hunt 1999; product of indices after Nobel 1984, 1988; memory and thresholds as the plants view lists them.',
  };
}
