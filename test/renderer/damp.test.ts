import { describe, expect, it } from 'vitest';
import { demonstrationPlan } from '../../core/index.ts';
import type { DailySeries, DampAdvice, DampChoice, Plan } from '../../core/index.ts';
import { dampDesk } from '../../renderer/place/damp-desk.svelte.ts';
import { dampRows, hoursText } from '../../renderer/place/damp-months.ts';
import { dampSentence, dampWeek, dampWeeks, drop, drops } from '../../renderer/sheet/damp.ts';
import type { Bench } from '../../renderer/state/bench.svelte.ts';

/** Days without damp but for what is given. */
function days(change: Partial<Record<keyof DailySeries, (day: number) => number>>): DailySeries {
  const series = (of: (day: number) => number = () => 0) =>
    Float64Array.from({ length: 365 }, (_, day) => of(day));
  return {
    dampHours: series(change.dampHours),
    dewHours: series(change.dewHours),
    leafDewHours: series(change.leafDewHours),
    mouldHours: series(change.mouldHours),
  } as DailySeries;
}

describe('damp on the sheet', () => {
  it('is silent for a dry place, and for one that is wet on the cover only', () => {
    expect(dampWeeks(days({}))).toEqual([]);
    expect(dampWeeks(days({ dampHours: () => 24, dewHours: () => 24 }))).toEqual([]);
  });

  it('is marked above two hours of dew a night on the leaves, and not at two', () => {
    const wet = (hours: number) =>
      dampWeeks(days({ leafDewHours: (day) => (day >= 140 && day < 147 ? hours : 0) }));
    expect(wet(2)).toEqual([]);
    const [week, ...more] = wet(2.25);
    expect(more).toEqual([]);
    expect(week.week).toBe(20);
    expect(week.leafDewHours).toBeCloseTo(15.75, 9);
    expect(week.mouldHours).toBe(0);
  });

  it('is marked wherever mould may start, also in the long last week', () => {
    const weeks = dampWeeks(days({ mouldHours: (day) => (day === 3 || day === 364 ? 0.25 : 0) }));
    expect(weeks.map(({ week }) => week)).toEqual([0, 51]);
    expect(weeks[1].mouldHours).toBeCloseTo(0.25, 9);
  });

  it('is said in the margin only then, with its hours', () => {
    const whole = (value: number) => value.toFixed(0);
    const daily = days({
      leafDewHours: (day) => (day < 7 ? 3 : 0),
      mouldHours: (day) => (day === 8 ? 4 : 0),
    });
    const [first, second, third] = [0, 1, 2].map((week) => dampWeek(daily, week));
    expect(first && dampSentence(first, whole)).toBe(
      'Dew on the leaves for 21 h this week, more than two hours a night.',
    );
    expect(second && dampSentence(second, whole)).toBe(
      'Dew on the leaves for 0 h this week; grey mould may start for 4 h.',
    );
    expect(third).toBeNull();
  });

  it('has one drop a week, in its middle', () => {
    const weeks = dampWeeks(days({ leafDewHours: (day) => (day < 14 ? 5 : 0) }));
    expect(drops(weeks, 365)).toBe(drop(3.5, 0) + drop(10.5, 0));
  });
});

describe('damp by month', () => {
  it('keeps every hour of the season and leaves small ones blank', () => {
    const rows = dampRows(
      days({ dampHours: () => 1, mouldHours: (day) => (day < 31 ? 0.01 : 0) }),
      '2025-08-01',
    );
    expect(rows[0].months).toEqual([31, 30, 31, 30, 31, 31, 28, 31, 30, 31, 30, 31]);
    expect(rows[0].total).toBe(365);
    expect(hoursText(rows[3].months[0], String)).toBe('');
    expect(hoursText(rows[0].months[0], String)).toBe('31');
  });
});

describe('what would help', () => {
  interface Question {
    readonly placeId: string;
    readonly tell: (choice: DampChoice) => void;
    readonly give: (advice: DampAdvice) => void;
    readonly fail: (error: unknown) => void;
    readonly signal: AbortSignal;
  }
  const figures = { leafDewHours: 1, mouldHours: 1, dampHours: 1, dewHours: 1, cost: 1, leastAir: 1 };
  const choice = (id: DampChoice['id']): DampChoice => ({ id, words: id, caution: '', figures });
  const advice = (placeId: string, ids: DampChoice['id'][]): DampAdvice => ({
    placeId,
    now: figures,
    choices: ids.map(choice),
  });
  function desk() {
    const asked: Question[] = [];
    const damp = (_plan: Plan, placeId: string, tell: Question['tell'], signal: AbortSignal) =>
      new Promise<DampAdvice>((give, fail) => {
        signal.addEventListener('abort', () => fail(signal.reason));
        asked.push({ placeId, tell, give, fail, signal });
      });
    const bench = { shown: demonstrationPlan, engine: { damp } };
    return { asked, bench, desk: dampDesk(bench as unknown as Bench) };
  }

  it('shows each change as it is found, and knows when the plan has moved on', async () => {
    const { asked, bench, desk: one } = desk();
    const started = one.start('tunnel');
    asked[0].tell(choice('more-air'));
    expect(one.choices.map(({ id }) => id)).toEqual(['more-air']);
    expect(one.running).toBe(true);
    asked[0].give(advice('tunnel', ['more-air', 'drier']));
    await started;
    expect([one.running, one.placeId, one.choices.length, one.outdated]).toEqual([false, 'tunnel', 2, false]);
    bench.shown = { ...demonstrationPlan };
    expect(one.outdated).toBe(true);
  });

  it('answers the newest question only', async () => {
    const { asked, desk: one } = desk();
    const first = one.start('tunnel');
    const second = one.start('window');
    expect(asked[0].signal.aborted).toBe(true);
    asked[0].tell(choice('drier'));
    expect(one.choices).toEqual([]);
    asked[1].give(advice('window', ['stirred']));
    await Promise.all([first, second]);
    expect([one.placeId, one.choices.map(({ id }) => id), one.stopped, one.error]).toEqual([
      'window',
      ['stirred'],
      false,
      null,
    ]);
  });

  it('stops with what was found until then, and tells a failure from a stop', async () => {
    const { asked, desk: one } = desk();
    const started = one.start('tunnel');
    asked[0].tell(choice('more-air'));
    one.stop();
    await started;
    expect([one.stopped, one.running, one.error, one.choices.length]).toEqual([true, false, null, 1]);
    const again = one.start('tunnel');
    asked[1].fail(new Error('no weather'));
    await again;
    expect([one.stopped, one.error]).toEqual([false, 'no weather']);
  });
});
