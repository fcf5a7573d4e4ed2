import { describe, expect, it } from 'vitest';
import {
  clearnessIndex,
  dailyLight,
  dailyLightOfRadiation,
  daylightSeries,
  photonsPerJouleOfSky,
} from '../../core/light/index.ts';
import { samplePlace } from '../fabric/sample-places.ts';
import { fileDay, readGlasshouse, sunOver } from '../support/glasshouse.ts';
import type { Readings } from '../support/glasshouse.ts';
import { describeWithData } from '../support/shared-data.ts';
import { evenSky } from './moment.ts';

const median = (values: readonly number[]) => {
  const sorted = values.toSorted((a, b) => a - b);
  const last = sorted.length - 1;
  return (sorted[Math.floor(last / 2)] + sorted[Math.ceil(last / 2)]) / 2;
};
const number = (value: number | null | undefined) => value ?? NaN;

describeWithData(
  'measured/glasshouse-52N-winter',
  'glass compartments at 52° N, February and March 2022',
  (folder) => {
    const weather = readGlasshouse(`${folder}/weather.csv`);
    const compartments = {
      1: readGlasshouse(`${folder}/compartment1-climate.csv`),
      4: readGlasshouse(`${folder}/compartment4-climate.csv`),
    };

    describe('photons per joule outdoors', () => {
      const sums = Array.from({ length: 10 }, () => ({ joules: 0, photons: 0, model: 0, steps: 0 }));
      let joules = 0;
      let photons = 0;
      for (const [ms, { Iglob: global, PARout: ppfd }] of weather) {
        if (global === null || ppfd === null) continue;
        joules += global;
        photons += ppfd;
        const { sine, extraterrestrial } = sunOver(ms);
        if (!(sine > Math.sin((10 * Math.PI) / 180))) continue;
        const clearness = clearnessIndex(global, extraterrestrial, sine);
        const bin = sums[Math.min(9, Math.floor(clearness * 10))];
        bin.joules += global;
        bin.photons += ppfd;
        bin.model += global * photonsPerJouleOfSky(clearness);
        bin.steps++;
      }

      it('are 1.99 µmol J⁻¹ in the file as a whole', () => {
        expect(Math.abs(photons / joules - 1.9925)).toBeLessThan(0.0005);
      });

      // Sun over 10°. Measured 2.23 2.12 2.06 2.07 2.07 1.97 1.95 1.99 1.98 for clearness 0–0.1, 0.1–0.2, …: dull skies are
      // richer, as published. The model's straight fall keeps within 3.7 % of every class (2.5 % but for the dullest) and
      // within 0.5 % of them all; one figure for every sky would be 10 % low in the dullest class.
      it('rise under cloud as measured, class by class of clearness', () => {
        const classes = sums.filter((bin) => bin.steps > 30);
        expect(classes.length).toBe(9);
        for (const bin of classes) expect(Math.abs(bin.model / bin.photons - 1)).toBeLessThan(0.037);
        const [dull, clear] = [sums.slice(0, 3), sums.slice(6)].map(
          (some) =>
            some.reduce((all, bin) => all + bin.photons, 0) / some.reduce((all, bin) => all + bin.joules, 0),
        );
        expect(dull / clear).toBeGreaterThan(1.04);
        const all = (of: 'model' | 'photons') => sums.reduce((total, bin) => total + bin[of], 0);
        expect(Math.abs(all('model') / all('photons') - 1)).toBeLessThan(0.005);
      });
    });

    describe('daily light of the 5-min series', () => {
      const days = new Map<number, { ppfd: number[]; global: number[]; sum: number }>();
      for (const [ms, row] of weather) {
        const day = days.get(fileDay(ms)) ?? { ppfd: [], global: [], sum: 0 };
        if (row.PARout !== null && row.Iglob !== null) {
          day.ppfd.push(row.PARout);
          day.global.push(row.Iglob);
        }
        day.sum = Math.max(day.sum, row.RadSum ?? 0);
        days.set(fileDay(ms), day);
      }
      const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
      const whole = [...days.values()].filter(({ ppfd }) => ppfd.length > 280);

      it('has a mean of 16.1 mol m⁻² d⁻¹ over the days with all their steps', () => {
        const light = whole.map(({ ppfd }) => dailyLight(mean(ppfd), 24));
        expect(Math.abs(mean(light) - 16.1)).toBeLessThan(0.35);
      });

      it('its joules are those the file’s own running sum counts [J cm⁻²]', () => {
        const ratios = whole.map(({ global, sum }) => (mean(global) * 86_400) / (sum * 1e4));
        expect(Math.abs(median(ratios) - 1)).toBeLessThan(0.02);
      });

      it('follows from a day’s radiation by one figure within a tenth', () => {
        for (const { ppfd, global } of whole) {
          const converted = dailyLightOfRadiation((mean(global) * 86_400) / 1e6);
          expect(Math.abs(converted / dailyLight(mean(ppfd), 24) - 1)).toBeLessThan(0.1);
        }
      });
    });

    describe('lamps alone in the dark', () => {
      const dark = (readings: Readings) =>
        [...readings].flatMap(([ms, row]) =>
          weather.get(ms)?.Iglob === 0 && number(row.AssimLight) > 50 && row.PARin !== null
            ? [row.PARin]
            : [],
        );

      // The column AssimLight is what the lamps are set to, not whether they burn: about half of its dark steps have no
      // light at all, so the medians over all of them are what an independent reading of the file gave, 222 and 76, and
      // the level with the lamps burning is higher.
      it.each([
        [1, 76, 145],
        [4, 222.5, 255],
      ] as const)(
        'compartment %d: median %d µmol m⁻² s⁻¹ of steps with lamps set, %d with lamps burning',
        (id, all, lit) => {
          const values = dark(compartments[id]);
          expect(Math.abs(median(values) - all)).toBeLessThan(0.5);
          expect(median(values.filter((value) => value > 5))).toBe(lit);
        },
      );
    });

    describe('whole-house transmission under overcast skies', () => {
      /** Photons inside ÷ outdoors by day: screens open, clearness under 0.3, and so little inside that no lamp burns. */
      function transmission(readings: Readings): { mean: number; days: number[] } {
        const byDay = new Map<number, { inside: number; outside: number; steps: number }>();
        for (const [ms, row] of readings) {
          const out = weather.get(ms);
          const { sine, extraterrestrial } = sunOver(ms);
          const outside = number(out?.PARout);
          const inside = number(row.PARin);
          if (!(sine > 0.087 && clearnessIndex(number(out?.Iglob), extraterrestrial, sine) < 0.3)) continue;
          if (!(number(row.EnScr) <= 2 && number(row.BlckScr) <= 2)) continue;
          // The lamps give at least 70: below 170 outdoors a burning lamp cannot be taken for daylight of a share under 0.8.
          if (!(outside >= 20 && outside <= 170 && inside < 0.8 * outside)) continue;
          const day = byDay.get(fileDay(ms)) ?? { inside: 0, outside: 0, steps: 0 };
          day.inside += inside;
          day.outside += outside;
          day.steps++;
          byDay.set(fileDay(ms), day);
        }
        const all = [...byDay.values()];
        const sum = (of: 'inside' | 'outside') => all.reduce((total, day) => total + day[of], 0);
        return {
          mean: sum('inside') / sum('outside'),
          days: all.filter(({ steps }) => steps > 5).map(({ inside, outside }) => inside / outside),
        };
      }

      const one = transmission(compartments[1]);
      const four = transmission(compartments[4]);

      it('is 0.47 and 0.44 in the two compartments, 0.3 to 0.7 from day to day', () => {
        expect(Math.abs(one.mean - 0.47)).toBeLessThan(0.01);
        expect(Math.abs(four.mean - 0.44)).toBeLessThan(0.01);
        for (const share of [...one.days, ...four.days]) {
          expect(share).toBeGreaterThan(0.3);
          expect(share).toBeLessThan(0.71);
        }
      });

      // A bare house of that size, 4 mm glass, a tenth of frame and a twentieth of dirt, passes 0.72 of an even sky's
      // photons: what trade calls a light house. The measured compartments are two fifths darker: each carries two folded
      // screens, two rows of lamps, pipes and gutters over the one spot that is measured, has walls to its neighbours, and a
      // crop that grows up round it (the days darken from 0.6 to 0.35 from February to March). No plan of it is published,
      // so the test says no more than this: a shading share between 0.35 and 0.47, which the plan can hold, meets the measurement.
      it('is met by a model house of that size when a third to a half is taken by what hangs in it', () => {
        const shadedBy = (frameShare: number) => {
          const model = samplePlace({
            covering: 'glass-4',
            growingArea: 80,
            frameShare,
            shape: {
              kind: 'even-span',
              length: 12,
              width: 8,
              eavesHeight: 4.5,
              ridgeHeight: 6,
              azimuth: 180,
            },
          });
          return daylightSeries(model, { albedo: 0.2, horizon: [] }, evenSky(100)).skyPhotons;
        };
        expect(Math.abs(shadedBy(0.1) - 0.723)).toBeLessThan(0.001);
        expect(shadedBy(0.35)).toBeGreaterThan(Math.max(one.mean, four.mean));
        expect(shadedBy(0.47)).toBeLessThan(Math.min(one.mean, four.mean));
      });
    });
  },
);
