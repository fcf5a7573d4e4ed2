import { outdoors } from '../plan/schema.ts';
import type { Draft, LotInSeason } from './calendar-lot.ts';

/** Where a lot is carried: the plan's moves, and back to where the season begins where that is elsewhere. */
export function carryTasks({ season, lot }: LotInSeason): Draft[] {
  const back = lot.stays.length > 1 && lot.stays[lot.stays.length - 1].placeId !== lot.stays[0].placeId;
  const [start, ...moves] = lot.stays;
  const carry = (placeId: string, day: number, because: string): Draft => ({
    kind: 'carry',
    from: day,
    to: null,
    words: placeId === outdoors ? 'Carry outdoors.' : `Carry to ${nameOf(placeId)}.`,
    because,
    crossing: { series: 'date of the plan', value: day, threshold: day, unit: 'days', way: 'reached' },
  });
  const nameOf = (placeId: string) => season.plan.places.find(({ id }) => id === placeId)?.name ?? placeId;
  return [
    ...(back ? [carry(start.placeId, start.from, 'The plan has it here when the season begins.')] : []),
    ...moves.map(({ placeId, from }) => carry(placeId, from, 'A date of the plan.')),
  ];
}
