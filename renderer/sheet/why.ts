import { plantStates } from '../../core/index.ts';
import type { LotSeason, SeasonResult, Transition } from '../../core/index.ts';
import { runsOf } from './paths.ts';
import type { Run } from './paths.ts';
import { formatDay } from './time.ts';

/** The run of a lot's ribbon on a day, with the crossings that began and ended it. */
export interface WhyRun {
  readonly run: Run;
  /** Null where the run goes back beyond the season's first day, or on beyond its last. */
  readonly began: Transition | null;
  readonly ended: Transition | null;
  /** The runs before and after; null at the season's ends. */
  readonly before: Run | null;
  readonly after: Run | null;
}

export function whyRun(lot: LotSeason, day: number): WhyRun {
  const runs = runsOf(lot.state);
  const at = runs.findIndex((run) => day >= run.fromDay && day < run.toDay);
  if (at < 0) throw new RangeError(`expected a day of the season, got ${day}`);
  const run = runs[at];
  const on = (when: number) => lot.transitions.find((each) => each.day === when) ?? null;
  return {
    run,
    began: run.fromDay === 0 ? null : on(run.fromDay),
    ended: on(run.toDay),
    before: runs[at - 1] ?? null,
    after: runs[at + 1] ?? null,
  };
}

/** `resting from cold, 3 December to 14 February`. */
export function runWords(run: Run, season: Pick<SeasonResult, 'startDate'>): string {
  const name = plantStates[run.state].name.toLowerCase();
  const [from, to] = [run.fromDay, run.toDay - 1];
  const date = (day: number) => formatDay(season.startDate, day);
  return from === to ? `${name}, ${date(from)}` : `${name}, ${date(from)} to ${date(to)}`;
}

/** Where a lot is carried within a run, day by day: the first day in the new place, from where and to where. */
export function carriedWithin(
  lot: LotSeason,
  run: Run,
): { readonly day: number; readonly fromId: string; readonly toId: string }[] {
  return lot.stays.flatMap((stay, index) => {
    const before = lot.stays[index - 1];
    if (!before || stay.from < run.fromDay || stay.from >= run.toDay) return [];
    return [{ day: stay.from, fromId: before.placeId, toId: stay.placeId }];
  });
}

/** The stay in which a lot is on a day. */
export function stayOn(lot: LotSeason, day: number): string {
  const stay = lot.stays.find(({ from, to }) => day >= from && day <= to);
  if (!stay) throw new RangeError(`expected a day of the season, got ${day}`);
  return stay.placeId;
}

/** Development ahead of carbon gain by this much makes growth soft (judgement, no source). */
const softBy = 0.2;

/** True where the plant develops well ahead of what it gains: growth is soft. */
export function growsSoft(lot: LotSeason, day: number): boolean {
  const grows = plantStates[lot.state[day]].id;
  if (grows !== 'growing' && grows !== 'slow' && grows !== 'stretching') return false;
  return lot.temperatureIndex[day] - lot.carbonIndex[day] > softBy;
}
