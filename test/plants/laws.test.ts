import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plantGroups } from '../../core/plan/groups.ts';
import type { PlantDays, PlantResult } from '../../core/plants/index.ts';
import {
  lightNeeded,
  plantStates,
  runPlants,
  settleDays,
  temperatureResponse,
  thresholdsOf,
} from '../../core/plants/index.ts';
import { numbersOf, steady } from './days.ts';

const groupIds = fc.constantFrom(...plantGroups.map(({ id }) => id));
const dayCode = Object.fromEntries(plantStates.map(({ id }, code) => [id, code]));

/** Seasons of 60 days: slow swings with noise, so that memory, thresholds and freezing days all come into play. */
const seasons = fc
  .array(
    fc.record({
      mean: fc.double({ min: -6, max: 38, noNaN: true }),
      light: fc.double({ min: 0, max: 40, noNaN: true }),
    }),
    {
      minLength: 6,
      maxLength: 6,
    },
  )
  .map((anchors): PlantDays => {
    const at = (day: number, key: 'mean' | 'light') =>
      (anchors[Math.floor(day / 10)] as { mean: number; light: number })[key];
    const noise = (day: number) => 4 * Math.sin(day * 12.9898);
    const series = (read: (day: number) => number) =>
      Float64Array.from({ length: 60 }, (_, day) => read(day));
    const mean = series((day) => at(day, 'mean') + noise(day));
    return {
      meanLeaf: mean,
      leastLeaf: mean.map((value) => value - 5),
      mostLeaf: mean.map((value) => value + 7),
      meanNightLeaf: mean.map((value) => value - 3),
      dailyLight: series((day) => Math.max(0, at(day, 'light') + noise(day))),
      photoperiod: new Float64Array(60).fill(11),
    };
  });
const waterings = fc.constantFrom('by-season', 'watered', 'dry') as fc.Arbitrary<
  'by-season' | 'watered' | 'dry'
>;

const daysIn = (state: Uint8Array, ...ids: string[]) =>
  state.filter((code) => ids.some((id) => dayCode[id] === code)).length;
const warmer = (days: PlantDays, by: number): PlantDays => ({
  ...days,
  meanLeaf: days.meanLeaf.map((value) => value + by),
  leastLeaf: days.leastLeaf.map((value) => value + by),
  mostLeaf: days.mostLeaf.map((value) => value + by),
  meanNightLeaf: days.meanNightLeaf.map((value) => value + by),
});

