import { describe, expect, it } from 'vitest';
import {
  applyChange,
  createSeasonCache,
  demonstrationPlan,
  findWays,
  runSeason,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Plan, SeasonCache, Way, WeatherYear, Wish } from '../../core/index.ts';
import { leversOf } from '../../core/advice/levers.ts';
import { onlyPlace } from '../../core/advice/ways.ts';
import { fulfilment } from '../../core/advice/wish.ts';
import { surfacesOf } from '../../core/fabric/index.ts';

const plan = demonstrationPlan;
const weather = weatherFromPlan(plan) as WeatherYear;
const cache = createSeasonCache();
const midWinter = { fromDay: 122, toDay: 198 };

const wishes: [string, Wish, boolean][] = [
  [
    'echeverias in the dim tent grow',
    { kind: 'keep-growing', lotId: 'spare-echeverias', ...midWinter },
    true,
  ],
  ['echeverias in the window grow', { kind: 'keep-growing', lotId: 'window-echeverias', ...midWinter }, true],
  ['pelargoniums in the lean-to grow', { kind: 'keep-growing', lotId: 'pelargoniums', ...midWinter }, false],
  [
    'agaves in the tunnel rest safely',
    { kind: 'safe-rest', lotId: 'agaves', neverBelow: 0, weeks: 10 },
    true,
  ],
  ['the tunnel holds 2 °C', { kind: 'hold-temperature', placeId: 'tunnel', temperature: 2 }, true],
  ['the lean-to holds 10 °C', { kind: 'hold-temperature', placeId: 'lean-to', temperature: 10 }, true],
  ['10 mol a day in the dim tent', { kind: 'daily-light', placeId: 'dim-tent', least: 10 }, true],
  [
    'no rest to be had in a warm room',
    { kind: 'safe-rest', lotId: 'echeverias', neverBelow: 3, weeks: 8 },
    false,
  ],
];

/** A cache that knows the site's year and nothing of any place. */
const fresh = (): SeasonCache => ({
  ...createSeasonCache(),
  weatherIds: cache.weatherIds,
  years: cache.years,
});

function placeOf(way: Way): Plan['places'][number] {
  const place = plan.places.find((each) => each.id === way.placeId);
  if (place === undefined) throw new Error(`expected a place of the plan, got ${way.placeId}`);
  return place;
}

const judge = (change: Way['change'], way: Way, wish: Wish) =>
  fulfilment(runSeason(applyChange(onlyPlace(plan, placeOf(way)), change), weather, fresh()), wish);

/** The setting of the way's lever one grid step nearer to what there is; null where it is the first. */
function oneStepLess(way: Way): Way['change'] | null {
  const place = placeOf(way);
  const coverArea = surfacesOf(place)
    .surfaces.filter((surface) => surface.transparent)
    .reduce((sum, surface) => sum + surface.area, 0);
  const levers = (['up', 'down'] as const).flatMap((direction) => leversOf(place, coverArea, direction));
  for (const lever of levers.filter((each) => each.id === way.lever)) {
    const at = lever.settings.findIndex((setting) => setting.value === way.to && setting.words === way.words);
    if (at >= 0) return at === 0 ? null : lever.settings[at - 1].change;
  }
  throw new Error(`expected a lever with ${way.words}, got none`);
}

describe.each(wishes)('%s', (_, wish, reachable) => {
  const before = structuredClone(plan);
  const result = findWays(plan, weather, wish, { cache });

  it(reachable ? 'is within reach' : 'is out of reach, and says so', () => {
    expect(result.already).toBe(false);
    expect(result.outOfReach).toBe(!reachable);
    expect(result.ways.length).toBeGreaterThan(0);
  });

  it('leaves the plan as it was', () => expect(plan).toEqual(before));

  it('each way that fulfils it does so when the season is run afresh; each that does not, does not', () => {
    for (const way of result.ways) {
      expect(judge(way.change, way, wish).fulfilled, way.words).toBe(way.fulfils);
      expect(way.shortfall === '', way.words).toBe(way.fulfils);
    }
  });

  it('one grid step less does not fulfil it', () => {
    for (const way of result.ways.filter((each) => each.fulfils)) {
      const less = oneStepLess(way);
      if (less !== null) expect(judge(less, way, wish).fulfilled, way.words).toBe(false);
    }
  });

  it('ways that fulfil come first, the cheapest first', () => {
    const flags = result.ways.map((way) => way.fulfils);
    expect(flags).toEqual([...flags].sort((a, b) => Number(b) - Number(a)));
    const costs = result.ways.filter((way) => way.fulfils).map((way) => way.runningCost + way.purchaseCost);
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
  });
});

describe('a wish for plants that summer outdoors', () => {
  const wish: Wish = { kind: 'safe-rest', lotId: 'step-agave', neverBelow: -20, weeks: 1 };
  it('is asked of the place they are carried to', () => {
    const { already, now } = findWays(plan, weather, wish, { cache });
    expect(already).toBe(true);
    expect(now).toContain('°C');
  });
  it('is wrong use where they are never in a place', () => {
    const lots = plan.lots.map((lot) => (lot.id === 'step-agave' ? { ...lot, moves: [] } : lot));
    expect(() => findWays({ ...plan, lots }, weather, wish, { cache })).toThrow(
      'expected a lot that is ever in a place, got step-agave',
    );
  });
});

describe('a search', () => {
  it('stops when it is told to, and tells of each way as it is found', () => {
    const heard: Way[] = [];
    const wish = wishes[1][1];
    const result = findWays(plan, weather, wish, {
      cache,
      onWay: (way) => heard.push(way),
      cancelled: () => heard.length === 1,
    });
    expect(result.ways).toEqual(heard);
    expect(heard).toHaveLength(1);
  });

  it('finds nothing to do where the wish is fulfilled already', () => {
    const result = findWays(
      plan,
      weather,
      { kind: 'hold-temperature', placeId: 'lean-to', temperature: 4 },
      { cache },
    );
    expect(result).toMatchObject({ already: true, ways: [], outOfReach: false });
  });

  it('refuses plants and places that are not in the plan', () => {
    const wish: Wish = { kind: 'daily-light', placeId: 'attic', least: 5 };
    expect(() => findWays(plan, weather, wish, { cache })).toThrow('expected a place of the plan, got attic');
  });
});
