import { parsePlan, planGroup } from '../../core/index.ts';
import type { Place, Plan } from '../../core/index.ts';
import type { Bench } from '../state/bench.svelte.ts';

/** Changes a place: `words` name the change for undo, `key` joins changes of one field made in a row. */
export type EditPlace = (words: string, part: Partial<Place>, key?: string) => void;

/** The host keeps no more of what a change is called [characters]. */
const longestWords = 200;

/**
 * Keeps a change where the plan stays sound; gives null then, else why it was refused. The fields refuse wrong
 * values themselves, so a refusal here means that two fields no longer fit each other. While something is being
 * tried the change joins the trial, so that neither is lost.
 */
export function keepSound(
  bench: Bench,
  words: string,
  change: (plan: Plan) => Plan,
  key?: string,
): string | null {
  const reading = parsePlan(change(bench.shown));
  if (!reading.ok) return `Not kept: ${reading.problems[0].message}.`;
  const phrase = words.slice(0, longestWords);
  if (bench.trial) bench.tryPlan(bench.trialWords ?? phrase, reading.plan);
  else bench.update(phrase, () => reading.plan, key);
  return null;
}

/** `edit` as rows of fields give it; changes of one field are joined by its key, what is added or taken is not. */
export function keyed(edit: EditPlace, place: Place) {
  return (part: Partial<Place>, words: string, key?: string) =>
    edit(words, part, key === undefined ? undefined : `${place.id}.${key}`);
}

export function withPlace(plan: Plan, placeId: string, part: Partial<Place>): Plan {
  return {
    ...plan,
    places: plan.places.map((place) => (place.id === placeId ? { ...place, ...part } : place)),
  };
}

/** The plan without a place: the lots whose home it is go with it, and no other is carried there any more. */
export function withoutPlace(plan: Plan, placeId: string): Plan {
  return {
    ...plan,
    places: plan.places.filter((place) => place.id !== placeId),
    lots: plan.lots
      .filter((lot) => lot.place !== placeId)
      .map((lot) => ({ ...lot, moves: lot.moves.filter((move) => move.to !== placeId) })),
  };
}

/** Name of a plant group of the plan; an unknown id is wrong use. */
export function groupName(plan: Plan, id: string): string {
  const group = planGroup(plan, id);
  if (!group) throw new Error(`expected a plant group of the plan, got ${id}`);
  return group.name;
}

/** An identifier made from words that is not in use yet. */
export function freshId(words: string, taken: readonly string[]): string {
  const plain = words
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 48);
  const stem = plain === '' ? 'item' : plain;
  let id = stem;
  for (let number = 2; taken.includes(id); number += 1) id = `${stem}-${number}`;
  return id;
}

/** A name that no other thing in the list bears: `Tent`, `Tent 2`. */
export function freshName(name: string, taken: readonly string[]): string {
  let fresh = name;
  for (let number = 2; taken.includes(fresh); number += 1) fresh = `${name} ${number}`;
  return fresh;
}

export function replaced<T>(list: readonly T[], index: number, part: Partial<T>): T[] {
  return list.map((item, i) => (i === index ? { ...item, ...part } : item));
}

export function without<T>(list: readonly T[], index: number): T[] {
  return list.filter((_, i) => i !== index);
}

/** The list with one item moved a step towards the first. */
export function movedUp<T>(list: readonly T[], index: number): T[] {
  return list.map((item, i) => (i === index - 1 ? list[index] : i === index ? list[index - 1] : item));
}
