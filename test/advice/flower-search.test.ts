import { describe, expect, it } from 'vitest';
import {
  benchTaken,
  createSeasonCache,
  demonstrationPlan as demo,
  flowerTogether,
  judgeLot,
  lotOf,
  planNumbers,
  seasonSetting,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Lot, LotSeason, Plan, WeatherYear } from '../../core/index.ts';
import { roomFor } from '../../core/advice/flower-bench.ts';
import { monthDayOf } from '../../core/advice/calendar-words.ts';
import { keepingsOf } from '../../core/advice/flower-keepings.ts';
import type { Keeping } from '../../core/advice/flower-keepings.ts';
import { harmDaysOf } from '../../core/advice/flower-harm.ts';
import { daysThrough, screenFlowers } from '../../core/advice/flower-screen.ts';
import { leastHarmAdded, subjectOf } from '../../core/advice/flower-subject.ts';
import { meetBestFirst, meritOf, overlapOf } from '../../core/advice/flower-search.ts';
import type { Option } from '../../core/advice/flower-search.ts';

const weather = weatherFromPlan(demo) as WeatherYear;
const cache = createSeasonCache();

/** Two places and the open air, little bench in the lean-to; plants so few that they do not change the air they stand in. */
const small: Plan = {
  ...demo,
  places: demo.places.filter(({ id }) => id === 'lean-to' || id === 'bright-tent'),
  lots: [
    lotOf({ id: 'cacti', name: 'Cacti', group: 'desert-cacti', place: 'bright-tent', area: 0.001 }),
    lotOf({
      id: 'citrus',
      name: 'Lemon',
      group: 'citrus',
      place: 'lean-to',
      area: 0.001,
      moves: [{ on: '05-20', to: 'outdoors' }],
    }),
  ],
};
const setting = seasonSetting(small, weather, cache);
const startDay = setting.year.startDay;

interface Judged {
  readonly lot: Lot;
  readonly changes: number;
  readonly window: NonNullable<LotSeason['flowering']['window']>;
}

/** Every keeping of a lot that brings flowers and no day of harm more, by the judge of the season. */
function allOf(lotId: string): Judged[] {
  const lot = small.lots.find(({ id }) => id === lotId) as Lot;
  const numbers = planNumbers(small, lot.group);
  const before = harmDaysOf(judgeLot(setting, lot));
  return keepingsOf(small, lot, startDay).flatMap(({ placeId, moves, changes }) => {
    const moved = { ...lot, place: placeId, moves: [...moves] };
    const judged = judgeLot(setting, moved, numbers);
    const harm = harmDaysOf(judged);
    const { window } = judged.flowering;
    const borne = harm.grave <= before.grave && harm.all <= before.all;
    return window === null || !borne ? [] : [{ lot: moved, changes, window }];
  });
}

describe('the search', () => {
  const [one, other] = ['cacti', 'citrus'].map((id) => subjectOf(setting, id));

  it('finds the best that trying every pair finds', () => {
    const [ones, others] = [allOf('cacti'), allOf('citrus')];
    expect(ones.length * others.length).toBeGreaterThan(1000);
    const merits = ones.flatMap((a) =>
      others.map((b) => {
        const overlap = overlapOf(a.window, b.window);
        return overlap > 0 ? meritOf(overlap, a.changes + b.changes) : -Infinity;
      }),
    );
    const best = merits.reduce((a, b) => Math.max(a, b), -Infinity);
    expect(best).toBeGreaterThan(meritOf(14, 9));
    const { ways } = flowerTogether(small, weather, { one: 'cacti', other: 'citrus' }, { cache });
    expect(meritOf(ways[0].overlap, ways[0].changes)).toBe(best);
  }, 120_000);

  it('screens what the judge finds: the same flowers, and never more harm than there is', () => {
    for (const subject of [one, other]) {
      const least = leastHarmAdded(setting, subject);
      let met = 0;
      for (const [index, keeping] of subject.keepings.entries()) {
        if (index % 7 !== 0) continue;
        const moved = { ...subject.lot, place: keeping.placeId, moves: [...keeping.moves] };
        const judged = judgeLot(setting, moved, subject.numbers);
        const screened = screenFlowers(
          subject,
          daysThrough(setting, subject.lot, keeping.stays),
          setting.year.startDay,
        );
        expect(screened).toEqual(judged.flowering);
        if (screened.window !== null) met += 1;
        const harm = harmDaysOf(judged);
        expect(least(keeping).grave).toBeLessThanOrEqual(harm.grave - subject.harmNow.grave);
        expect(least(keeping).all).toBeLessThanOrEqual(harm.all - subject.harmNow.all);
      }
      expect(met).toBeGreaterThan(5);
    }
  });

  it('puts pairs forward best first, once for each two shapes that is kept', () => {
    const option = (shape: string, changes: number, from: number): Option => ({
      ...{ shape, changes, window: { from, to: from + 27 }, keepings: [] },
    });
    const ones = [option('a', 0, 0), option('a > b', 1, 7), option('a > b', 1, 14)];
    const others = [option('a', 0, 20), option('a > c', 1, 14)];
    const seen: string[] = [];
    meetBestFirst(
      ones,
      others,
      () => true,
      (a, b) => {
        seen.push(`${a.shape} ${a.window.from} + ${b.shape} ${b.window.from}`);
        return seen.length === 1 ? 'not together' : 'kept';
      },
    );
    expect(seen).toEqual([
      'a > b 14 + a > c 14',
      'a > b 14 + a 20',
      'a > b 7 + a > c 14',
      'a 0 + a > c 14',
      'a 0 + a 20',
    ]);
  });
});

