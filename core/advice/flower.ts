import type { Plan } from '../plan/schema.ts';
import { createSeasonCache, seasonSetting } from '../season/index.ts';
import type { SeasonCache } from '../season/index.ts';
import type { WeatherYear } from '../weather/index.ts';
import { huntWays } from './flower-hunt.ts';
import { newHunt, warmthRuns } from './flower-run.ts';
import type { Hunt } from './flower-run.ts';
import type { FlowerMeeting, FlowerWay } from './flower-result.ts';
import { meritOf, overlapOf } from './flower-search.ts';
import { subjectOf } from './flower-subject.ts';
import type { Subject } from './flower-subject.ts';
import { nowWords, whyNotWords } from './flower-words.ts';

export { applyFlowerWay } from './flower-way.ts';

export interface FlowerOptions {
  readonly cache?: SeasonCache;
  /** Told of each way as it is found; the result may put them in another order. */
  readonly onWay?: (way: FlowerWay) => void;
  /** Asked between steps; true ends the search with what is found. */
  readonly cancelled?: () => boolean;
}

/** Days of scorch, wet cold or decline that a way may add where none without is found: a week (judgement, no source) [d]. */
const lightHarm = 7;

/**
 * The places, dates and warmth that bring the flowers of two lots together. Tried are, for each lot, every place all
 * the season and one move on each seventh day to each other place (see `keepingsOf`), as the places are heated now;
 * where nothing overlaps, also a heated place a few kelvin warmer or cooler. A way adds no day of harm to either lot
 * (where there is none such, up to a week of scorch, wet cold or decline), finds bench room, and has been run afresh with its lots moved, so that its windows are those of the changed plan.
 * @throws where the plan has no such lots, or both are one
 */
export function flowerTogether(
  plan: Plan,
  weather: WeatherYear,
  { one, other }: { readonly one: string; readonly other: string },
  { cache = createSeasonCache(), onWay = () => undefined, cancelled = () => false }: FlowerOptions = {},
): FlowerMeeting {
  if (one === other) throw new RangeError(`expected two lots, got ${one} twice`);
  const setting = seasonSetting(plan, weather, cache);
  const subjects: [Subject, Subject] = [subjectOf(setting, one), subjectOf(setting, other)];
  const hunt = newHunt(setting, subjects, onWay, cancelled);
  if (subjects.every(({ now }) => now.flowering.cue !== 'unknown')) {
    huntWays(hunt, setting, null);
    for (const run of hunt.found.length > 0 ? [] : warmthRuns(plan)) {
      if (!cancelled()) huntWarmer(hunt, run);
    }
    if (hunt.found.length === 0 && !cancelled()) {
      hunt.allowance = lightHarm;
      huntWays(hunt, setting, null);
    }
  }
  const ways = hunt.found.map(({ way }) => way).sort(byMerit);
  return { now: nowOf(hunt), ways, whyNot: ways.length > 0 ? null : whyNotWords(hunt) };
}

function huntWarmer(hunt: Hunt, run: ReturnType<typeof warmthRuns>[number]): void {
  const warm = seasonSetting(run.plan, hunt.setting.weather, hunt.setting.cache);
  huntWays(hunt, warm, run);
}

/** Overlap in whole weeks, fewest changes, days of overlap, then the cheaper. */
function byMerit(a: FlowerWay, b: FlowerWay): number {
  const merit = (way: FlowerWay) => meritOf(way.overlap, way.changes);
  return merit(b) - merit(a) || (a.warmth?.cost ?? 0) - (b.warmth?.cost ?? 0);
}

function nowOf({ subjects, setting }: Hunt): FlowerMeeting['now'] {
  const [one, other] = subjects.map(({ now }) => now.flowering.window);
  const overlap = one === null || other === null ? null : overlapOf(one, other);
  return { one, other, words: nowWords(subjects, overlap, setting.year.startDay) };
}
