/** Laws of light over plans drawn at random, with every cloth, skyline, beam and switch a plan may have. */
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import type { Place, Plan } from '../../core/index.ts';
import { lampPhotons, placeField } from '../../core/index.ts';
import { placeLight } from '../../core/season/index.ts';
import { litPlans } from '../support/light-arbitrary.ts';
import { firstNotFinite } from '../season/difference.ts';
import { seasonOf, siteYearOf } from './sweep-bounds.ts';
import { furthest, minutes, seed } from './sweep-notes.ts';

const note = furthest();
const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);

/** Asked: 0.5 %. */
const closureLimit = 0.005;

describe('40 plans with all that light has', () => {
  it(
    'are finite; photons that land are never more than are given, and all are accounted for',
    { timeout: 5 * minutes },
    () => {
      fc.assert(
        fc.property(litPlans, (plan) => {
          const season = seasonOf(plan);
          expect(firstNotFinite(season)).toBeNull();
          season.places.forEach(({ daily, placeId }, index) => {
            const place = plan.places[index];
            const field = placeField(place);
            const given = place.lamps.reduce((total, lamp) => total + lampPhotons(lamp), 0);
            expect(field.emitted).toBeCloseTo(given, 6);
            expect(note('closure of the field', Math.abs(field.closure), plan, placeId)).toBeLessThan(
              closureLimit,
            );
            for (const end of [field.absorbed, field.inWalls, field.inCeiling, field.lost])
              expect(end).toBeGreaterThanOrEqual(-closureLimit * given);
            // No day gives more lamp light than the lamps would in 24 hours.
            const most = daily.lampLight.reduce((top, value) => Math.max(top, value), 0);
            expect(most).toBeLessThanOrEqual(field.average * 0.0864 * (1 + 1e-9));
            expect(
              daily.daylight.every(
                (value, day) => value >= 0 && value <= 1.2 * season.outdoor.daylight[day] + 1e-9,
              ),
            ).toBe(true);
            expect(daily.photoperiod.every((hours) => hours <= 24 + 1e-9)).toBe(true);
          });
        }),
        { numRuns: 40, seed, endOnFailure: true },
      );
    },
  );

  it(
    'no light by night, and each thing before the sky takes light or leaves it',
    { timeout: 5 * minutes },
    () => {
      const lightOf = (plan: Plan, place: Place) => placeLight(place, siteYearOf(plan)).benchPhotons;
      fc.assert(
        fc.property(litPlans, (plan) => {
          const [place] = plan.places;
          const { steps } = siteYearOf(plan);
          const bare: Place = { ...place, shadeCloth: null, cleanedOn: null, horizon: [] };
          const light = lightOf(plan, bare);
          for (let k = 0; k < steps.n; k++)
            if (steps.globalHorizontal[k] === 0 && steps.diffuseHorizontal[k] === 0) expect(light[k]).toBe(0);
          const all = sum(light);
          const less = (other: Place) => sum(lightOf(plan, other)) - all;
          const wall = [0, 90, 180, 270].map((azimuth) => ({ azimuth, elevation: 20, passes: 0 }));
          expect(
            less({ ...bare, shadeCloth: { covering: 'shade-50', from: '01-01', to: '12-31' } }),
          ).toBeLessThanOrEqual(-0.49 * all);
          expect(less({ ...bare, horizon: wall })).toBeLessThanOrEqual(0);
          expect(
            less({ ...bare, horizon: wall.map((each) => ({ ...each, passes: 0.5 })) }),
          ).toBeGreaterThanOrEqual(less({ ...bare, horizon: wall }));
          expect(less({ ...bare, cleanedOn: '10-01' })).toBeGreaterThanOrEqual(0);
          if (bare.shape.kind === 'window-bay') {
            const shallow: Place = { ...bare, shape: { ...bare.shape, reveal: 0 } };
            expect(less(shallow)).toBeGreaterThanOrEqual(0);
          }
        }),
        { numRuns: 25, seed, endOnFailure: true },
      );
    },
  );
});
