/**
 * Heat to hold 20 °C: ASHRAE Standard 140-2020 conduction, air exchange, gains and sun on walls (195 to 250), and the
 * windowed cases 600 and 900. The simplifications stand in `cases.ts`.
 */
import { describe, expect, it } from 'vitest';
import { describeWithData } from '../../support/shared-data.ts';
import { cases } from './cases.ts';
import { heating } from './figures.ts';
import { mostOf, runCase, sumOf, yearOf } from './run.ts';
import { tableOf } from './table.ts';

type Named = keyof typeof heating;

/**
 * Misses beyond the six programs' range, the limit just above what is reached [MWh, kW]. All heat of a year lies inside;
 * the peaks of a few hundredths of a kilowatt hang on the wind of one hour at the outer film (the range of 195 is 0.011 kW wide).
 */
const misses: Partial<Record<Named, { readonly year: number; readonly peak: number }>> = {
  195: { year: 0, peak: 0.032 },
  200: { year: 0, peak: 0.014 },
  215: { year: 0, peak: 0.008 },
};

describeWithData(
  'weather/denver-standard140.epw',
  'ASHRAE 140: heat in a year and most in an hour',
  (file) => {
    const year = yearOf(file);
    const row = tableOf('Heat [MWh a year] and most in an hour [kW]', 3);
    const found = new Map<string, { year: number; peak: number }>();
    const figures = (name: Named) => {
      const key = String(name);
      const known = found.get(key);
      if (known !== undefined) return known;
      const { heat } = runCase(cases[name], year);
      const result = { year: sumOf(heat) / 1e6, peak: mostOf(heat) / 1000 };
      found.set(key, result);
      return result;
    };

    it.each(Object.keys(heating).map((name) => [Number(name) as Named]))('case %d', (name) => {
      const { year: inYear, peak } = figures(name);
      const allowed = misses[name] ?? { year: 0, peak: 0 };
      const { year: range, peak: peaks } = heating[name];
      expect(Math.abs(row(`${name} in the year`, inYear, range))).toBeLessThanOrEqual(allowed.year);
      expect(Math.abs(row(`${name} peak`, peak, peaks))).toBeLessThanOrEqual(allowed.peak);
    });

    describe('what one change from case to case does, within what it does to the six programs', () => {
      /**
       * Differences of the six programs' heat in a year [MWh], each program's own, and the miss that is known: gains that all
       * go to the air save more than the standard's, 60 % radiant.
       */
      it.each([
        ['emissivity outside, 0.1 to 0.9 (inside 0.1)', 210, 200, [0.586, 1.397], 0],
        ['emissivity inside, 0.1 to 0.9 (outside 0.9)', 220, 210, [0.409, 0.75], 0],
        ['one air change an hour', 230, 220, [3.146, 3.475], 0],
        ['200 W of gains', 240, 220, [-1.261, -1.176], 0.028],
        ['sun on walls, absorptance 0.1 to 0.9', 250, 220, [-1.805, -1.556], 0],
      ] as const)('%s', (what, changed, from, range, allowed) => {
        const difference = figures(changed).year - figures(from).year;
        expect(Math.abs(row(what, difference, range))).toBeLessThanOrEqual(allowed);
      });
    });
  },
);
