import { afterEach, describe, expect, test } from 'vitest';
import { demonstrationPlan, lotOf, parsePlan, staysOf } from '../../core/index.ts';
import type { Lot, LotSeason, Plan, SeasonResult } from '../../core/index.ts';
import { withoutPlace } from '../../renderer/place/edit.ts';
import { copied, divided, divisible, idle, inSeason, nextMove } from '../../renderer/place/lots/change.ts';
import { groupOptions } from '../../renderer/place/lots/lot-fields.ts';
import { spotLight, spotLightWords } from '../../renderer/place/lots/spot-light.ts';
import {
  hereWords,
  monthDay,
  overFull,
  seasonDay,
  seasonStart,
  staysWords,
} from '../../renderer/place/lots/stays.ts';
import { formatDay } from '../../renderer/sheet/time.ts';
import { openForm } from './forms/page.ts';

const north = seasonStart(null, 54);
const south = seasonStart(null, -35);
/** A day as the machine's language writes it. */
const on = (day: string) => formatDay(north.date, seasonDay(day, north));
const span = (from: string, to: string) => `from ${on(from)} to ${on(to)}`;
const lotWith = (part: Partial<Lot> = {}): Lot => ({
  ...lotOf({ id: 'tubs', name: 'Tubs', group: 'citrus', place: 'outdoors', area: 1 }),
  ...part,
});
const wintered = lotWith({
  moves: [
    { on: '10-01', to: 'lean-to' },
    { on: '05-15', to: 'outdoors' },
  ],
});

describe('days of the season', () => {
  test.each([north, south])('go from MM-DD and back on every day, from %o', (start) => {
    for (let day = 0; day < 365; day += 1) expect(seasonDay(monthDay(day, start), start)).toBe(day);
  });
  test('begin on 1 August in the north and 1 February in the south', () => {
    expect([seasonDay('08-01', north), seasonDay('02-01', south), seasonDay('07-31', north)]).toEqual([
      0, 0, 364,
    ]);
  });
});

describe('where a lot stands, in words', () => {
  test('tells every stay, and when it is in one place', () => {
    expect(staysWords(wintered, demonstrationPlan, north)).toBe(
      `Outdoors ${span('08-01', '09-30')}, then Lean-to on the kitchen wall ${span('10-01', '05-14')}, then Outdoors ${span('05-15', '07-31')}`,
    );
    expect(hereWords(wintered, 'lean-to', north)).toBe(span('10-01', '05-14'));
    expect(hereWords(wintered, 'window', north)).toBeNull();
  });
  test('joins a stay over the season’s turn', () => {
    expect(hereWords(wintered, 'outdoors', north)).toBe(span('05-15', '09-30'));
    expect(hereWords(lotWith(), 'outdoors', north)).toBe('all year');
  });
});

describe('a bench that is over-full', () => {
  const standing = lotWith({ id: 'standing', place: 'lean-to', area: 3.5 });
  test('is so on the days on which what is carried in does not fit beside what stands there', () => {
    const carried = { ...wintered, area: 1.5 };
    expect(overFull([standing, carried], 'lean-to', 4.6, north)).toEqual([
      { from: seasonDay('10-01', north), to: seasonDay('05-14', north), over: expect.closeTo(0.4, 9) },
    ]);
    expect(overFull([standing, carried], 'lean-to', 5, north)).toEqual([]);
  });
});

describe('moves', () => {
  test('are listed in the order of the season, not of the year', () => {
    const moves = [
      { on: '05-15', to: 'outdoors' },
      { on: '10-01', to: 'lean-to' },
    ];
    expect(inSeason(moves, north).map((move) => move.on)).toEqual(['10-01', '05-15']);
    expect(inSeason(moves, south).map((move) => move.on)).toEqual(['05-15', '10-01']);
  });
  test('that go where the lot stands change nothing', () => {
    expect(idle(wintered, wintered.moves[0], north)).toBe(false);
    const again = { on: '12-01', to: 'lean-to' };
    expect(idle({ ...wintered, moves: [...wintered.moves, again] }, again, north)).toBe(true);
    expect(staysOf({ ...wintered, moves: [...wintered.moves, again] }, north.day)).toEqual(
      staysOf(wintered, north.day),
    );
  });
  test('offered: out as winter begins, home as it ends, and always a move that changes something', () => {
    let lot = lotWith();
    const first = nextMove(lot, north, [61, 243], 'lean-to');
    expect(first).toEqual({ on: '10-01', to: 'lean-to' });
    lot = { ...lot, moves: [first] };
    const second = nextMove(lot, north, [61, 243], 'lean-to');
    expect(second).toEqual({ on: '04-01', to: 'outdoors' });
    for (let more = 0; more < 10; more += 1) {
      const move = nextMove(lot, north, [61, 243], 'lean-to');
      expect([lot.moves.some(({ on }) => on === move.on), idle(lot, move, north)]).toEqual([false, false]);
      lot = { ...lot, moves: [...lot.moves, move] };
    }
  });
});

