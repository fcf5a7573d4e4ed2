import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import type { CalendarTask, demonstrationPlan } from '../../../core/index.ts';
import { terminal } from './terminal.ts';

/** The demonstration with its tunnel alone, and one lot that is carried in and out of it. */
const demo = JSON.parse(terminal(['demo']).out) as typeof demonstrationPlan;
const plan = {
  ...demo,
  places: demo.places.filter(({ id }) => id === 'tunnel'),
  lots: demo.lots
    .filter(({ place }) => place === 'tunnel' || place === 'outdoors')
    .map((lot) => ({
      ...lot,
      moves: lot.moves.map((move) => ({ ...move, to: move.to === 'lean-to' ? 'tunnel' : move.to })),
    })),
};
const files = { 'plan.json': JSON.stringify(plan) };

const eventsOf = (text: string) => new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent');

describe('the verb calendar', () => {
  it('prints the tasks as JSON, and writes nothing unless asked', () => {
    const { code, out, notes, written } = terminal(['calendar', 'plan.json'], files);
    expect([code, notes, written]).toEqual([0, '', {}]);
    const { startDate, tasks } = JSON.parse(out) as { startDate: string; tasks: CalendarTask[] };
    expect(startDate.slice(5)).toBe('08-01');
    expect(tasks.length).toBeGreaterThan(20);
    expect(tasks.map(({ from }) => from)).toEqual(tasks.map(({ from }) => from).sort((a, b) => a - b));
    expect(tasks.find(({ kind }) => kind === 'carry')?.words).toMatch(/^Carry /);
  });

  it('writes the same tasks as a calendar file, in the season now on or the year named', () => {
    const { out, written } = terminal(['calendar', 'plan.json', '--ical', 'winter.ics'], files);
    const { tasks } = JSON.parse(out) as { tasks: CalendarTask[] };
    const events = eventsOf(written['winter.ics']);
    expect(events).toHaveLength(tasks.length);
    const first = (component: ICAL.Component) => new ICAL.Event(component).startDate.toString();
    // The tests' clock stands at 15 January 2026: the season began in 2025.
    expect(events.map(first).sort()[0]?.slice(0, 4)).toBe('2025');
    const later = terminal(['calendar', 'plan.json', '--ical', 'a.ics', '--year', '2030'], files);
    expect(eventsOf(later.written['a.ics']).map(first).sort()[0]?.slice(0, 4)).toBe('2030');
  });

  it('refuses what it cannot use', () => {
    expect(terminal(['calendar'], files)).toMatchObject({ code: 2, out: '' });
    expect(terminal(['calendar', 'plan.json', '--year', '2030'], files)).toMatchObject({ code: 2, out: '' });
    expect(terminal(['calendar', 'plan.json', '--ical', 'a', '--year', '20.5'], files).code).toBe(2);
    expect(terminal(['calendar', 'plan.json', '--ical', 'a', '--year', '2030.5'], files).code).toBe(2);
    const bare = JSON.stringify({ ...plan, lots: [] });
    const empty = terminal(['calendar', 'plan.json', '--ical', 'a.ics'], { 'plan.json': bare });
    expect(empty).toMatchObject({ code: 1, out: '', written: {} });
    expect(empty.notes).toContain('expected at least one task');
  });
});
