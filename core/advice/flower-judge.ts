import { judgeLot, seasonSetting } from '../season/index.ts';
import type { SeasonSetting } from '../season/index.ts';
import type { Hunt, WarmthRun } from './flower-run.ts';
import type { Keeping } from './flower-keepings.ts';
import type { FlowerKeeping, FlowerWay } from './flower-result.ts';
import type { HarmDays } from './flower-harm.ts';
import { overlapOf } from './flower-search.ts';
import type { Option, Verdict } from './flower-search.ts';
import { harmAdded, harmMore } from './flower-subject.ts';
import { applyFlowerWay } from './flower-way.ts';
import type { FlowerChange } from './flower-way.ts';
import { wayWords } from './flower-words.ts';

/**
 * Whether a pair of options is a way: neither lot takes harm, there is bench room for both, and they still flower
 * together in the changed plan, run afresh. Of keepings that bring the same flowers the first two that do are taken.
 * @param harms days of harm added by keepings that were judged before, in this setting
 */
export function judgePair(
  hunt: Hunt,
  setting: SeasonSetting,
  run: WarmthRun | null,
  harms: Map<Keeping, HarmDays>,
  one: Option,
  other: Option,
): Verdict {
  const bears = (which: 0 | 1) => (keeping: Keeping) => {
    const harm = harms.get(keeping) ?? harmAdded(setting, hunt.subjects[which], keeping);
    harms.set(keeping, harm);
    return borne(hunt, harm);
  };
  if (!one.keepings.some(bears(0))) return 'not the one';
  if (!other.keepings.some(bears(1))) return 'not the other';
  for (const first of one.keepings) {
    const second = other.keepings.find(
      (each) => hunt.room.both(first.stays, each.stays) && bears(0)(first) && bears(1)(each),
    );
    if (second === undefined) continue;
    const way = runAfresh(hunt, run, first, second);
    if (way === null) return 'not together';
    hunt.found.push({ way, one: first, other: second });
    hunt.onWay(way);
    return 'kept';
  }
  return 'not together';
}

/** True where a keeping adds no grave harm, and no more days of lighter harm than the hunt allows. */
export function borne({ allowance }: Pick<Hunt, 'allowance'>, { grave, all }: HarmDays): boolean {
  return grave <= 0 && all <= allowance;
}

/** The way with the windows, harm and cost of the changed plan; null where the two no longer meet there or take harm. */
function runAfresh(hunt: Hunt, run: WarmthRun | null, one: Keeping, other: Keeping): FlowerWay | null {
  const { setting, subjects } = hunt;
  const keepings = [one, other].map(({ placeId, moves }, which) => ({
    ...{ lotId: subjects[which].lot.id, placeId, moves },
  }));
  const warmth = run === null ? null : { placeId: run.placeId, kelvin: run.kelvin, cost: 0 };
  const change: FlowerChange = { one: keepings[0], other: keepings[1], warmth };
  const plan = applyFlowerWay(setting.plan, change);
  const fresh = seasonSetting(plan, setting.weather, setting.cache);
  const kept = keepings.map((keeping, which): FlowerKeeping | null => {
    const { lot } = subjects[which];
    const judged = judgeLot(fresh, { ...lot, place: keeping.placeId, moves: [...keeping.moves] });
    const { window } = judged.flowering;
    const harm = harmMore(subjects[which], judged);
    return window === null || !borne(hunt, harm) ? null : { ...keeping, window, harmDays: harm.all };
  });
  if (kept[0] === null || kept[1] === null) return null;
  const overlap = overlapOf(kept[0].window, kept[1].window);
  if (overlap <= 0) return null;
  const changes = one.changes + other.changes + (run === null ? 0 : 1);
  const cost = run === null ? 0 : costOf(fresh, run.placeId) - costOf(setting, run.placeId);
  const priced = warmth === null ? null : { ...warmth, cost };
  const way = { one: kept[0], other: kept[1], warmth: priced, overlap, changes };
  return { ...way, words: wayWords(setting.plan, way, setting.year.startDay) };
}

/** Running cost of a place over the season, in the plan's currency. */
function costOf({ places }: SeasonSetting, placeId: string): number {
  const place = places.get(placeId);
  if (place === undefined) throw new RangeError(`expected a place of the plan, got ${placeId}`);
  return place.heaterCost + place.lampCost + place.fanCost;
}
