import type { Plan } from '../plan/schema.ts';
import type { FlowerCue } from '../plants/index.ts';
import type { SeasonSetting } from '../season/index.ts';
import { roomFor } from './flower-bench.ts';
import type { Room } from './flower-bench.ts';
import type { Keeping } from './flower-keepings.ts';
import type { FlowerWay } from './flower-result.ts';
import type { FlowerWindow } from './flower-search.ts';
import type { Subject } from './flower-subject.ts';
import { isHeated, withWarmth } from './flower-way.ts';

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
