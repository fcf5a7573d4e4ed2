import { describe, expect, it } from 'vitest';
import type { PlantGroup } from '../../core/plan/groups.ts';
import { groupNumbers, plantGroup } from '../../core/plan/groups.ts';
import { flowerOutlook, flowersTogether, repotDays, runPlants } from '../../core/plants/index.ts';
import { daysOf, numbersOf, steady } from './days.ts';

const repeat = (value: number, count: number) => Array<number>(count).fill(value);

function outlook(id: string, means: number[], dayLength: number | number[], light = 6) {
  const group = plantGroup(id) as PlantGroup;
  const days = daysOf(means, repeat(light, means.length));
  const photoperiod = Float64Array.from(means, (_, day) =>
    typeof dayLength === 'number' ? dayLength : (dayLength[day] as number),
  );
  const all = { ...days, photoperiod };
  const numbers = groupNumbers(group);
  return flowerOutlook(group, numbers, all, runPlants(numbers, all, { cyclic: false, watering: 'watered' }));
}

describe('flower by day length', () => {
  it('Christmas cactus sets flower at 10–13 °C at any day length (Kansas State extension)', () => {
    expect(outlook('holiday-cactus', repeat(12, 40), 16)).toMatchObject({
      cue: 'day length',
      needed: 25,
      metOn: 24,
    });
  });
  it('at 15–20 °C only after 25 nights over 12 h running, and flowers 9–10 weeks later', () => {
    expect(outlook('holiday-cactus', repeat(18, 40), 14).metOn).toBeNull();
    const met = outlook('holiday-cactus', repeat(18, 40), 11);
    expect([met.metOn, met.window]).toEqual([24, { from: 24 + 63, to: 24 + 70 }]);
    const broken = [...repeat(11, 24), 14, ...repeat(11, 15)];
    expect(outlook('holiday-cactus', repeat(18, 40), broken)).toMatchObject({ days: 24, metOn: null });
  });
  it('and not at all below 10 °C', () =>
    expect(outlook('holiday-cactus', repeat(9, 60), 11).metOn).toBeNull());
  it('Kalanchoe takes 21 short days, with nights over 12.5 h', () => {
    expect(outlook('kalanchoe', repeat(20, 40), 11.4)).toMatchObject({ metOn: 20, needed: 21 });
    expect(outlook('kalanchoe', repeat(20, 40), 11.6).metOn).toBeNull();
  });
});

describe('flower after a cool rest', () => {
  it('Easter cactus: twelve weeks at 10 °C meet the need, six of them at 18 °C do not (clone study: 50–95 % fewer buds)', () => {
    const met = outlook('easter-cactus', [...repeat(10, 84), ...repeat(18, 40)], 12);
    expect(met).toMatchObject({ cue: 'cool rest', days: 84, needed: 84, metOn: 83 });
    expect(met.window?.from).toBeGreaterThan(84 + 42);
    expect(outlook('easter-cactus', [...repeat(10, 42), ...repeat(18, 82)], 12)).toMatchObject({
      days: 42,
      metOn: null,
      window: null,
    });
  });
  it('an echeveria flowers weeks after warming, not while it stays cold', () => {
    const rest = repeat(6, 60);
    const warmed = outlook('echeveria', [...rest, ...repeat(17, 60)], 12, 14);
    expect(warmed.metOn).toBe(41);
    expect(warmed.window?.from).toBeGreaterThan(60 + 42);
    expect(warmed.window?.from).toBeLessThan(60 + 42 + 10);
    expect(outlook('echeveria', [...rest, ...repeat(6, 60)], 12, 14).window).toBeNull();
  });
  it('a cactus warmed to 12 °C is past its rest but not awake: no flower yet', () => {
    const rest = repeat(6, 60);
    expect(outlook('desert-cacti', [...rest, ...repeat(12, 60)], 12, 25)).toMatchObject({
      metOn: 55,
      window: null,
    });
    expect(outlook('desert-cacti', [...rest, ...repeat(22, 60)], 12, 25).window?.from).toBeGreaterThan(
      60 + 21,
    );
  });
  it('says so where no rule is known', () =>
    expect(outlook('aeonium', repeat(12, 60), 12).cue).toBe('unknown'));
  it('finds the days in which two groups flower together, or none', () => {
    const early = outlook('echeveria', [...repeat(6, 50), ...repeat(17, 70)], 12, 14);
    const late = outlook('echeveria', [...repeat(6, 64), ...repeat(17, 56)], 12, 14);
    const both = flowersTogether(early, late);
    expect(both).toEqual({ from: late.window?.from, to: early.window?.to });
    const never = outlook('echeveria', repeat(17, 90), 12, 14);
    expect(flowersTogether(early, never)).toBeNull();
    expect(
      flowersTogether({ ...early, window: { from: 0, to: 9 } }, { ...late, window: { from: 10, to: 12 } }),
    ).toBeNull();
  });
});

describe('repotting', () => {
  it('is good while growing warm, and no later than six weeks before cold rest', () => {
    const group = numbersOf('echeveria');
    const result = runPlants(group, daysOf([...repeat(18, 90), ...repeat(3, 30)], repeat(14, 120)), {
      cyclic: false,
    });
    const cold = result.state.indexOf(2);
    const good = repotDays(group, result);
    expect([good[0], good[cold - 43], good[cold - 42], good[119]]).toEqual([1, 1, 0, 0]);
    const cool = runPlants(group, steady(60, 12, 14), { cyclic: false });
    expect(repotDays(group, cool).includes(1)).toBe(false);
    const dim = runPlants(group, steady(60, 20, 2), { cyclic: false });
    expect(repotDays(group, dim).includes(1)).toBe(false);
  });
});
