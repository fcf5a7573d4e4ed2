import { describe, expect, it, vi } from 'vitest';
import { demonstrationPlan } from '../../core/index.ts';
import type {
  LampComparison,
  LampPlacing,
  LampPlacings,
  NightInput,
  NightResult,
  Plan,
  Way,
  WaysResult,
} from '../../core/index.ts';
import { hoursDesk } from '../../renderer/lamps/hours-desk.svelte.ts';
import { lampDesk } from '../../renderer/lamps/lamp-desk.svelte.ts';
import { optionsOf, withPart } from '../../renderer/lamps/options.ts';
import type { Bench } from '../../renderer/state/bench.svelte.ts';
import { firstNight } from '../../renderer/tonight/night.ts';
import { tonightDesk } from '../../renderer/tonight/tonight-desk.svelte.ts';
import { waysDesk } from '../../renderer/ways/ways-desk.svelte.ts';

const now = Date.UTC(2026, 0, 12, 15);
const kept: NightInput = {
  dateISO: '2026-01-11',
  duskTemperature: 3,
  low: -7,
  cloudOktas: 0,
  wind: 0.5,
  band: 1,
};

/** A question whose answer the test gives when it likes. */
function held<Answer>() {
  const waiting: { give: (answer: Answer) => void; fail: (error: Error) => void }[] = [];
  const ask = () => new Promise<Answer>((give, fail) => waiting.push({ give, fail }));
  return { ask, waiting };
}

function bench(parts: { engine?: object; host?: object; plan?: Plan }): Bench {
  return { plan: demonstrationPlan, season: null, placeId: null, lotId: null, ...parts } as unknown as Bench;
}

describe('tonight', () => {
  it('begins with what was typed last time, under today’s date', async () => {
    const desk = tonightDesk(bench({ host: { lastNight: async () => kept } }), now);
    await desk.open(now);
    expect(desk.input).toEqual({ ...kept, dateISO: '2026-01-12' });
    expect(desk.ready).toBe(true);
  });
  it('begins with a usual cold night where nothing was typed, and says why where it cannot be read', async () => {
    const empty = tonightDesk(bench({ host: { lastNight: async () => null } }), now);
    await empty.open(now);
    expect(empty.input).toEqual(firstNight(demonstrationPlan, '2026-01-12'));
    const broken = tonightDesk(
      bench({ host: { lastNight: () => Promise.reject(new Error('disk full')) } }),
      now,
    );
    await broken.open(now);
    expect(broken.error).toContain('disk full');
    expect(broken.ready).toBe(true);
  });
  it('keeps a forecast once it has stood a while, and never one that makes no sense', async () => {
    vi.useFakeTimers();
    const rememberNight = vi.fn(async () => null);
    const desk = tonightDesk(bench({ host: { rememberNight } }), now);
    desk.change({ ...kept, low: -3 });
    desk.change({ ...kept, low: -4 });
    desk.change({ ...kept, low: 9 });
    await vi.advanceTimersByTimeAsync(5000);
    expect(rememberNight).not.toHaveBeenCalled();
    desk.change({ ...kept, low: -5 });
    await vi.advanceTimersByTimeAsync(5000);
    expect(rememberNight.mock.calls).toEqual([[{ night: { ...kept, low: -5 } }]]);
    vi.useRealTimers();
  });
  it('drops an answer that a newer question has overtaken, failures too', async () => {
    const { ask, waiting } = held<NightResult>();
    const desk = tonightDesk(bench({ engine: { night: ask } }), now);
    const asked = [1, 2, 3].map(() => desk.ask(demonstrationPlan, kept));
    const newest = { n: 3 } as NightResult;
    waiting[2].give(newest);
    waiting[0].give({ n: 1 } as NightResult);
    waiting[1].fail(new Error('late'));
    await Promise.all(asked);
    expect(desk.night).toBe(newest);
    expect([desk.error, desk.busy]).toEqual([null, false]);
  });
});

describe('lamps', () => {
  it('keep the options of each place while another is looked at, and open as they were left', () => {
    const at = bench({});
    const desk = lampDesk(at);
    desk.add();
    const left = desk.drafts;
    expect(left).toHaveLength(3);
    desk.choose('tunnel');
    expect(desk.drafts).toHaveLength(2);
    desk.choose('bright-tent');
    expect(lampDesk(at).drafts).toBe(left);
  });
  it('hang an option in the chosen place alone', () => {
    const desk = lampDesk(bench({}));
    const plan = desk.withOption(demonstrationPlan, withPart(desk.drafts[0], { watts: 90 }));
    for (const [index, place] of plan.places.entries()) {
      if (place.id === desk.placeId) expect(place.lamps.map((lamp) => lamp.watts)).toEqual([90]);
      else expect(place).toBe(demonstrationPlan.places[index]);
    }
  });
  it('stop at six options with what is there', () => {
    const desk = lampDesk(bench({}));
    for (let i = 0; i < 9; i++) desk.add();
    expect(desk.full).toBe(true);
    expect(desk.place && optionsOf(desk.place, desk.drafts)).toHaveLength(6);
    expect(new Set(desk.drafts.map((draft) => draft.id)).size).toBe(5);
    expect(desk.drafts.slice(1).map((draft) => draft.lamp.name)).toEqual(
      ['', ' 2', ' 3', ' 4'].map((number) => `LED panel, twice the watts${number}`),
    );
  });
  it('drop an answer that a newer question has overtaken', async () => {
    const { ask, waiting } = held<readonly LampComparison[]>();
    const desk = lampDesk(bench({ engine: { lamps: ask } }));
    const asked = [1, 2].map(() => desk.ask(demonstrationPlan, 'bright-tent', [], 'as-given'));
    const newest: LampComparison[] = [];
    waiting[1].give(newest);
    waiting[0].give([{} as LampComparison]);
    await Promise.all(asked);
    expect(desk.results).toBe(newest);
  });
});

