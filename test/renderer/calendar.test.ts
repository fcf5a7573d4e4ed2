import { flushSync, mount, unmount } from 'svelte';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { calendarOf, demonstrationPlan, runSeason, weatherFromPlan } from '../../core/index.ts';
import type { CalendarTask, FlowerMeeting, FlowerWay, Plan, SeasonResult } from '../../core/index.ts';
import { calendarDesk } from '../../renderer/calendar/calendar-desk.svelte.ts';
import { families, kinds } from '../../renderer/calendar/kinds.ts';
import {
  dateless,
  everything,
  familiesOf,
  filtered,
  headOf,
  headsOf,
  joined,
  linesOf,
  monthsOfLines,
  namesOf,
  seasonYears,
  todayInSeason,
} from '../../renderer/calendar/lines.ts';
import { spansOf } from '../../renderer/calendar/spans.ts';
import { calendarInput } from '../../renderer/calendar/take-along.ts';
import type { Bench } from '../../renderer/state/bench.svelte.ts';
import CalendarOnBench from './CalendarOnBench.svelte';

const startDate = '2025-08-01';
const units = { temperature: 'C', length: 'm' } as const;
const task = (part: Partial<CalendarTask>): CalendarTask => ({
  id: 'agaves-repot-1',
  kind: 'repot',
  lotId: 'agaves',
  placeId: 'tunnel',
  from: 0,
  to: null,
  on: '08-01',
  until: null,
  words: 'Time to repot: roots are warm.',
  because: 'Pots rose above 12.0 °C: 12.4 °C.',
  crossing: { series: 'pots', value: 12.4, threshold: 12, unit: '°C', way: 'rose above' },
  nextSeason: false,
  ...part,
});

describe('the calendar by date', () => {
  it('makes one line of the same task on the same days, and only of that', () => {
    const tasks = [
      task({ from: 70 }),
      task({ from: 70, lotId: 'aeoniums' }),
      task({ from: 70, to: 90 }),
      task({ from: 70, words: 'Carry to the tunnel.', kind: 'carry' }),
      task({ from: 3 }),
    ];
    const lines = linesOf(tasks);
    expect(lines.map((line) => [line.from, line.to, line.tasks.length])).toEqual([
      [3, null, 1],
      [70, null, 2],
      [70, null, 1],
      [70, 90, 1],
    ]);
    expect(namesOf(lines[1], demonstrationPlan)).toBe('Agaves and Aeoniums');
    const many = linesOf(demonstrationPlan.lots.slice(0, 8).map(({ id }) => task({ lotId: id })));
    expect(namesOf(many[0], demonstrationPlan)).toMatch(/^Pelargoniums from cuttings, .* and 3 more$/);
    expect(namesOf(many[0], demonstrationPlan).split(', ')).toHaveLength(5);
  });

  it('makes one line of what changes on one day for the same plants, and of nothing else', () => {
    const ends = { kind: 'rest-ends', words: 'Rest from cold ends: it wakes.' } as const;
    const water = { kind: 'water-again', words: 'A little water again.' } as const;
    const lines = joined(
      linesOf([
        task({ from: 70, ...ends }),
        task({ from: 70, ...water }),
        task({ from: 70, to: 90 }),
        task({ from: 70, ...water, words: 'Water again.', lotId: 'aeoniums' }),
        task({ from: 71, ...water }),
        task({ from: 72, ...ends }),
        task({ from: 72, ...ends, lotId: 'aeoniums' }),
        task({ from: 72, ...water }),
      ]),
    );
    expect(lines.map((line) => [line.from, headsOf(line), familiesOf(line).length])).toEqual([
      [70, 'Rest from cold ends; a little water again', 2],
      [70, 'Water again', 1],
      [70, 'Time to repot', 1],
      [71, 'A little water again', 1],
      [72, 'Rest from cold ends', 1],
      [72, 'A little water again', 1],
    ]);
    expect(namesOf(lines[0], demonstrationPlan)).toBe('Agaves');
  });

  it('runs by months from the season’s start, empty ones left out', () => {
    const months = monthsOfLines(linesOf([3, 33, 35, 160].map((from) => task({ from }))), startDate);
    expect(months.map((month) => [month.key, month.lines.length])).toEqual([
      ['2025-7', 1],
      ['2025-8', 2],
      ['2026-0', 1],
    ]);
  });

  it('says at a glance the first clause, figures kept whole', () => {
    expect(headOf({ words: 'Time to repot: roots are warm.' })).toBe('Time to repot');
    expect(headOf({ words: 'Below 7.5 °C it rests. Let it dry.' })).toBe('Below 7.5 °C it rests');
  });

  it('filters by place, group and kind', () => {
    const tasks = [task({}), task({ lotId: 'lemons', placeId: 'lean-to' }), task({ kind: 'stop-water' })];
    const count = (part: object) => filtered(tasks, demonstrationPlan, { ...everything, ...part }).length;
    expect([
      count({}),
      count({ placeId: 'lean-to' }),
      count({ groupId: 'agave' }),
      count({ family: 'water' }),
    ]).toEqual([3, 1, 2, 1]);
  });

  it('names the lots that have no date at all, within what is shown', () => {
    const tasks = demonstrationPlan.lots.slice(2).map(({ id }) => task({ lotId: id }));
    const names = (part: object) =>
      dateless(tasks, demonstrationPlan, { ...everything, ...part }).map((lot) => lot.id);
    expect(names({})).toEqual(['pelargoniums', 'lemons']);
    expect(names({ groupId: 'citrus' })).toEqual(['lemons']);
    expect(names({ placeId: 'tunnel' })).toEqual([]);
    expect(names({ family: 'water' })).toEqual([]);
  });

  it('knows today in the site’s zone, and the years the running season and the next begin', () => {
    const newYearInAuckland = Date.UTC(2026, 11, 31, 12);
    expect(todayInSeason(newYearInAuckland, 'Pacific/Auckland', 31)).toBe(334);
    expect(todayInSeason(newYearInAuckland, 'Europe/Dublin', 212)).toBe(152);
    expect(seasonYears(newYearInAuckland, 'Pacific/Auckland', '2025-02-01')).toEqual([2026, 2027]);
    expect(seasonYears(Date.UTC(2027, 6, 31), 'Europe/Dublin', startDate)).toEqual([2026, 2027]);
    expect(seasonYears(Date.UTC(2027, 7, 1), 'Europe/Dublin', startDate)).toEqual([2027, 2028]);
  });
});

