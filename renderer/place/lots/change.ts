import { lotOf, staysOf } from '../../../core/index.ts';
import type { Lot, Move, Plan } from '../../../core/index.ts';
import { freshId, freshName } from '../edit.ts';
import { monthDay, seasonDay } from './stays.ts';
import type { SeasonStart } from './stays.ts';

/** Most moves a lot may have in a year, as the plan's schema has it. */
export const mostMoves = 12;

export function withLot(plan: Plan, id: string, part: Partial<Lot>): Plan {
  return { ...plan, lots: plan.lots.map((lot) => (lot.id === id ? { ...lot, ...part } : lot)) };
}

export function withoutLot(plan: Plan, id: string): Plan {
  return { ...plan, lots: plan.lots.filter((lot) => lot.id !== id) };
}

/** A new lot with a name and an id that nothing else has. */
export function addedLot(plan: Plan, name: string, part: Pick<Lot, 'group' | 'place' | 'area'>): Plan {
  return { ...plan, lots: [...plan.lots, lotOf({ ...part, ...identity(plan, name) })] };
}

function identity(plan: Plan, name: string): Pick<Lot, 'id' | 'name'> {
  const fresh = freshName(
    name,
    plan.lots.map((lot) => lot.name),
  );
  return {
    id: freshId(
      fresh,
      plan.lots.map((lot) => lot.id),
    ),
    name: fresh,
  };
}

/** The number a copy of `Agaves 2` counts on from: `Agaves`. */
const stem = (name: string) => name.replace(/ \d+$/, '');

function beside(plan: Plan, lot: Lot, kept: Lot, copy: Lot): Plan {
  return { ...plan, lots: plan.lots.flatMap((each) => (each.id === lot.id ? [kept, copy] : [each])) };
}

/** The same lot once more, right after it. */
export function copied(plan: Plan, lot: Lot): Plan {
  return beside(plan, lot, lot, { ...lot, ...identity(plan, stem(lot.name)) });
}

/** Whether a lot can be halved: a single plant cannot, nor can less than the least area there is. */
export const divisible = (lot: Lot) => lot.plants !== 1 && lot.area >= 0.002;

/** Half of the plants and their room in a lot of their own; of an odd number the first keeps one more. */
export function divided(plan: Plan, lot: Lot): Plan {
  const half = lot.plants === null ? null : Math.floor(lot.plants / 2);
  const share = lot.plants === null || half === null ? 0.5 : half / lot.plants;
  const area = Number((lot.area * share).toPrecision(12));
  const kept = {
    ...lot,
    area: Number((lot.area - area).toPrecision(12)),
    plants: lot.plants === null || half === null ? null : lot.plants - half,
  };
  return beside(plan, lot, kept, { ...lot, ...identity(plan, stem(lot.name)), area, plants: half });
}

/** The moves of a lot in the order in which the season brings them. */
export function inSeason(moves: readonly Move[], start: SeasonStart): Move[] {
  return [...moves].sort((a, b) => seasonDay(a.on, start) - seasonDay(b.on, start));
}

/** A day of the season on which nothing is carried yet, from `day` on. */
function freeDay(moves: readonly Move[], day: number, start: SeasonStart): string {
  let on = monthDay(day % 365, start);
  for (let later = 1; moves.some((move) => move.on === on); later += 1)
    on = monthDay((day + later) % 365, start);
  return on;
}

/**
 * A first guess for one more move: out of the home as winter begins, then back home as it ends, and after that on a
 * free day to the place it is not in. `elsewhere` is where it would go from home.
 */
export function nextMove(
  lot: Lot,
  start: SeasonStart,
  winter: readonly [from: number, to: number],
  elsewhere: string,
): Move {
  const stays = staysOf(lot, start.day);
  const last = stays[stays.length - 1];
  const away = last.placeId !== lot.place;
  const day = Math.max(away ? winter[1] : winter[0], last.from === 0 ? 0 : last.from + 1);
  return { on: freeDay(lot.moves, Math.min(day, 364), start), to: away ? lot.place : elsewhere };
}

/** Why a move changes nothing: it goes where the lot stands already; null where it does something. */
export function idle(lot: Pick<Lot, 'place' | 'moves'>, move: Move, start: SeasonStart): boolean {
  const before = inSeason(lot.moves, start).filter(
    (each) => seasonDay(each.on, start) < seasonDay(move.on, start),
  );
  const from = before.at(-1)?.to ?? lot.place;
  return from === move.to;
}
