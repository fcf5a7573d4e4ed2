import { describe, expect, it } from 'vitest';
import {
  createSeasonCache,
  demonstrationPlan,
  heaterOf,
  lotOf,
  planGroup,
  planGroups,
  planNumbers,
  runSeason,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Plan, PlaceRank, PlantGroup, WeatherYear } from '../../core/index.ts';
import { winterFit } from '../../core/advice/rank-fit.ts';
import { rankGroups, rankPlaces } from '../../core/advice/rank.ts';

const plan = demonstrationPlan;
const weather = weatherFromPlan(plan) as WeatherYear;
const cache = createSeasonCache();

/** The plan with a fan heater in its tunnel that holds `setPoint` [°C]. */
function heated(setPoint: number): Plan {
  const heater = heaterOf({
    id: 'more',
    name: 'Fan heater',
    kind: 'fan',
    power: 4000,
    setPointDay: setPoint,
    setPointNight: setPoint,
  });
  const places = plan.places.map((place) =>
    place.id === 'tunnel' ? { ...place, heaters: [heater] } : place,
  );
  return { ...plan, places };
}

const at = (ranks: readonly PlaceRank[], id: string) => {
  const rank = ranks.find(({ placeId }) => placeId === id);
  if (rank === undefined) throw new RangeError(`expected a rank of ${id}, got none`);
  return rank;
};
const places = (groupId: string, of = plan) => rankPlaces(of, weather, groupId, cache);

describe('where a plant spends the winter (common practice, no source)', () => {
  it('the echeveria: the bright cool lean-to before the warm dim tent, never the tunnel', () => {
    const ranks = places('echeveria');
    expect(ranks[0].placeId).toBe('lean-to');
    expect(at(ranks, 'lean-to').verdict).toBe('well');
    expect(at(ranks, 'dim-tent')).toMatchObject({ verdict: 'poorly' });
    expect(at(ranks, 'dim-tent').words).toMatch(/^It draws up on \d+ days: too little light/);
    expect(at(ranks, 'tunnel')).toMatchObject({ verdict: 'unsafe' });
  });
  it('an agave rests well in the cool lean-to, and badly in the dark of a warm tent', () => {
    const ranks = places('agave');
    expect(at(ranks, 'lean-to').verdict).toBe('well');
    expect(at(ranks, 'dim-tent')).toMatchObject({ verdict: 'poorly' });
    expect(at(ranks, 'dim-tent').words).toMatch(/^It stands still in the dark on 182 days, with 1\.\d mol/);
  });
  it('a verdict outdoors says that it is without rain', () => {
    expect(at(places('sempervivum'), 'outdoors').words).toMatch(/ with the rain kept off\.$/);
    expect(at(places('agave'), 'outdoors').words).not.toMatch(/rain/);
  });
  it('the haworthia does well on the window sill', () =>
    expect(at(places('haworthia'), 'window').verdict).toBe('well'));
  it('the adenium is not safe in an unheated tunnel, and frost is named first', () => {
    const tunnel = at(places('adenium'), 'tunnel');
    expect(tunnel).toMatchObject({ verdict: 'unsafe', harms: ['frost', 'chill'] });
    expect(tunnel.words).toMatch(/^Too cold: leaves fall to −\d+\.\d °C, \d+\.\d K below what it bears\.$/);
  });
  it('the sempervivum does well outdoors, best of all places', () => {
    const [best] = places('sempervivum');
    expect(best).toMatchObject({ placeId: 'outdoors', verdict: 'well', harms: [], freeArea: null });
  });
  it('a winter grower is better off growing in the light than resting cold', () => {
    expect(places('aeonium')[0].placeId).toBe('bright-tent');
    expect(places('conophytum')[0].placeId).toBe('bright-tent');
  });
  it('an Easter cactus misses its cool rest in the warm tent', () =>
    expect(at(places('easter-cactus'), 'bright-tent').words).toBe(
      'Never below 13 °C, and it wants 12 weeks of such rest to flower.',
    ));
  it('says that a bench is full, without holding it against the place', () => {
    const taking = (area: number): Plan => {
      const lot = { id: 'one', name: 'One', group: 'agave', place: 'lean-to', area };
      return { ...plan, lots: [lotOf({ ...lot, moves: [{ on: '01-05', to: 'window' }] })] };
    };
    const full = at(places('sempervivum', taking(60)), 'lean-to');
    expect([full.freeArea, full.words.endsWith('. No bench is free there.')]).toEqual([0, true]);
    const before = at(places('sempervivum', taking(3)), 'lean-to');
    expect(before.freeArea).toBeCloseTo(4.6 - 3, 9);
    expect(full.score).toBeCloseTo(before.score, 1);
  });
});

