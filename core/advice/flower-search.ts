import type { FlowerOutlook } from '../plants/index.ts';
import type { Keeping } from './flower-keepings.ts';

/** Days between which flower may be expected, both counted. */
export type FlowerWindow = NonNullable<FlowerOutlook['window']>;

/** Keepings of one shape and as many changes that bring flowers on the same days, in the order in which they are tried. */
export interface Option {
  readonly shape: string;
  readonly changes: number;
  readonly window: FlowerWindow;
  readonly keepings: readonly Keeping[];
}

/** Puts like keepings together. */
export function optionsFrom(kept: readonly { keeping: Keeping; window: FlowerWindow }[]): Option[] {
  const options = new Map<string, Option & { keepings: Keeping[] }>();
  for (const { keeping, window } of kept) {
    const { shape, changes } = keeping;
    const key = `${shape} ${changes} ${window.from} ${window.to}`;
    const option = options.get(key) ?? { shape, changes, window, keepings: [] };
    options.set(key, option);
    option.keepings.push(keeping);
  }
  return [...options.values()];
}

/** Days on which two windows are both open [d]; negative: days that lie between them. */
export function overlapOf(one: FlowerWindow, other: FlowerWindow): number {
  return Math.min(one.to, other.to) - Math.max(one.from, other.from) + 1;
}

/**
 * Orders ways, more is better: by whole weeks of overlap, since dates are tried a week apart and windows are no
 * sharper; then by fewer changes; then by the days of overlap.
 */
export function meritOf(overlap: number, changes: number): number {
  return Math.floor(overlap / 7) * 1e6 - changes * 1e3 + overlap;
}

/** What became of a pair that was put forward; null ends the search. */
export type Verdict = 'kept' | 'not together' | 'not the one' | 'not the other' | null;

interface Pair {
  readonly one: Option;
  readonly other: Option;
  readonly merit: number;
}

/** Options of two shapes, and the best pair of them that is left. */
interface Bundle {
  readonly ones: Set<Option>;
  readonly others: Set<Option>;
  best: Pair | null;
}

export type Useful = (one: Option, other: Option) => boolean;

/**
 * Puts pairs of options forward, the best first, and of each two shapes only until one is kept. Pairs that `useful`
 * turns down are not put forward; it may turn down more as ways are found, not fewer.
 */
export function meetBestFirst(
  ones: readonly Option[],
  others: readonly Option[],
  useful: Useful,
  judge: (one: Option, other: Option) => Verdict,
): void {
  const apart = new Map<Option, Set<Option>>();
  const [firsts, seconds] = [shapesOf(ones), shapesOf(others)];
  const look = (bundle: Bundle) => (bundle.best = bestOf(bundle, apart, useful)) !== null;
  let open = firsts
    .flatMap((a) => seconds.map((b): Bundle => ({ ones: a, others: b, best: null })))
    .filter(look);
  while (open.length > 0) {
    const bundle = open.reduce((best, each) => (merit(each) > merit(best) ? each : best));
    const { one, other } = bundle.best as Pair;
    const stale = !bundle.ones.has(one) || !bundle.others.has(other) || !useful(one, other);
    const verdict = stale ? 'not together' : judge(one, other);
    if (verdict === null) return;
    if (verdict === 'not the one') bundle.ones.delete(one);
    if (verdict === 'not the other') bundle.others.delete(other);
    if (verdict === 'not together') apart.set(one, (apart.get(one) ?? new Set()).add(other));
    if (verdict === 'kept' || !look(bundle)) open = open.filter((each) => each !== bundle);
  }
}

const merit = ({ best }: Bundle) => best?.merit ?? -Infinity;

function shapesOf(options: readonly Option[]): Set<Option>[] {
  const shapes = new Map<string, Set<Option>>();
  for (const option of options) {
    const known = shapes.get(option.shape);
    if (known === undefined) shapes.set(option.shape, new Set([option]));
    else known.add(option);
  }
  return [...shapes.values()];
}

/** The pair of most merit; the first of equals. */
function bestOf(
  { ones, others }: Bundle,
  apart: ReadonlyMap<Option, ReadonlySet<Option>>,
  useful: Useful,
): Pair | null {
  let best: Pair | null = null;
  for (const one of ones) {
    for (const other of others) {
      const overlap = overlapOf(one.window, other.window);
      if (overlap <= 0) continue;
      const value = meritOf(overlap, one.changes + other.changes);
      if (best !== null && value <= best.merit) continue;
      if (apart.get(one)?.has(other) === true || !useful(one, other)) continue;
      best = { one, other, merit: value };
    }
  }
  return best;
}
