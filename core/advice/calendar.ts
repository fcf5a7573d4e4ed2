import type { SeasonResult } from '../season/result.ts';
import { carryTasks } from './calendar-carry.ts';
import { feedTasks } from './calendar-feed.ts';
import { flowerTasks } from './calendar-flowers.ts';
import { harmTasks } from './calendar-harm.ts';
import type { Draft, LotInSeason } from './calendar-lot.ts';
import { lotInSeason, standsIn } from './calendar-lot.ts';
import { outdoorTasks } from './calendar-outdoors.ts';
import { repotTasks } from './calendar-repot.ts';
import { restTasks } from './calendar-rest.ts';
import type { CalendarTask, TaskKind } from './calendar-result.ts';
import { waterTasks } from './calendar-water.ts';
import { monthDayOf } from './calendar-words.ts';

const rules: readonly ((subject: LotInSeason) => Draft[])[] = [
  carryTasks,
  outdoorTasks,
  restTasks,
  waterTasks,
  feedTasks,
  repotTasks,
  flowerTasks,
  harmTasks,
];

/**
 * What there is to do, and to expect, for each lot of a season, by day: read off the season alone, so that every date
 * is that of a crossing in its daily series or of a move of the plan. Pure, and quick.
 */
export function calendarOf(season: SeasonResult): CalendarTask[] {
  return season.lots.flatMap((lot) => tasksOf(lotInSeason(season, lot))).sort((a, b) => a.from - b.from);
}

function tasksOf(subject: LotInSeason): CalendarTask[] {
  const { season, lot } = subject;
  const drafts = rules.flatMap((rule) => rule(subject)).sort((a, b) => a.from - b.from);
  const counts = new Map<TaskKind, number>();
  return drafts.map((draft): CalendarTask => {
    const { kind, from, to, words, because, crossing, nextSeason } = draft;
    const number = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, number);
    return {
      id: `${lot.lotId}-${kind}-${number}`,
      kind,
      lotId: lot.lotId,
      placeId: standsIn(lot, from),
      from,
      to,
      on: monthDayOf(from, season.startDay),
      until: to === null ? null : monthDayOf(to, season.startDay),
      words,
      because,
      crossing,
      nextSeason: nextSeason ?? false,
    };
  });
}
