import { describe, expect, it } from 'vitest';
import {
  coldestNightDay,
  demonstrationPlan,
  explain,
  heatBalance,
  heatOf,
  runSeason,
  spanWords,
  weatherFromPlan,
} from '../../core/index.ts';
import type { HeatSpan, WeatherYear } from '../../core/index.ts';

const season = runSeason(demonstrationPlan, weatherFromPlan(demonstrationPlan) as WeatherYear);
const coldest = coldestNightDay(season, season.places[0]);
const spans: [string, HeatSpan][] = [
  ['the coldest night', { from: coldest, to: coldest + 1, dark: true }],
  ['a week', { from: 147, to: 154, dark: false }],
  ['a day', { from: 200, to: 201, dark: false }],
  ['ten nights', { from: 120, to: 130, dark: true }],
  ['the winter', { from: season.winterFrom, to: season.winterTo + 1, dark: false }],
  ['the whole season', { from: 0, to: 365, dark: false }],
];

describe.each(season.places)('the heat of $placeId', (place) => {
  // Largest of these 6 spans in 5 places: 4.9e-15 of the heat exchanged, which is rounding; it moves with every plan.
  it.each(spans)('comes in as it goes out over %s', (_, span) => {
    const { left, into, out } = heatBalance(place.heat, span);
    expect(into + out).toBeGreaterThan(0);
    expect(Math.abs(left) / (into + out)).toBeLessThan(2e-14);
  });

  it('adds up from spans to the whole season, part by part', () => {
    for (const part of place.heat) {
      const halves = [
        { from: 0, to: 100, dark: false },
        { from: 100, to: 365, dark: false },
      ];
      const sum = halves.reduce((total, span) => total + heatOf(part, span), 0);
      expect(sum, part.name).toBeCloseTo(part.season, 8);
    }
  });

  it('opens to a working for each part and each span, whose pieces add up to its result', () => {
    const signed = (words: string) => {
      const match = /([\d.]+) kWh (.*)$/.exec(words);
      if (!match) throw new Error(`expected a figure in kWh, got ${words}`);
      return (/^(given|gained)/.test(match[2]) ? -1 : 1) * Number(match[1]);
    };
    for (const part of place.heat)
      for (const [name, span] of spans) {
        const working = explain(season, {
          kind: 'heat-part',
          placeId: place.placeId,
          part: part.name,
          ...span,
        });
        const sum = working.steps.reduce((total, step) => total + signed(step), 0);
        // Each figure is written to three digits or whole kWh: half a unit a piece, and half for the result.
        const written = 0.5 * (working.steps.length + 1);
        expect(Math.abs(sum - signed(working.result)), `${part.name}, ${name}`).toBeLessThanOrEqual(written);
        expect(signed(working.result), `${part.name}, ${name}`).toBeCloseTo(heatOf(part, span), -1);
        expect(working.inputs.every((each) => each.origin !== '' || each.value !== '')).toBe(true);
      }
  });
});

describe('the working', () => {
  const leanTo = demonstrationPlan.places[0];
  const open = (part: string | null, span: HeatSpan) =>
    explain(season, { kind: 'heat-part', placeId: leanTo.id, part, ...span });

  it('of a surface has its area, what it is made of and where that comes from', () => {
    const { inputs, title } = open('south roof', spans[0][1]);
    expect(title).toMatch(/^South roof, Lean-to on the kitchen wall: night of \d+/);
    expect(inputs.find((each) => each.name === 'Area')?.unit).toBe('m²');
    expect(inputs.find((each) => each.name === 'Made of')?.value).toContain('lass');
    expect(inputs.find((each) => each.name === 'Dark hours')?.unit).toBe('h');
  });

  it('of the whole has every part and the sum', () => {
    const working = open(null, spans[4][1]);
    expect(working.inputs).toHaveLength(season.places[0].heat.length);
    expect(working.result).toMatch(/^\d+ kWh in = \d+ kWh out [+−] [\d.]+ kWh stored$/);
    expect(working.steps.at(-2)).toBe('In less out less stored: 0.000 kWh');
  });

  it('refuses parts and days that are not there', () => {
    expect(() => open('chimney', spans[0][1])).toThrow('expected a part of the heat account, got chimney');
    expect(() => open('Sun', { from: 3, to: 3, dark: false })).toThrow(
      'expected days within 0 to 365, got 3 to 3',
    );
    expect(() => open('Sun', { from: 360, to: 366, dark: false })).toThrow('got 360 to 366');
    expect(() => open('Sun', { from: Number.NaN, to: 3, dark: false })).toThrow('got NaN to 3');
  });

  it('of the handbook sum has causes that lead from one figure to the other', () => {
    const { handbook } = season.places[0];
    const sum = handbook.reasons.reduce((total, { watts }) => total + watts, 0);
    expect(handbook.loss + sum).toBeCloseTo(handbook.network, 6);
    const { steps } = explain(season, { kind: 'heat-loss', placeId: leanTo.id });
    for (const { words } of handbook.reasons)
      expect(steps.some((step) => step.startsWith(`${words}: `))).toBe(true);
    expect(steps.at(-1)).toContain(`= ${handbook.network.toFixed(0)} W`);
  });
});

describe('a span in words', () => {
  it.each([
    [{ from: 0, to: 1, dark: true }, 'night of 1 to 2 August'],
    [{ from: 30, to: 31, dark: true }, 'night of 31 August to 1 September'],
    [{ from: 0, to: 7, dark: false }, '1 to 7 August'],
    [{ from: 61, to: 243, dark: false }, '1 October to 31 March'],
    [{ from: 5, to: 6, dark: false }, '6 August'],
    [{ from: 0, to: 365, dark: false }, 'whole season'],
  ])('%o is %s', (span, words) => {
    expect(spanWords('2025-08-01', 365, span)).toBe(words);
  });
});

describe('the coldest night', () => {
  it('is the same in every place and ends or begins on the coldest day outdoors', () => {
    const days = season.places.map((place) => coldestNightDay(season, place));
    expect(new Set(days).size).toBe(1);
    const least = season.outdoor.least.indexOf(Math.min(...season.outdoor.least));
    expect([least - 1, least]).toContain(days[0]);
  });
});
