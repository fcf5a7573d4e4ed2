import { describe, expect, it } from 'vitest';
import { planGroups, demonstrationPlan as plan, planNumbers } from '../../core/index.ts';
import type { PlantGroup } from '../../core/index.ts';
import { winterWant } from '../../core/advice/rank-fit.ts';
import { comfort, drawnUp, gravities, heldAtRest, scoreOf } from '../../core/advice/rank-score.ts';
import type { HarmId, WinterFacts } from '../../core/advice/rank-score.ts';
import { harmsOf, winterWords } from '../../core/advice/rank-words.ts';

const none = { frost: 0, chill: 0, heat: 0, wetCold: 0, decline: 0, scorch: 0 };
const harmIds = Object.keys(none) as HarmId[];
const facts = (stateDays: number[], more: Partial<WinterFacts> = {}): WinterFacts => ({
  stateDays,
  days: stateDays.reduce((a, b) => a + b),
  coolDays: 0,
  heldCold: stateDays[2],
  heldDim: stateDays[4],
  drawn: stateDays[6],
  dryInSeason: 0,
  sparedKelvin: 6,
  harm: none,
  ...more,
});
const wantOf = (id: string) => {
  const group = planGroups(plan).find((each) => each.id === id) as PlantGroup;
  return winterWant(group, planNumbers(plan, id));
};
const score = (id: string, ...rest: Parameters<typeof facts>) => scoreOf(facts(...rest), wantOf(id)).score;

/** Winters of every kind, by a fixed sequence (a linear congruence). */
function winters(count: number): WinterFacts[] {
  let seed = 12345;
  const next = () => (seed = (seed * 1103515245 + 12345) % 2147483648) / 2147483648;
  return Array.from({ length: count }, () => {
    const shares = Array.from({ length: 7 }, () => next() ** 3);
    const whole = shares.reduce((a, b) => a + b);
    const stateDays = shares.map((share) => (182 * share) / whole);
    const sizes = { frost: 60, chill: 2000, heat: 60, wetCold: 40, decline: 40, scorch: 80 };
    const harm = Object.fromEntries(
      harmIds.map((id) => [id, next() < 0.5 ? 0 : Math.floor(next() * sizes[id])]),
    ) as Record<HarmId, number>;
    const more = {
      coolDays: next() * 182,
      dryInSeason: next() * stateDays[5],
      sparedKelvin: next() * 20 - 8,
    };
    return facts(stateDays, { ...more, days: 182, harm });
  });
}

describe('the score of a winter', () => {
  const all = winters(120);
  it('lies from 0 to 1 and its verdict goes with it, for every group', () => {
    for (const { id } of planGroups(plan)) {
      for (const each of all) {
        const { score: value, verdict } = scoreOf(each, wantOf(id));
        expect(value).toBeGreaterThan(0);
        expect(value).toBeLessThanOrEqual(1);
        const grave = harmIds.some((harm) => gravities(each, wantOf(id))[harm] >= 1);
        expect(verdict === 'unsafe').toBe(grave);
        if (!grave) expect(verdict).toBe(value >= 0.75 ? 'well' : value >= 0.5 ? 'with-care' : 'poorly');
        else expect(value).toBeLessThanOrEqual(0.25);
      }
    }
  });
  it('is never lowered by taking a harm away, or part of it', () => {
    for (const id of ['echeveria', 'adenium', 'conophytum', 'holiday-cactus']) {
      for (const each of all) {
        const before = scoreOf(each, wantOf(id)).score;
        for (const harm of harmIds) {
          for (const left of [0, each.harm[harm] / 2]) {
            const less = { ...each, harm: { ...each.harm, [harm]: left } };
            expect(scoreOf(less, wantOf(id)).score).toBeGreaterThanOrEqual(before);
          }
        }
      }
    }
  });
  it('is never lowered by a kelvin more above the cold limit, or a day more of rest', () => {
    for (const { id } of planGroups(plan)) {
      for (const each of all) {
        const before = scoreOf(each, wantOf(id)).score;
        const better = [{ sparedKelvin: each.sparedKelvin + 1 }, { coolDays: each.coolDays + 1 }];
        for (const more of better)
          expect(scoreOf({ ...each, ...more }, wantOf(id)).score).toBeGreaterThanOrEqual(before - 1e-12);
      }
    }
  });
});

