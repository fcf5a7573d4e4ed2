/**
 * Laws of the season's heat over plans drawn at random (`plan-arbitrary.ts`): eight shapes, everything that can be put
 * into them, twelve climates. Two test files run half of the five hundred each, so that two cores share them.
 */
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { soundPlans } from '../support/plan-arbitrary.ts';
import { firstNotFinite } from '../season/difference.ts';
import { coldestAround, seasonOf } from './sweep-bounds.ts';
import { furthest, minutes } from './sweep-notes.ts';

const least = (values: Float64Array) => values.reduce((found, value) => Math.min(found, value), Infinity);
const most = (values: Float64Array) => values.reduce((found, value) => Math.max(found, value), -Infinity);

/**
 * Hottest air let pass [°C]. Sealed places under many lamps are ovens: 103 °C reached on the equator, eight of 500 over 80.
 */
const hottest = 110;
/** Asked: 1e-3. Reached: 3e-10, on a shelf that exchanges 0.2 kWh in a year; 1e-12 where more than 5 kWh are exchanged. */
const energyLimit = 1e-9;
/** Heat exchanged in a season under which its share says nothing [kWh]: a shelf as warm as its room. */
const leastExchanged = 0.001;
/** Air colder than all that lies around it [K]: moist pots cool it in a dry room. Reached: 0.14 in a tent, never outdoors. */
const belowColdest = 0.2;

/** Runs the laws over `plans` plans drawn from a seed. */
export function sweepPlans(plans: number, from: number): void {
  const note = furthest();
  describe(`${plans} plans`, () => {
    it('are finite, closed, bounded and never cooled by a heater', { timeout: 6 * minutes }, () => {
      fc.assert(
        fc.property(soundPlans, (plan) => {
          const season = seasonOf(plan);
          expect(firstNotFinite(season)).toBeNull();
          season.places.forEach(({ daily, energyResidual, heat, placeId, totals }, index) => {
            const place = plan.places[index];
            const exchanged = heat.reduce((sum, part) => sum + Math.abs(part.season), 0);
            if (exchanged > leastExchanged)
              expect(note('energy residual', energyResidual, plan, placeId)).toBeLessThan(energyLimit);
            expect(note('hottest air [°C]', most(daily.airMost), plan, placeId)).toBeLessThan(hottest);
            const coldest = coldestAround(plan, place);
            const below = most(daily.airLeast.map((value, day) => coldest[day] - value));
            expect(note('air below the coldest around [K]', below, plan, placeId)).toBeLessThanOrEqual(
              belowColdest,
            );
            const power = place.heaters.reduce((sum, heater) => sum + heater.power, 0);
            expect(least(daily.heaterHeat)).toBeGreaterThanOrEqual(0);
            expect(most(daily.heaterHeat)).toBeLessThanOrEqual((power * 24) / 1000 + 1e-9);
            for (const cost of [totals.cost, totals.heaterCost, totals.lampCost, totals.fanCost])
              expect(cost).toBeGreaterThanOrEqual(0);
          });
        }),
        { numRuns: plans, seed: from, endOnFailure: true },
      );
    });
  });
}
