import { describe, expect, it } from 'vitest';
import {
  createSeasonCache,
  demonstrationPlan,
  runNight,
  runSeason,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Lot, NightInput, NightResult, OutdoorNight, Plan, WeatherYear } from '../../core/index.ts';
import { outdoorLeaf } from '../../core/heat/index.ts';
import { firstDifference, firstNotFinite } from '../season/difference.ts';

/** The lean-to of the demonstration and what stands in it or is carried there. */
const plan: Plan = {
  ...demonstrationPlan,
  places: demonstrationPlan.places.filter(({ id }) => id === 'lean-to'),
  lots: demonstrationPlan.lots.filter(({ id, place }) => id === 'step-agave' || place === 'lean-to'),
};
const weather = weatherFromPlan(demonstrationPlan) as WeatherYear;
const cache = createSeasonCache();
/** The demonstration's agave from the steps stands outdoors from 25 April to 19 October. */
const input: NightInput = {
  dateISO: '2026-05-02',
  duskTemperature: 6,
  low: -1,
  cloudOktas: 0,
  wind: 1,
  band: 2,
};

const tonight = (changes: Partial<NightInput> = {}, of: Plan = plan): NightResult =>
  runNight(of, { ...input, ...changes }, weather, cache);

function outdoorsOf(changes: Partial<NightInput> = {}, of?: Plan): OutdoorNight {
  const { outdoors } = tonight(changes, of);
  if (outdoors === null) throw new Error('expected lots outdoors tonight, got none');
  return outdoors;
}

const agave = plan.lots.find(({ id }) => id === 'step-agave') as Lot;
/** The demonstration with more lots, none of them ever carried. */
const withOutdoors = (...lots: Partial<Lot>[]): Plan => ({
  ...plan,
  lots: [...plan.lots, ...lots.map((lot) => ({ ...agave, moves: [], ...lot }) as Lot)],
});