describe('a lot divided or copied', () => {
  const planWith = (lot: Lot): Plan => ({ ...demonstrationPlan, lots: [lot, ...demonstrationPlan.lots] });
  const two = (plan: Plan) => plan.lots.slice(0, 2).map(({ name, plants, area }) => ({ name, plants, area }));
  test('shares its plants and its room, the odd plant staying', () => {
    const plan = divided(planWith(lotWith({ plants: 5, area: 1 })), lotWith({ plants: 5, area: 1 }));
    expect(two(plan)).toEqual([
      { name: 'Tubs', plants: 3, area: 0.6 },
      { name: 'Tubs 2', plants: 2, area: 0.4 },
    ]);
    expect(parsePlan(plan).ok).toBe(true);
  });
  test('is halved in room alone where its plants are not counted; a single plant is not divided', () => {
    expect(two(divided(planWith(lotWith()), lotWith()))).toEqual([
      { name: 'Tubs', plants: null, area: 0.5 },
      { name: 'Tubs 2', plants: null, area: 0.5 },
    ]);
    expect([divisible(lotWith({ plants: 1 })), divisible(lotWith())]).toEqual([false, true]);
  });
  test('takes its moves, spot and watering along, under a name of its own', () => {
    const lot = { ...wintered, watering: 'dry' as const, name: 'Tubs 2' };
    const [, copy] = copied(planWith(lot), lot).lots;
    expect(copy).toEqual({ ...lot, id: 'tubs-2', name: 'Tubs' });
  });
});

test('a place that is deleted takes its lots and the moves to it along, and the plan stays sound', () => {
  const plan = withoutPlace(demonstrationPlan, 'lean-to');
  expect(plan.lots.some((lot) => lot.place === 'lean-to')).toBe(false);
  const step = plan.lots.find((lot) => lot.id === 'step-agave');
  expect([step?.place, step?.moves]).toEqual(['outdoors', [{ on: '04-25', to: 'outdoors' }]]);
  expect(parsePlan(plan).ok).toBe(true);
});

test('groups to choose from have the user’s own first', () => {
  const own = { id: 'my-agave', name: 'Agave of the steps', examples: '', from: 'agave', numbers: {} };
  const [first, ...rest] = groupOptions({ ...demonstrationPlan, ownGroups: [own] });
  expect(first).toEqual({ value: 'my-agave', name: 'Agave of the steps (your own)' });
  expect(rest.map((option) => option.name)).toEqual(
    rest.map((option) => option.name).sort((a, b) => a.localeCompare(b)),
  );
});

describe('light at a spot', () => {
  const days = (value: number) => new Float64Array(365).fill(value);
  const lot = {
    stays: [
      { placeId: 'lean-to', from: 0, to: 99 },
      { placeId: 'window', from: 100, to: 364 },
    ],
    lived: { dailyLight: days(5.4) },
  } as unknown as LotSeason;
  const season = {
    winterFrom: 61,
    winterTo: 242,
    places: [{ placeId: 'lean-to', daily: { daylight: days(3), lampLight: days(2) } }],
  } as unknown as SeasonResult;
  test('is held against its place on the winter days it stands there', () => {
    const light = spotLight(lot, season, 'lean-to');
    expect(light).toEqual({ spot: expect.closeTo(5.4, 9), place: expect.closeTo(5, 9) });
    expect(light && spotLightWords(light)).toBe(
      'gets 8 % more light in winter than the bench’s mean of 5.0 mol a day',
    );
    expect(spotLightWords({ spot: 4, place: 5 })).toMatch(/^gets 20 % less light/);
    expect(spotLightWords({ spot: 5.01, place: 5 })).toMatch(/^gets as much light/);
  });
  test('is not told of a place without figures', () => {
    expect(spotLight(lot, season, 'window')).toBeNull();
    expect(spotLight(lot, season, 'outdoors')).toBeNull();
  });
});

