import type { Plan } from '../plan/schema.ts';
import { flowerCue } from '../plants/index.ts';
import type { FlowerCue, PlantDays } from '../plants/index.ts';
import type { SeasonSetting } from '../season/index.ts';
import { roomFor } from './flower-bench.ts';
import type { Room } from './flower-bench.ts';
import { borne, judgePair } from './flower-judge.ts';
import type { Keeping } from './flower-keepings.ts';
import type { FlowerWay } from './flower-result.ts';
import { daysThrough, screenFlowers } from './flower-screen.ts';
import type { HarmDays } from './flower-screen.ts';
import { meetBestFirst, optionsFrom, overlapOf } from './flower-search.ts';
import type { FlowerWindow, Option } from './flower-search.ts';
import { harmsOthers, leastHarmAdded } from './flower-subject.ts';
import type { Subject } from './flower-subject.ts';
import { isHeated, withWarmth } from './flower-way.ts';

/** Most ways that are given. */
const mostWays = 5;
/** Kelvin by which the set points of a heated place are tried [K], and how many such runs there are at most. */
const warmthSteps = [2, -2, 4, -4];
const mostWarmthRuns = 6;
/** Set points that a heater may have [°C]. */
const setPoints = { least: -20, most: 40 };

/** A way with the keepings it is made of. */
export interface Found {
  readonly way: FlowerWay;
  readonly one: Keeping;
  readonly other: Keeping;
}

/** A search under way: what it is for, what it has found, and what stood in its way. */
export interface Hunt {
  readonly setting: SeasonSetting;
  readonly subjects: readonly [Subject, Subject];
  readonly room: Room;
  readonly onWay: (way: FlowerWay) => void;
  readonly cancelled: () => boolean;
  readonly found: Found[];
  /** Windows of keepings that were looked at as the places are heated now. */
  readonly windows: Map<Keeping, FlowerWindow | null>;
  /** For each lot the cue that came nearest to its need in any keeping, harmful ones too. */
  readonly nearestNeed: [FlowerCue | null, FlowerCue | null];
  /** For each lot whether a keeping that meets its cue was barred by certain harm or a full bench, and whether any flowers. */
  readonly barred: [boolean, boolean];
  readonly flowers: [boolean, boolean];
  /** Largest overlap of any two windows that were not barred [d]; −Infinity where a lot has none. */
  nearest: number;
  /** Days of scorch, wet cold or decline that a keeping may add [d]. */
  allowance: number;
}

/** A place kept warmer or cooler, and the plan with it. */
export interface WarmthRun {
  readonly plan: Plan;
  readonly placeId: string;
  readonly kelvin: number;
}

export function newHunt(
  setting: SeasonSetting,
  subjects: Hunt['subjects'],
  onWay: Hunt['onWay'],
  cancelled: Hunt['cancelled'],
): Hunt {
  const { plan, year } = setting;
  const room = roomFor(plan, [subjects[0].lot, subjects[1].lot], year.startDay);
  return {
    ...{ setting, subjects, room, onWay, cancelled },
    ...{ found: [], windows: new Map(), nearestNeed: [null, null], barred: [false, false] },
    flowers: [false, false],
    ...{ nearest: -Infinity, allowance: 0 },
  };
}

/** Heated places a little warmer and cooler, small steps first. */
export function warmthRuns(plan: Plan): WarmthRun[] {
  const runs = warmthSteps.flatMap((kelvin) =>
    plan.places
      .filter(isHeated)
      .map(({ id }) => ({ plan: withWarmth(plan, id, kelvin), placeId: id, kelvin })),
  );
  const possible = runs.filter(({ plan: { places } }) =>
    places.every(({ heaters }) =>
      heaters.every(({ setPointDay, setPointNight }) =>
        [setPointDay, setPointNight].every((each) => each >= setPoints.least && each <= setPoints.most),
      ),
    ),
  );
  return possible.slice(0, mostWarmthRuns);
}

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
    const window = known === undefined ? screenFlowers(subject, days as PlantDays).window : known;
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
