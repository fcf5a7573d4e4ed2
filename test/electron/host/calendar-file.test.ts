import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { calendarOf, demonstrationPlan, runSeason, weatherFromPlan } from '../../../core/index.ts';
import type { CalendarTask, WeatherYear } from '../../../core/index.ts';
import * as v from 'valibot';
import { calendarFileSchema } from '../../../electron/contract.ts';
import { calendarFile } from '../../../electron/host/calls/calendar-file.ts';
import { entriesOf } from '../../../electron/headless/verbs/calendar.ts';

type Input = v.InferInput<typeof calendarFileSchema>;
type Entry = Input['tasks'][number];

const now = Date.UTC(2026, 8, 3, 20, 15, 7);
const write = (input: Input) => calendarFile(v.parse(calendarFileSchema, input), now);

const entry = (change: Partial<Entry> = {}): Entry => ({
  id: 'agaves-stop-water-1',
  on: '10-20',
  until: null,
  summary: 'Stop watering: Agaves',
  description: '',
  location: '',
  ...change,
});
const calendarWith = (tasks: Entry[], change: Partial<Input> = {}): Input => ({
  title: 'Winter',
  timeZone: 'Europe/Dublin',
  year: 2026,
  startsOn: '08-01',
  tasks,
  ...change,
});

interface Event {
  readonly uid: string;
  readonly summary: string;
  readonly description: string | null;
  readonly location: string | null;
  readonly categories: readonly string[];
  /** First day and last, both counted. */
  readonly from: string;
  readonly to: string;
}

/** The file read back by another library; throws where it is no calendar. */
function readBack(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  const events = calendar.getAllSubcomponents('vevent').map((component): Event => {
    const event = new ICAL.Event(component);
    expect(event.startDate.isDate, 'a date without a time').toBe(true);
    expect(event.endDate.isDate).toBe(true);
    const last = event.endDate.clone();
    last.adjust(-1, 0, 0, 0);
    expect(component.getFirstPropertyValue('dtstamp')?.toString()).toBe('2026-09-03T20:15:07Z');
    return {
      uid: event.uid,
      summary: event.summary,
      description: event.description,
      location: event.location,
      categories: component.getFirstProperty('categories')?.getValues() as string[],
      from: event.startDate.toString(),
      to: last.toString(),
    };
  });
  return { calendar, events };
}

const onlyEvent = (input: Input): Event => {
  const { events } = readBack(write(input).text);
  expect(events).toHaveLength(1);
  return events[0];
};