describe('laws of the states', () => {
  it('more light never lengthens resting dim and stretching together', () => {
    fc.assert(
      fc.property(
        groupIds,
        seasons,
        waterings,
        fc.double({ min: 1, max: 4, noNaN: true }),
        (id, days, watering, more) => {
          const brighter = { ...days, dailyLight: days.dailyLight.map((value) => value * more) };
          const lack = (of: PlantDays) =>
            daysIn(runPlants(numbersOf(id), of, { watering }).state, 'resting-dim', 'stretching');
          expect(lack(brighter)).toBeLessThanOrEqual(lack(days));
        },
      ),
      { numRuns: 400, seed: 1 },
    );
  });

  it('more light never takes a day of growing and slow growth together away, nor of growing but while it settles', () => {
    fc.assert(
      fc.property(
        groupIds,
        seasons,
        waterings,
        fc.double({ min: 1, max: 4, noNaN: true }),
        (id, days, watering, more) => {
          const brighter = { ...days, dailyLight: days.dailyLight.map((value) => value * more) };
          const [bright, dim] = [brighter, days].map((of) => runPlants(numbersOf(id), of, { watering }));
          const awake = ({ state }: PlantResult) => daysIn(state, 'growing', 'slow');
          expect(awake(bright as PlantResult)).toBeGreaterThanOrEqual(awake(dim as PlantResult));
          // A plant that slows for a few days on its way to stretching counts as growing until it stretches.
          const entries = (dim as PlantResult).transitions.filter(
            ({ to }) => to === dayCode.stretching || to === dayCode['resting-dim'],
          );
          const slack = settleDays(numbersOf(id)) * entries.length;
          const grown = ({ state }: PlantResult) => daysIn(state, 'growing');
          expect(grown(bright as PlantResult) + slack).toBeGreaterThanOrEqual(grown(dim as PlantResult));
        },
      ),
      { numRuns: 400, seed: 2 },
    );
  });

  it('warmer days never bring more cold rest, and colder ones never more heat rest', () => {
    fc.assert(
      fc.property(groupIds, seasons, fc.double({ min: 0, max: 8, noNaN: true }), (id, days, by) => {
        const cold = runPlants(numbersOf(id), days).state;
        const warm = runPlants(numbersOf(id), warmer(days, by)).state;
        expect(daysIn(warm, 'resting-cold')).toBeLessThanOrEqual(daysIn(cold, 'resting-cold'));
        expect(daysIn(warm, 'resting-heat')).toBeGreaterThanOrEqual(daysIn(cold, 'resting-heat'));
      }),
      { numRuns: 400, seed: 3 },
    );
  });

  it('every index stays within 0 and 1, every margin is finite, and the same days give the same result', () => {
    fc.assert(
      fc.property(groupIds, seasons, waterings, (id, days, watering) => {
        const result = runPlants(numbersOf(id), days, { watering });
        for (const index of [
          result.temperatureIndex,
          result.lightIndex,
          result.waterIndex,
          result.growthIndex,
          result.carbonIndex,
        ]) {
          expect(index.every((value) => value >= 0 && value <= 1)).toBe(true);
        }
        expect([...result.marginKelvin, ...result.marginLight].every(Number.isFinite)).toBe(true);
        expect(result.stateDays.reduce((a, b) => a + b, 0)).toBe(60);
        expect(runPlants(numbersOf(id), days, { watering })).toEqual(result);
      }),
      { numRuns: 200, seed: 4 },
    );
  });

  it('needs more light the warmer it is, from the hold light up to the light that keeps a warm plant compact', () => {
    for (const { id } of plantGroups) {
      const group = numbersOf(id);
      const at = thresholdsOf(group);
      let before = 0;
      for (let mean = 0; mean <= 40; mean += 0.5) {
        const needed = lightNeeded(group, at, mean);
        expect(needed).toBeGreaterThanOrEqual(before);
        before = needed;
      }
      expect(lightNeeded(group, at, at.coldBegins)).toBeCloseTo(group.lightHold, 9);
      expect(before).toBe(group.lightStretch);
      expect(temperatureResponse(group, at.coldBegins)).toBeCloseTo(0.45, 6);
    }
  });
});

it('every change names a crossing that its figures bear out', () => {
  fc.assert(
    fc.property(groupIds, seasons, waterings, (id, days, watering) => {
      for (const { crossing, because } of runPlants(numbersOf(id), days, { watering }).transitions) {
        const { value, threshold, way } = crossing;
        if (way === 'fell below') expect(value, because).toBeLessThan(threshold);
        else if (way === 'rose above') expect(value, because).toBeGreaterThan(threshold);
        else expect(value, because).toBeCloseTo(threshold, 6);
      }
    }),
    { numRuns: 600, seed: 7 },
  );
});

describe('laws in every group', () => {
  for (const { id } of plantGroups) {
    it(`${id}: warmth, cold, light and freezing days through the laws above`, () => {
      fc.assert(
        fc.property(seasons, waterings, fc.double({ min: 0, max: 8, noNaN: true }), (days, watering, by) => {
          const plain = runPlants(numbersOf(id), days, { watering }).state;
          const warm = runPlants(numbersOf(id), warmer(days, by), { watering }).state;
          const brighter = { ...days, dailyLight: days.dailyLight.map((value) => value + by) };
          const bright = runPlants(numbersOf(id), brighter, { watering }).state;
          expect(daysIn(warm, 'resting-cold')).toBeLessThanOrEqual(daysIn(plain, 'resting-cold'));
          const lack = ['resting-dim', 'stretching'];
          expect(daysIn(bright, ...lack)).toBeLessThanOrEqual(daysIn(plain, ...lack));
        }),
        { numRuns: 40, seed: 5 },
      );
    });
    it(`${id}: no state is shorter than the group settles, but for one that a freezing day ends`, () => {
      fc.assert(
        fc.property(seasons, waterings, (days, watering) => {
          const { state } = runPlants(numbersOf(id), days, { watering });
          const least = settleDays(numbersOf(id));
          let from = state.findIndex((code, day) => day > 0 && code !== state[day - 1]);
          if (from === -1) return;
          for (let day = from + 1; day < state.length; day += 1) {
            if (state[day] === state[from]) continue;
            if ((days.meanLeaf[day] as number) > 0) expect(day - from).toBeGreaterThanOrEqual(least);
            from = day;
          }
        }),
        { numRuns: 40, seed: 6 },
      );
    });
  }
});

