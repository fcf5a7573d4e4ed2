import { describe, expect, it } from 'vitest';
import {
  applyFlowerWay,
  createSeasonCache,
  demonstrationPlan,
  flowerTogether,
  lotOf,
  runSeason,
  weatherFromPlan,
} from '../../core/index.ts';
import type { FlowerMeeting, FlowerWay, LotSeason, Plan, WeatherYear } from '../../core/index.ts';

const demo = demonstrationPlan;
const weather = weatherFromPlan(demo) as WeatherYear;
const cache = createSeasonCache();

/** A lean-to with a heater, a lamp tent and a window, each with 5 m² of bench unless told otherwise. */
function planOf(
  groups: readonly string[],
  { area = 0.01, growingArea = 5, in: home = 'bright-tent' } = {},
): Plan {
  const places = ['lean-to', 'bright-tent', 'window'].map((id) => {
    const place = demo.places.find((each) => each.id === id);
    if (place === undefined) throw new RangeError(`expected a place of the demonstration, got ${id}`);
    return { ...place, growingArea };
  });
  const lots = groups.map((group) => lotOf({ id: group, name: `The ${group}`, group, place: home, area }));
  return { ...demo, places, lots };
}

const meet = (plan: Plan, one: string, other: string) =>
  flowerTogether(plan, weather, { one, other }, { cache });

function lotIn(plan: Plan, lotId: string): LotSeason {
  const lot = runSeason(plan, weather, cache).lots.find((each) => each.lotId === lotId);
  if (lot === undefined) throw new RangeError(`expected a lot of the plan, got ${lotId}`);
  return lot;
}

/** Days with any harm that counts at once: all but chill. */
function harmed(lot: LotSeason): number {
  const doses = [lot.frostDose, lot.heatDose, lot.scorchDose, lot.wetColdDose, lot.declineDose];
  return lot.state.reduce((days, _, day) => days + (doses.some((dose) => dose[day] > 0) ? 1 : 0), 0);
}

const everyGroup = ['echeveria', 'desert-cacti', 'holiday-cactus', 'citrus', 'olive', 'kalanchoe'];
const roomy = planOf(everyGroup);
const pairs: [string, string][] = [
  ['desert-cacti', 'citrus'],
  ['citrus', 'kalanchoe'],
  ['holiday-cactus', 'olive'],
  ['echeveria', 'desert-cacti'],
];

describe.each(pairs)('%s with %s', (one, other) => {
  const before = structuredClone(roomy);
  const heard: FlowerWay[] = [];
  const meeting: FlowerMeeting = flowerTogether(
    roomy,
    weather,
    { one, other },
    { cache, onWay: (way) => heard.push(way) },
  );

  it('is brought together in one to five ways, each told of as it is found; the plan stays as it was', () => {
    expect(meeting.whyNot).toBeNull();
    expect(meeting.ways.length).toBeGreaterThan(0);
    expect(meeting.ways.length).toBeLessThanOrEqual(5);
    expect(new Set(heard)).toEqual(new Set(meeting.ways));
    expect(roomy).toEqual(before);
  });

  it('each way, kept in the plan and run afresh, gives its windows, its harm and its overlap', () => {
    for (const way of meeting.ways) {
      const changed = applyFlowerWay(roomy, way);
      for (const keeping of [way.one, way.other]) {
        const after = lotIn(changed, keeping.lotId);
        expect(after.flowering.window, way.words).toEqual(keeping.window);
        expect(harmed(after) - harmed(lotIn(roomy, keeping.lotId)), way.words).toBe(keeping.harmDays);
        expect(keeping.harmDays).toBeLessThanOrEqual(0);
      }
      const { from, to } = way.one.window;
      expect(way.overlap).toBe(Math.min(to, way.other.window.to) - Math.max(from, way.other.window.from) + 1);
      expect(way.overlap).toBeGreaterThan(0);
    }
  });

  it('the best come first: whole weeks of overlap, then fewest changes, then days', () => {
    const keys = meeting.ways.map(({ overlap, changes }) => [Math.floor(overlap / 7), -changes, overlap]);
    const sorted = [...keys].sort((a, b) => b[0] - a[0] || b[1] - a[1] || b[2] - a[2]);
    expect(keys).toEqual(sorted);
  });

  it('ways differ in their places, and are said in one sentence each', () => {
    const courses = meeting.ways.map((way) =>
      JSON.stringify([way.one, way.other].map(({ placeId, moves }) => [placeId, moves.map(({ to }) => to)])),
    );
    expect(
      new Set(courses.map((each, index) => each + JSON.stringify(meeting.ways[index].warmth))).size,
    ).toBe(courses.length);
    for (const { words } of meeting.ways)
      expect(words).toMatch(/^(Keep|Leave) [^\n]+: both flower from \d+ \w+ to \d+ \w+\.$/);
  });

  it('is what it says now', () => {
    expect(meeting.now.one).toEqual(lotIn(roomy, one).flowering.window);
    expect(meeting.now.other).toEqual(lotIn(roomy, other).flowering.window);
    expect(meeting.now.words).toMatch(new RegExp(`^The ${one}: .+; The ${other}: .+\\.$`));
  });
});