describe('the calendar by plant', () => {
  const spans = (...tasks: Partial<CalendarTask>[]) =>
    spansOf(tasks.map(task)).map(({ from, to, form }) => [from, to, form]);

  it('draws each watering until the next, around the season’s turn', () => {
    expect(
      spans(
        { kind: 'stop-water', from: 100 },
        { kind: 'water-again', from: 250 },
        { kind: 'water-sparingly', from: 80 },
      ),
    ).toEqual([
      [80, 99, 'half'],
      [100, 249, 'hollow'],
      [250, 364, 'full'],
      [0, 79, 'full'],
    ]);
  });
  it('counts the last safe night as safe, and the day rest ends as awake', () => {
    expect(spans({ kind: 'last-safe-night', from: 60 }, { kind: 'first-safe-night', from: 290 })).toEqual([
      [290, 364, 'full'],
      [0, 60, 'full'],
    ]);
    expect(spans({ kind: 'rest-begins', from: 60 }, { kind: 'rest-ends', from: 200 })).toEqual([
      [60, 199, 'full'],
    ]);
  });
  it('cuts a window that goes on beyond the last day, and marks single days as such', () => {
    expect(spans({ from: 350, to: 380 })).toEqual([
      [350, 364, 'full'],
      [0, 15, 'full'],
    ]);
    expect(spans({ kind: 'harm', from: 12 })).toEqual([[12, 12, 'point']]);
  });
});

