import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  constantDays,
  drawNumbers,
  groupEditProblems,
  groupNumberNames,
  groupNumberProblems,
  groupNumbers,
  plantGroups,
  randomStream,
  runPlants,
  spreadKind,
  spreadOf,
} from '../../core/index.ts';
import type { GroupNumberName } from '../../core/index.ts';

const anyGroup = fc.constantFrom(...plantGroups);
const anySeed = fc.integer({ min: 0, max: 2 ** 31 - 1 });

describe('spread of a group’s numbers', () => {
  it('is known for every number, and for nothing else', () => {
    expect(Object.keys(spreadKind).sort()).toEqual([...groupNumberNames].sort());
  });
  it('is wider the less is known, and narrowest for what the user has set', () => {
    for (const group of plantGroups) {
      for (const name of groupNumberNames) {
        const spread = spreadOf(group, name);
        if (spread === null) continue;
        const own = spreadOf(group, name, true);
        expect(spread.deviation, `${group.id} ${name}`).toBeGreaterThan(0);
        expect(own?.deviation, `${group.id} ${name}`).toBeLessThan(spread.deviation);
      }
    }
    const [low, high] = ['low', 'high'].map((confidence) => {
      const group = plantGroups.find(({ temperature }) => temperature.base.confidence === confidence);
      return group === undefined ? null : spreadOf(group, 'baseTemperature');
    });
    if (low && high) expect(low.deviation).toBeGreaterThan(high.deviation);
  });
  it('draws groups that the catalogue could hold, and that plants can be run with', () => {
    const days = constantDays(30, {
      meanLeaf: 11,
      leastLeaf: 6,
      mostLeaf: 18,
      meanNightLeaf: 8,
      dailyLight: 5,
      photoperiod: 11,
    });
    fc.assert(
      fc.property(anyGroup, anySeed, (group, seed) => {
        const drawn = drawNumbers(group, groupNumbers(group), randomStream(seed));
        expect(groupNumberProblems(drawn)).toEqual([]);
        expect(runPlants(drawn, days).growthIndex.every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 1500 },
    );
  });
  it('keeps numbers of the user’s own that crowd each other in order', () => {
    const name = fc.constantFrom<GroupNumberName>(
      'baseTemperature',
      'optimumLow',
      'optimumHigh',
      'slowAbove',
      'ceiling',
      'damageColdWet',
      'lightHold',
      'lightGood',
      'lightMost',
    );
    fc.assert(
      fc.property(
        anyGroup,
        name,
        fc.double({ min: -8, max: 45, noNaN: true }),
        anySeed,
        (group, at, value, seed) => {
          fc.pre(groupEditProblems(group, { [at]: value }).length === 0);
          const drawn = drawNumbers(group, groupNumbers(group, { [at]: value }), randomStream(seed));
          expect(groupNumberProblems(drawn)).toEqual([]);
        },
      ),
      { numRuns: 600 },
    );
  });
  it('draws the same for the same seed, and the numbers themselves at no spread', () => {
    for (const group of plantGroups) {
      const numbers = groupNumbers(group);
      expect(drawNumbers(group, numbers, randomStream(5))).toEqual(
        drawNumbers(group, numbers, randomStream(5)),
      );
      expect(drawNumbers(group, numbers, randomStream(5))).not.toEqual(numbers);
      expect(drawNumbers(group, numbers, randomStream(5), 0)).toEqual(numbers);
    }
    expect(() => drawNumbers(plantGroups[0], groupNumbers(plantGroups[0]), randomStream(5), NaN)).toThrow(
      'expected a scale of 0 or more, got NaN',
    );
  });
  it('leaves the other draws as they are where one number is the user’s', () => {
    const [group] = plantGroups;
    const plain = drawNumbers(group, groupNumbers(group), randomStream(9));
    const edited = drawNumbers(group, groupNumbers(group, { winterHold: 12.5 }), randomStream(9));
    expect({ ...edited, winterHold: 0 }).toEqual({ ...plain, winterHold: 0 });
    expect(Math.abs(edited.winterHold - 12.5)).toBeLessThan(
      Math.abs(plain.winterHold - group.winterHold.value),
    );
  });
  it('has the deviation that it says', () => {
    const [group] = plantGroups;
    const numbers = groupNumbers(group);
    const stream = randomStream(1);
    const off = Array.from(
      { length: 4000 },
      () => drawNumbers(group, numbers, stream).winterHold - numbers.winterHold,
    );
    const mean = off.reduce((sum, value) => sum + value, 0) / off.length;
    const deviation = Math.sqrt(off.reduce((sum, value) => sum + (value - mean) ** 2, 0) / off.length);
    const said = spreadOf(group, 'winterHold')?.deviation as number;
    // A normal held within two deviations has 0.959 of its deviation; of 4000 draws a sample's own error is 1.1 %.
    expect(deviation / said).toBeCloseTo(0.959, 1);
    expect(Math.abs(deviation / said - 0.959)).toBeLessThan(0.035);
    expect(Math.abs(mean)).toBeLessThan(0.06 * said);
    expect(Math.max(...off.map(Math.abs))).toBeLessThanOrEqual(2 * said + 1e-12);
  });
});

describe('numbers of one family', () => {
  it('miss together by half of their variance, and numbers of two families do not', () => {
    const group = plantGroups.find(({ id }) => id === 'agave');
    if (group === undefined) throw new RangeError('expected the agaves in the catalogue, got none');
    const numbers = groupNumbers(group);
    const draws = Array.from({ length: 1500 }, (_, seed) => drawNumbers(group, numbers, randomStream(seed)));
    const off = (name: GroupNumberName) =>
      draws.map((draw) => (draw[name] as number) - (numbers[name] as number));
    const correlation = (a: readonly number[], b: readonly number[]) => {
      const mean = (values: readonly number[]) =>
        values.reduce((sum, value) => sum + value, 0) / values.length;
      const [meanA, meanB] = [mean(a), mean(b)];
      const together = mean(a.map((value, at) => (value - meanA) * ((b[at] as number) - meanB)));
      return (
        together / Math.sqrt(mean(a.map((v) => (v - meanA) ** 2)) * mean(b.map((v) => (v - meanB) ** 2)))
      );
    };
    // The error of a correlation of 1500 draws is 0.02 to 0.026; cutting at two deviations and order take a little of it.
    const of = (one: GroupNumberName, other: GroupNumberName) => correlation(off(one), off(other));
    expect(of('restBelow', 'ceiling')).toBeGreaterThan(0.42);
    expect(of('restBelow', 'ceiling')).toBeLessThan(0.58);
    expect(Math.abs(of('restBelow', 'lightHold'))).toBeLessThan(0.08);
  });
});
