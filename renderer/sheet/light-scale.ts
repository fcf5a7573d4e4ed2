import type { Plan, SeasonResult } from '../../core/index.ts';
import { lightNeeds } from './needs.ts';
import type { Stand } from './stands.ts';
import { weekOf } from './time.ts';
import { weeklyMean } from './weekly.ts';

/**
 * One light scale for all bands, so that their bars compare [mol m⁻² d⁻¹]: what plants want and winter gives in the
 * places; summer, and the open air beyond that, is cut off.
 */
export function lightScale(plan: Plan, season: SeasonResult, stands: readonly Stand[]): number {
  let most = 8;
  const [from, to] = [weekOf(season.winterFrom), weekOf(season.winterTo)];
  for (const { id, place, light } of stands) {
    for (const need of lightNeeds(plan, id)) most = Math.max(most, need.mol + 1);
    if (!place) continue;
    const sun = weeklyMean(light.daylight);
    const lamp = weeklyMean(light.lampLight);
    for (let week = from; week <= to; week += 1) most = Math.max(most, sun[week] + lamp[week]);
  }
  return Math.min(20, Math.ceil(most / 4) * 4);
}
