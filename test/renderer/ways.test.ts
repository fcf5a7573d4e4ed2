import { describe, expect, it } from 'vitest';
import { demonstrationPlan } from '../../core/index.ts';
import type { SeasonResult, Way } from '../../core/index.ts';
import {
  firstWish,
  leftOut,
  ranked,
  sentence,
  shiftWords,
  weekChoices,
  wishable,
  wishKinds,
  wishOf,
} from '../../renderer/ways/wish.ts';

const draft = firstWish(demonstrationPlan, null, null, null);

describe('a wish', () => {
  it('can be asked as it stands at first, for every verb', () => {
    for (const { id } of wishKinds) expect(wishOf({ ...draft, kind: id }, demonstrationPlan)?.kind).toBe(id);
  });
  it('is about the selected plants, or the plants of the selected place', () => {
    expect(firstWish(demonstrationPlan, null, 'haworthias', null)).toMatchObject({
      lotId: 'haworthias',
      placeId: 'window',
    });
    expect(firstWish(demonstrationPlan, null, null, 'tunnel').lotId).toBe('houseleeks');
  });
  it('is never about the open air as a place, nor about plants that stand there on every day', () => {
    const hardy = {
      ...demonstrationPlan.lots[0],
      id: 'hardy',
      name: 'Hardy pots',
      place: 'outdoors',
      moves: [],
    };
    const plan = { ...demonstrationPlan, lots: [hardy, ...demonstrationPlan.lots] };
    expect(firstWish(plan, null, 'hardy', null)).toMatchObject({
      lotId: demonstrationPlan.lots[0].id,
      placeId: demonstrationPlan.lots[0].place,
    });
    expect(wishOf({ ...draft, lotId: 'hardy' }, plan)).toBeNull();
    expect(wishOf({ ...draft, kind: 'hold-temperature', placeId: 'outdoors' }, plan)).toBeNull();
    expect(leftOut(plan)).toContain('Hardy pots, outdoors on every day');
    expect(leftOut(demonstrationPlan)).toBe('');
    // Carried in for the winter it has a place in which something can be changed.
    const carried = demonstrationPlan.lots.find(({ id }) => id === 'step-agave');
    expect(carried && wishable(carried)).toBe(true);
    expect(firstWish(plan, null, 'step-agave', 'outdoors')).toMatchObject({
      lotId: 'step-agave',
      placeId: demonstrationPlan.places[0].id,
    });
  });
  it('is, with nothing selected, about plants under a lamp that do not grow in mid-winter and are not kept dry', () => {
    const lot = (lotId: string, state: number) => ({ lotId, state: new Uint8Array(365).fill(state) });
    const places = [
      { placeId: 'lean-to', lots: [lot('lemons', 2)] },
      { placeId: 'bright-tent', lots: [lot('echeverias', 0), lot('conophytums', 5)] },
      { placeId: 'dim-tent', lots: [lot('spare-echeverias', 6)] },
    ];
    const season = { winterFrom: 61, winterTo: 243, places } as unknown as SeasonResult;
    const dry = demonstrationPlan.lots.map((one) =>
      one.id === 'conophytums' ? { ...one, watering: 'dry' as const } : one,
    );
    expect(firstWish({ ...demonstrationPlan, lots: dry }, season, null, 'lean-to').lotId).toBe(
      'spare-echeverias',
    );
    const watered = dry.map((one) => ({ ...one, watering: 'by-season' as const }));
    expect(firstWish({ ...demonstrationPlan, lots: watered }, season, null, 'lean-to').lotId).toBe(
      'conophytums',
    );
  });
  it('is not asked of plants that are gone, nor of a span that ends before it begins', () => {
    expect(wishOf({ ...draft, lotId: 'gone' }, demonstrationPlan)).toBeNull();
    expect(wishOf({ ...draft, kind: 'hold-temperature', placeId: 'gone' }, demonstrationPlan)).toBeNull();
    expect(wishOf({ ...draft, fromDay: 140, toDay: 139 }, demonstrationPlan)).toBeNull();
  });
  it('starts and ends on weeks that the sentence offers', () => {
    const days = weekChoices('2025-08-01').map((week) => week.day);
    expect(days).toContain(draft.fromDay);
    expect(days).toContain(draft.toDay - 6);
  });
});

it('makes a sentence of a phrase and leaves a finished one alone', () => {
  expect(sentence('grows on 3 of 63 days; held by dark')).toBe('Grows on 3 of 63 days; held by dark.');
  expect(sentence('It holds.')).toBe('It holds.');
  expect(sentence('the coldest night ends at -6.0 °C')).toBe('The coldest night ends at −6.0 °C.');
  expect(sentence(' ')).toBe('');
});

describe('the ways', () => {
  const way = (words: string, fulfils: boolean, runningCost: number, purchaseCost: number) =>
    ({ words, fulfils, runningCost, purchaseCost }) as Way;
  it('stand with those that do it first, by the whole cost a season', () => {
    const list = [way('far', false, 1, 0), way('dear', true, 5, 40), way('cheap', true, 20, 0)];
    expect(ranked(list).map((one) => one.words)).toEqual(['cheap', 'dear', 'far']);
  });
  it('say what shifts in days and frost hours, and nothing of two days or fewer', () => {
    expect(shiftWords({ lotId: 'lemons', days: [41.6, -2, 0, 0, 0, 0, -39.6], frostHours: -3.2 })).toBe(
      '42 more days growing, 40 fewer days stretching, 3 fewer hours below the frost limit',
    );
    expect(shiftWords({ lotId: 'lemons', days: [2, -2, 0, 0, 0, 0, 0], frostHours: 0.4 })).toBe('');
  });
});
