import { plantHarms, plantStates } from '../../core/index.ts';
import type { WinterFit } from '../../core/index.ts';
import { harmNames } from '../marks/notches.ts';
import type { HarmKind } from '../marks/notches.ts';

export type FitVerdict = WinterFit['verdict'];

/** The verdicts on a winter somewhere, best first, with how many of the mark's three strokes each fills. */
export const verdicts: readonly {
  readonly id: FitVerdict;
  readonly words: string;
  readonly strokes: number;
}[] = [
  { id: 'well', words: 'Well', strokes: 3 },
  { id: 'with-care', words: 'With care', strokes: 2 },
  { id: 'poorly', words: 'Poorly', strokes: 1 },
  { id: 'unsafe', words: 'Not safe', strokes: 0 },
];

export function verdictOf(id: FitVerdict) {
  const found = verdicts.find((verdict) => verdict.id === id);
  if (!found) throw new Error(`expected a verdict, got ${id}`);
  return found;
}

export function harmName(id: string): string {
  return plantHarms.find((harm) => harm.id === id)?.name ?? harmNames[id as HarmKind] ?? id;
}

export interface StripPart {
  /** Index into `plantStates`. */
  readonly state: number;
  readonly days: number;
  readonly from: number;
  readonly to: number;
}

/** The days of a winter laid end to end over `width` [px], in the order of the states; states of no day are left out. */
export function stripOf(stateDays: readonly number[], width: number): StripPart[] {
  const all = stateDays.reduce((sum, days) => sum + days, 0);
  let days = 0;
  return stateDays.flatMap((count, state) => {
    if (!(count > 0)) return [];
    const from = (days / all) * width;
    days += count;
    return [{ state, days: count, from, to: (days / all) * width }];
  });
}

/** The same in words: `Growing 40 days, slow 142 days`. */
export function stripWords(stateDays: readonly number[]): string {
  const words = stripOf(stateDays, 1)
    .map(({ state, days }) => {
      const count = Math.round(days);
      return `${plantStates[state].name.toLowerCase()} ${count} day${count === 1 ? '' : 's'}`;
    })
    .join(', ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
