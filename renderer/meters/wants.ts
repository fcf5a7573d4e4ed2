import { planGroup, planNumbers } from '../../core/index.ts';
import type { Lot, MeterBand, Plan } from '../../core/index.ts';
import { wish, wishes } from './figures.ts';

/** Daily light a lot's group wants [mol m⁻² d⁻¹]. */
export interface Wants {
  readonly name: string;
  /** Least to stay compact in the warm, good from and to, and most before it bleaches. */
  readonly least: number;
  readonly good: number;
  readonly goodHigh: number;
  readonly most: number;
}

export function wantsOf(plan: Plan, lot: Lot): Wants | null {
  if (!planGroup(plan, lot.group)) return null;
  const numbers = planNumbers(plan, lot.group);
  return {
    name: lot.name,
    least: numbers.lightStretch,
    good: numbers.lightGood,
    goodHigh: numbers.lightGoodHigh,
    most: numbers.lightMost,
  };
}

/** How a day's light with its band stands to what plants want, in one sentence. */
export function verdictOf({ name, least, good, goodHigh, most }: Wants, { low, high }: MeterBand): string {
  const wanted = `${name} want${name.endsWith('s') ? '' : 's'} ${wishes(good, goodHigh)}`;
  if (high < least)
    return `Too little even at best: ${wanted}, and at least ${wish(least)} to stay compact in the warm.`;
  if (low > most)
    return `Too much even at worst: ${wanted}, and bleach${name.endsWith('s') ? '' : 'es'} above ${wish(most)}.`;
  if (low >= good && high <= goodHigh) return `Good: ${wanted}.`;
  if (high < good)
    return low >= least
      ? `Enough to stay compact, less than good: ${wanted}.`
      : `Little: ${wanted}, and at least ${wish(least)} to stay compact in the warm.`;
  if (low > goodHigh) return `More than it needs: ${wanted}.`;
  return `This reading cannot settle it: ${wanted}. Read again on another day.`;
}