describe('the calendar file', () => {
  it('has one all-day event for every task of the demonstration’s season, and no other', () => {
    const season = runSeason(demonstrationPlan, weatherFromPlan(demonstrationPlan) as WeatherYear);
    const tasks = calendarOf(season);
    const { calendar, events } = readBack(write(entriesOf(season, tasks, 2026)).text);
    expect(calendar.getFirstPropertyValue('x-wr-calname')).toBe(demonstrationPlan.name);
    expect(calendar.getFirstPropertyValue('x-wr-timezone')).toBe('Europe/Dublin');
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(events).toHaveLength(tasks.length);
    expect(tasks.length).toBeGreaterThan(40);
    const byUid = new Map(events.map((event) => [event.uid, event]));
    expect(byUid.size).toBe(tasks.length);
    for (const task of tasks) {
      const event = byUid.get(`${task.id}-2026@winter-at-tarnabeg.winterbench`);
      expect(event, task.id).toBeDefined();
      const lot = demonstrationPlan.lots.find(({ id }) => id === task.lotId);
      expect(event?.summary).toContain(lot?.name);
      expect(event?.description).toBe(`${task.words}\n${task.because}`);
      expect([event?.from, event?.to]).toEqual([dateOf(task, task.from), dateOf(task, task.to ?? task.from)]);
    }
  });

  /** Counted from the season's first day in a common calendar, told apart from the writer's own reckoning. */
  function dateOf(task: CalendarTask, day: number) {
    const commonYears = Date.UTC(2025, 7, 1) + (day + (task.nextSeason ? 365 : 0)) * 86_400_000;
    const iso = new Date(commonYears).toISOString();
    expect(task.from === day ? task.on : task.until).toBe(iso.slice(5, 10));
    return `${Number(iso.slice(0, 4)) + 1}${iso.slice(4, 10)}`;
  }

  it.each([
    ['north, before the new year', '08-01', '12-31', null, '2026-12-31', '2026-12-31'],
    ['north, after it', '08-01', '01-01', null, '2027-01-01', '2027-01-01'],
    ['north, over it', '08-01', '12-20', '01-10', '2026-12-20', '2027-01-10'],
    ['north, on the season’s first day', '08-01', '08-01', null, '2026-08-01', '2026-08-01'],
    ['north, on its last', '08-01', '07-31', null, '2027-07-31', '2027-07-31'],
    ['north, on into the next season', '08-01', '07-20', '08-10', '2027-07-20', '2027-08-10'],
    ['south', '02-01', '06-10', '07-01', '2026-06-10', '2026-07-01'],
    ['south, after the new year', '02-01', '01-10', '01-31', '2027-01-10', '2027-01-31'],
    ['south, over it', '02-01', '12-30', '02-03', '2026-12-30', '2027-02-03'],
    ['south, to the end of February', '02-01', '02-20', '02-28', '2026-02-20', '2026-02-28'],
  ])('puts a task %s into its civil year', (_what, startsOn, on, until, from, to) => {
    expect(onlyEvent(calendarWith([entry({ on, until })], { startsOn }))).toMatchObject({ from, to });
  });

  it('puts flowers of the season after a year later', () => {
    const flowers = entry({ on: '08-20', until: '09-10', nextSeason: true });
    expect(onlyEvent(calendarWith([flowers]))).toMatchObject({ from: '2027-08-20', to: '2027-09-10' });
  });

  it('takes 29 February into a span that passes over it, and refuses a task that begins on it', () => {
    const leap = calendarWith([entry({ on: '02-27', until: '03-02' })], { year: 2027 });
    expect(onlyEvent(leap)).toMatchObject({ from: '2028-02-27', to: '2028-03-02' });
    expect(write(leap).text).toContain('DTEND;VALUE=DATE:20280303');
    expect(v.safeParse(calendarFileSchema, calendarWith([entry({ on: '02-29' })])).success).toBe(false);
  });

  it.each([
    ['commas, semicolons and backslashes', 'Agaves, aloes; \\n and \\, too'],
    ['umlauts and other scripts', 'Überwinterung: Sämlinge, サボテン, кактус, צמחים'],
    ['signs of four bytes', `${'🌵'.repeat(40)} 👩🏽‍🌾`],
    ['a line that tries to end the event', 'x\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nSUMMARY:y'],
    ['quotes and colons', '"BEGIN:VALARM": the ‘second’ one'],
  ])('keeps %s', (_what, text) => {
    const kept = text.replaceAll('\r\n', '\n');
    const event = onlyEvent(
      calendarWith([entry({ summary: text, description: text, location: text, category: text })]),
    );
    expect(event).toMatchObject({ summary: kept, description: kept, location: kept, categories: [kept] });
  });

  it('takes a hostile title for a title alone, and its file name for a plain one', () => {
    const title = 'A, b; c\\ \r\nX-EVIL:1\r\nBEGIN:VEVENT\u0000\u001b[31m ../../🌵';
    const { fileName, text } = write(calendarWith([entry()], { title }));
    const { calendar, events } = readBack(text);
    expect(events).toHaveLength(1);
    expect(calendar.getFirstPropertyValue('x-evil')).toBeNull();
    // The reader leaves properties of its own kind as they are written: escaped, as RFC 5545 asks of a text.
    expect(calendar.getFirstPropertyValue('x-wr-calname')).toBe(
      'A\\, b\\; c\\\\  X-EVIL:1 BEGIN:VEVENT  [31m ../../🌵',
    );
    expect(fileName).toMatch(/^[\p{L}\p{N}-]+\.ics$/u);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\u0000-\u001f\u007f]/);
  });

  it('writes lines of at most 75 octets that end in CRLF and cut no character', () => {
    const long = 'Gießen, dann ruhen lassen 🌵; '.repeat(60);
    const { text } = write(
      calendarWith([entry({ summary: long.slice(0, 490), description: long })], {
        title: long.slice(0, 199),
      }),
    );
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    const lines = text.slice(0, -2).split('\r\n');
    for (const line of lines) {
      expect(Buffer.byteLength(line, 'utf8'), line).toBeLessThanOrEqual(75);
      expect(line).not.toMatch(/[\r\n\ufffd]/);
      expect(line).not.toMatch(/\p{Surrogate}/u);
    }
    expect(readBack(text).events[0].description).toBe(long);
  });

  it('puts a mark where half a character stood', () => {
    expect(onlyEvent(calendarWith([entry({ summary: 'a\ud83cb' })])).summary).toBe('a\ufffdb');
  });

  it('writes the same bytes for the same tasks and time, and keeps each event’s name from file to file', () => {
    const input = calendarWith([entry(), entry({ id: 'agaves-feed-1', on: '05-02' })]);
    expect(write(input)).toEqual(write(input));
    const moved = calendarWith([entry({ on: '10-25', summary: 'Other words' })]);
    expect(onlyEvent(moved).uid).toBe(readBack(write(input).text).events[0].uid);
    expect(onlyEvent({ ...moved, year: 2027 }).uid).not.toBe(onlyEvent(moved).uid);
  });

  it.each([
    ['no task', calendarWith([])],
    ['an id twice', calendarWith([entry(), entry()])],
    ['an id with a line in it', calendarWith([entry({ id: 'a\r\nX:1' })])],
    ['a day that is none', calendarWith([entry({ on: '11-31' })])],
    ['a time zone that is none', calendarWith([entry()], { timeZone: 'Europe/Tarnabeg\r\nX:1' })],
    ['half a year', calendarWith([entry()], { year: 2026.5 })],
  ])('refuses %s', (_what, input) => {
    expect(v.safeParse(calendarFileSchema, input).success).toBe(false);
  });
});
