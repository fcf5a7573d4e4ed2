import { plantStates } from '../../core/index.ts';
import type { LotCertainty, LotSeason } from '../../core/index.ts';
import { standsOn } from '../marks/stays.ts';
import { vague } from './certainty-words.ts';
import { harmsIn } from './lot-week.ts';
import { endDayOf, firstDayOf } from './time.ts';
import { mainCode } from './weekly.ts';
import { stayOn } from './why.ts';

/** A lot's week in the table: where it is when not here, its state, how often it goes so, harms and flower. */
export function cellWords(
  lot: LotSeason,
  placeId: string,
  week: number,
  sure: LotCertainty | null,
  nameOf: (placeId: string) => string,
): string {
  const [from, to] = [firstDayOf(week), endDayOf(week)];
  const middle = Math.floor((from + to - 1) / 2);
  if (!standsOn(lot, placeId, middle))
    return `in ${nameOf(stayOn(lot, middle))}`.replace('in Outdoors', 'outdoors');
  const harm = harmsIn(lot, week);
  const { window } = lot.flowering;
  return [
    plantStates[mainCode(lot.state, from, to)].name,
    ...(sure && sure.halfWidth[week] <= vague ? [`so in ${Math.round(sure.agree[week] * 100)} of 100`] : []),
    ...(harm === '' ? [] : [`harm from ${harm}`]),
    ...(window && window.from < to && window.to >= from ? ['in flower'] : []),
  ].join(', ');
}
