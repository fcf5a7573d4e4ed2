import type { Draft, LotInSeason } from './calendar-lot.ts';
import { reached } from './calendar-lot.ts';
import { dayWords } from './calendar-words.ts';

/**
 * When flowers may be expected, where the group's cue is known and met. A window that begins after the season's last
 * day is next summer's: it has the same dates a year later.
 */
export function flowerTasks({ season, lot }: LotInSeason): Draft[] {
  const { cue, needed, metOn, window } = lot.flowering;
  if (cue === 'unknown' || window === null || metOn === null) return [];
  const nextSeason = window.from >= season.days;
  const turn = nextSeason ? season.days : 0;
  const what = cue === 'cool rest' ? 'days of cool rest' : 'days of the right length running';
  return [
    {
      kind: 'flowers',
      from: window.from - turn,
      to: window.to - turn,
      words: nextSeason ? 'Flowers may be expected next summer.' : 'Flowers may be expected.',
      because: `It had the ${needed} ${what} that it takes by ${dayWords(metOn, season.startDay)}.`,
      crossing: reached(what, needed),
      nextSeason,
    },
  ];
}