describe('the keepings', () => {
  const { keepings, lot } = subjectOf(setting, 'citrus');
  it('begin with the plan as it is, and are all different', () => {
    expect(keepings[0]).toMatchObject({ placeId: 'lean-to', moves: lot.moves, changes: 0 });
    const courses = keepings.map(({ stays }) => JSON.stringify(stays));
    expect(new Set(courses).size).toBe(courses.length);
    expect(keepings.slice(1).every(({ changes }) => changes > 0)).toBe(true);
  });
  it('count a place, a move and a move on another day as a change each', () => {
    const changesOf = (placeId: string, ...moves: Keeping['moves']) =>
      keepings.find(
        (each) => each.placeId === placeId && JSON.stringify(each.moves) === JSON.stringify(moves),
      )?.changes;
    expect(changesOf('lean-to')).toBe(1);
    expect(changesOf('bright-tent')).toBe(2);
    const later = { on: monthDayOf(280, startDay), to: 'outdoors' };
    expect(changesOf('lean-to', later)).toBe(1);
    expect(changesOf('lean-to', ...lot.moves, { on: monthDayOf(140, startDay), to: 'bright-tent' })).toBe(1);
    expect(changesOf('bright-tent', later)).toBe(2);
  });
  it('writes days of the season as dates', () => {
    expect([0, 31, 152, 153, 211, 212, 364].map((day) => monthDayOf(day, 212))).toEqual([
      '08-01',
      '09-01',
      '12-31',
      '01-01',
      '02-28',
      '03-01',
      '07-31',
    ]);
    expect(monthDayOf(0, 31)).toBe('02-01');
  });
});

describe('bench room', () => {
  const lot = (id: string, place: string, area: number) =>
    lotOf({ id, name: id, group: 'agave', place, area });
  const lots = [
    lot('one', 'bright-tent', 0.3),
    lot('other', 'lean-to', 0.3),
    lot('third', 'bright-tent', 0.1),
  ];
  const plan = { ...small, lots };
  const room = roomFor(plan, [lots[0], lots[1]], startDay);
  const stay = (placeId: string, from = 0, to = 364) => ({ placeId, from, to });
  it('is had for what fits, for what the plan has there, and outdoors', () => {
    expect(room.alone(0, [stay('bright-tent')])).toBe(true);
    expect(room.alone(1, [stay('bright-tent')])).toBe(true);
    expect(room.alone(1, [stay('outdoors')])).toBe(true);
    expect(room.both([stay('bright-tent')], [stay('lean-to')])).toBe(true);
    const full = roomFor(
      { ...plan, lots: [lots[0], lots[1], { ...lots[2], area: 0.3 }] },
      [lots[0], lots[1]],
      startDay,
    );
    expect(full.alone(0, [stay('bright-tent')])).toBe(true);
    expect(full.alone(1, [stay('bright-tent')])).toBe(false);
  });
  it('is lacking only on days on which both stand there', () => {
    expect(room.both([stay('bright-tent')], [stay('bright-tent')])).toBe(false);
    expect(
      room.both(
        [stay('bright-tent', 0, 99), stay('outdoors', 100)],
        [stay('lean-to', 0, 99), stay('bright-tent', 100)],
      ),
    ).toBe(true);
    expect(
      room.both(
        [stay('bright-tent', 0, 100), stay('outdoors', 101)],
        [stay('lean-to', 0, 99), stay('bright-tent', 100)],
      ),
    ).toBe(false);
  });
  it('agrees with the benches of the changed plan, day by day', () => {
    const [place] = small.places.filter(({ id }) => id === 'bright-tent');
    for (const a of keepingsOf(plan, lots[0], startDay).filter((_, index) => index % 40 === 0)) {
      for (const b of keepingsOf(plan, lots[1], startDay).filter((_, index) => index % 40 === 0)) {
        const kept = [
          { ...lots[0], place: a.placeId, moves: [...a.moves] },
          { ...lots[1], place: b.placeId, moves: [...b.moves] },
        ];
        const fits = benchTaken([...kept, lots[2]], startDay, 'bright-tent').every(
          (taken) => taken <= place.growingArea + 1e-9,
        );
        expect(room.both(a.stays, b.stays) && room.alone(0, a.stays) && room.alone(1, b.stays)).toBe(fits);
      }
    }
  });
});
