/** The working of a lot's state: what it was judged by, on the day asked about, with the user's own numbers said to be so. */
import { describe, expect, test } from 'vitest';
import { demonstrationPlan, explain, planNumbers, runSeason, weatherFromPlan } from '../../core/index.ts';
import type { Plan } from '../../core/index.ts';

const plan: Plan = {
  ...demonstrationPlan,
  places: demonstrationPlan.places.filter((place) => place.id === 'bright-tent'),
  lots: demonstrationPlan.lots.filter((lot) => lot.place === 'bright-tent'),
  groupEdits: { echeveria: { lightGood: 11 } },
};
const weather = weatherFromPlan(plan);
if (weather === null) throw new Error('expected the demonstration plan to carry monthly normals');
const season = runSeason(plan, weather);
const day = 120;
const working = (lotId: string) => explain(season, { kind: 'state', lotId, day });
const judgedOf = (lotId: string) => season.lots.find((lot) => lot.lotId === lotId)!;
const figure = (value: number) =>
  Math.abs(value) >= 100 ? value.toFixed(0) : value.toFixed(Math.abs(value) >= 10 ? 1 : 2);

describe('the working of a state', () => {
  test('has what the lot lived through and remembers on the day', () => {
    const judged = judgedOf('echeverias');
    const values = Object.fromEntries(working('echeverias').inputs.map((each) => [each.name, each.value]));
    expect(values['Mean leaf temperature of the day']).toBe(figure(judged.lived.leafMean[day]));
    expect(values['Daily light at the plants']).toBe(figure(judged.lived.dailyLight[day]));
    expect(values['Mean temperature as remembered']).toBe(figure(judged.rememberedLeaf[day]));
    expect(values['Daily light as remembered']).toBe(figure(judged.rememberedLight[day]));
  });

  test('says of every number whose it is', () => {
    const inputs = working('echeverias').inputs;
    const own = inputs.filter((each) => each.origin === 'your own number (plan)');
    expect(own.map((each) => [each.name, each.value])).toEqual([['Light for good growth', '11.0']]);
    expect(inputs.filter((each) => each.origin === '')).toEqual([]);
    expect(planNumbers(plan, 'echeveria').lightGood).toBe(11);
  });

  test('multiplies the indices that the day was judged by', () => {
    const judged = judgedOf('echeverias');
    const [warmth, light, water, growth] = [
      judged.temperatureIndex,
      judged.lightIndex,
      judged.waterIndex,
      judged.growthIndex,
    ].map((series) => figure(series[day]));
    expect(working('echeverias').steps).toContain(
      `Growth index: ${warmth} × ${light} × ${water} = ${growth}`,
    );
  });

  test('gives a carbon curve to groups that have one, and makes none up for others', () => {
    const lines = season.lots.map((lot) => ({
      known: planNumbers(plan, lot.groupId).carbonNight !== null,
      line: working(lot.lotId).steps.find((step) => step.startsWith('Carbon gain'))!,
    }));
    for (const { known, line } of lines)
      expect(line).toContain(known ? 'by the temperature of the night' : 'none is made up');
  });

  test('gives the crossing of the state’s first day', () => {
    const judged = season.lots.find((lot) => lot.transitions.some((each) => each.day <= day));
    expect(judged).toBeDefined();
    const last = judged!.transitions.filter((each) => each.day <= day).at(-1)!;
    expect(working(judged!.lotId).steps).toContain(`In this state since: ${last.because}`);
  });
});
