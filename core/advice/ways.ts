import { visits } from '../plan/visits.ts';
import { outdoors } from '../plan/schema.ts';
import type { Place, Plan } from '../plan/schema.ts';
import type { WeatherYear } from '../weather/index.ts';
import { surfacesOf } from '../fabric/index.ts';
import { createSeasonCache, runSeason } from '../season/index.ts';
import type { SeasonCache, SeasonResult } from '../season/index.ts';
import { applyChange } from './change.ts';
import { leversOf } from './levers.ts';
import type { Lever, LeverSetting } from './levers.ts';
import { fulfilment } from './wish.ts';
import type { StateShift, Way, WaysResult, Wish } from './result.ts';

export interface WaysOptions {
  readonly cache?: SeasonCache;
  /** Called with each way as it is found. */
  readonly onWay?: (way: Way) => void;
  /** Asked before each season run; true stops the search and returns what there is. */
  readonly cancelled?: () => boolean;
}

/**
 * Finds, lever by lever, the least change that fulfils a wish: a bisection over the lever's grid on the
 * season itself (each probe is a whole season run of the place), so that one grid step less does not fulfil
 * it where the lever acts one way. Ranked: ways that fulfil by cost a season, then the others by nearness.
 */
export function findWays(
  plan: Plan,
  weather: WeatherYear,
  wish: Wish,
  options: WaysOptions = {},
): WaysResult {
  const cache = options.cache ?? createSeasonCache();
  const placeId = 'placeId' in wish ? wish.placeId : placeOfLot(plan, wish.lotId);
  const place = plan.places.find((each) => each.id === placeId);
  if (place === undefined) throw new RangeError(`expected a place of the plan, got ${placeId}`);
  const alone = onlyPlace(plan, place);
  const before = runSeason(alone, weather, cache);
  const now = fulfilment(before, wish);
  const ways: Way[] = [];
  if (!now.fulfilled) {
    for (const lever of leversFor(place, wish, before)) {
      if (options.cancelled?.() === true) break;
      const way = searchLever(alone, weather, cache, lever, wish, before);
      ways.push(way);
      options.onWay?.(way);
    }
  }
  ways.sort(byWorth);
  return {
    wish,
    already: now.fulfilled,
    now: now.words,
    ways,
    outOfReach: !now.fulfilled && !ways.some((way) => way.fulfils),
  };
}

const score = (way: Way) => nearness.get(way) ?? 0;
const nearness = new WeakMap<Way, number>();

function byWorth(a: Way, b: Way): number {
  if (a.fulfils !== b.fulfils) return a.fulfils ? -1 : 1;
  if (a.fulfils) return a.runningCost + a.purchaseCost - (b.runningCost + b.purchaseCost);
  return score(b) - score(a);
}

/** The place in which something can be changed for a lot: its home, or the first it is carried to from the open air. */
function placeOfLot(plan: Plan, lotId: string): string {
  const lot = plan.lots.find((each) => each.id === lotId);
  if (lot === undefined) throw new RangeError(`expected a lot of the plan, got ${lotId}`);
  const place = [lot.place, ...lot.moves.map((move) => move.to)].find((id) => id !== outdoors);
  if (place === undefined) throw new RangeError(`expected a lot that is ever in a place, got ${lotId}`);
  return place;
}

/** The plan with one place first, its plants, and the places they are carried to; what stands elsewhere cannot change. */
export function onlyPlace(plan: Plan, place: Place): Plan {
  const lots = plan.lots.filter((lot) => visits(lot, place.id));
  const others = plan.places.filter(({ id }) => id !== place.id && lots.some((lot) => visits(lot, id)));
  return { ...plan, places: [place, ...others], lots };
}

function leversFor(place: Place, wish: Wish, before: SeasonResult): Lever[] {
  const coverArea = surfacesOf(place)
    .surfaces.filter((surface) => surface.transparent)
    .reduce((sum, surface) => sum + surface.area, 0);
  const tooWarm = wish.kind === 'safe-rest' && before.places[0].totals.leastLeaf >= wish.neverBelow;
  return leversOf(place, coverArea, tooWarm ? 'down' : 'up');
}

