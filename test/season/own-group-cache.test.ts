import { describe, expect, it } from 'vitest';
import { createSeasonCache, demonstrationPlan, planNumbers, weatherFromPlan } from '../../core/index.ts';
import type { Plan, WeatherYear } from '../../core/index.ts';
import { lotOf } from '../../core/plan/parts.ts';
import { outdoors } from '../../core/plan/schema.ts';
import { judgeLot, seasonSetting } from '../../core/season/index.ts';

describe('an own group in the cache of lots', () => {
  it('is judged anew when it is copied from another group and keeps its id and numbers', () => {
    const numbers = planNumbers(demonstrationPlan, 'citrus');
    const given = Object.fromEntries(Object.entries(numbers).filter(([, value]) => value !== null));
    const planOf = (from: string): Plan => ({
      ...demonstrationPlan,
      places: [],
      lots: [],
      ownGroups: [{ id: 'mine', name: 'Mine', examples: '', from, numbers: given }],
    });
    const lot = lotOf({ id: 'mine', name: 'Mine', group: 'mine', place: outdoors, area: 1 });
    const weather = weatherFromPlan(demonstrationPlan) as WeatherYear;
    const cache = createSeasonCache();
    const judge = (from: string, kept = cache) => judgeLot(seasonSetting(planOf(from), weather, kept), lot);
    const [citrus, agave] = [judge('citrus'), judge('agave')];
    expect(citrus.flowering).not.toEqual(agave.flowering);
    expect(agave).toEqual(judge('agave', createSeasonCache()));
    expect(judge('agave')).toBe(agave);
  });
});
