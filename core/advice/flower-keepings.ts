import { outdoors } from '../plan/schema.ts';
import type { Lot, Move, Plan } from '../plan/schema.ts';
import { staysOf } from '../season/index.ts';
import type { Stay } from '../season/index.ts';
import { monthDayOf } from './calendar-words.ts';

/** One way to keep a lot through the season. */
export interface Keeping {
  readonly placeId: string;
  readonly moves: readonly Move[];
  /** How many places and moves differ from the plan's. */
  readonly changes: number;
  /** The places one after another: keepings of one shape differ in their dates only. */
  readonly shape: string;
  readonly stays: readonly Stay[];
}

/** Days between the dates that are tried for a move, and for the first of a move away and back [d]. */
const dateStep = 7;
const awayStep = 28;

/** Moves of one list that the other lacks, and the other way round, a move to the same place on another day being one. */
function movesChanged(before: readonly Move[], after: readonly Move[]): number {
  const lacks = (list: readonly Move[], { on, to }: Move) =>
    !list.some((each) => each.on === on && each.to === to);
  const gone = before.filter((move) => lacks(after, move)).length;
  const come = after.filter((move) => lacks(before, move)).length;
  return Math.max(gone, come);
}

/**
 * The ways in which a lot is tried: as the plan has it; standing all season in each place of the plan and in the open;
 * there until a day, then in another place until the season's end; as the plan has it with one move more; and where
 * the plan begins with it, away in another place from a day to a later one. Days are a week apart, those on which it
 * goes away four weeks. What comes out the same as an earlier one is left out.
 */
export function keepingsOf(plan: Plan, lot: Lot, startDay: number): Keeping[] {
  const places = [...plan.places.map(({ id }) => id), outdoors];
  const days = Array.from({ length: Math.ceil(365 / dateStep) - 1 }, (_, week) => (week + 1) * dateStep);
  const dated = (to: string) => days.map((day): Move => ({ on: monthDayOf(day, startDay), to }));
  const onceMore = (placeId: string, moves: readonly Move[]) =>
    places.flatMap((to) => dated(to).map((move) => ({ placeId, moves: [...moves, move] })));
  const all = [
    { placeId: lot.place, moves: lot.moves as readonly Move[] },
    ...places.map((placeId) => ({ placeId, moves: [] as readonly Move[] })),
    ...places.flatMap((placeId) => onceMore(placeId, [])),
    ...(lot.moves.length > 0 && lot.moves.length < 12 ? onceMore(lot.place, lot.moves) : []),
    ...places.flatMap((away) =>
      days
        .filter((day) => day % awayStep === 0)
        .flatMap((goes) => {
          const leaves: Move = { on: monthDayOf(goes, startDay), to: away };
          const back = days.filter((day) => day > goes).map((day) => monthDayOf(day, startDay));
          return back.map((on) => ({ placeId: lot.place, moves: [leaves, { on, to: lot.place }] }));
        }),
    ),
  ];
  const known = new Set<string>();
  return all.flatMap(({ placeId, moves }) => {
    const stays = staysOf({ place: placeId, moves: [...moves] }, startDay);
    const course = JSON.stringify(stays);
    if (known.has(course)) return [];
    known.add(course);
    const changes = (placeId === lot.place ? 0 : 1) + movesChanged(lot.moves, moves);
    return [{ placeId, moves, changes, shape: stays.map((stay) => stay.placeId).join(' > '), stays }];
  });
}
