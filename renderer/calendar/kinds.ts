import type { TaskKind } from '../../core/index.ts';

/** Tasks that belong together on the sheet: one row of spans, one letter, one choice of the filter. */
export type Family = 'water' | 'feed' | 'rest' | 'repot' | 'open-air' | 'flowers' | 'carry' | 'harm';

export interface FamilyMark {
  readonly id: Family;
  readonly name: string;
  readonly letter: string;
}

/** In the order in which rows of spans stand. */
export const families: readonly FamilyMark[] = [
  { id: 'rest', name: 'Rest', letter: 'R' },
  { id: 'water', name: 'Water', letter: 'W' },
  { id: 'feed', name: 'Feed', letter: 'F' },
  { id: 'repot', name: 'Repot', letter: 'P' },
  { id: 'open-air', name: 'Safe nights outdoors', letter: 'O' },
  { id: 'flowers', name: 'Flowers', letter: 'B' },
  { id: 'carry', name: 'Carry', letter: 'C' },
  { id: 'harm', name: 'Harm', letter: 'H' },
];

interface KindWords {
  readonly name: string;
  readonly family: Family;
}

/** What a task is called before the plants it is for. */
export const kinds: Readonly<Record<TaskKind, KindWords>> = {
  'rest-begins': { name: 'Rest begins', family: 'rest' },
  'rest-ends': { name: 'Rest ends', family: 'rest' },
  'stop-water': { name: 'Stop watering', family: 'water' },
  'water-sparingly': { name: 'Water sparingly', family: 'water' },
  'water-again': { name: 'Water again', family: 'water' },
  feed: { name: 'Feed', family: 'feed' },
  'stop-feeding': { name: 'Stop feeding', family: 'feed' },
  repot: { name: 'Repot', family: 'repot' },
  'last-safe-night': { name: 'Last safe night outdoors', family: 'open-air' },
  'first-safe-night': { name: 'First safe night outdoors', family: 'open-air' },
  'bring-in': { name: 'Bring in', family: 'carry' },
  'put-out': { name: 'Put out', family: 'carry' },
  carry: { name: 'Carry', family: 'carry' },
  flowers: { name: 'Flowers expected', family: 'flowers' },
  harm: { name: 'Harm', family: 'harm' },
};

export function familyMark(id: Family): FamilyMark {
  const found = families.find((family) => family.id === id);
  if (!found) throw new Error(`expected a family of tasks, got ${id}`);
  return found;
}

export const familyOf = (kind: TaskKind): FamilyMark => familyMark(kinds[kind].family);