describe('the placing of hours', () => {
  const found = (lampId: string) => ({ placings: { lampId } as LampPlacings, outdoors: [] });

  it('tells what has been run, drops what a newer question has overtaken, and can be stopped', async () => {
    const asked: { lampId: string; signal: AbortSignal; give: (answer: unknown) => void }[] = [];
    const placing = (
      _plan: Plan,
      _place: string,
      lampId: string,
      onPlacing: (one: LampPlacing) => void,
      signal: AbortSignal,
    ) =>
      new Promise((give, refuse) => {
        asked.push({ lampId, signal, give });
        signal.addEventListener('abort', () => refuse(signal.reason as Error));
        onPlacing({} as LampPlacing);
      });
    const desk = hoursDesk(bench({ engine: { placing } }));
    const first = desk.start('bright-tent', 'one');
    expect([desk.running, desk.tried.length]).toEqual([true, 1]);
    const second = desk.start('bright-tent', 'two');
    expect(asked[0].signal.aborted).toBe(true);
    asked[1].give(found('two'));
    await Promise.all([first, second]);
    expect([desk.answer?.lampId, desk.running, desk.stopped, desk.error]).toEqual([
      'two',
      false,
      false,
      null,
    ]);
    const third = desk.start('bright-tent', 'three');
    desk.stop();
    await third;
    expect([desk.answer, desk.running, desk.stopped]).toEqual([null, false, true]);
    const fourth = desk.start('bright-tent', 'four');
    desk.clear();
    await fourth;
    expect([desk.running, desk.stopped, desk.error]).toEqual([false, false, null]);
  });
  it('changes the one lamp it is about', () => {
    const desk = hoursDesk(bench({}));
    const [lamp] = demonstrationPlan.places.find((place) => place.id === 'bright-tent')!.lamps;
    const placed = { lamp: { ...lamp, on: '22:00', off: '10:00' } } as LampPlacing;
    const plan = desk.withHours(demonstrationPlan, 'bright-tent', placed);
    for (const [index, place] of plan.places.entries()) {
      if (place.id === 'bright-tent') expect(place.lamps).toEqual([placed.lamp]);
      else expect(place).toBe(demonstrationPlan.places[index]);
    }
  });
});

describe('ways', () => {
  const way = (words: string, fulfils: boolean, runningCost: number) =>
    ({ words, fulfils, runningCost, purchaseCost: 0 }) as Way;

  it('arrive ranked as they are found, and stand in the engine’s order at the end', async () => {
    let tell: (way: Way) => void = () => {};
    let give: (result: WaysResult) => void = () => {};
    const ways = (_plan: Plan, _wish: unknown, onWay: (way: Way) => void) => {
      tell = onWay;
      return new Promise<WaysResult>((resolve) => (give = resolve));
    };
    const desk = waysDesk(bench({ engine: { ways } }));
    const search = desk.start();
    tell(way('short', false, 1));
    tell(way('dear', true, 30));
    tell(way('cheap', true, 3));
    expect(desk.running).toBe(true);
    expect(desk.ways.map((one) => one.words)).toEqual(['cheap', 'dear', 'short']);
    give({ ways: [way('dear', true, 30)] } as unknown as WaysResult);
    await search;
    expect(desk.running).toBe(false);
    expect(desk.ways.map((one) => one.words)).toEqual(['dear']);
  });
  it('stay, as far as found, when the search is stopped', async () => {
    const ways = (_plan: Plan, _wish: unknown, onWay: (way: Way) => void, signal: AbortSignal) =>
      new Promise<WaysResult>((_resolve, reject) => {
        onWay(way('first', true, 3));
        signal.addEventListener('abort', () => reject(signal.reason as Error));
      });
    const desk = waysDesk(bench({ engine: { ways } }));
    const search = desk.start();
    desk.stop();
    await search;
    expect([desk.stopped, desk.running, desk.error]).toEqual([true, false, null]);
    expect(desk.ways.map((one) => one.words)).toEqual(['first']);
  });
  it('say when the plan they were found for is no longer the one on the bench', async () => {
    const at = { ...bench({ engine: { ways: async () => ({ ways: [] }) } }) } as { plan: Plan } & Bench;
    const desk = waysDesk(at);
    expect(desk.outdated).toBe(false);
    await desk.start();
    expect(desk.outdated).toBe(false);
    Object.assign(at, { plan: { ...demonstrationPlan } });
    expect(desk.outdated).toBe(true);
  });
  it('show the reason where the engine fails', async () => {
    const desk = waysDesk(bench({ engine: { ways: () => Promise.reject(new Error('no weather')) } }));
    await desk.start();
    expect([desk.error, desk.running]).toEqual(['no weather', false]);
  });
});