describe('of the demonstration plan', () => {
  let season: SeasonResult;
  let tasks: CalendarTask[];
  beforeAll(() => {
    season = runSeason(demonstrationPlan, weatherFromPlan(demonstrationPlan)!);
    tasks = calendarOf(season);
  }, 60_000);

  it('every task has a name, a family and days that can be drawn', () => {
    expect(tasks.length).toBeGreaterThan(20);
    for (const each of tasks) {
      expect(families.map((family) => family.id)).toContain(kinds[each.kind].family);
      expect(headOf(each)).not.toBe('');
    }
    for (const lot of demonstrationPlan.lots)
      for (const span of spansOf(tasks.filter((each) => each.lotId === lot.id)))
        expect([span.from >= 0, span.to <= 364, span.from <= span.to]).toEqual([true, true, true]);
  });

  it('the file holds each task once, in the reader’s units', () => {
    const input = calendarInput(tasks, demonstrationPlan, season.startDate, 2026, {
      temperature: 'F',
      length: 'ft',
    });
    expect(input.tasks.map(({ id }) => id)).toEqual(tasks.map(({ id }) => id));
    expect([input.year, input.startsOn, input.timeZone]).toEqual([2026, '08-01', 'Europe/Dublin']);
    expect(input.tasks.some(({ description }) => description.includes('°F'))).toBe(true);
    expect(input.tasks.filter(({ description }) => description.includes('°C'))).toEqual([]);
  });

  describe('on the page', () => {
    let app: ReturnType<typeof mount> | null = null;
    afterEach(async () => {
      if (app) await unmount(app);
      app = null;
      document.body.innerHTML = '';
    });
    const nowMs = Date.UTC(2026, 10, 25, 12);
    function open(host: object = {}, more: object = {}) {
      const shown: { view: string; cursorDay: number; lotId: string | null } = {
        view: 'calendar',
        cursorDay: 0,
        lotId: null,
      };
      const bench = Object.assign(shown, {
        plan: demonstrationPlan,
        shown: demonstrationPlan,
        season,
        units,
        trial: null,
        error: null,
        host,
        show(view: string, selection: { lotId?: string }) {
          shown.view = view;
          shown.lotId = selection.lotId ?? null;
        },
        ...more,
      }) as unknown as Bench;
      app = mount(CalendarOnBench, { target: document.body, props: { bench, nowMs } });
      flushSync();
      return shown;
    }
    const button = (words: string | RegExp) => {
      const found = [...document.querySelectorAll('button')].find((each) =>
        typeof words === 'string'
          ? each.textContent?.trim() === words
          : words.test(each.textContent?.trim() ?? ''),
      );
      if (!found) throw new Error(`expected a button ${words}`);
      return found;
    };

    it('today stands between what is past and what is to come', () => {
      open();
      expect(document.querySelectorAll('.lines details.past')).toHaveLength(0);
      const shut = document.querySelectorAll('.lines details').length;
      const show = button(/^Show what is past/);
      const gone = Number(/: (\d+)\s+entries/.exec(show.textContent)?.[1]);
      show.click();
      flushSync();
      expect(document.querySelectorAll('.lines details.past')).toHaveLength(gone);
      expect(document.querySelectorAll('.lines details')).toHaveLength(shut + gone);
      const today = document.getElementById('today');
      expect(today?.textContent).toContain('Today');
      const order = [...document.querySelectorAll('.lines details, #today')];
      const at = order.indexOf(today as Element);
      expect(at).toBeGreaterThan(0);
      expect(order.slice(at + 1).some((line) => line.classList.contains('past'))).toBe(false);
      expect(order.slice(0, at).some((line) => line.classList.contains('past'))).toBe(true);
    });

    it('a line opens to why, and goes to its day and lot on the sheet', () => {
      const shown = open();
      button(/^Show what is past/).click();
      flushSync();
      const line = linesOf(tasks)[0];
      expect(document.querySelector('.lines details')?.textContent).toContain(
        line.tasks[0].because.slice(0, 12),
      );
      button(/ on the sheet/).click();
      expect(shown).toMatchObject({ view: 'sheet', cursorDay: line.from, lotId: line.tasks[0].lotId });
    });

    it('is read by plant with every task in the drawing’s words', () => {
      open();
      button('By plant').click();
      flushSync();
      const drawings = [...document.querySelectorAll('.plants svg[role="img"]')];
      const lots = new Set(tasks.map((each) => each.lotId));
      expect(drawings).toHaveLength(lots.size);
      const words = drawings.map((drawing) => drawing.getAttribute('aria-label')?.split('; ').length ?? 0);
      expect(words.reduce((sum, count) => sum + count, 0)).toBe(tasks.length);
    });

    it('two lots are brought into flower together: told why, and tried on the sheet', async () => {
      const keeping = (lotId: string, placeId: string) => {
        return { lotId, placeId, moves: [], window: { from: 240, to: 260 }, harmDays: 0 };
      };
      const found: FlowerWay = {
        one: { ...keeping('echeverias', 'tunnel'), moves: [{ on: '02-13', to: 'bright-tent' }] },
        other: keeping('spare-echeverias', 'dim-tent'),
        warmth: null,
        overlap: 21,
        changes: 2,
        words: 'Keep Echeverias in the tunnel; leave Spare echeverias: below 7.5 °C for long.',
      };
      const now = { one: null, other: { from: 100, to: 130 }, words: '12 of the 42 days of cool rest.' };
      const flowerTogether = vi
        .fn(async (): Promise<FlowerMeeting> => ({ now, ways: [found], whyNot: null }))
        .mockResolvedValueOnce({ now, ways: [], whyNot: 'The bench is full.' });
      const tryPlan = vi.fn((_words: string, _plan: Plan) => undefined);
      const shown = open({}, { engine: { flowerTogether }, tryPlan });
      button('Flower together').click();
      flushSync();
      button('Bring them together').click();
      await vi.waitFor(() => expect(document.body.textContent).toContain('The bench is full.'));
      button('Bring them together').click();
      await vi.waitFor(() => expect(document.body.textContent).toContain('21 days in flower together'));
      expect(document.body.textContent).toContain('Leave Spare echeverias');
      button(/^Try it on the sheet/).click();
      expect(tryPlan.mock.calls[0][1].lots.find((lot) => lot.id === 'echeverias')).toMatchObject({
        place: 'tunnel',
        moves: [{ on: '02-13', to: 'bright-tent' }],
      });
      expect(shown).toMatchObject({ view: 'sheet', lotId: 'echeverias' });
    });

    it('is taken along for the year that was chosen, and a refusal is told', async () => {
      const calendarFile = vi.fn(async (_input: { year: number; tasks: unknown[] }) => ({
        fileName: 'winter.ics',
        text: 'BEGIN:VCALENDAR',
      }));
      open({ calendarFile });
      button('Write the calendar file').click();
      await vi.waitFor(() => expect(document.body.textContent).toContain('written to winter.ics'));
      expect(calendarFile.mock.calls[0][0]).toMatchObject({ year: 2026 });
      expect(calendarFile.mock.calls[0][0].tasks).toHaveLength(tasks.length);
      calendarFile.mockRejectedValueOnce(new Error('the disk is full'));
      button('Write the calendar file').click();
      await vi.waitFor(() =>
        expect(document.querySelector('[role="alert"]')?.textContent).toBe('the disk is full'),
      );
    });
  });
});