describe('warmth', () => {
  const { ways } = meet(roomy, 'echeveria', 'desert-cacti');
  it('is changed where dates alone do not do it, with what it costs', () => {
    expect(ways.every(({ warmth }) => warmth?.placeId === 'lean-to')).toBe(true);
    for (const way of ways) {
      const changed = applyFlowerWay(roomy, way);
      const cost = (plan: Plan) =>
        runSeason(plan, weather, cache).places.find(({ placeId }) => placeId === 'lean-to')?.totals.cost ??
        NaN;
      expect(way.warmth?.cost).toBeCloseTo(cost(changed) - cost(roomy), 6);
      const [heater] = changed.places[0].heaters;
      expect(heater.setPointNight).toBe(5 + (way.warmth?.kelvin ?? NaN));
      expect(heater.setPointDay).toBe(heater.setPointNight);
      expect(way.words).toMatch(/heat Lean-to on the kitchen wall \d K warmer \(\d+ EUR a season more\)/);
    }
  });
});

describe('where they meet as they stand', () => {
  const plan = planOf(['desert-cacti', 'easter-cactus'], { in: 'lean-to' });
  const lots = plan.lots.map((lot) => ({ ...lot, id: `${lot.id}-2`, name: lot.name }));
  const twice = { ...plan, lots: [plan.lots[0], { ...lots[0] }] };
  it('the way of no change comes first and alone', () => {
    const { ways, now } = meet(twice, 'desert-cacti', 'desert-cacti-2');
    expect(now.one).not.toBeNull();
    expect(ways).toHaveLength(1);
    expect(ways[0]).toMatchObject({ changes: 0, warmth: null, one: { harmDays: 0 }, other: { harmDays: 0 } });
    expect(ways[0].words).toMatch(/^Leave both as planned: both flower from/);
    expect(now.words).toMatch(/\(\d+ days together\)\.$/);
  });
});

describe('why not', () => {
  it('names the group whose flowers follow no known rule', () => {
    const plan = planOf(['aeonium', 'citrus']);
    expect(meet(plan, 'aeonium', 'citrus')).toMatchObject({
      ways: [],
      whyNot: 'What sets flower in The aeonium is not known, so no date can be given.',
    });
  });
  it('says how much of the need is met at most', () => {
    const plan = planOf(['citrus', 'kalanchoe']);
    const warmTents = { ...plan, places: [plan.places[1]], groupEdits: { citrus: { restBelow: -20 } } };
    const { whyNot } = meet(warmTents, 'citrus', 'kalanchoe');
    expect(whyNot).toBe('The citrus need 56 days of cool rest, and get 0 at most wherever they are kept.');
  });
  it('asks for bench room: lots too large for any bench only go outdoors and back', () => {
    const { ways } = meet(planOf(['desert-cacti', 'citrus'], { area: 6 }), 'desert-cacti', 'citrus');
    for (const { placeId, moves } of ways.flatMap(({ one, other }) => [one, other]))
      for (const id of [placeId, ...moves.map(({ to }) => to)])
        expect(['bright-tent', 'outdoors']).toContain(id);
    const shut = planOf(['echeveria', 'citrus'], { area: 6 });
    const tender = { echeveria: { damageColdDry: 12, damageColdWet: 12 } };
    expect(meet({ ...shut, groupEdits: tender }, 'echeveria', 'citrus')).toMatchObject({
      ways: [],
      whyNot: 'The echeveria would be set for flower only where they are harmed or have no bench.',
    });
  });
  it('is told of a search that was stopped', () => {
    const asked = { count: 0 };
    const stop = () => (asked.count += 1) > 0;
    const stopped = flowerTogether(
      roomy,
      weather,
      { one: 'citrus', other: 'olive' },
      { cache, cancelled: stop },
    );
    expect(stopped).toMatchObject({ ways: [], whyNot: 'The search was stopped before it found a way.' });
    expect(asked.count).toBeGreaterThan(0);
  });
  it('refuses lots that are not in the plan, and one lot twice', () => {
    expect(() => meet(roomy, 'citrus', 'fern')).toThrow('expected a lot of the plan, got fern');
    expect(() => meet(roomy, 'citrus', 'citrus')).toThrow('expected two lots, got citrus twice');
  });
});
