import { describe, expect, it } from 'vitest';
import { demonstrationPlan } from '../../core/index.ts';
import type { Plan } from '../../core/index.ts';
import { plantsDesk } from '../../renderer/plants/plants-desk.svelte.ts';
import { Ranking } from '../../renderer/plants/ranking.svelte.ts';
import { stripOf, stripWords } from '../../renderer/plants/verdicts.ts';
import type { Bench } from '../../renderer/state/bench.svelte.ts';

/** A ranking whose answers the test gives when it likes. */
function held() {
  const asked: { plan: Plan; id: string; give: (ranks: string[]) => void; fail: (error: Error) => void }[] =
    [];
  const ranking = new Ranking<string>(
    (plan, id) => new Promise((give, fail) => asked.push({ plan, id, give, fail })),
  );
  return { ranking, asked };
}
const plans = Array.from({ length: 3 }, () => ({ ...demonstrationPlan }));
const turn = () => new Promise((done) => setTimeout(done));

describe('a ranking', () => {
  it('asks once for a plan, and again when the plan is another', async () => {
    const { ranking, asked } = held();
    ranking.ask(plans[0], 'agave');
    ranking.ask(plans[0], 'agave');
    expect([asked.length, ranking.awaits('agave', plans[0])]).toEqual([1, true]);
    asked[0].give(['tunnel']);
    await turn();
    expect([ranking.of('agave'), ranking.awaits('agave', plans[0])]).toEqual([['tunnel'], false]);
    ranking.ask(plans[0], 'agave');
    expect(asked.length).toBe(1);
    ranking.ask(plans[1], 'agave');
    expect([ranking.of('agave'), ranking.awaits('agave', plans[1])]).toEqual([['tunnel'], true]);
    asked[1].give(['window']);
    await turn();
    expect(ranking.of('agave')).toEqual(['window']);
  });
  it('leaves out plans that were overtaken while it worked', async () => {
    const { ranking, asked } = held();
    plans.forEach((plan) => ranking.ask(plan, 'agave'));
    asked[0].give(['old']);
    await turn();
    expect(asked.map(({ plan }) => plan)).toEqual([plans[0], plans[2]]);
    expect(ranking.of('agave')).toBeNull();
    asked[1].give(['new']);
    await turn();
    expect([asked.length, ranking.of('agave')]).toEqual([2, ['new']]);
  });
  it('works out several, one after another', async () => {
    const { ranking, asked } = held();
    ranking.ask(plans[0], 'agave');
    ranking.ask(plans[0], 'aloe');
    expect(asked.length).toBe(1);
    asked[0].give(['a']);
    await turn();
    asked[1].give(['b']);
    await turn();
    expect([ranking.of('agave'), ranking.of('aloe')]).toEqual([['a'], ['b']]);
  });
  it('says why it failed, does not try the same again, and goes on with the next plan', async () => {
    const { ranking, asked } = held();
    ranking.ask(plans[0], 'agave');
    asked[0].fail(new Error('no weather'));
    await turn();
    ranking.ask(plans[0], 'agave');
    expect([asked.length, ranking.error('agave'), ranking.awaits('agave', plans[0])]).toEqual([
      1,
      'no weather',
      false,
    ]);
    ranking.ask(plans[1], 'agave');
    expect(ranking.awaits('agave', plans[1])).toBe(true);
    asked[1].give(['tunnel']);
    await turn();
    expect([ranking.error('agave'), ranking.of('agave')]).toEqual([null, ['tunnel']]);
  });
});

describe('the desk for plants', () => {
  const bench = (part: object = {}) =>
    ({ shown: demonstrationPlan, lot: null, lotId: null, placeId: null, ...part }) as unknown as Bench;

  it('begins with the group of the first lot, or the one chosen elsewhere, and keeps what is chosen here', () => {
    const at = bench();
    const desk = plantsDesk(at);
    desk.follow();
    expect(desk.group.id).toBe(demonstrationPlan.lots[0].group);
    Object.assign(at, { lot: demonstrationPlan.lots.find((lot) => lot.id === 'aeoniums') });
    desk.follow();
    expect(desk.group.id).toBe('aeonium');
    desk.chooseGroup('lithops');
    desk.follow();
    expect(plantsDesk(at).group.id).toBe('lithops');
  });
  it('falls back where the group or the place is gone', () => {
    const desk = plantsDesk(bench());
    desk.chooseGroup('gone');
    desk.choosePlace('gone');
    expect(desk.group.id).toBe(demonstrationPlan.lots[0].group);
    expect(desk.placeId).toBe(demonstrationPlan.places[0].id);
    desk.choosePlace('outdoors');
    expect(desk.placeId).toBe('outdoors');
  });
  it('has no place and still a group in an empty plan', () => {
    const desk = plantsDesk(bench({ shown: { ...demonstrationPlan, places: [], lots: [] } }));
    expect(desk.placeId).toBeNull();
    expect(desk.group.name).not.toBe('');
    expect(desk.compared).toEqual([desk.group.id]);
  });
  it('compares four groups and no fifth', () => {
    const desk = plantsDesk(bench());
    for (const id of desk.compared) desk.compare(id, false);
    expect(desk.compared).toEqual([]);
    for (const id of ['agave', 'aloe', 'lithops', 'citrus', 'olive']) desk.compare(id, true);
    expect([desk.compared, desk.full]).toEqual([['agave', 'aloe', 'lithops', 'citrus'], true]);
    desk.compare('aloe', false);
    desk.compare('olive', true);
    expect(desk.compared).toEqual(['agave', 'lithops', 'citrus', 'olive']);
  });
});

describe('the strip of a winter', () => {
  const days = [30, 0, 150, 0, 0, 0, 2];
  it('lays the days of all states end to end', () => {
    expect(stripOf(days, 182)).toEqual([
      { state: 0, days: 30, from: 0, to: 30 },
      { state: 2, days: 150, from: 30, to: 180 },
      { state: 6, days: 2, from: 180, to: 182 },
    ]);
  });
  it('says them in words', () => {
    expect(stripWords(days)).toBe('Growing 30 days, resting from cold 150 days, stretching 2 days');
    expect(stripWords([1, 0, 0, 0, 0, 0, 0])).toBe('Growing 1 day');
  });
});
