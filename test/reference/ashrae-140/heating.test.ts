/**
 * Heat to hold 20 °C: ASHRAE Standard 140-2020 conduction, air exchange, gains and sun on walls (195 to 250), and the
 * windowed cases 600 and 900. The simplifications stand in `cases.ts`.
 */
import { describe, expect, it } from 'vitest';
import { describeWithData } from '../../support/shared-data.ts';
import { cases } from './cases.ts';
import { heating, outside } from './figures.ts';
import { mostOf, runCase, sumOf, yearOf } from './run.ts';
import { tableOf } from './table.ts';

type Named = keyof typeof heating;

/**
 * Misses beyond the six programs' range, the limit just above what is reached [MWh, kW]:
 *
 * - 200 and 215 have low emissivity outside, so that convection alone makes the outer film: 4 + 4 v is twice what is measured
 *   at smooth glass, and the opaque windows (R 0.19) feel it. With the film of smooth glass both are inside (below).
 * - 900 loses by the same film at its windows, and for want of the sun taken up in the inner pane.
 * - 195: the range of the six peaks is 0.011 kW wide; its film too is the high one.
 */
const misses: Partial<Record<Named, { readonly year: number; readonly peak: number }>> = {
  195: { year: 0, peak: 0.006 },
  200: { year: 0.17, peak: 0.055 },
  215: { year: 0.14, peak: 0.065 },
  900: { year: 0.05, peak: 0 },
};

describeWithData(
  'weather/denver-standard140.epw',
  'ASHRAE 140: heat in a year and most in an hour',
  (file) => {
    const year = yearOf(file);
    const row = tableOf('Heat [MWh a year] and most in an hour [kW]', 3);
    const found = new Map<string, { year: number; peak: number }>();
    const figures = (name: Named, smoothGlass = false) => {
      const key = `${name} ${smoothGlass}`;
      const known = found.get(key);
      if (known !== undefined) return known;
      const { heat } = runCase({ ...cases[name], smoothGlass }, year);
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

    it.each([[200], [215], [900]] as const)(
      'the miss of case %d is its windows’ outer film: with that of smooth glass it lies inside',
      (name) => {
        expect(outside(figures(name).year, heating[name].year)).toBeGreaterThan(0);
        const smooth = figures(name, true);
        expect(row(`${name} in the year, smooth glass`, smooth.year, heating[name].year)).toBe(0);
        expect(row(`${name} peak, smooth glass`, smooth.peak, heating[name].peak)).toBe(0);
      },
    );

    describe('what one change from case to case does, within what it does to the six programs', () => {
      /**
       * Differences of the six programs' heat in a year [MWh], each program's own, and the miss that is known: gains that all
       * go to the air save more than the standard's, 60 % radiant; the film of 4 + 4 v takes too much of the walls' sun away.
       */
      it.each([
        ['emissivity outside, 0.1 to 0.9 (inside 0.1)', 210, 200, [0.586, 1.397], 0],
        ['emissivity inside, 0.1 to 0.9 (outside 0.9)', 220, 210, [0.409, 0.75], 0],
        ['one air change an hour', 230, 220, [3.146, 3.475], 0],
        ['200 W of gains', 240, 220, [-1.261, -1.176], 0.02],
        ['sun on walls, absorptance 0.1 to 0.9', 250, 220, [-1.805, -1.556], 0.085],
      ] as const)('%s', (what, changed, from, range, allowed) => {
        const difference = figures(changed).year - figures(from).year;
        expect(Math.abs(row(what, difference, range))).toBeLessThanOrEqual(allowed);
      });
    });
  },
);
