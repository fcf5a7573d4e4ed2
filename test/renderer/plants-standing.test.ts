import { describe, expect, it } from 'vitest';
import { demonstrationPlan, lotOf, outdoors, parsePlan, placeOn, staysOf } from '../../core/index.ts';
import type { Lot, Plan } from '../../core/index.ts';
import {
  inWinterAt,
  middleOfWinter,
  onePotOf,
  staysWords,
  withLot,
  withMovedLot,
} from '../../renderer/plants/standing.ts';

/** The season of a northern place: from 1 August, winter from 1 October to 31 March. */
const season = { startDay: 212, winterFrom: 61, winterTo: 242 };
const middle = middleOfWinter(season);
const lot = (part: Partial<Lot>) =>
  lotOf({ id: 'a', name: 'A', group: 'agave', place: 'tunnel', area: 1, ...part });
const winterOf = (one: Lot) => placeOn(one, season.startDay, middle);

describe('moving a lot for the winter', () => {
  it('changes where it stands, for one that is never carried', () => {
    expect(inWinterAt(lot({}), 'window', season)).toEqual(lot({ place: 'window' }));
  });
  it('turns the move that brings it in, and leaves its summer as it is', () => {
    const carried = lot({
      place: outdoors,
      moves: [
        { on: '04-25', to: outdoors },
        { on: '10-20', to: 'tunnel' },
      ],
    });
    const moved = inWinterAt(carried, 'window', season);
    expect(winterOf(moved)).toBe('window');
    expect(moved).toEqual({
      ...carried,
      moves: [
        { on: '04-25', to: outdoors },
        { on: '10-20', to: 'window' },
      ],
    });
  });
  it('turns the last move before mid-winter where there are several, across the turn of the year', () => {
    const carried = lot({
      moves: [
        { on: '12-20', to: 'window' },
        { on: '02-10', to: 'tunnel' },
        { on: '10-01', to: 'dim-tent' },
      ],
    });
    const moved = inWinterAt(carried, 'lean-to', season);
    expect(winterOf(moved)).toBe('lean-to');
    expect(moved.moves.map((move) => move.to)).toEqual(['lean-to', 'tunnel', 'dim-tent']);
  });
  it('drops the spot, which was of the old place', () => {
    const spot = { across: 'back', along: 'ends', level: 'upper' } as const;
    expect(inWinterAt(lot({ spot }), 'window', season).spot).toEqual(lot({}).spot);
  });
  it('does so to any lot of the plan for any place, and the plan still reads', () => {
    for (const one of demonstrationPlan.lots)
      for (const { id } of demonstrationPlan.places) {
        const plan = withMovedLot(demonstrationPlan, one.id, id, season);
        expect(parsePlan(plan)).toMatchObject({ ok: true });
        expect(winterOf(plan.lots.find((each) => each.id === one.id)!)).toBe(id);
        expect(plan.lots.filter((each) => each.id !== one.id)).toEqual(
          demonstrationPlan.lots.filter((each) => each.id !== one.id),
        );
      }
  });
});

describe('putting one pot somewhere', () => {
  it('adds a lot of one plant, each under a name of its own', () => {
    let plan: Plan = demonstrationPlan;
    for (let i = 0; i < 3; i += 1) plan = withLot(plan, onePotOf(plan, 'agave', outdoors));
    expect(parsePlan(plan)).toMatchObject({ ok: true });
    const added = plan.lots.slice(demonstrationPlan.lots.length);
    expect(added.map(({ plants, place, group }) => [plants, place, group])).toEqual(
      Array.from({ length: 3 }, () => [1, outdoors, 'agave']),
    );
    expect(new Set(plan.lots.map((one) => one.name)).size).toBe(plan.lots.length);
  });
});

describe('the words of where a lot stands', () => {
  const words = (one: Lot) => staysWords(staysOf(one, season.startDay), demonstrationPlan, '2025-08-01');
  it('name every stay with its last day', () => {
    const carried = lot({
      place: outdoors,
      moves: [
        { on: '10-20', to: 'window' },
        { on: '04-25', to: outdoors },
      ],
    });
    expect(words(carried)).toMatch(
      /^Outdoors until .*19.*, then in Landing window until .*24.*, then outdoors\.$/,
    );
  });
  it('are none for one that is never carried', () => {
    expect(words(lot({}))).toBe('');
  });
});
