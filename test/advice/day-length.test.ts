import { describe, expect, it } from 'vitest';
import { demonstrationPlan, longDays, runSeason, weatherFromPlan } from '../../core/index.ts';
import type { Lamp, Plan, WeatherYear } from '../../core/index.ts';

const weather = weatherFromPlan(demonstrationPlan) as WeatherYear;

/** Kalanchoes in the bright tent, where the lamp is all the day there is. */
function planWith(part: Partial<Lamp>): Plan {
  const places = demonstrationPlan.places
    .filter(({ id }) => id === 'bright-tent')
    .map((place) => ({ ...place, lamps: place.lamps.map((lamp) => ({ ...lamp, ...part })) }));
  const like = demonstrationPlan.lots.find((lot) => lot.place === 'bright-tent')!;
  return {
    ...demonstrationPlan,
    places,
    lots: [{ ...like, id: 'kalanchoes', name: 'Kalanchoes', group: 'kalanchoe' }],
  };
}
const found = (part: Partial<Lamp>) => longDays(runSeason(planWith(part), weather));

describe('day length under a lamp', () => {
  it('names a short-day lot whose days the lamp makes long, with how long and how often', () => {
    const [long] = found({ on: '06:00', off: '20:00' });
    expect(long).toMatchObject({ placeId: 'bright-tent', lotId: 'kalanchoes', longest: 14 });
    expect(long.critical).toBeLessThan(14);
    expect(long.days).toBeGreaterThan(100);
  });

  it('says nothing where the lamp is held to a short day, by its clock or by its longest day', () => {
    expect(found({ on: '08:00', off: '17:00' })).toEqual([]);
    expect(found({ on: '06:00', off: '20:00', mostDay: 9 })).toEqual([]);
  });
});