describe('hysteresis', () => {
  it('a plant at rest stays so while the mean wavers about where rest began, and awake about where it would end', () => {
    for (const { id } of plantGroups) {
      const group = numbersOf(id);
      const at = thresholdsOf(group);
      const half = (at.coldEnds - at.coldBegins) / 2;
      const waver = (before: number, about: number) => {
        const days = steady(140, before, group.lightGoodHigh);
        // Twice the half band, fast: memory lets a fifth to a tenth of it through, which is inside the band.
        for (let day = 40; day < 140; day += 1) days.meanLeaf[day] = about + 2 * half * Math.sin(day * 2.1);
        const { transitions, state } = runPlants(group, days, { watering: 'watered', cyclic: false });
        return {
          late: transitions.filter(({ day }) => day > 80).length,
          last: plantStates[state[139] as number]?.id,
        };
      };
      expect(waver(at.coldBegins - 3, at.coldBegins), id).toEqual({ late: 0, last: 'resting-cold' });
      expect(waver(at.coldEnds + 3, at.coldEnds), id).toMatchObject({ late: 0 });
      expect(waver(at.coldEnds + 3, at.coldEnds).last, id).not.toBe('resting-cold');
    }
  });

  it('light wavering about the good light settles on one state', () => {
    for (const { id } of plantGroups) {
      const group = numbersOf(id);
      const days = steady(140, (group.optimumLow + group.optimumHigh) / 2, 0);
      for (let day = 0; day < 140; day += 1)
        days.dailyLight[day] = group.lightGood * (0.96 + 0.25 * Math.sin(day * 2.1));
      const { transitions } = runPlants(group, days, { watering: 'watered' });
      expect(
        transitions.filter(({ day }) => day > 40),
        id,
      ).toEqual([]);
    }
  });

  it('a slow fall and rise through every threshold passes each state once each way', () => {
    const means = Float64Array.from({ length: 240 }, (_, day) => 20 - 18 * Math.sin((Math.PI * day) / 239));
    const days = {
      ...steady(240, 20, 14),
      meanLeaf: means.map((mean, day) => mean + 1.2 * Math.sin(day * 2.1)),
    };
    const result = runPlants(numbersOf('echeveria'), days, { cyclic: false, watering: 'watered' });
    expect(result.transitions.map(({ to }) => plantStates[to]?.id)).toEqual([
      'slow',
      'resting-cold',
      'slow',
      'growing',
    ]);
  });

  it('the year has no seam: a year from another first day gives the same states', () => {
    const year = steady(365, 15, 10);
    for (let day = 0; day < 365; day += 1) {
      year.meanLeaf[day] = 14 - 9 * Math.cos((2 * Math.PI * (day + 15)) / 365) + 2 * Math.sin(day);
    }
    for (const id of ['echeveria', 'lithops', 'conophytum']) {
      const whole = runPlants(numbersOf(id), year, { spinUpDays: 90 });
      for (const turn of [64, 100, 275, 279]) {
        const meanLeaf = year.meanLeaf.map((_, day) => year.meanLeaf[(day + turn) % 365] as number);
        const turned = runPlants(
          numbersOf(id),
          { ...year, meanLeaf },
          { spinUpDays: 90, firstSeasonDay: turn },
        );
        const back = Array.from(turned.state, (_, day) => turned.state[(day + 365 - turn) % 365]);
        expect(back, `${id} from day ${turn}`).toEqual(Array.from(whole.state));
      }
    }
  });
});
