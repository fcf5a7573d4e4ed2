/**
 * How far the facts of the trade are from tipping, and in how many winters they hold: the same scenario as
 * `trade-facts.test.ts` (common practice, no source), through winters drawn from its climate one after the other.
 * Margins are printed; limits stand just under what is reached.
 */
import { afterAll, describe, expect, it } from 'vitest';
import { createSeasonCache, plantStates, runSeason, weatherFromPlan, wintersOf } from '../../core/index.ts';
import type { LotSeason, Plan, WeatherYear } from '../../core/index.ts';
import { bareHouse, deepWinter, planOf, southWindow, tent } from '../support/plans.ts';

/** Winters drawn, which differ from year to year as measured ones do; none is left out. */
const winters = 8;

/** Deep winter: 1 December to 15 February, as day indices of the season. */
const [from, to] = [122, 198];

interface Fact {
  readonly words: string;
  readonly place: object;
  readonly groups: readonly string[];
  readonly states: readonly string[];
  /** Share of the days of deep winter that must be in these states for the fact to hold in a winter, 0–1. */
  readonly least: number;
  /** Winters in which it holds, and share of the days of all winters: limits just under what is reached. */
  readonly winters: Readonly<Record<string, number>> | number;
  readonly days: Readonly<Record<string, number>> | number;
}

const facts: readonly Fact[] = [
  {
    words: '75 W over a small tent keeps them growing',
    place: tent([{ watts: 75 }]),
    groups: ['aeonium', 'echeveria', 'crassula'],
    states: ['growing'],
    least: 1,
    winters: 8,
    days: 1,
  },
  {
    words: '29 W leaves them warm but not growing',
    place: tent([{ watts: 29, efficacy: 1.8 }]),
    groups: ['aeonium', 'echeveria', 'crassula'],
    states: ['resting-dim', 'stretching'],
    least: 1,
    winters: 8,
    days: 1,
  },
  {
    words: 'an unheated house brings rest from cold',
    place: bareHouse,
    groups: ['echeveria', 'crassula', 'desert-cacti', 'pelargonium', 'aeonium'],
    states: ['resting-cold'],
    least: 0.9,
    // The trade's winter has highs of about 8 °C. In drawn winters that are milder the groups with the lowest thresholds
    // are slow for weeks rather than at rest: so they are, too, at 8–10 °C of daytime air in a tent.
    winters: { 'desert-cacti': 8, pelargonium: 8, crassula: 8, echeveria: 4, aeonium: 1 },
    days: { 'desert-cacti': 1, pelargonium: 1, crassula: 0.97, echeveria: 0.85, aeonium: 0.75 },
  },
  {
    words: 'a south window is too dim for echeverias',
    place: southWindow,
    groups: ['echeveria'],
    states: ['stretching'],
    least: 0.9,
    winters: 8,
    days: 0.99,
  },
  {
    words: 'haworthias hold there',
    place: southWindow,
    groups: ['haworthia'],
    states: ['growing', 'slow', 'resting-dim'],
    least: 0.8,
    winters: 8,
    days: 0.99,
  },
];

const planFor = ({ place, groups }: Fact): Plan =>
  planOf(
    place,
    groups.map((group) => ({ group, name: group })),
    { climate: deepWinter },
  );

const shown = planFor(facts[0]);
const drawn = wintersOf(deepWinter, weatherFromPlan(shown) as WeatherYear, shown.site);
const years = Array.from({ length: winters }, (_, index) => drawn.winter(index + 1));

const shareIn = (lot: LotSeason, ids: readonly string[]) => {
  let count = 0;
  for (let day = from; day <= to; day++) if (ids.includes(plantStates[lot.state[day]].id)) count += 1;
  return count / (to - from + 1);
};

/** Nearest approach to another state over deep winter: kelvin and mol m⁻² d⁻¹ away, better or worse; null where no such change tips it. */
function nearest(
  lot: LotSeason,
  series: readonly ('marginKelvin' | 'spareKelvin' | 'marginLight' | 'spareLight')[],
) {
  let least = Infinity;
  for (let day = from; day <= to; day++)
    for (const name of series) {
      const away = Math.abs(lot[name][day]);
      if (away > 0 && away < least) least = away;
    }
  return Number.isFinite(least) ? least : null;
}

const report: string[] = [];
afterAll(() => {
  process.stdout.write(`${['Facts of the trade, their margins:', ...report].join('\n')}\n`);
});

describe('facts of the trade through drawn winters', () => {
  it.each(facts.map((fact) => [fact.words, fact] as const))('%s', (_, fact) => {
    const plan = planFor(fact);
    const held = new Map(fact.groups.map((group) => [group, 0]));
    const days = new Map(fact.groups.map((group) => [group, 0]));
    const margins = new Map(fact.groups.map((group) => [group, { kelvin: Infinity, light: Infinity }]));
    for (const weather of years) {
      for (const lot of runSeason(plan, weather, createSeasonCache()).lots) {
        const share = shareIn(lot, fact.states);
        if (share >= fact.least) held.set(lot.groupId, held.get(lot.groupId)! + 1);
        days.set(lot.groupId, days.get(lot.groupId)! + share / winters);
        const margin = margins.get(lot.groupId)!;
        const kelvin = nearest(lot, ['marginKelvin', 'spareKelvin']) ?? Infinity;
        const light = nearest(lot, ['marginLight', 'spareLight']) ?? Infinity;
        margins.set(lot.groupId, {
          kelvin: Math.min(margin.kelvin, kelvin),
          light: Math.min(margin.light, light),
        });
      }
    }
    const tell = (value: number, unit: string) =>
      Number.isFinite(value) ? `${value.toFixed(1)} ${unit}` : `no ${unit} tips it`;
    for (const [group, count] of held) {
      const { kelvin, light } = margins.get(group)!;
      report.push(
        `  ${fact.words}: ${group} in ${count} of ${winters} winters, ${Math.round(100 * days.get(group)!)} % of days; nearest ${tell(kelvin, 'K')}, ${tell(light, 'mol/m²')}`,
      );
      const limit = (given: Fact['days']) => (typeof given === 'number' ? given : given[group]);
      expect(count, `${group}: ${fact.words}`).toBeGreaterThanOrEqual(limit(fact.winters));
      expect(days.get(group), `${group}: ${fact.words}`).toBeGreaterThanOrEqual(limit(fact.days) - 1e-9);
    }
  });
});
