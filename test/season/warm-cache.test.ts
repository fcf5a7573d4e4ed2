/** What is kept between runs must not outlive what it depends on: a warm cache gives what a fresh one does. */
import { describe, expect, it } from 'vitest';
import {
  createSeasonCache,
  demonstrationPlan,
  lampOf,
  runSeason,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Place, Plan, WeatherYear } from '../../core/index.ts';

const weather = weatherFromPlan(demonstrationPlan) as WeatherYear;
const warm = createSeasonCache();

const lamp = lampOf({
  ...{ id: 'lamp', name: 'Lamp', technology: 'led-white', watts: 60, efficacy: 2.5, count: 1, height: 0.4 },
  ...{ length: 0.4, width: 0.4, on: '07:00', off: '19:00' },
});
const boards = { height: 0.6, plants: 0.1, length: 2, width: 0.5, side: 'back' as const };

/** One change of each kind that light depends on: the place it is made in, and the change. */
const changes: readonly [string, string, Partial<Place>][] = [
  ['shade cloth', 'tunnel', { shadeCloth: { covering: 'shade-50', from: '05-01', to: '09-15' } }],
  ['washing', 'lean-to', { cleanedOn: '10-01' }],
  ['sheer curtain', 'window', { sheer: { covering: 'sheer-voile', from: '09:00', to: '17:00' } }],
  ['a skyline of its own', 'window', { horizon: [{ azimuth: 180, elevation: 30, passes: 0 }] }],
  ['bars', 'lean-to', { bars: { spacing: 0.6, depth: 0.08 } }],
  ['gutter', 'lean-to', { gutter: 0.12 }],
  ['upper shelf', 'lean-to', { upperShelf: boards }],
  ['lamp over it', 'lean-to', { upperShelf: boards, lamps: [{ ...lamp, shelf: 'upper' }] }],
  ['lamp', 'lean-to', { lamps: [lamp] }],
  [
    'lamp that waits for dim days',
    'lean-to',
    { lamps: [{ ...lamp, control: { kind: 'daylight', below: 100, deadTime: 0 } }] },
  ],
  ['reflecting walls', 'bright-tent', { wallReflectance: 0.2 }],
  ['reflecting top', 'bright-tent', { ceilingReflectance: 0.1 }],
  ['reflecting bench', 'bright-tent', { benchReflectance: 0.5 }],
];

function planWith(id: string, part: Partial<Place>): Plan {
  const places = demonstrationPlan.places
    .filter((place) => place.id === id)
    .map((place) => ({ ...place, ...part }));
  return { ...demonstrationPlan, places, lots: [] };
}

describe('a warm cache', () => {
  it.each(changes)('knows a change of light: %s', (_what, id, part) => {
    const before = runSeason(planWith(id, {}), weather, warm).places[0];
    const kept = runSeason(planWith(id, part), weather, warm).places[0];
    const fresh = runSeason(planWith(id, part), weather).places[0];
    expect(kept.daily).toEqual(fresh.daily);
    const light = ({ daily }: typeof kept) => [...daily.daylight, ...daily.lampLight];
    expect(light(kept)).not.toEqual(light(before));
  });
});
