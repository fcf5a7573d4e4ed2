import { describe, expect, it } from 'vitest';
import type { PlantDays, PlantTransition } from '../../core/plants/index.ts';
import { plantStates, runPlants, thresholdsOf } from '../../core/plants/index.ts';
import { daysOf, numbersOf, steady } from './days.ts';

const repeat = (value: number, count: number) => Array<number>(count).fill(value);
const flat = { cyclic: false, watering: 'watered' } as const;
const changes = (id: string, days: PlantDays, watering: 'watered' | 'dry' = 'watered') =>
  runPlants(numbersOf(id), days, { ...flat, watering }).transitions;
const changeTo = (all: readonly PlantTransition[], from: string, to: string) => {
  const found = all.find((each) => plantStates[each.from]?.id === from && plantStates[each.to]?.id === to);
  if (found === undefined)
    throw new Error(`expected a change from ${from} to ${to}, got ${JSON.stringify(all)}`);
  return found;
};

describe('the crossing behind a change', () => {
  it('names the mean where cold begins and ends a rest', () => {
    const at = thresholdsOf(numbersOf('echeveria'));
    const means = Array.from({ length: 240 }, (_, day) => 20 - 18 * Math.sin((Math.PI * day) / 239));
    const all = changes('echeveria', daysOf(means, repeat(14, 240)));
    const into = changeTo(all, 'slow', 'resting-cold');
    expect(into.crossing).toMatchObject({
      series: 'mean of day and night',
      threshold: at.coldBegins,
      unit: '°C',
      way: 'fell below',
    });
    expect(into.crossing.value).toBeLessThan(at.coldBegins);
    expect(into.because).toBe(
      `mean of day and night ${into.crossing.value.toFixed(1)} °C, below ${at.coldBegins.toFixed(1)} °C`,
    );
    const out = changeTo(all, 'resting-cold', 'slow');
    expect(out.crossing).toMatchObject({ threshold: at.coldEnds, way: 'rose above' });
    expect(changeTo(all, 'growing', 'slow').crossing).toMatchObject({
      threshold: at.coolSlowBegins,
      way: 'fell below',
    });
    expect(changeTo(all, 'slow', 'growing').crossing).toMatchObject({
      threshold: at.coolSlowEnds,
      way: 'rose above',
    });
  });
  it('names the day itself where it freezes', () => {
    const days = steady(40, 20, 14);
    days.meanLeaf[20] = -1;
    const { crossing } = changeTo(changes('echeveria', days), 'growing', 'resting-cold');
    expect(crossing).toEqual({
      series: 'mean of the day itself',
      value: -1,
      threshold: 0,
      unit: '°C',
      way: 'fell below',
    });
  });
  it('names daily light where it draws up, rests in the dim and starts again', () => {
    const lights = [...repeat(12, 30), ...repeat(1.6, 60), ...repeat(0.5, 60), ...repeat(12, 40)];
    const all = changes('haworthia', daysOf(repeat(23, 190), lights));
    expect(changeTo(all, 'slow', 'stretching').crossing).toMatchObject({
      series: 'daily light',
      way: 'fell below',
    });
    expect(changeTo(all, 'stretching', 'resting-dim').crossing).toMatchObject({
      threshold: 1.5,
      way: 'fell below',
    });
    expect(changeTo(all, 'resting-dim', 'slow').crossing).toMatchObject({
      unit: 'mol/m²',
      way: 'rose above',
    });
    const dull = changes('echeveria', daysOf(repeat(20, 60), [...repeat(14, 20), ...repeat(7.4, 40)]));
    expect(changeTo(dull, 'growing', 'slow').crossing).toMatchObject({ threshold: 7.5, way: 'fell below' });
  });
  it('names the dose of hot days, and the mean where that alone is too hot', () => {
    const days = daysOf([...repeat(20, 20), ...repeat(27, 8), ...repeat(20, 30)], repeat(14, 58));
    days.mostLeaf.fill(38, 20, 28);
    const all = changes('echeveria', days);
    expect(changeTo(all, 'growing', 'resting-heat').crossing).toMatchObject({
      value: 1,
      threshold: 1,
      way: 'reached',
    });
    expect(changeTo(all, 'resting-heat', 'growing').crossing).toMatchObject({
      threshold: 0.5,
      way: 'fell below',
    });
    const mild = steady(80, 20, 14, 0);
    mild.meanLeaf.fill(33, 20, 50);
    mild.meanNightLeaf.fill(18);
    const hot = changes('echeveria', mild);
    const { heatBegins, heatEnds } = thresholdsOf(numbersOf('echeveria'));
    expect(hot.map(({ crossing }) => crossing.threshold)).toContain(heatBegins);
    expect(hot.map(({ crossing }) => crossing.threshold)).toContain(heatEnds);
  });
  it('names the highest of the day where it closes up, and the moisture where it dries', () => {
    const days = daysOf([...repeat(20, 20), ...repeat(25.5, 40), ...repeat(20, 30)], repeat(14, 90));
    days.mostLeaf.fill(35, 20, 60);
    days.meanNightLeaf.fill(18);
    const all = changes('echeveria', days);
    expect(changeTo(all, 'growing', 'slow').crossing).toMatchObject({
      series: 'highest of the day',
      threshold: 32,
    });
    expect(changeTo(all, 'slow', 'growing').crossing).toMatchObject({ way: 'fell below' });
    const dried = {
      ...steady(90, 20, 14),
      watered: Uint8Array.from({ length: 90 }, (_, day) => (day < 10 || day >= 60 ? 1 : 0)),
    };
    const dry = changes('echeveria', dried);
    expect(changeTo(dry, 'growing', 'resting-dry').crossing).toMatchObject({
      threshold: 0.3,
      unit: 'share',
      way: 'fell below',
    });
    expect(changeTo(dry, 'resting-dry', 'growing').crossing).toMatchObject({
      value: 1,
      threshold: 0.6,
      way: 'rose above',
    });
  });
});