describe('what a group wants', () => {
  const [growing, rested, drawn, dim] = [0, 2, 6, 4].map((state) =>
    Array.from({ length: 7 }, (_, each) => (each === state ? 182 : 0)),
  );
  it('a safe cold rest is as good as growing where the rest is wanted, and better for flowers', () =>
    expect(score('echeveria', rested, { coolDays: 120 })).toBeGreaterThan(score('echeveria', growing)));
  it('a winter grower wants to grow', () =>
    expect(score('aeonium', growing)).toBeGreaterThan(score('aeonium', rested, { coolDays: 120 }) + 0.3));
  it('stretching is worst, standing still in the dark between, better for plants that bear it', () => {
    expect(score('echeveria', drawn)).toBeLessThan(score('echeveria', dim));
    expect(score('pelargonium', dim)).toBeLessThan(score('haworthia', dim));
    expect(score('haworthia', dim)).toBeLessThan(score('haworthia', growing));
  });
  it('a rest in the dark is worth as much as its light holds, and whole where it is cold', () => {
    const [agave, adenium] = ['agave', 'adenium'].map((id) => planNumbers(plan, id));
    expect([agave.lightHold, agave.restBelow, adenium.restBelow]).toEqual([4, 10, 15]);
    expect([heldAtRest(9, 1, agave), heldAtRest(18, 1, agave), heldAtRest(18, 6, agave)]).toEqual([
      1, 0.25, 1,
    ]);
    expect([heldAtRest(14, 1, adenium), heldAtRest(18, 1, adenium)]).toEqual([1, 0.25]);
    for (const id of ['agave', 'echeveria', 'aeonium', 'haworthia'])
      for (const [days, held] of [[rested, 'heldCold'] as const, [dim, 'heldDim'] as const]) {
        const scores = [0, 45, 90, 182].map((count) => score(id, days, { [held]: count }));
        expect(scores, id).toEqual([...new Set(scores)].sort((a, b) => a - b));
      }
  });
  it('stretching counts by how badly it draws up: in full at half the light that keeps it compact', () => {
    const haworthia = planNumbers(plan, 'haworthia');
    const warm = haworthia.optimumHigh;
    expect(haworthia.lightStretch).toBe(2);
    const degrees = [0.4, 1, 1.6, 2, 2.2, 3].map((light) => drawnUp(warm, light, haworthia));
    [1, 1, 0.5, 1 / 6, 0, 0].forEach((degree, at) => expect(degrees[at]).toBeCloseTo(degree, 9));
    const scores = [182, 90, 30, 0].map((days) => score('haworthia', drawn, { drawn: days }));
    expect(scores).toEqual([...new Set(scores)].sort((a, b) => a - b));
    // Barely too dim it is as good as slow.
    const slowly = [0, 182, 0, 0, 0, 0, 0];
    expect(scores[3]).toBeCloseTo(score('haworthia', slowly), 9);
  });
  it('half of the comfort goes with the last of four kelvin in hand', () => {
    const at = (sparedKelvin: number) => comfort(facts(growing, { sparedKelvin }), wantOf('aeonium'));
    [-3, 0, 2, 4, 9].forEach((kelvin, index) =>
      expect(at(kelvin)).toBeCloseTo([0.5, 0.5, 0.75, 1, 1][index], 9),
    );
  });
  it('a rest that no flowers follow is of profit only', () => {
    const [missed, missedForFlowers] = ['agave', 'desert-cacti'].map((id) =>
      comfort(facts(growing), wantOf(id)),
    );
    expect(missed).toBeCloseTo(0.9, 9);
    expect(missedForFlowers).toBeCloseTo(0.6, 9);
  });
});

describe('the words of a winter', () => {
  const extremes = { leastLeaf: -2, mostLeaf: 50, light: 3 };
  const said = (id: string, harm: Partial<typeof none>) =>
    winterWords(
      facts([182, 0, 0, 0, 0, 0, 0], { coolDays: 150, sparedKelvin: -1.5, harm: { ...none, ...harm } }),
      wantOf(id),
      extremes,
    );
  it('name the gravest harm with its figure', () => {
    expect(said('echeveria', { frost: 5 })).toBe(
      'Too cold: leaves fall to −2.0 °C, 1.5 K below what it bears.',
    );
    expect(said('adenium', { chill: 812 })).toBe(
      'Too cool for too long: up to 812 degree-hours below 12 °C not yet got over, and 500 injure it.',
    );
    expect(said('echeveria', { wetCold: 20 })).toBe(
      'Roots may rot: wet and colder than 7 °C for 20 days after the fifth running.',
    );
    expect(said('echeveria', { heat: 9 })).toMatch(
      /^Too hot: leaves reach 50\.0 °C, and \d+ °C is what they bear\.$/,
    );
    expect(said('echeveria', { decline: 30 })).toBe('Too hot for too long: it goes back on 30 days.');
  });
  it('list only harms that count: half a kelvin-hour of frost, six days of sun and 99 K h of chill do not', () => {
    const list = (harm: Partial<typeof none>) =>
      harmsOf(facts([182, 0, 0, 0, 0, 0, 0], { harm: { ...none, ...harm } }), wantOf('adenium'));
    expect(list({ frost: 0.5, scorch: 6, chill: 99 })).toEqual([]);
    expect(list({ frost: 1, scorch: 7, chill: 100 })).toEqual(['frost', 'chill', 'scorch']);
  });
});
