/** Lots carried between places, lots together and alone, plants in the open, groups of the user's own. */
import { describe, expect, it } from 'vitest';
import {
  createSeasonCache,
  demonstrationPlan,
  judgeLot,
  lotOf,
  parsePlan,
  plantGroups,
  planNumbers,
  runPlants,
  runSeason,
  seasonSetting,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Lot, Plan, WeatherYear } from '../../core/index.ts';

const plan = demonstrationPlan;
const weather = weatherFromPlan(plan) as WeatherYear;
const cache = createSeasonCache();
const setting = seasonSetting(plan, weather, cache);

const lotIn = (place: string, part: object = {}): Lot =>
  lotOf({ id: 'moved', name: 'Moved', group: 'echeveria', place, area: 0.1, ...part });

/** Lots of a plan in the given places; wetness and so heat may differ from the demonstration's. */
const withLots = (lots: readonly Lot[]): Plan => {
  const reading = parsePlan({ ...plan, lots });
  if (reading.ok) return reading.plan;
  throw new Error(reading.problems.map((each) => `${each.path}: ${each.message}`).join('\n'));
};

describe('a lot that is carried', () => {
  const moves = [
    { on: '11-01', to: 'bright-tent' },
    { on: '03-01', to: 'window' },
  ];
  const moved = judgeLot(setting, lotIn('tunnel', { moves }));
  const alone = ['tunnel', 'bright-tent', 'window'].map((place) => judgeLot(setting, lotIn(place)));
  const [before, inTent, after] = alone;

  it('lives through the days of the place it stands in', () => {
    const day = { out: 91, in: 92, lastTent: 211, window: 212 };
    for (const name of ['leafMean', 'leafLeast', 'dailyLight', 'photoperiod', 'potMean'] as const) {
      expect(moved.lived[name][day.out]).toBe(before.lived[name][day.out]);
      expect(moved.lived[name][day.in]).toBe(inTent.lived[name][day.in]);
      expect(moved.lived[name][day.lastTent]).toBe(inTent.lived[name][day.lastTent]);
      expect(moved.lived[name][day.window]).toBe(after.lived[name][day.window]);
    }
    expect(moved.lived.leafMean[day.in] - moved.lived.leafMean[day.out]).toBeGreaterThan(5);
  });

  it('carries its memory along: warmth is taken up from where it was, day after day', () => {
    const numbers = planNumbers(plan, 'echeveria');
    const weight = 1 - Math.exp(-1 / numbers.inertiaDays);
    expect(moved.rememberedLeaf[91]).toBeLessThan(inTent.rememberedLeaf[91] - 4);
    const expected =
      moved.rememberedLeaf[91] + weight * (moved.lived.leafMean[92] - moved.rememberedLeaf[91]);
    expect(moved.rememberedLeaf[92]).toBeCloseTo(expected, 9);
    // A month on it has forgotten.
    expect(Math.abs(moved.rememberedLeaf[122] - inTent.rememberedLeaf[122])).toBeLessThan(0.5);
  });

  it('is judged as the same days lived in one place would be', () => {
    const { lived } = moved;
    const straight = runPlants(
      planNumbers(plan, 'echeveria'),
      {
        meanLeaf: lived.leafMean,
        leastLeaf: lived.leafLeast,
        mostLeaf: lived.leafMost,
        meanNightLeaf: lived.leafNight,
        dailyLight: lived.dailyLight,
        photoperiod: lived.photoperiod,
      },
      { watering: 'by-season' },
    );
    expect([...moved.state]).toEqual([...straight.state]);
    expect(moved.transitions).toEqual(straight.transitions);
  });

  it('takes harm only where it stands: frost in the tunnel is not met in the tent', () => {
    const frost = (from: number, to: number, dose: Float64Array) =>
      dose.subarray(from, to).reduce((sum, value) => sum + value, 0);
    const tender = { group: 'adenium', moves };
    const adenium = judgeLot(setting, lotIn('tunnel', tender));
    const left = judgeLot(setting, lotIn('tunnel', { group: 'adenium' }));
    expect(frost(92, 212, left.frostDose)).toBeGreaterThan(0);
    expect(frost(92, 212, adenium.frostDose)).toBe(0);
  });

  it('shows in every place it visits as one result, and once among the lots', () => {
    const season = runSeason(withLots([lotIn('tunnel', { moves })]), weather, cache);
    expect(season.lots).toHaveLength(1);
    const at = season.places.filter(({ lots }) => lots.length > 0).map(({ placeId }) => placeId);
    expect(at.sort()).toEqual(['bright-tent', 'tunnel', 'window']);
    for (const place of season.places) for (const lot of place.lots) expect(lot).toBe(season.lots[0]);
  });
});

describe('a plan with all groups in one place and each alone', () => {
  it('gives the same verdicts, pots and leaf area held equal', () => {
    const area = 0.01;
    const lots = plantGroups.map(({ id }) =>
      lotOf({ id: `lot-${id}`, name: id, group: id, place: 'lean-to', area }),
    );
    const together = runSeason(withLots(lots), weather, cache);
    for (const lot of lots) {
      const alone = runSeason(withLots([{ ...lot, area: area * lots.length }]), weather, cache).lots[0];
      const judged = together.lots.find(({ lotId }) => lotId === lot.id)!;
      expect([...judged.state], lot.group).toEqual([...alone.state]);
      expect(judged.harm, lot.group).toEqual(alone.harm);
      expect(judged.transitions, lot.group).toEqual(alone.transitions);
    }
  });
});

