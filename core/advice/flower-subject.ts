import { planGroup, planNumbers } from '../plan/plan-groups.ts';
import type { GroupNumbers, PlantGroup } from '../plan/groups.ts';
import type { Lot } from '../plan/schema.ts';
import { judgeLot, staysOf } from '../season/index.ts';
import type { SeasonSetting } from '../season/index.ts';
import type { LotSeason } from '../season/result.ts';
import { keepingsOf } from './flower-keepings.ts';
import type { Keeping } from './flower-keepings.ts';
import { harmDaysOf, unbearableDays } from './flower-harm.ts';
import type { HarmDays } from './flower-harm.ts';

/** One of two lots with all that the search needs of it. */
export interface Subject {
  readonly lot: Lot;
  readonly group: PlantGroup;
  readonly numbers: GroupNumbers;
  /** As the plan has it, and its days of harm [d]. */
  readonly now: LotSeason;
  readonly harmNow: HarmDays;
  readonly keepings: readonly Keeping[];
}

/** A lot of the plan of a setting, with the ways in which it may be kept. @throws where there is none */
export function subjectOf(setting: SeasonSetting, lotId: string): Subject {
  const { plan, year } = setting;
  const lot = plan.lots.find(({ id }) => id === lotId);
  if (lot === undefined) throw new RangeError(`expected a lot of the plan, got ${lotId}`);
  const group = planGroup(plan, lot.group);
  if (group === null) throw new RangeError(`expected a plant group of the plan, got ${lot.group}`);
  const numbers = planNumbers(plan, lot.group);
  const now = judgeLot(setting, lot);
  const keepings = keepingsOf(plan, lot, year.startDay);
  return { lot, group, numbers, now, harmNow: harmDaysOf(now), keepings };
}

const less = (after: HarmDays, before: HarmDays): HarmDays => ({
  grave: after.grave - before.grave,
  all: after.all - before.all,
});

/** Days of harm that a lot, judged, has more than the plan has it take [d]; 0 or less where none. */
export function harmMore({ harmNow }: Subject, judged: LotSeason): HarmDays {
  return less(harmDaysOf(judged), harmNow);
}

/** Days of harm that a keeping adds, judged in a setting [d]. */
export function harmAdded(setting: SeasonSetting, subject: Subject, kept: Keeping): HarmDays {
  const moved: Lot = { ...subject.lot, place: kept.placeId, moves: [...kept.moves] };
  return harmMore(subject, judgeLot(setting, moved, subject.numbers));
}

/** Days of harm that a keeping adds at the least [d], without judging it: a function for many keepings. */
export function leastHarmAdded(setting: SeasonSetting, subject: Subject): (kept: Keeping) => HarmDays {
  const sums = new Map(
    [...setting.climates].map(([id, climate]) => [id, unbearableDays(climate, subject.lot, subject.numbers)]),
  );
  return ({ stays }) => {
    let [grave, all] = [0, 0];
    for (const { placeId, from, to } of stays) {
      const there = sums.get(placeId);
      if (there === undefined) throw new RangeError(`expected a place of the plan, got ${placeId}`);
      grave += there.grave[to + 1] - there.grave[from];
      all += there.all[to + 1] - there.all[from];
    }
    return less({ grave, all }, subject.harmNow);
  };
}

/** True where a place kept at other set points adds a day of harm to any other lot that stands there. */
export function harmsOthers(
  before: SeasonSetting,
  after: SeasonSetting,
  subjects: readonly Subject[],
  placeId: string,
): boolean {
  const { plan, year } = before;
  return plan.lots.some((lot) => {
    const there = staysOf(lot, year.startDay).some((stay) => stay.placeId === placeId);
    if (!there || subjects.some((subject) => subject.lot.id === lot.id)) return false;
    return harmDaysOf(judgeLot(after, lot)).all > harmDaysOf(judgeLot(before, lot)).all;
  });
}