/** Bisection over the grid; where the last setting does not fulfil the wish, the whole grid's nearest is taken from a coarse look. */
function searchLever(
  plan: Plan,
  weather: WeatherYear,
  cache: SeasonCache,
  lever: Lever,
  wish: Wish,
  before: SeasonResult,
): Way {
  const { settings } = lever;
  const judged = new Map<
    number,
    { season: SeasonResult; fulfilled: boolean; score: number; words: string }
  >();
  const judge = (at: number) => {
    const known = judged.get(at);
    if (known !== undefined) return known;
    const season = runSeason(applyChange(plan, settings[at].change), weather, cache);
    const answer = { season, ...fulfilment(season, wish) };
    judged.set(at, answer);
    return answer;
  };
  const last = settings.length - 1;
  let high = lookPoints(last).find((at) => judge(at).fulfilled) ?? closeIn(last, judge);
  if (high < 0) {
    let best = last;
    for (const [at, answer] of judged) if (answer.score > (judged.get(best)?.score ?? 0)) best = at;
    const answer = judge(best);
    return describe(lever, settings[best], answer.season, before, false, answer.words, answer.score);
  }
  let low = Math.max(-1, ...[...judged.keys()].filter((at) => at < high));
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (judge(middle).fulfilled) high = middle;
    else low = middle;
  }
  const answer = judge(high);
  return describe(lever, settings[high], answer.season, before, true, '', answer.score);
}

/** Looks taken between the first ones before a lever is given up, and how near to the best a gap's better end must come. */
const mostLooks = 14;
const nearlyBest = 0.9;

/**
 * A lever can overshoot between two of the first looks: too little light below, too warm above. Gaps between looks
 * that end nearly as well as the best are halved, the widest first, until a setting fulfils the wish; −1 where none is found.
 */
function closeIn(
  last: number,
  judge: (at: number) => { readonly fulfilled: boolean; readonly score: number },
): number {
  const looked = lookPoints(last);
  for (let look = 0; look < mostLooks; look++) {
    const least = nearlyBest * Math.max(...looked.map((at) => judge(at).score));
    let gap = { from: 0, wide: 1, score: 0 };
    for (let i = 1; i < looked.length; i++) {
      const wide = looked[i] - looked[i - 1];
      const score = Math.max(judge(looked[i - 1]).score, judge(looked[i]).score);
      const before = wide > gap.wide || (wide === gap.wide && score > gap.score);
      if (wide > 1 && score >= least && before) gap = { from: looked[i - 1], wide, score };
    }
    if (gap.wide === 1) return -1;
    const at = gap.from + Math.floor(gap.wide / 2);
    if (judge(at).fulfilled) return at;
    looked.push(at);
    looked.sort((one, other) => one - other);
  }
  return -1;
}

/** Settings looked at first, least change first: quarters of the grid, so that a lever that overshoots is seen. */
function lookPoints(last: number): number[] {
  const points = [0, 0.25, 0.5, 0.75, 1].map((share) => Math.round(share * last));
  return [...new Set(points)].sort((a, b) => a - b);
}

function describe(
  lever: Lever,
  setting: LeverSetting,
  season: SeasonResult,
  before: SeasonResult,
  fulfils: boolean,
  shortfall: string,
  closeness: number,
): Way {
  const after = season.places[0];
  const earlier = before.places[0];
  const electricity = (place: typeof after) =>
    place.totals.heaterElectricity + place.totals.lampElectricity + place.totals.fanElectricity;
  const way: Way = {
    lever: lever.id,
    placeId: lever.placeId,
    words: setting.words,
    from: lever.from,
    to: setting.value,
    unit: lever.unit,
    fulfils,
    shortfall,
    runningCost: after.totals.cost - earlier.totals.cost,
    purchase: setting.purchase,
    purchaseCost: setting.purchase / lever.life,
    electricity: electricity(after) - electricity(earlier),
    shifts: shiftsOf(season, before),
    cautions: lever.cautions,
    change: setting.change,
  };
  nearness.set(way, closeness);
  return way;
}

/** What a change does to every lot: days gained or lost in each state, and frost hours. */
export function shiftsOf(after: SeasonResult, before: SeasonResult): StateShift[] {
  const shifts: StateShift[] = [];
  for (const place of after.places) {
    for (const lot of place.lots) {
      const was = before.places.flatMap((each) => each.lots).find((each) => each.lotId === lot.lotId);
      if (was === undefined) continue;
      shifts.push({
        lotId: lot.lotId,
        days: Array.from(lot.stateDays, (days, index) => days - was.stateDays[index]),
        frostHours: lot.harm.frostHours - was.harm.frostHours,
      });
    }
  }
  return shifts;
}
