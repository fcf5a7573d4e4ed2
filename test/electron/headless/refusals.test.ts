import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demonstrationPlan } from '../../../core/index.ts';
import { describeWithData } from '../../support/shared-data.ts';
import { terminal } from './terminal.ts';

const plan = JSON.parse(JSON.stringify(demonstrationPlan)) as Record<string, never> &
  typeof demonstrationPlan;
const withPlace = (change: object) => ({
  ...plan,
  places: [{ ...plan.places[0], ...change }, ...plan.places.slice(1)],
});
/** Bytes that look like nothing, the same each time. */
const rubbish = Uint8Array.from({ length: 10_000_001 }, (_, i) => (i * 2654435761) >>> 13);

describe('a plan that is wrong', () => {
  it.each([
    ['a wrong type', { ...plan, places: 7 }, /places: expected Array, got 7/],
    [
      'a negative area',
      withPlace({ growingArea: -2 }),
      /places\.0\.growingArea: expected a number from 0\.01 to 10000 m², got -2/,
    ],
    ['an unknown covering', withPlace({ covering: 'moonlight' }), /places\.0\.covering: .*moonlight/],
    [
      'an impossible time',
      { ...plan, tariff: { ...plan.tariff, nightFrom: '24:30' } },
      /tariff\.nightFrom: expected a time as HH:MM/,
    ],
    [
      'a number as text',
      { ...plan, site: { ...plan.site, latitude: '54' } },
      /site\.latitude: expected a number .* got "54"/,
    ],
    ['a field that is not known', { ...plan, colour: 'green' }, /colour: /],
    ['nothing in it', {}, /schemaVersion: /],
    ['a list', [], /expected/],
    ['a lone number', 7, /expected/],
  ])('with %s ends with 1, its path and the reason, and no result', (_what, input, words) => {
    const ran = terminal(['season', 'plan.json'], { 'plan.json': JSON.stringify(input) });
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.notes).toMatch(/^plan\.json cannot be used: /);
    expect(ran.notes).toMatch(words);
    expect(ran.notes).not.toMatch(/\n\s+at /);
  });

  it.each([
    ['rubbish', rubbish.subarray(0, 1_000_000), /is not a plan file/],
    ['cut in half', JSON.stringify(plan).slice(0, 4000), /is not a plan file/],
    ['empty', '', /is not a plan file/],
    ['ten million bytes of rubbish and one', rubbish, /has 10\.0 million bytes; at most 10 million are read/],
  ])('because it is %s ends with 1 and a short reason', (_what, content, words) => {
    const ran = terminal(['season', 'plan.json'], { 'plan.json': content });
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.notes).toMatch(words);
    expect(ran.notes.length).toBeLessThan(400);
  });

  it('because it is not there ends with 1 and its name', () => {
    const ran = terminal(['season', 'absent.json']);
    expect(ran).toEqual({
      code: 1,
      out: '',
      notes: 'absent.json cannot be read: there is no such file\n',
      written: {},
    });
  });
});

describeWithData('weather/sand-point-55N.epw', 'a weather file that is wrong', (file) => {
  const text = readFileSync(file, 'latin1');
  const lines = text.split(/\r?\n/);
  const changed = (line: number, words: string) =>
    lines.map((old, index) => (index === line - 1 ? words : old)).join('\n');
  const field = (line: number, index: number, words: string) =>
    lines[line - 1]
      .split(',')
      .map((old, position) => (position === index ? words : old))
      .join(',');

  it.each([
    ['cut in half', text.slice(0, Math.floor(text.length / 2)), /line \d+: /],
    ['with letters in a number field', changed(1000, field(1000, 6, 'cold')), /line 1000: .*cold/],
    ['with an hour missing', lines.filter((_, index) => index !== 2000).join('\n'), /line 2000: .*missing/],
    [
      'with an hour doubled',
      [...lines.slice(0, 2000), lines[1999], ...lines.slice(2000)].join('\n'),
      /line 2001: /,
    ],
    ['that is rubbish', rubbish.subarray(0, 100_000), /line 1: expected an EPW file/],
    ['that is empty', '', /line 1: expected an EPW file/],
    ['that is a plan', JSON.stringify(plan), /line 1: expected an EPW file/],
  ])('%s ends with 1 and the line', (_what, content, words) => {
    const encoded = typeof content === 'string' ? Buffer.from(content, 'latin1') : content;
    const ran = terminal(['season', 'plan.json', '--weather', 'year.epw'], {
      'plan.json': JSON.stringify(plan),
      'year.epw': encoded,
    });
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.notes).toMatch(/year\.epw/);
    expect(ran.notes).toMatch(words);
    expect(ran.notes).not.toMatch(/\n\s+at /);
  });
});

describe('a command that is wrong', () => {
  const files = { 'plan.json': JSON.stringify(plan), 'at.txt': '2026-12-21T12:00:00Z\n' };
  it.each([
    ['no verb', []],
    ['an unknown verb', ['winter']],
    ['a verb named like a part of any object', ['toString']],
    ['a missing plan', ['season']],
    ['two plans', ['season', 'plan.json', 'plan.json']],
    ['an unknown option', ['season', 'plan.json', '--colour', 'green']],
    ['an option without its value', ['season', 'plan.json', '--weather']],
    ['a date that is not in the calendar', ['season', 'plan.json', '--from', '02-30']],
    ['dates the wrong way round', ['season', 'plan.json', '--from', '03-01', '--to', '12-01']],
    ['a night without its low', ['tonight', 'plan.json', '--dusk', '4']],
    ['a low that is not a number', ['tonight', 'plan.json', '--dusk', '4', '--low', 'cold']],
    ['a cloud outside its range', ['tonight', 'plan.json', '--dusk', '4', '--low', '-6', '--cloud', '9']],
    ['a night on no date', ['tonight', 'plan.json', '--dusk', '4', '--low', '-6', '--date', '2026-02-30']],
    ['an unknown wish', ['ways', 'plan.json', '--wish', 'happiness']],
    [
      'a wish without its light',
      ['ways', 'plan.json', '--wish', 'daily-light', '--place', plan.places[0].id],
    ],
    [
      'a latitude beyond the pole',
      ['sun', '--latitude', '91', '--longitude', '0', '--elevation', '0', '--at', 'at.txt'],
    ],
  ])('%s ends with 2 and the usage', (_what, words) => {
    const ran = terminal(words, files);
    expect(ran).toMatchObject({ code: 2, out: '' });
    expect(ran.notes).toContain('Usage: ');
  });

  it.each([
    [
      'a lot',
      ['--wish', 'safe-rest', '--lot', 'absent', '--never-below', '4', '--weeks', '8'],
      /no lot absent; it has /,
    ],
    [
      'a place',
      ['--wish', 'hold-temperature', '--place', 'absent', '--temperature', '5'],
      /no place absent; it has /,
    ],
  ])('a wish for %s that the plan has not ends with 1', (_what, words, reason) => {
    const ran = terminal(['ways', 'plan.json', ...words], files);
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.notes).toMatch(reason);
  });

  it('an instant that cannot be ends with 1 and its line', () => {
    const words = ['sun', '--latitude', '54', '--longitude', '-7', '--elevation', '60', '--at', 'at.txt'];
    for (const line of ['2026-02-30T12:00:00Z', '2026-12-21T12:00:00', 'noon', '2026-12-21T25:00:00Z']) {
      const ran = terminal(words, { 'at.txt': `2026-12-21T12:00:00Z\n\n${line}\n` });
      expect(ran, line).toMatchObject({ code: 1, out: '' });
      expect(ran.notes).toContain('line 3: ');
    }
  });
});
