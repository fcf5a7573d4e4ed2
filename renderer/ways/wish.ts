import type { Lot, Plan, SeasonResult, StateShift, Way, Wish } from '../../core/index.ts';
import { outdoors, plantStates } from '../../core/index.ts';

export type WishKind = Wish['kind'];

export const wishKinds: readonly { id: WishKind; words: string }[] = [
  { id: 'keep-growing', words: 'keep growing' },
  { id: 'safe-rest', words: 'bring to a safe rest' },
  { id: 'hold-temperature', words: 'hold the temperature of' },
  { id: 'daily-light', words: 'give a daily light to' },
];

/** Everything the sentence can hold at once, so that changing the verb does not lose the rest. */
export interface WishDraft {
  readonly kind: WishKind;
  readonly lotId: string;
  readonly placeId: string;
  readonly fromDay: number;
  readonly toDay: number;
  readonly neverBelow: number;
  readonly weeks: number;
  readonly temperature: number;
  readonly least: number;
}

/** Whether ways can be looked for: a lot that is in the open on every day has no place in which to change anything. */
export function wishable(lot: Pick<Lot, 'place' | 'moves'>): boolean {
  return lot.place !== outdoors || lot.moves.some((move) => move.to !== outdoors);
}

/** Which lots cannot be asked for, and why; '' where all can. */
export function leftOut({ lots }: Pick<Plan, 'lots'>): string {
  const names = lots.filter((lot) => !wishable(lot)).map((lot) => lot.name);
  if (names.length === 0) return '';
  const those = names.length < 2 ? names[0] : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
  return `Left out: ${those}, outdoors on every day. There is nothing there to set; carry plants into a place first.`;
}

/** A lot under a lamp that does not grow in the middle of winter: the one most likely to be asked about. */
function heldBack(plan: Plan, season: SeasonResult, middle: number): Lot | undefined {
  const lit = new Set(plan.places.filter((place) => place.lamps.length > 0).map((place) => place.id));
  const waiting = season.places
    .filter((place) => lit.has(place.placeId))
    .flatMap((place) => place.lots)
    .filter((lot) => plantStates[lot.state[middle]].id !== 'growing');
  const stands = (lotId: string) => plan.lots.find((lot) => lot.id === lotId && lot.watering !== 'dry');
  return waiting.map((lot) => stands(lot.lotId)).find((lot) => lot !== undefined);
}

/**
 * A first wish: growth through the eight darkest weeks for the selected lot, else for one that is held back
 * under a lamp, else for one in the selected place.
 */
export function firstWish(
  plan: Plan,
  season: SeasonResult | null,
  lotId: string | null,
  placeId: string | null,
): WishDraft {
  const middle = season ? Math.round((season.winterFrom + season.winterTo) / 2) : 143;
  const lot =
    plan.lots.find((one) => one.id === lotId && wishable(one)) ??
    (season ? heldBack(plan, season, middle) : undefined) ??
    plan.lots.find((one) => one.place === placeId && wishable(one)) ??
    plan.lots.find(wishable);
  const there = (id: string | null | undefined) => plan.places.find((place) => place.id === id)?.id;
  return {
    kind: 'keep-growing',
    lotId: lot?.id ?? '',
    placeId: there(placeId) ?? there(lot?.place) ?? plan.places[0]?.id ?? '',
    fromDay: Math.floor((middle - 28) / 7) * 7,
    toDay: Math.floor((middle + 28) / 7) * 7 + 6,
    neverBelow: 2,
    weeks: 8,
    temperature: 5,
    least: 8,
  };
}

/** The wish the engine is asked; null where the lot or place it speaks of is not there. */
export function wishOf(draft: WishDraft, plan: Plan): Wish | null {
  const { kind, lotId, placeId } = draft;
  const lotThere = plan.lots.some((lot) => lot.id === lotId && wishable(lot));
  const placeThere = plan.places.some((place) => place.id === placeId);
  if (kind === 'keep-growing') {
    return lotThere && draft.toDay >= draft.fromDay
      ? { kind, lotId, fromDay: draft.fromDay, toDay: draft.toDay }
      : null;
  }
  if (kind === 'safe-rest')
    return lotThere ? { kind, lotId, neverBelow: draft.neverBelow, weeks: draft.weeks } : null;
  if (kind === 'hold-temperature')
    return placeThere ? { kind, placeId, temperature: draft.temperature } : null;
  return placeThere ? { kind, placeId, least: draft.least } : null;
}

/** The engine's phrase as a sentence: a capital at its start, a full stop at its end, true minus signs. */
export function sentence(phrase: string): string {
  const text = phrase.trim().replace(/(^|\s)-(?=\d)/g, '$1−');
  if (text === '') return '';
  return text[0].toLocaleUpperCase() + text.slice(1) + (/[.!?]$/.test(text) ? '' : '.');
}

/** Weeks of the season as choices: first day's index and its date, such as `2 Nov`. */
export function weekChoices(startDate: string): { day: number; words: string }[] {
  const start = Date.parse(`${startDate}T00:00Z`);
  const format = new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'short', timeZone: 'UTC' });
  return Array.from({ length: 52 }, (_, week) => ({
    day: week * 7,
    words: format.format(start + week * 7 * 86_400_000),
  }));
}

/** Full cost a season: running, and purchase spread over its life. */
export const seasonCost = (way: Way): number => way.runningCost + way.purchaseCost;

/** Ways as they arrive: what does it first, the cheaper before the dearer. The finished answer has its own order. */
export function ranked(ways: readonly Way[]): Way[] {
  return [...ways].sort((a, b) => Number(b.fulfils) - Number(a.fulfils) || seasonCost(a) - seasonCost(b));
}

/** `42 more days growing, 40 fewer stretching`; '' where nothing moves by more than two days and no frost hours. */
export function shiftWords(shift: StateShift): string {
  const parts = shift.days
    .map((days, state) => ({ days: Math.round(days), name: plantStates[state].name.toLowerCase() }))
    .filter(({ days }) => Math.abs(days) > 2)
    .sort((a, b) => b.days - a.days)
    .map(({ days, name }) => `${Math.abs(days)} ${days > 0 ? 'more' : 'fewer'} days ${name}`);
  const hours = Math.round(shift.frostHours);
  if (hours !== 0)
    parts.push(`${Math.abs(hours)} ${hours > 0 ? 'more' : 'fewer'} hours below the frost limit`);
  return parts.join(', ');
}