describe('what can live here', () => {
  const ids = [...plan.places.map(({ id }) => id), 'outdoors'];
  it.each(ids)('%s: every group once, best first, every figure a number, one sentence each', (placeId) => {
    const ranks = rankGroups(plan, weather, placeId, cache);
    expect(ranks.map(({ groupId }) => groupId).sort()).toEqual(
      planGroups(plan)
        .map(({ id }) => id)
        .sort(),
    );
    ranks.forEach((rank, index) => {
      expect(rank.score).toBeLessThanOrEqual(index === 0 ? 1 : ranks[index - 1].score);
      const figures = [rank.score, rank.leastLeaf, rank.sparedKelvin, rank.light, ...rank.stateDays];
      expect(figures.every(Number.isFinite), rank.groupId).toBe(true);
      expect(rank.score).toBeGreaterThanOrEqual(0);
      expect(rank.stateDays.reduce((a, b) => a + b)).toBe(182);
      expect(rank.words).toMatch(/^[A-Z0-9][^\n]*\.$/);
      expect(rank.words).not.toMatch(/NaN|undefined|Infinity|null/);
    });
  });
  it('gives each group what its own ranking of places gives the place', () => {
    for (const { groupId, ...fit } of rankGroups(plan, weather, 'lean-to', cache)) {
      const { placeId, freeArea, ...own } = at(places(groupId), 'lean-to');
      expect([placeId, typeof freeArea, own]).toEqual(['lean-to', 'number', fit]);
    }
  });
  it('agrees with the season of the plan for lots that stand still, all over the bench, and are watered by the season', () => {
    const season = runSeason(plan, weather);
    const winter = { from: season.winterFrom, to: season.winterTo };
    const lots = season.lots.filter((_, index) => {
      const { watering, moves, spot } = plan.lots[index];
      return (
        watering === 'by-season' && moves.length === 0 && Object.values(spot).every((part) => part === 'all')
      );
    });
    expect(lots.length).toBeGreaterThan(4);
    for (const lot of lots) {
      const group = planGroup(plan, lot.groupId) as PlantGroup;
      const fit = winterFit(lot, group, planNumbers(plan, lot.groupId), winter);
      const { placeId, freeArea, ...ranked } = at(places(lot.groupId), lot.placeId);
      expect([placeId, freeArea === null], lot.lotId).toEqual([lot.placeId, false]);
      expect({ ...ranked, words: ranked.words.replace(' No bench is free there.', '') }, lot.lotId).toEqual(
        fit,
      );
    }
  });
  it('knows the own groups of the plan', () => {
    const own = {
      id: 'mine',
      name: 'Mine',
      examples: '',
      from: 'echeveria',
      numbers: { damageColdDry: -30, damageColdWet: -30 },
    };
    const ranks = rankGroups({ ...plan, ownGroups: [own] }, weather, 'tunnel', cache);
    const [mine, copied] = ['mine', 'echeveria'].map((id) => ranks.find(({ groupId }) => groupId === id));
    expect(mine?.verdict).not.toBe('unsafe');
    expect(copied?.verdict).toBe('unsafe');
  });
  it('is the same every time and leaves the plan as it was', () => {
    const before = structuredClone(plan);
    expect(rankGroups(plan, weather, 'window')).toEqual(rankGroups(plan, weather, 'window', cache));
    expect(plan).toEqual(before);
  });
  it('refuses what the plan does not know', () => {
    expect(() => rankGroups(plan, weather, 'attic', cache)).toThrow(
      'expected a place of the plan, got attic',
    );
    expect(() => places('fern')).toThrow('expected a plant group of the plan, got fern');
  });
});

describe('warming a place that frosts a group', () => {
  const steps = [plan, ...[-4, -1, 2, 5, 9].map(heated)];
  it.each(planGroups(plan).map(({ id }) => id))(
    'never lowers it for %s while other harms stay',
    (groupId) => {
      const ranks = steps.map((step) => places(groupId, step));
      for (let step = 1; step < ranks.length; step += 1) {
        const [before, after] = [ranks[step - 1], ranks[step]].map((each) => at(each, 'tunnel'));
        if (!before.harms.includes('frost')) continue;
        if (after.harms.some((harm) => !before.harms.includes(harm))) continue;
        expect(after.score, `${groupId}, step ${step}`).toBeGreaterThanOrEqual(before.score);
        const place = (each: readonly PlaceRank[]) => each.findIndex(({ placeId }) => placeId === 'tunnel');
        expect(place(ranks[step])).toBeLessThanOrEqual(place(ranks[step - 1]));
      }
    },
  );
});
