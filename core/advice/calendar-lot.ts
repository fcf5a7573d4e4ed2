import { planNumbers } from '../plan/plan-groups.ts';
import type { GroupNumbers } from '../plan/groups.ts';
import type { Lot } from '../plan/schema.ts';
import type { Crossing } from '../plants/index.ts';
import type { LotSeason, SeasonResult, Transition } from '../season/result.ts';
import type { CalendarTask, TaskKind } from './calendar-result.ts';
import { ringDay } from './calendar-ring.ts';
import { crossingWords, sentence } from './calendar-words.ts';

/** A task before it has its number and dates. */
export interface Draft extends Pick<CalendarTask, 'words' | 'because' | 'crossing'> {
  readonly kind: TaskKind;
  /** Days of the season; `to` null for a single day. */
  readonly from: number;
  readonly to: number | null;
  readonly nextSeason?: boolean;
}

/** A lot of a season with what its tasks are read from. */
export interface LotInSeason {
  readonly season: SeasonResult;
  readonly lot: LotSeason;
  readonly planned: Lot;
  readonly numbers: GroupNumbers;
}

export function lotInSeason(season: SeasonResult, lot: LotSeason): LotInSeason {
  const planned = season.plan.lots.find(({ id }) => id === lot.lotId);
  if (planned === undefined) throw new RangeError(`expected a lot of the plan, got ${lot.lotId}`);
  return { season, lot, planned, numbers: planNumbers(season.plan, lot.groupId) };
}

/** Harm of a day below this is not worth a date [K h, mol m⁻² d⁻¹, days] (judgement). */
export const trifle = 0.05;

/** What brought a task about: in words with its figures, and as figures. */
export type Cause = Pick<Draft, 'because' | 'crossing'>;

export const crossed = (crossing: Crossing): Cause => ({ because: crossingWords(crossing), crossing });

/** A change of state as the cause of a task. */
export const turned = ({ because, crossing }: Transition): Cause => ({
  because: sentence(because),
  crossing,
});

/** The change of state on a day; null where there is none. */
export const transitionOn = (lot: LotSeason, day: number): Transition | null =>
  lot.transitions.find((transition) => transition.day === day) ?? null;

/** Where a lot stands on a day: a place or `outdoors`. */
export function standsIn(lot: LotSeason, day: number): string {
  const of = ringDay(day, lot.state.length);
  const stay = lot.stays.find(({ from, to }) => of >= from && of <= to);
  if (stay === undefined) throw new RangeError(`expected a day of the season, got ${day}`);
  return stay.placeId;
}

/** A count of days that has reached what is asked for, or a date of the plan. */
export const reached = (series: string, days: number): Crossing => ({
  series,
  value: days,
  threshold: days,
  unit: 'days',
  way: 'reached',
});
