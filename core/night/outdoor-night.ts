import { outdoors } from '../plan/schema.ts';
import type { Lot, Plan } from '../plan/schema.ts';
import { openLeaves } from '../season/outdoors.ts';
import { placeOn } from '../season/index.ts';
import type { SeasonResult, SiteYear } from '../season/index.ts';
import { coldLimits, leastOf, shifted } from './place-night.ts';
import type { NightInput, NightLot, OutdoorNight } from './result.ts';
import { clockWords, outdoorWords, verdictOf } from './verdict.ts';

/**
 * Tonight for what stands in the open on the day: the leaf follows air, sky and wind at once, so the days before
 * do not matter. Null where nothing stands there.
 * @param day of the season
 */
export function outdoorNight(
  plan: Plan,
  night: SiteYear,
  input: NightInput,
  season: SeasonResult,
  day: number,
): OutdoorNight | null {
  const standing = plan.lots.filter((lot) => placeOn(lot, night.startDay, day) === outdoors);
  if (standing.length === 0) return null;
  const leaf = leavesOf(night, 0);
  const leafColdForecast = leavesOf(night, -input.band);
  const least = leastOf(leaf);
  const limits = coldLimits(plan, standing, season, day);
  const lots = standing.map((lot, index): NightLot => ({
    lotId: lot.id,
    groupId: lot.group,
    limit: limits[index],
    leastLeaf: least.value,
    margin: least.value - limits[index],
  }));
  const neediest = Math.max(...limits);
  const margin = least.value - neediest;
  const coldMargin = leastOf(leafColdForecast).value - neediest;
  const verdict = verdictOf(margin, coldMargin);
  return {
    leaf,
    leafColdForecast,
    leafWarmForecast: leavesOf(night, input.band),
    least: least.value,
    leastMs: night.steps.startMs + least.at * night.steps.stepMinutes * 60_000,
    lots,
    margin,
    verdict,
    words: outdoorWords(verdict, {
      margin,
      band: input.band,
      leastAt: clockWords(beginOf(night, least.at)),
      ...whoSuffers(standing, limits, verdict === 'close' ? leastOf(leafColdForecast).value : least.value),
    }),
  };
}

/** Civil time at which a step begins [minutes after midnight], as `leastMs` has it; the clock has the full minute of its middle. */
function beginOf(night: SiteYear, step: number): number {
  return (night.clock.civil[step] - Math.floor(night.steps.stepMinutes / 2) + 1440) % 1440;
}

/** Leaves in the open in a night warmer or colder by `shift` [K]. */
function leavesOf(night: SiteYear, shift: number): Float64Array {
  const { steps, skyTemperature } = shifted(night, shift);
  return openLeaves(steps, skyTemperature);
}

/** The lot with the highest limit, how many more are past theirs at a leaf of `leaf` [°C], and whether all of it is one plant. */
function whoSuffers(
  lots: readonly Lot[],
  limits: readonly number[],
  leaf: number,
): { lotName: string; others: number; single: boolean } {
  const first = limits.indexOf(Math.max(...limits));
  const past = limits.filter((limit) => leaf < limit).length;
  const others = Math.max(0, past - 1);
  return { lotName: lots[first].name, others, single: others === 0 && lots[first].plants === 1 };
}