describe('two lots in flower', () => {
  const way = (overlap: number) => ({ overlap }) as FlowerWay;
  const bench = (engine: object, plan: Plan = demonstrationPlan) =>
    ({ plan, season: null, engine }) as unknown as Bench;

  it('are the first two whose rule is known, until others are chosen', () => {
    const lots = demonstrationPlan.lots.map(({ id }, index) => ({
      lotId: id,
      flowering: { cue: index === 4 || index === 6 ? 'cool rest' : 'unknown' },
    }));
    const at = { ...bench({}), season: { lots } } as unknown as Bench;
    const desk = calendarDesk(at);
    const [four, six] = [demonstrationPlan.lots[4].id, demonstrationPlan.lots[6].id];
    expect(desk.pair).toEqual([four, six]);
    desk.one = six;
    expect(desk.pair).toEqual([six, four]);
    desk.other = 'a lot that is gone';
    expect(desk.pair).toEqual([six, four]);
  });

  it('tell each way as it comes, drop what a newer question has overtaken, and can be stopped', async () => {
    const asked: { give: (answer: FlowerMeeting) => void; signal: AbortSignal }[] = [];
    const flowerTogether = (
      _plan: Plan,
      _one: string,
      _other: string,
      onWay: (found: FlowerWay) => void,
      signal: AbortSignal,
    ) =>
      new Promise<FlowerMeeting>((give, refuse) => {
        asked.push({ give, signal });
        signal.addEventListener('abort', () => refuse(signal.reason as Error));
        onWay(way(3));
        onWay(way(12));
      });
    const desk = calendarDesk(bench({ flowerTogether }));
    const first = desk.start();
    expect([desk.running, desk.ways.map(({ overlap }) => overlap)]).toEqual([true, [12, 3]]);
    const second = desk.start();
    expect(asked[0].signal.aborted).toBe(true);
    const meeting = { ways: [way(12)], whyNot: null } as unknown as FlowerMeeting;
    asked[1].give(meeting);
    await Promise.all([first, second]);
    expect([desk.meeting, desk.running, desk.error, desk.stopped]).toEqual([meeting, false, null, false]);
    const third = desk.start();
    desk.stop();
    await third;
    expect([desk.stopped, desk.running, desk.error, desk.ways.length]).toEqual([true, false, null, 2]);
  });

  it('tell a failure in its own words', async () => {
    const desk = calendarDesk(bench({ flowerTogether: () => Promise.reject(new Error('no weather')) }));
    await desk.start();
    expect(desk.error).toBe('no weather');
  });
});
