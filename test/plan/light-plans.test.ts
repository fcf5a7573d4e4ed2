/** Light that can be is let pass: what is drawn to fit its place is never refused. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parsePlan } from '../../core/index.ts';
import { lightFor } from '../support/light-arbitrary.ts';
import { soundPlans } from '../support/plan-arbitrary.ts';

it('sound plans stay sound with any lamps, cloths, shelves and skylines that fit them', () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(lightFor(soundPlans), (plan) => {
      const reading = parsePlan(plan);
      expect(reading.ok ? [] : reading.problems).toEqual([]);
      if (!reading.ok) return;
      for (const place of reading.plan.places) {
        if (place.upperShelf) seen.add('upper shelf');
        if (place.sheer) seen.add('sheer');
        if (place.shadeCloth) seen.add('shade cloth');
        if (place.horizon) seen.add('skyline');
        for (const lamp of place.lamps) {
          seen.add(lamp.light.kind).add(lamp.control.kind).add(lamp.arrangement);
          seen.add(`beam ${lamp.beam.kind}`);
          if (lamp.second) seen.add('second block');
          if (lamp.shelf === 'upper') seen.add('over the upper shelf');
        }
      }
    }),
    { numRuns: 600, seed: 4 },
  );
  // The law would hold of nothing if nothing were drawn.
  expect([...seen].sort()).toEqual(
    [
      'bars',
      'beam cosine-power',
      'beam even',
      'beam file',
      'bulbs',
      'clock',
      'daylight',
      'efficacy',
      'extend',
      'file',
      'lumens',
      'over the upper shelf',
      'panel',
      'reading',
      'second block',
      'shade cloth',
      'sheer',
      'skyline',
      'upper shelf',
    ].sort(),
  );
});
