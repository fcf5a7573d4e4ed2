import { describe, expect, it } from 'vitest';
import {
  applyDampChange,
  createSeasonCache,
  dampChoices,
  dampFigures,
  demonstrationPlan,
  parsePlan,
  runSeason,
  weatherFromPlan,
} from '../../core/index.ts';
import type { DampAdvice, DampChoice, WeatherYear } from '../../core/index.ts';

const plan = demonstrationPlan;
const weather = weatherFromPlan(plan) as WeatherYear;
const cache = createSeasonCache();
const advise = (placeId: string) => dampChoices(plan, weather, placeId, { cache });
const choice = (advice: DampAdvice, id: DampChoice['id']) => {
  const found = advice.choices.find((each) => each.id === id);
  if (!found) throw new Error(`expected advice ${id}, got none`);
  return found;
};

const [leanTo, tunnel, tent] = ['lean-to', 'tunnel', 'bright-tent'].map(advise);

describe.each([leanTo, tunnel, tent])('advice against damp in $placeId', (advice) => {
  it('has the figures of the season run with the change, and of the plan as it is', () => {
    const figures = (each = plan) => {
      const place = runSeason(each, weather, cache).places.find(({ placeId }) => placeId === advice.placeId);
      if (!place) throw new Error('expected the place in its season, got none');
      return dampFigures(place);
    };
    expect(advice.now).toEqual(figures());
    for (const each of advice.choices)
      expect(each.figures, each.words).toEqual(figures(applyDampChange(plan, advice.placeId, each.id)));
  });

  it('makes plans that are sound, one change each, and leaves the plan as it was', () => {
    const before = structuredClone(plan);
    for (const { id, words } of advice.choices) {
      const changed = applyDampChange(plan, advice.placeId, id);
      expect(parsePlan(changed).ok, words).toBe(true);
      expect(changed, words).not.toEqual(plan);
    }
    expect(plan).toEqual(before);
  });
});

describe('what a change does', () => {
  it('a degree more heat costs more and keeps the air a degree warmer on the coldest night', () => {
    const { figures } = choice(leanTo, 'warmer');
    expect(figures.cost).toBeGreaterThan(leanTo.now.cost);
    expect(figures.leastAir - leanTo.now.leastAir).toBeCloseTo(1, 1);
  });

  it('more air, a vent ajar and stirred air each mean fewer damp hours in a tunnel', () => {
    for (const id of ['more-air', 'vent-ajar', 'stirred'] as const)
      expect(choice(tunnel, id).figures.dampHours, id).toBeLessThan(tunnel.now.dampHours);
    expect(choice(tunnel, 'stirred').figures.leafDewHours).toBeLessThan(tunnel.now.leafDewHours);
  });

  it('air and less water mean fewer hours for grey mould in a tent', () => {
    for (const id of ['more-air', 'vent-ajar', 'fan-slow', 'drier'] as const)
      expect(choice(tent, id).figures.mouldHours, id).toBeLessThan(tent.now.mouldHours);
  });
});

describe('what is offered', () => {
  it('is a warmer heater only where one warms the air, and a slow fan only where there is one', () => {
    const ids = (advice: DampAdvice) => advice.choices.map((each) => each.id);
    expect(ids(leanTo)).toEqual(['warmer', 'more-air', 'vent-ajar', 'stirred', 'drier']);
    expect(ids(tunnel)).toEqual(['more-air', 'vent-ajar', 'stirred', 'drier']);
    expect(ids(tent)).toEqual(['more-air', 'vent-ajar', 'fan-slow', 'stirred', 'drier']);
  });

  it('is said with its figures', () => {
    expect(choice(leanTo, 'warmer').words).toBe(
      'Fan heater one degree warmer: 6 °C by night instead of 5 °C',
    );
    expect(choice(tunnel, 'drier').words).toBe('Water less: Houseleek pans kept dry, Agaves kept dry');
  });

  it('is refused for a place that cannot take it or is not in the plan', () => {
    expect(() => applyDampChange(plan, 'tunnel', 'warmer')).toThrow(
      'expected a change that Tunnel in the orchard can take, got warmer',
    );
    expect(() => advise('attic')).toThrow('expected a place of the plan, got attic');
  });

  it('stops when it is told to, with what there is by then', () => {
    const heard: DampChoice[] = [];
    const advice = dampChoices(plan, weather, 'tunnel', {
      cache,
      onChoice: (each) => heard.push(each),
      cancelled: () => heard.length === 2,
    });
    expect(advice.choices).toEqual(heard);
    expect(heard.map((each) => each.id)).toEqual(['more-air', 'vent-ajar']);
  });
});
