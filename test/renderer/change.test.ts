import { describe, expect, it } from 'vitest';
import { demonstrationPlan } from '../../core/index.ts';
import type { Lamp, Lot } from '../../core/index.ts';
import {
  lampForHours,
  lampFrom,
  lampHours,
  trialWords,
  triedHeater,
  triedLamp,
  withHeater,
  withLamp,
  withPlace,
} from '../../renderer/change/levers.ts';
import { packSeason, unpackSeason } from '../../renderer/worker/season-parcel.ts';
import { createSeasonCache, parsePlan, runSeason, weatherFromPlan } from '../../core/index.ts';
import { differenceOf } from '../../renderer/change/difference.ts';

const plan = demonstrationPlan;
const lit = plan.places.find((place) => place.lamps.length > 0);
const heated = plan.places.find((place) => place.heaters.length > 0);
if (!lit || !heated) throw new Error('expected a lit and a heated place in the demonstration plan');
const lamp: Lamp = lit.lamps[0];
const standsIn = (lot: Lot, placeId: string) =>
  lot.place === placeId || lot.moves.some((move) => move.to === placeId);
const units = { temperature: 'C', length: 'm' } as const;

describe('levers', () => {
  it('set the hours of a lamp, through midnight where they must', () => {
    for (let hours = 0.5; hours <= 20; hours += 0.5)
      expect(lampHours({ ...lamp, ...lampForHours(lamp, hours) })).toBe(hours);
    expect(lampForHours({ ...lamp, on: '20:00' }, 10)).toMatchObject({ on: '20:00', off: '06:00' });
  });

  it('move a lamp to the night without changing its hours', () => {
    const moved = { ...lamp, ...lampFrom(lamp, 23 * 60) };
    expect(moved.on).toBe('23:00');
    expect(lampHours(moved)).toBe(lampHours(lamp));
  });

  it('move both blocks of a lamp together and keep the second when its hours change', () => {
    const two = { ...lamp, on: '06:00', off: '09:00', second: { on: '16:00', off: '20:00' } };
    expect(lampHours(two)).toBe(7);
    expect(lampFrom(two, 5 * 60)).toEqual({
      on: '05:00',
      off: '08:00',
      second: { on: '15:00', off: '19:00' },
    });
    expect(lampForHours(two, 8)).toEqual({ on: '06:00', off: '10:00', second: two.second });
  });

  it('say what a lamp that lengthens the day is changed to', () => {
    const extend = (hours: number) => ({ control: { kind: 'extend', hours, end: 'dusk' } }) as const;
    const at = (hours: number) => withPlace(plan, lit.id, (place) => withLamp(place, 0, extend(hours)));
    expect(trialWords(at(12), at(14), units)).toBe(`${lit.name}: ${lamp.name} 14\u00a0h a day`);
  });

  it('give plans that the schema accepts, with a lamp and a heater put in everywhere', () => {
    let tried = plan;
    for (const place of plan.places)
      tried = withPlace(tried, place.id, (each) => ({
        ...each,
        lamps: [triedLamp(each)],
        heaters: [triedHeater],
      }));
    expect(parsePlan(tried)).toMatchObject({ ok: true });
  });

  it('say what a trial changes, and nothing where it changes nothing', () => {
    const longer = withPlace(plan, lit.id, (place) => withLamp(place, 0, lampForHours(lamp, 15)));
    expect(trialWords(plan, plan, units)).toBe('');
    expect(trialWords(plan, longer, units)).toBe(`${lit.name}: ${lamp.name} 15\u00a0h a day`);
    expect(trialWords(longer, plan, units)).toContain(lamp.name);
  });
});

describe('a change on the sheet', () => {
  const weather = weatherFromPlan(plan);
  if (!weather) throw new Error('expected the demonstration plan to have normals');
  const cache = createSeasonCache();
  const before = runSeason(plan, weather, cache);
  const warmer = withPlace(plan, heated.id, (place) =>
    withHeater(place, 0, { setPointNight: 10, setPointDay: 10 }),
  );
  const after = runSeason(warmer, weather, cache);

  it('adds up: days gained in some states are lost in others, and warmth costs', () => {
    const difference = differenceOf(before, after);
    expect(difference.cost).toBeGreaterThan(0);
    expect(difference.lots.length).toBeGreaterThan(0);
    for (const lot of difference.lots) expect(lot.states.reduce((sum, state) => sum + state.days, 0)).toBe(0);
    const here = new Set(plan.lots.filter((lot) => standsIn(lot, heated.id)).map((lot) => lot.id));
    expect(new Set(difference.lots.map((lot) => lot.lotId)).size).toBe(difference.lots.length);
    for (const lot of difference.lots) expect(here.has(lot.lotId)).toBe(true);
    expect(differenceOf(before, before)).toEqual({
      lots: [],
      cost: 0,
      electricity: 0,
      heat: 0,
      frostHours: 0,
    });
  });

  it('travels as one place and arrives whole', () => {
    const parcel = packSeason(after, before);
    expect(parcel.outdoor).toBe(null);
    expect(parcel.places.filter((place) => typeof place !== 'number')).toHaveLength(1);
    expect(unpackSeason(parcel, before)).toEqual(after);
    expect(unpackSeason(packSeason(before, null), null)).toEqual(before);
    expect(() => unpackSeason(parcel, null)).toThrow('whole season first');
  });

  it('follows places that change their order or go', () => {
    const fewer = {
      ...plan,
      places: plan.places.slice(1).reverse(),
      lots: plan.lots.filter((lot) => !standsIn(lot, plan.places[0].id)),
    };
    const result = runSeason(fewer, weather, cache);
    expect(unpackSeason(packSeason(result, before), before)).toEqual(result);
  });
});
