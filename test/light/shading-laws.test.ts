/** Laws of what shades inside and on a cover, over sound plans drawn at random: bars, gutters, reveals, upper shelves. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Place } from '../../core/index.ts';
import { daylightSeries } from '../../core/light/index.ts';
import { contradictions } from '../../core/plan/contradictions.ts';
import { daylightReaches } from '../../core/index.ts';
import { lightFor } from '../support/light-arbitrary.ts';
import { between } from '../support/shape-arbitrary.ts';
import { soundPlans } from '../support/plan-arbitrary.ts';
import { sampleYear, sum } from './sample-year.ts';

const year = sampleYear(45);
const drawn = fc.record({
  bars: fc.record({ spacing: between(0.05, 10), depth: between(0.001, 0.5) }),
  gutter: between(0.01, 1),
});
const site = { albedo: 0.3, horizon: [] };

it('each takes light or leaves it, never gives any; what is kept inside has come in', () => {
  const seen = { bars: 0, gutter: 0, shelf: 0 };
  fc.assert(
    fc.property(lightFor(soundPlans), drawn, (plan, { bars, gutter }) => {
      for (const place of (plan as { places: Place[] }).places.filter(daylightReaches)) {
        const bare: Place = { ...place, bars: null, gutter: null };
        const plain = daylightSeries(bare, site, year);
        const barred = daylightSeries({ ...bare, bars }, site, year);
        const guttered = { ...bare, gutter };
        const can = contradictions(guttered, '').length === 0;
        const lights = [plain, barred, ...(can ? [daylightSeries(guttered, site, year)] : [])];
        for (const light of lights) {
          for (let k = 0; k < year.n; k++) {
            const [inside, entering] = [light.insideSolar[k], light.transmittedSolar[k]];
            if (!(light.benchPhotons[k] >= 0 && light.benchPhotons[k] <= plain.benchPhotons[k] * (1 + 1e-9)))
              throw new Error(
                `expected no more light than without, got ${light.benchPhotons[k]} at step ${k}`,
              );
            if (!(inside >= 0 && inside <= entering * (1 + 1e-9) + 1e-9))
              throw new Error(`expected no more kept inside than ${entering} W, got ${inside} at step ${k}`);
          }
        }
        if (sum(barred.transmittedSolar) < sum(plain.transmittedSolar)) seen.bars++;
        if (can && sum(lights[2].transmittedSolar) < sum(plain.transmittedSolar)) seen.gutter++;
        if (place.upperShelf !== null) seen.shelf++;
      }
    }),
    { numRuns: 120, seed: 4 },
  );
  // The laws would hold of nothing if nothing were drawn.
  expect(seen.bars).toBeGreaterThan(100);
  expect(seen.gutter).toBeGreaterThan(10);
  expect(seen.shelf).toBeGreaterThan(10);
});
