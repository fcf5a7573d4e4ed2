import { flowerCue } from '../plants/index.ts';
import type { PlantDays } from '../plants/index.ts';
import type { SeasonSetting } from '../season/index.ts';
import type { Found, Hunt, WarmthRun } from './flower-run.ts';
import { borne, judgePair } from './flower-judge.ts';
import type { Keeping } from './flower-keepings.ts';
import type { HarmDays } from './flower-harm.ts';
import { daysThrough, screenFlowers } from './flower-screen.ts';
import { meetBestFirst, optionsFrom, overlapOf } from './flower-search.ts';
import type { Option } from './flower-search.ts';
import { harmsOthers, leastHarmAdded } from './flower-subject.ts';

/** Most ways that are given. */
const mostWays = 5;
/** Looks for ways in a setting: the plan's own, or one with a place kept warmer or cooler. */
export function huntWays(hunt: Hunt, setting: SeasonSetting, run: WarmthRun | null): void {
  if (run !== null && harmsOthers(hunt.setting, setting, hunt.subjects, run.placeId)) return;
  const [ones, others] = [optionsOf(hunt, 0, setting, run), optionsOf(hunt, 1, setting, run)];
  hunt.nearest = Math.max(hunt.nearest, nearestOf(ones, others));
  const harms = new Map<Keeping, HarmDays>();
  const judge = (one: Option, other: Option) =>
    hunt.cancelled() || hunt.found.length >= mostWays
      ? null
      : judgePair(hunt, setting, run, harms, one, other);
  const inPlace = ({ keepings }: Option) => run === null || standsIn(keepings[0], run.placeId);
  const concerns = (one: Option, other: Option) => inPlace(one) || inPlace(other);
  const changes = (one: Option, other: Option) => one.changes + other.changes + (run === null ? 0 : 1);
  const simpler = (one: Option, other: Option) =>
    concerns(one, other) && hunt.found.every(({ way }) => changes(one, other) < way.changes);
  meetBestFirst(ones, others, simpler, judge);
  const further = (one: Option, other: Option) =>
    concerns(one, other) && !hunt.found.some((found) => outdoes(found, one, other));
  meetBestFirst(ones, others, further, judge);
}

const standsIn = ({ stays }: Keeping, placeId: string) => stays.some((stay) => stay.placeId === placeId);

/** True where a way that was found is the same but for dates, or gives as many weeks with one of the lots left alone. */
function outdoes({ way, one, other }: Found, first: Option, second: Option): boolean {
  if (Math.floor(way.overlap / 7) < Math.floor(overlapOf(first.window, second.window) / 7)) return false;
  const like = (kept: Keeping, option: Option) => kept.shape === option.shape || kept.changes === 0;
  return like(one, first) && like(other, second);
}

/**
 * The keepings of a subject that bring flowers, without those that are certain to harm it or to find no bench. Those
 * that a run of warmth does not touch bring what they bring without it.
 */
function optionsOf(hunt: Hunt, which: 0 | 1, setting: SeasonSetting, run: WarmthRun | null): Option[] {
  const subject = hunt.subjects[which];
  const least = leastHarmAdded(setting, subject);
  const kept = subject.keepings.flatMap((keeping) => {
    const touched = run === null || standsIn(keeping, run.placeId);
    const days = touched ? daysThrough(setting, subject.lot, keeping.stays) : null;
    if (days !== null && !meetsCue(hunt, which, days)) return [];
    if (!borne(hunt, least(keeping)) || !hunt.room.alone(which, keeping.stays)) {
      hunt.barred[which] = true;
      return [];
    }
    const known = run !== null && touched ? undefined : hunt.windows.get(keeping);
    if (days === null && known === undefined) return [];
    const window =
      known === undefined ? screenFlowers(subject, days as PlantDays, setting.year.startDay).window : known;
    if (run === null) hunt.windows.set(keeping, window);
    if (window === null) return [];
    hunt.flowers[which] = true;
    return [{ keeping, window }];
  });
  return optionsFrom(kept);
}

/** Whether days meet the cue of a subject; keeps the nearest that any came to it. */
function meetsCue(hunt: Hunt, which: 0 | 1, days: PlantDays): boolean {
  const { group, numbers } = hunt.subjects[which];
  const cue = flowerCue(group, numbers, days);
  const best = hunt.nearestNeed[which];
  if (best === null || (best.metOn === null && (cue.metOn !== null || cue.days > best.days)))
    hunt.nearestNeed[which] = cue;
  return cue.metOn !== null;
}

/** Largest overlap of any window of the one with any of the other [d]. */
function nearestOf(ones: readonly Option[], others: readonly Option[]): number {
  let nearest = -Infinity;
  for (const one of ones)
    for (const other of others) nearest = Math.max(nearest, overlapOf(one.window, other.window));
  return nearest;
}
