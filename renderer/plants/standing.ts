import { lotOf, outdoors, planGroup } from '../../core/index.ts';
import type { Lot, Plan, SeasonResult, Stay } from '../../core/index.ts';
import { freshId, freshName } from '../place/edit.ts';
import { formatDay } from '../sheet/time.ts';

/** Bench one pot takes where nothing else is known: 20 cm square [m²] (common practice, no source). */
export const onePot = 0.04;

/** What a place is called in a plan; `outdoors` has words of its own. */
export function placeName(plan: Plan, placeId: string): string {
  if (placeId === outdoors) return 'Outdoors';
  return plan.places.find((place) => place.id === placeId)?.name ?? 'a place';
}

/** The same behind a verb: `in the tunnel`, `outdoors`. */
export function inPlace(plan: Plan, placeId: string): string {
  return placeId === outdoors ? 'outdoors' : `in ${placeName(plan, placeId)}`;
}

/** The middle day of a site's winter [index into the season]. */
export function middleOfWinter(season: Pick<SeasonResult, 'winterFrom' | 'winterTo'>): number {
  return Math.round((season.winterFrom + season.winterTo) / 2);
}

/** Where a lot with these stays stands on a day of the season: a place or `outdoors`. */
export function standsOn(stays: readonly Stay[], day: number): string {
  const stay = stays.find(({ from, to }) => day >= from && day <= to);
  if (!stay) throw new RangeError(`expected a day of the season, got ${day}`);
  return stay.placeId;
}

/** Where each lot of a season stands in the middle of winter: lot id → a place or `outdoors`. */
export function winterPlaces(season: SeasonResult | null): ReadonlyMap<string, string> {
  if (!season) return new Map();
  const middle = middleOfWinter(season);
  return new Map(season.lots.map((lot) => [lot.lotId, standsOn(lot.stays, middle)]));
}

/** A year's stays in one sentence; '' for a lot that is never carried. */
export function staysWords(stays: readonly Stay[], plan: Plan, startDate: string): string {
  if (stays.length < 2) return '';
  const parts = stays.map(({ placeId, to }, index) =>
    index === stays.length - 1
      ? `then ${inPlace(plan, placeId)}`
      : `${index === 0 ? '' : 'then '}${inPlace(plan, placeId)} until ${formatDay(startDate, to)}`,
  );
  const words = `${parts.join(', ')}.`;
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** One pot of a group, to be put into a place. */
export function onePotOf(plan: Plan, groupId: string, placeId: string): Lot {
  const group = planGroup(plan, groupId);
  if (!group) throw new Error(`expected a plant group of the plan, got ${groupId}`);
  const names = plan.lots.map((lot) => lot.name);
  const name = freshName(group.name.slice(0, 110), names);
  const id = freshId(
    name,
    plan.lots.map((lot) => lot.id),
  );
  return lotOf({ id, name, group: groupId, place: placeId, area: onePot, plants: 1 });
}

export function withLot(plan: Plan, lot: Lot): Plan {
  return { ...plan, lots: [...plan.lots, lot] };
}

/** Day of a common year of `MM-DD`, 0 = 1 January; 29 February counts as 1 March. */
const dayOfYear = (monthDay: string) =>
  (Date.UTC(2025, Number(monthDay.slice(0, 2)) - 1, Number(monthDay.slice(3, 5))) - Date.UTC(2025, 0, 1)) /
  86_400_000;

/**
 * The lot standing in another place in the middle of winter: the move that brings it where it stands then is turned
 * to the new place, or else the place of its season's first day. Its spot was of the old place and is dropped.
 */
export function inWinterAt(
  lot: Lot,
  placeId: string,
  season: Pick<SeasonResult, 'startDay' | 'winterFrom' | 'winterTo'>,
): Lot {
  const middle = middleOfWinter(season);
  const dayOf = (on: string) => (dayOfYear(on) - season.startDay + 365) % 365;
  const before = lot.moves.filter((move) => dayOf(move.on) <= middle);
  const last = [...before].sort((a, b) => dayOf(b.on) - dayOf(a.on))[0];
  const { spot } = lotOf({ id: lot.id, name: lot.name, group: lot.group, place: placeId, area: lot.area });
  if (last === undefined) return { ...lot, place: placeId, spot };
  return {
    ...lot,
    spot,
    moves: lot.moves.map((move) => (move === last ? { ...move, to: placeId } : move)),
  };
}

export function withMovedLot(
  plan: Plan,
  lotId: string,
  placeId: string,
  season: Pick<SeasonResult, 'startDay' | 'winterFrom' | 'winterTo'>,
): Plan {
  return {
    ...plan,
    lots: plan.lots.map((lot) => (lot.id === lotId ? inWinterAt(lot, placeId, season) : lot)),
  };
}
