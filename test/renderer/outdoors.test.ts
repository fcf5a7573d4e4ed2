import { flushSync, mount, unmount } from 'svelte';
import { afterEach, describe, expect, it } from 'vitest';
import { demonstrationPlan, runSeason, weatherFromPlan } from '../../core/index.ts';
import type { Plan, SeasonResult, WeatherYear } from '../../core/index.ts';
import { openLots, openMonths } from '../../renderer/place/outdoors.ts';
import type { Bench } from '../../renderer/state/bench.svelte.ts';
import { formatDay } from '../../renderer/sheet/time.ts';
import { formBench } from './forms/bench.svelte.ts';
import OutdoorsOnBench from './OutdoorsOnBench.svelte';

/** One place and the agave that summers outdoors, so that the season is soon run. */
const plan: Plan = {
  ...demonstrationPlan,
  places: demonstrationPlan.places.filter(({ id }) => id === 'lean-to'),
  lots: demonstrationPlan.lots.filter(({ id }) => id === 'step-agave'),
};
const season = runSeason(plan, weatherFromPlan(plan) as WeatherYear);
const bare = { ...season, outdoors: { ...season.outdoors, lots: [] } };

describe('the open air of the season', () => {
  it('by months holds the coldest and warmest leaf of all its days', () => {
    const months = openMonths(season.outdoors.lived, season.startDate);
    const { leafLeast, leafMost } = season.outdoors.lived;
    expect(months).toHaveLength(12);
    expect(Math.min(...months.map((month) => month.least))).toBe(Math.min(...leafLeast));
    expect(Math.max(...months.map((month) => month.most))).toBe(Math.max(...leafMost));
    const light = (name: string) => months.find((month) => month.name.startsWith(name))?.light ?? 0;
    expect(light('Jun')).toBeGreaterThan(5 * light('Dec'));
  });

  it('looks at a lot’s nights out, and only those, and takes its dates from the calendar', () => {
    const [{ closest, safeFrom, coverFrom }] = openLots(season);
    expect(safeFrom?.kind).toBe('first-safe-night');
    expect(coverFrom?.kind).toBe('last-safe-night');
    const out = season.lots[0].stays.filter((stay) => stay.placeId === 'outdoors');
    const margins = out.flatMap(({ from, to }) =>
      Array.from({ length: to - from + 1 }, (_, at) => from + at).map(
        (day) => season.outdoors.lived.leafLeast[day] - season.lots[0].coldLimit[day],
      ),
    );
    expect(closest?.margin).toBe(Math.min(...margins));
    // Through the winter, when it is in, the open air is far below what it bears.
    const always = season.outdoors.lived.leafLeast.map((leaf, day) => leaf - season.lots[0].coldLimit[day]);
    expect(Math.min(...always)).toBeLessThan(closest?.margin ?? -Infinity);
  });
});

describe('the page Outdoors among the places', () => {
  let app: ReturnType<typeof mount> | null = null;
  afterEach(() => {
    if (app) void unmount(app);
    app = null;
  });

  function open(of: SeasonResult | null) {
    const { bench, changes } = formBench('lean-to');
    const more = {
      plan,
      placeId: 'outdoors',
      place: null,
      season: of,
      cursorDay: 150,
      lotId: null,
      busy: false,
      error: null,
      placeSeason: () => null,
    };
    const mine = Object.defineProperties(bench, Object.getOwnPropertyDescriptors(more)) as Bench;
    app = mount(OutdoorsOnBench, { target: document.body, props: { bench: mine } });
    flushSync();
    return { bench: mine, changes, text: () => document.body.textContent?.replace(/\s+/g, ' ') ?? '' };
  }

  it('says who stands there and when, on which nights it is safe, and by month how it is', () => {
    const { text } = open(season);
    expect(document.querySelector('h1')?.textContent).toBe('Outdoors');
    const current = document.querySelector('nav [aria-current="true"]');
    expect(current?.textContent?.trim()).toBe('Outdoors');
    expect(text()).toContain('Agave from the steps will stand here');
    const [{ safeFrom, coverFrom }] = openLots(season);
    for (const task of [safeFrom, coverFrom])
      expect(text()).toContain(formatDay(season.startDate, task?.from ?? -1, 'short'));
    expect(document.querySelectorAll('details table tbody tr')).toHaveLength(12);
  });

  it('takes a lot to stand there', () => {
    const { bench, changes } = open(season);
    const add = [...document.querySelectorAll('button')].find(
      (button) => button.textContent === 'Add outdoors',
    );
    add?.click();
    flushSync();
    expect(changes).toHaveLength(1);
    expect(bench.plan.lots.at(-1)).toMatchObject({ place: 'outdoors', moves: [] });
  });

  it('stands without plants and before a season is there', () => {
    expect(open(bare).text()).toContain('Once plants stand here');
    if (app) void unmount(app);
    expect(open(null).text()).toContain('Working out the season');
  });
});