describe('plants in the open', () => {
  const season = runSeason(withLots([lotIn('outdoors')]), weather, cache);
  const { lived, lots } = season.outdoors;

  it('are listed outdoors, in no place', () => {
    expect(lots.map(({ lotId }) => lotId)).toEqual(['moved']);
    expect(season.places.every((place) => place.lots.length === 0)).toBe(true);
    expect(lots[0].stays).toEqual([{ placeId: 'outdoors', from: 0, to: 364 }]);
  });

  it('have leaves colder than the air by night and warmer under the sun', () => {
    let [colder, warmer] = [0, 0];
    for (let day = 0; day < season.days; day++) {
      const below = season.outdoor.least[day] - lived.leafLeast[day];
      expect(below).toBeGreaterThanOrEqual(-1e-9);
      // 1 to 3 K on clear still nights (Leuning & Cremer 1988, see the leaf's own test); cloud and wind bring less.
      expect(below).toBeLessThan(4);
      if (below > 1) colder += 1;
      if (lived.leafMost[day] > season.outdoor.most[day] + 2) warmer += 1;
    }
    expect(colder).toBeGreaterThan(40);
    expect(warmer).toBeGreaterThan(100);
  });

  it('have the light of the open sky, and pots that swing less than leaves', () => {
    expect(lived.dailyLight).toEqual(season.outdoor.daylight);
    const spread = (values: Float64Array) => {
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      return values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    };
    expect(spread(lived.potMean)).toBeLessThan(spread(lived.leafMean) * 1.02);
    expect(Math.max(...lived.potMean)).toBeLessThan(Math.max(...lived.leafMost));
  });
});

describe('a group of the user’s own', () => {
  const own = { id: 'my-echeverias', name: 'My echeverias', from: 'echeveria' };
  const planWith = (numbers: Record<string, number>) => {
    const lots = [lotIn('window', { group: 'my-echeverias' })];
    const reading = parsePlan({ ...plan, lots, ownGroups: [{ ...own, numbers }] });
    if (reading.ok) return reading.plan;
    throw new Error(reading.problems.map((each) => each.message).join('\n'));
  };

  it('unchanged is judged as the group it was copied from', () => {
    const copied = runSeason(planWith({}), weather, cache).lots[0];
    const catalogue = runSeason(withLots([lotIn('window')]), weather, cache).lots[0];
    expect([...copied.state]).toEqual([...catalogue.state]);
    expect(copied.groupId).toBe('my-echeverias');
  });

  it('changed is judged by its own numbers, and a warm cache knows it', () => {
    const stretching = (numbers: Record<string, number>) =>
      runSeason(planWith(numbers), weather, cache).lots[0].stateDays[6];
    expect(stretching({ lightStretch: 9.5 })).toBeGreaterThan(stretching({ lightStretch: 3.2 }));
  });

  it('is refused where it copies nothing, has a taken name or numbers that contradict each other', () => {
    const problems = (ownGroups: unknown) => {
      const reading = parsePlan({ ...plan, ownGroups });
      return reading.ok ? [] : reading.problems.map(({ path, message }) => `${path}: ${message}`);
    };
    expect(problems([{ ...own, from: 'nothing' }])).toEqual([
      'ownGroups.0.from: expected a known plant group, got nothing',
    ]);
    expect(problems([{ ...own, id: 'echeveria' }])).toEqual([
      'ownGroups.0.id: expected an id used once, got echeveria again',
    ]);
    expect(problems([{ ...own, numbers: { baseTemperature: 30 } }])[0]).toMatch(
      /^ownGroups\.0\.numbers: expected baseTemperature below optimumLow, got 30/,
    );
    expect(problems([own])).toEqual([]);
  });
});

describe('lots that point nowhere', () => {
  const problems = (part: object) => {
    const reading = parsePlan({ ...plan, lots: [{ ...lotIn('window'), ...part }] });
    return reading.ok ? [] : reading.problems.map(({ path, message }) => `${path}: ${message}`);
  };
  it.each([
    [{ place: 'attic' }, 'lots.0.place: expected a known place, got attic'],
    [{ group: 'moss' }, 'lots.0.group: expected a known plant group, got moss'],
    [{ moves: [{ on: '11-01', to: 'attic' }] }, 'lots.0.moves.0.to: expected a known place, got attic'],
    [
      {
        moves: [
          { on: '11-01', to: 'tunnel' },
          { on: '11-01', to: 'outdoors' },
        ],
      },
      'lots.0.moves.1.on: expected one move a day, got 11-01 again',
    ],
    [{ plants: 1.5 }, 'lots.0.plants: expected a whole number'],
  ])('are refused: %j', (part, message) => {
    expect(problems(part)).toEqual([message]);
  });

  it('a place may not be called what the open air is called', () => {
    const reading = parsePlan({ ...plan, places: [{ ...plan.places[0], id: 'outdoors' }], lots: [] });
    expect(reading.ok ? [] : reading.problems.map(({ message }) => message)).toEqual([
      "expected another id than 'outdoors'",
    ]);
  });
});
