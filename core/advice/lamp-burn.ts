import type { Lamp } from '../plan/lamp.ts';
import type { Place, Plan } from '../plan/schema.ts';
import { visits } from '../plan/visits.ts';
import { planNumbers } from '../plan/plan-groups.ts';
import { burnRisk, dailyLight } from '../light/index.ts';
import type { BurnRisk, FieldLevel, LitPlants } from '../light/index.ts';
import type { PlaceSeason } from '../season/index.ts';
import { burningHours } from './lamp-hours.ts';
import { mean } from './winter-sums.ts';

const rank: Readonly<Record<BurnRisk['level'], number>> = { none: 0, watch: 1, burn: 2 };

/**
 * Burn risk at the leaf nearest to a place's lamps, the worse of its levels: the brightest spot of each, the lots'
 * own limits, the winter's mean daylight on top and its warmest air round the leaf. Lots stand on no level of
 * their own, so each is held against both.
 */
export function burnOf(
  place: Place,
  plan: Plan,
  levels: readonly FieldLevel[],
  result: PlaceSeason,
  from: number,
  to: number,
): BurnRisk {
  const { daily } = result;
  const air = daily.airMost.subarray(from, to + 1).reduce((most, value) => Math.max(most, value), -Infinity);
  const daylight = mean(daily.daylight, from, to);
  const plants = litPlants(place, plan);
  const hours = Math.max(0, ...place.lamps.map((lamp) => longestHours(lamp, result, from, to)));
  const risks = levels.map((level) => {
    const lamps = place.lamps.filter((lamp) => lamp.shelf === level.shelf);
    return burnRisk({ lamps, ppfd: level.most, hours, daylight, air, plants });
  });
  return risks.reduce((worst, risk) => (rank[risk.level] > rank[worst.level] ? risk : worst));
}

/** Hours a day of a lamp: by its clock, and where something else has a say the winter's most as the season burnt it. */
function longestHours(lamp: Lamp, { daily, totals }: PlaceSeason, from: number, to: number): number {
  if (lamp.control.kind === 'clock' && lamp.mostDay === null) return burningHours(lamp);
  const light = daily.lampLight.subarray(from, to + 1).reduce((most, each) => Math.max(most, each), 0);
  return totals.lampPpfd > 0 ? light / dailyLight(totals.lampPpfd, 1) : 0;
}

function litPlants(place: Place, plan: Plan): LitPlants[] {
  return plan.lots.flatMap((lot) => {
    if (!visits(lot, place.id)) return [];
    const numbers = planNumbers(plan, lot.group);
    return [{ name: lot.name, most: numbers.lightMost, hot: numbers.damageHot }];
  });
}