describe('tonight outdoors', () => {
  it('is null while nothing stands there, and begins and ends with the days a lot is carried', () => {
    expect(tonight({ dateISO: '2026-01-14' }).outdoors).toBeNull();
    expect(tonight({ dateISO: '2026-04-24' }).outdoors).toBeNull();
    expect(tonight({ dateISO: '2026-04-25' }).outdoors?.lots.map((lot) => lot.lotId)).toEqual(['step-agave']);
    expect(tonight({ dateISO: '2026-10-19' }).outdoors?.lots).toHaveLength(1);
    expect(tonight({ dateISO: '2026-10-20' }).outdoors).toBeNull();
  });

  it('looks at every lot there and at none in a place', () => {
    const night = tonight({}, withOutdoors({ id: 'second', group: 'pelargonium' }));
    expect(night.outdoors?.lots.map(({ lotId }) => lotId)).toEqual(['step-agave', 'second']);
    const inside = night.places.flatMap(({ lots }) => lots.map(({ lotId }) => lotId));
    expect(inside).not.toContain('step-agave');
    expect(inside).not.toContain('second');
  });

  it('is the leaf in the open under the night’s own air, sky and wind', () => {
    const night = tonight();
    const { leaf, least, leastMs } = outdoorsOf();
    expect(leaf).toHaveLength(night.n);
    expect(firstNotFinite([leaf, least, leastMs])).toBeNull();
    // Hour after hour in the dark of a May night at 54° N, from two hours after dusk.
    for (let k = 24; k <= 72; k += 12) {
      expect(leaf[k]).toBe(outdoorLeaf(night.outdoor[k], night.skyTemperature[k], 1));
    }
    expect(least).toBe(leaf.reduce((low, value) => Math.min(low, value), Infinity));
    const at = (leastMs - night.startMs) / (night.stepMinutes * 60_000);
    expect(leaf[at]).toBe(least);
  });

  it('the morning’s sun warms the leaf above the air', () => {
    const night = tonight();
    expect(outdoorsOf().leaf[night.n - 1]).toBeGreaterThan(night.outdoor[night.n - 1] + 2);
  });

  it.each([
    ['a lower forecast', [4, 1, -2, -6].map((low) => ({ low }))],
    ['a clearer sky', [8, 5, 2, 0].map((cloudOktas) => ({ cloudOktas }))],
    ['a stiller air', [6, 3, 1.5, 0.6].map((wind) => ({ wind }))],
  ])('%s makes the leaf colder, beneath the air where it is clear', (_, changes) => {
    const nights = changes.map((change) => outdoorsOf(change).least);
    for (let at = 1; at < nights.length; at++) expect(nights[at]).toBeLessThan(nights[at - 1]);
    expect(outdoorsOf().least).toBeLessThan(input.low);
  });

  it('limits are the season’s of the day, the margin the neediest lot’s', () => {
    const more = withOutdoors({ id: 'second', group: 'pelargonium' });
    const season = runSeason(more, weather, cache);
    const day = (Date.UTC(2025, 4, 2) - Date.UTC(2025, 0, 1)) / 86_400_000 - season.startDay;
    const { lots, margin, least } = outdoorsOf({}, more);
    for (const lot of lots) {
      const judged = season.lots.find(({ lotId }) => lotId === lot.lotId);
      expect(lot.limit, lot.lotId).toBe(judged?.coldLimit[(day + 365) % 365]);
      expect(lot.margin, lot.lotId).toBeCloseTo(least - lot.limit, 12);
    }
    expect(margin).toBe(Math.min(...lots.map((lot) => lot.margin)));
  });

  it('the verdict turns from safe by close to harm as the low falls, at the limit and at the band', () => {
    const { margin } = outdoorsOf();
    const [limit] = outdoorsOf().lots.map((lot) => lot.limit);
    const byLow = new Map<string, number[]>();
    for (let low = input.low - margin - 5; low <= input.low - margin + 6; low += 0.5) {
      const dusk = Math.max(low, input.duskTemperature);
      const night = outdoorsOf({ low, duskTemperature: dusk });
      byLow.set(night.verdict, [...(byLow.get(night.verdict) ?? []), night.least - limit]);
      if (night.verdict === 'harm') expect(night.words).toContain('bring it in before dark');
      if (night.verdict === 'close') expect(night.words).toContain('2 K colder');
      if (night.verdict === 'safe') expect(night.words).toMatch(/^Safe: \d+\.\d K to spare\.$/);
    }
    expect([...byLow.keys()]).toEqual(['harm', 'close', 'safe']);
    expect(Math.max(...(byLow.get('harm') ?? []))).toBeLessThan(0);
    expect(Math.min(...(byLow.get('close') ?? []))).toBeGreaterThanOrEqual(0);
    // Air and sky colder by the band make the leaf colder by all but exactly that.
    expect(Math.max(...(byLow.get('close') ?? []))).toBeLessThan(2.05);
    expect(Math.min(...(byLow.get('safe') ?? []))).toBeGreaterThan(1.95);
  });

  it('says the time that its figure says', () => {
    const { words, leastMs } = outdoorsOf({ low: -6, duskTemperature: 3 });
    const clock = new Intl.DateTimeFormat('en-GB', {
      timeZone: plan.site.timeZone,
      hour: '2-digit',
      minute: '2-digit',
    }).format(leastMs);
    expect(words).toContain(`about ${clock};`);
  });

  it('names the neediest and counts the others past their limit', () => {
    const more = withOutdoors(
      { id: 'second', name: 'Busy roots', group: 'pelargonium', plants: 6 },
      { id: 'third', name: 'Slips', group: 'pelargonium', plants: 9 },
    );
    expect(outdoorsOf({ low: 1, duskTemperature: 3 }, more).words).toMatch(
      /^(Busy roots|Slips) \(and another lot\): \d+\.\d K below what they bear about \d\d:\d\d; bring them in before dark\.$/,
    );
  });

  it('is the same twice, from a cache and afresh', () => {
    expect(firstDifference(runNight(plan, input, weather).outdoors, outdoorsOf())).toBeNull();
  });
});
