/** Editing a number moves the verdict the way it should, in every group. */
import { describe, expect, it } from 'vitest';
import { groupNumberProblems, plantGroups } from '../../core/plan/groups.ts';
import type { GroupNumberName, GroupNumbers } from '../../core/plan/groups.ts';
import type { PlantDays, PlantResult } from '../../core/plants/index.ts';
import { coldLimits, harmDoses, harmTotals, plantStates, runPlants } from '../../core/plants/index.ts';
import { numbersOf } from './days.ts';

/** Years of several warmths and lights [°C mean, K swing, mol m⁻² d⁻¹], with weather in them; day and night 8 K apart. */
const years = [
  [4, 9, 8],
  [12, 10, 4],
  [16, 8, 14],
  [24, 9, 30],
  [33, 5, 30],
].map(([mean, swing, light]): PlantDays => {
  const day = (read: (at: number) => number) => Float64Array.from({ length: 365 }, (_, at) => read(at));
  const meanLeaf = day(
    (at) =>
      (mean as number) +
      (swing as number) * Math.sin(at / 58) +
      3 * Math.sin(at * 12.9898) +
      2 * Math.sin(at / 4),
  );
  return {
    meanLeaf,
    leastLeaf: meanLeaf.map((value) => value - 4),
    mostLeaf: meanLeaf.map((value) => value + 9),
    meanNightLeaf: meanLeaf.map((value) => value - 3),
    dailyLight: day((at) =>
      Math.max(0.2, (light as number) * (1 + 0.7 * Math.sin(at / 58) + 0.5 * Math.sin(at * 7.7))),
    ),
    photoperiod: day(() => 12),
  };
});

/** A year whose light swings about what keeps the group compact, and one that is hot without hot days or nights. */
const dullYear = (id: string): PlantDays => {
  const { lightStretch } = numbersOf(id);
  const base = years[2] as PlantDays;
  return {
    ...base,
    dailyLight: base.meanLeaf.map(
      (_, at) => lightStretch * (1 + 0.8 * Math.sin(at / 40) + 0.3 * Math.sin(at * 7.7)),
    ),
  };
};
const hotYear = (): PlantDays => {
  const base = years[2] as PlantDays;
  const meanLeaf = base.meanLeaf.map((mean) => mean + 16);
  return { ...base, meanLeaf, mostLeaf: meanLeaf, meanNightLeaf: meanLeaf.map(() => 18) };
};
const inYear = (days: PlantDays, numbers: GroupNumbers, ...ids: string[]) =>
  inState(runPlants(numbers, days, { watering: 'watered' }), ...ids);

/** Leaf temperature by two hours: colder than the mean by night, warmer by day [°C]. */
const leaves = years.map(({ meanLeaf }) =>
  Float64Array.from(
    { length: 365 * 12 },
    (_, step) => (meanLeaf[Math.floor(step / 12)] as number) - 14 * Math.cos((Math.PI * (step % 12)) / 6),
  ),
);

const inState = (result: PlantResult, ...ids: string[]) =>
  result.state.filter((code) => ids.includes(plantStates[code]?.id ?? '')).length;
const states = (numbers: GroupNumbers, ...ids: string[]) =>
  years.reduce((sum, days) => sum + inState(runPlants(numbers, days, { watering: 'watered' }), ...ids), 0);
const harms = (
  numbers: GroupNumbers,
  name: keyof ReturnType<typeof harmTotals>,
  watering: 'by-season' | 'dry' = 'by-season',
) =>
  years.reduce((sum, days, at) => {
    const result = runPlants(numbers, days, { watering });
    const past = { coldLimit: coldLimits(numbers, result), decline: result.decline };
    return (
      sum +
      harmTotals(harmDoses(numbers, leaves[at] as Float64Array, 120, result.wet, days.dailyLight, past))[name]
    );
  }, 0);

interface Law {
  readonly name: GroupNumberName;
  readonly by: number;
  readonly of: string;
  readonly way: 'more' | 'less';
  readonly measure: (numbers: GroupNumbers, id: string) => number;
  /** Groups in which it makes a difference in these years, as reached. */
  readonly tells: number;
}
const law = (
  name: GroupNumberName,
  by: number,
  of: string,
  way: Law['way'],
  measure: Law['measure'],
  tells: number,
): Law => ({
  name,
  by,
  of,
  way,
  measure,
  tells,
});

const laws: readonly Law[] = [
  law('baseTemperature', 2, 'cold rest', 'more', (n) => states(n, 'resting-cold'), 31),
  law('ceiling', 3, 'heat rest', 'less', (n) => inYear(hotYear(), n, 'resting-heat'), 31),
  law('slowAbove', 1.5, 'heat rest', 'less', (n) => states(n, 'resting-heat'), 5),
  law('hotDay', 3, 'heat rest', 'less', (n) => states(n, 'resting-heat'), 31),
  law(
    'lightHold',
    0.5,
    'want of light',
    'more',
    (n, id) => inYear(dullYear(id), n, 'resting-dim', 'stretching'),
    21,
  ),
  law(
    'lightStretch',
    -0.5,
    'want of light',
    'less',
    (n, id) => inYear(dullYear(id), n, 'resting-dim', 'stretching'),
    26,
  ),
  law('lightGood', 2, 'growing', 'less', (n) => states(n, 'growing'), 29),
  law('canRestDim', 1, 'stretching', 'less', (n, id) => inYear(dullYear(id), n, 'stretching'), 20),
  law('damageColdDry', 1, 'frost', 'more', (n) => harms(n, 'frost'), 30),
  law('damageColdWet', 1, 'frost', 'more', (n) => harms(n, 'frost'), 30),
  law('hardenGain', 0.5, 'frost kept dry', 'more', (n) => harms(n, 'frost', 'dry'), 25),
  law('hardenBelow', 3, 'frost', 'less', (n) => harms(n, 'frost'), 21),
  law('damageHot', -5, 'burning heat', 'more', (n) => harms(n, 'heat'), 31),
  law('chillBelow', 1, 'chill', 'more', (n) => harms(n, 'chill'), 6),
  law('chillDose', 300, 'chilled days', 'less', (n) => harms(n, 'chilled'), 6),
  law('wetColdBelow', 2, 'wet cold', 'more', (n) => harms(n, 'wetCold'), 24),
  law('lightMost', 5, 'scorch', 'less', (n) => harms(n, 'scorch'), 31),
  law('declineDays', 20, 'decline', 'less', (n) => harms(n, 'decline'), 29),
];

describe('editing a number', () => {
  for (const { name, by, of, way, measure, tells } of laws) {
    it(`${name} ${by > 0 ? 'up' : 'down'}: never ${way === 'more' ? 'less' : 'more'} ${of}, in any group`, () => {
      let told = 0;
      for (const { id } of plantGroups) {
        const numbers = numbersOf(id);
        if (numbers[name] === null) continue;
        const edited: GroupNumbers = { ...numbers, [name]: numbers[name] + by };
        if (groupNumberProblems(edited).length > 0) continue;
        const [before, after] = [measure(numbers, id), measure(edited, id)];
        if (way === 'more') expect(after, id).toBeGreaterThanOrEqual(before - 1e-9);
        else expect(after, id).toBeLessThanOrEqual(before + 1e-9);
        if (Math.abs(after - before) > 1e-9) told += 1;
      }
      expect(told).toBeGreaterThanOrEqual(tells);
    });
  }
});
