import { describe, expect, it } from 'vitest';
import { demonstrationPlan, plantGroups, planNumbers } from '../../core/index.ts';
import { comparedGroups, comparedSections } from '../../renderer/plants/compare.ts';
import { domainOf, groupCurve, groupCurves, heightOf, letterAt } from '../../renderer/plants/curves.ts';
import type { MidWinter } from '../../renderer/plants/midwinter.ts';
import { withNumber } from '../../renderer/plants/numbers.ts';

const all = plantGroups.map((group) => planNumbers(demonstrationPlan, group.id));
const lot = (part: Partial<MidWinter>) => ({ leaf: 12, night: 8, light: 5, ...part }) as MidWinter;

describe('a response curve', () => {
  it('is a number along all of its drawing, for every group that has it', () => {
    for (const curve of groupCurves)
      for (const numbers of all.filter((one) => curve.has?.(one) ?? true)) {
        const [from, to] = domainOf(curve, [numbers], []);
        const top = heightOf(curve, [numbers]);
        let most = 0;
        for (let step = 0; step <= 100; step += 1) {
          const value = curve.response(numbers, from + ((to - from) * step) / 100);
          expect(value).toBeGreaterThanOrEqual(0);
          expect(value).toBeLessThanOrEqual(top);
          most = Math.max(most, value);
        }
        // It reaches its best within the drawing: all but the last tenth of saturation by light.
        if (curve.gives === 'share') expect(most).toBeGreaterThan(0.9);
      }
  });
  it('by night is drawn of the groups of which one is known, and of no other', () => {
    const carbon = groupCurve('carbon');
    const with_ = all.filter((numbers) => carbon.has?.(numbers));
    expect(with_.length).toBeGreaterThan(0);
    expect(with_.length).toBeLessThan(all.length);
    for (const numbers of with_) expect(carbon.response(numbers, numbers.carbonNight!)).toBe(1);
  });
  it('has every lot within its drawing, warm or cold, bright or dim', () => {
    const lots = [lot({ leaf: -15, night: -20, light: 0 }), lot({ leaf: 44, night: 33, light: 60 })];
    for (const curve of groupCurves) {
      const [from, to] = domainOf(curve, [all[0]], lots);
      for (const each of lots) {
        expect(curve.lotAt(each)).toBeGreaterThanOrEqual(from);
        expect(curve.lotAt(each)).toBeLessThanOrEqual(to);
      }
    }
  });
  it('carries letters at heights of their own, so that two like curves have two letters apart', () => {
    const curve = groupCurve('development');
    const response = (at: number) => curve.response(all[0], at);
    const domain = domainOf(curve, [all[0]], []);
    const at = [0.85, 0.65, 0.45, 0.25].map((level) => letterAt(response, domain, level));
    for (let i = 1; i < at.length; i += 1) expect(at[i]).toBeLessThan(at[i - 1]);
    for (const [i, level] of [0.85, 0.65, 0.45, 0.25].entries())
      expect(response(at[i])).toBeGreaterThanOrEqual(level);
  });
  it('moves when its number is edited', () => {
    const edited = planNumbers(withNumber(demonstrationPlan, 'echeveria', 'baseTemperature', 9), 'echeveria');
    const before = planNumbers(demonstrationPlan, 'echeveria');
    const { response } = groupCurve('development');
    expect(response(edited, 10)).toBeLessThan(response(before, 10));
  });
});

describe('groups side by side', () => {
  const units = { temperature: 'C', length: 'm' } as const;
  it('differ where their numbers do, and nowhere against themselves', () => {
    const twins = comparedGroups(demonstrationPlan, ['agave', 'agave']);
    expect(
      comparedSections(twins, units).flatMap((section) => section.rows.filter((row) => row.differs)),
    ).toEqual([]);
    const edited = withNumber(demonstrationPlan, 'agave', 'lightGood', 14);
    const [before] = comparedGroups(demonstrationPlan, ['agave']);
    const [after] = comparedGroups(edited, ['agave']);
    const differing = comparedSections([before, after], units).flatMap((section) =>
      section.rows.filter((row) => row.differs),
    );
    expect(differing.map((row) => [row.name, row.others, row.values[1]])).toEqual([
      ['lightGood', [false, true], '14 mol'],
    ]);
  });
  it('are lettered in order, and read in the user’s degrees', () => {
    const groups = comparedGroups(demonstrationPlan, ['agave', 'lithops', 'citrus']);
    expect(groups.map((group) => group.letter)).toEqual(['A', 'B', 'C']);
    const row = (temperature: 'C' | 'F', name: string) =>
      comparedSections(groups, { temperature, length: 'm' })
        .flatMap((section) => section.rows)
        .find((each) => each.name === name)!.values[0];
    const { baseTemperature, hardenGain } = groups[0].numbers;
    expect(row('C', 'baseTemperature')).toBe(`${baseTemperature.toFixed(1)}\u00a0°C`);
    expect(row('F', 'baseTemperature')).toBe(`${(baseTemperature * 1.8 + 32).toFixed(1)}\u00a0°F`);
    // A difference of degrees has no 32 in it.
    expect(row('F', 'hardenGain')).toBe(`${Number((hardenGain * 1.8).toFixed(1))} °F`);
  });
});
