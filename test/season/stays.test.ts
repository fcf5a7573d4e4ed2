/** Where a lot stands through the season's ring of days. */
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { benchTaken, lotOf, placeOn, staysOf } from '../../core/index.ts';
import type { Move } from '../../core/index.ts';

/** 1 August and 1 February as days of a common year. */
const [north, south] = [212, 31];
const lot = (moves: readonly Move[]) =>
  lotOf({ id: 'a', name: 'A', group: 'echeveria', place: 'garden', area: 0.3, moves: [...moves] });

describe('stays', () => {
  it('without a move: one place all season', () => {
    expect(staysOf(lot([]), north)).toEqual([{ placeId: 'garden', from: 0, to: 364 }]);
  });

  it('brought in on 1 October and put out on 15 May, counted from 1 August', () => {
    const moves = [
      { on: '05-15', to: 'garden' },
      { on: '10-01', to: 'house' },
    ];
    expect(staysOf(lot(moves), north)).toEqual([
      { placeId: 'garden', from: 0, to: 60 },
      { placeId: 'house', from: 61, to: 286 },
      { placeId: 'garden', from: 287, to: 364 },
    ]);
  });

  it('south of the equator the same dates come in the other order', () => {
    const moves = [
      { on: '05-15', to: 'house' },
      { on: '10-01', to: 'garden' },
    ];
    expect(staysOf(lot(moves), south).map(({ placeId, from }) => [placeId, from])).toEqual([
      ['garden', 0],
      ['house', 103],
      ['garden', 242],
    ]);
  });

  it('a move on the first day, to where it stands already, or there and back at once', () => {
    expect(staysOf(lot([{ on: '08-01', to: 'house' }]), north)).toEqual([
      { placeId: 'house', from: 0, to: 364 },
    ]);
    expect(staysOf(lot([{ on: '11-11', to: 'garden' }]), north)).toHaveLength(1);
    const back = [
      { on: '08-01', to: 'house' },
      { on: '08-02', to: 'garden' },
    ];
    expect(staysOf(lot(back), north).map(({ placeId, from, to }) => [placeId, from, to])).toEqual([
      ['house', 0, 0],
      ['garden', 1, 364],
    ]);
  });

  it('any moves: the stays cover every day once, no two running in one place, and each begins on a move', () => {
    const dates = fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 }));
    const moves = fc.uniqueArray(fc.tuple(dates, fc.constantFrom('garden', 'house', 'tent', 'outdoors')), {
      selector: ([date]) => date.join(),
      maxLength: 12,
    });
    const two = (value: number) => String(value).padStart(2, '0');
    fc.assert(
      fc.property(moves, fc.constantFrom(north, south, 0, 120), (drawn, start) => {
        const plants = lot(drawn.map(([[month, day], to]) => ({ on: `${two(month)}-${two(day)}`, to })));
        const stays = staysOf(plants, start);
        let next = 0;
        stays.forEach(({ from, to, placeId }, index) => {
          expect(from).toBe(next);
          expect(to).toBeGreaterThanOrEqual(from);
          if (index > 0) expect(placeId).not.toBe(stays[index - 1].placeId);
          expect(placeOn(plants, start, from)).toBe(placeId);
          expect(placeOn(plants, start, to)).toBe(placeId);
          next = to + 1;
        });
        expect(next).toBe(365);
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  it('bench taken adds up the lots that stand there on a day', () => {
    const here = lot([{ on: '10-01', to: 'house' }]);
    const there = { ...lot([]), id: 'b', place: 'house', area: 1 };
    const taken = benchTaken([here, there], north, 'house');
    expect([taken[60], taken[61], taken[364]]).toEqual([1, 1.3, 1.3]);
    expect([...benchTaken([here, there], north, 'garden')].filter((area) => area > 0)).toHaveLength(61);
  });

  it('a day outside the season is refused', () => {
    expect(() => placeOn(lot([]), north, 365)).toThrow('expected a day from 0 to 364, got 365');
  });
});