describe('the editor of lots', () => {
  let form: ReturnType<typeof openForm> | null = null;
  const open = (...args: Parameters<typeof openForm>) => (form = openForm(...args));
  afterEach(async () => {
    await form?.close();
    form = null;
  });
  const lotOfPlan = (name: string): Lot => {
    const found = form?.plan().lots.find((lot) => lot.name === name);
    if (!found) throw new Error(`expected a lot ${name}`);
    return found;
  };
  const strip = (name: string) =>
    document
      .querySelector(`[role="group"][aria-label="${name}"] svg[role="img"]`)
      ?.getAttribute('aria-label');
  const within = (name: string, words: string): HTMLButtonElement => {
    const found = [...(form?.thing(name).querySelectorAll('button') ?? [])].find(
      (each) => (each.getAttribute('aria-label') ?? each.textContent?.trim()) === words,
    );
    if (!found) throw new Error(`expected a button ${words}`);
    return found;
  };
  const press = async (name: string, words: string) => {
    within(name, words).click();
    await Promise.resolve();
  };

  test('adds, changes and takes away a move; the strip tells where it stands', async () => {
    const page = open('tunnel');
    expect(strip('Agaves')).toBe('Agaves: Tunnel in the orchard all year');
    await press('Agaves', 'Carry it elsewhere on a day');
    page.choose('to', 'lean-to', page.thing('Agaves'));
    page.type('Carried on', '14 October', page.thing('Agaves'));
    expect(lotOfPlan('Agaves').moves).toEqual([{ on: '10-14', to: 'lean-to' }]);
    expect(strip('Agaves')).toContain(`Lean-to on the kitchen wall ${span('10-14', '07-31')}`);
    expect(page.text()).toContain('Nothing carries it back');
    await press('Agaves', 'Add a move');
    expect(lotOfPlan('Agaves').moves.map((move) => move.to)).toEqual(['lean-to', 'tunnel']);
    expect(page.text()).not.toContain('Nothing carries it back');
    await press('Agaves', 'Take away the move on 14 October');
    expect(page.text()).toContain('nothing changes');
    expect(page.changes.at(-1)).toBe(
      'Agaves: no longer carried on 14 October to Lean-to on the kitchen wall',
    );
  });

  test('refuses a second move on a day at the field, in words', async () => {
    const page = open('tunnel');
    await press('Agaves', 'Carry it elsewhere on a day');
    await press('Agaves', 'Add a move');
    const [, second] = page.fields('Carried on', page.thing('Agaves'));
    second.value = '1 October';
    second.dispatchEvent(new Event('input', { bubbles: true }));
    second.dispatchEvent(new Event('blur'));
    await Promise.resolve();
    expect(page.alerts()[0]).toMatch(/^It is carried on that day already\./);
    expect(lotOfPlan('Agaves').moves.map((move) => move.on)).toEqual(['10-01', '04-01']);
  });

  test('lists what is carried here with its home, and warns where the bench is then over-full', () => {
    const page = open('lean-to', { growingArea: 3.1 });
    expect(page.text()).toContain(`here ${span('10-20', '04-24')}; its home is outdoors`);
    expect(page.text()).toMatch(
      new RegExp(`Over-full ${span('10-20', '04-24')}:\\s+0.10.m² more than there is`),
    );
  });

  test('counts plants, and leaves them uncounted where the field is empty', () => {
    const page = open('tunnel');
    page.type('Plants', '12', page.thing('Agaves'));
    expect(lotOfPlan('Agaves').plants).toBe(12);
    page.type('Plants', '0', page.thing('Agaves'));
    expect([page.alerts().length, lotOfPlan('Agaves').plants]).toEqual([1, 12]);
    page.type('Plants', '', page.thing('Agaves'));
    expect(lotOfPlan('Agaves').plants).toBeNull();
  });

  test('asks for a shelf only where the place has two', () => {
    const page = open('tunnel');
    expect(page.fields('From front to back', page.thing('Agaves'))).toHaveLength(1);
    expect(page.fields('Shelf', page.thing('Agaves'))).toHaveLength(0);
    page.choose('From front to back', 'front', page.thing('Agaves'));
    expect(lotOfPlan('Agaves').spot).toEqual({ across: 'front', along: 'all', level: 'all' });
  });

  test('gives plants the open air as their home', () => {
    const page = open('tunnel');
    page.press('Add outdoors');
    const added = page.plan().lots.at(-1);
    expect(added?.place).toBe('outdoors');
    page.choose(`Its home, where it stands on ${on('08-01')}`, 'lean-to', page.thing(added?.name ?? ''));
    expect(page.plan().lots.at(-1)?.place).toBe('lean-to');
  });
});
