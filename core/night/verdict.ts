import type { NightLot } from './result.ts';

export type Verdict = 'safe' | 'close' | 'harm';

/**
 * Harm where a leaf falls below its limit under the forecast; close where it would if the forecast missed by
 * the user's band on the cold side; safe otherwise. Margins [K], null where the place is empty.
 */
export function verdictOf(margin: number | null, coldMargin: number | null): Verdict {
  if (margin === null || coldMargin === null) return 'safe';
  if (!(margin >= 0)) return 'harm';
  return coldMargin >= 0 ? 'safe' : 'close';
}

/** Kelvin between limit and least leaf of the neediest lot; null where the place is empty. */
export function worstMargin(lots: readonly NightLot[]): number | null {
  return lots.length === 0 ? null : Math.min(...lots.map((lot) => lot.margin));
}

/** A clock time of the site's civil day from minutes after midnight. */
export function clockWords(minutes: number): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${two(Math.floor(minutes / 60))}:${two(Math.floor(minutes % 60))}`;
}

/** What the sentence on a place is made of. */
export interface NightFacts {
  readonly margin: number | null;
  readonly band: number;
  readonly empty: boolean;
  /** When the heater stops being enough; null where it holds or there is none. */
  readonly failsAt: string | null;
  readonly heated: boolean;
  readonly lotName: string;
  readonly leastAt: string;
}

/** One sentence for a place. */
export function nightWords(verdict: Verdict, facts: NightFacts): string {
  if (facts.empty) return 'No plants stand here.';
  const kelvin = Math.abs(facts.margin ?? 0).toFixed(1);
  if (verdict === 'harm' && facts.failsAt !== null) {
    return `The heater holds until ${facts.failsAt}; then ${facts.lotName} fall to ${kelvin} K below what they bear.`;
  }
  if (verdict === 'harm')
    return `${facts.lotName}: ${kelvin} K below what they bear, about ${facts.leastAt}.`;
  if (verdict === 'close') {
    return `${facts.lotName}: ${kelvin} K above their limit about ${facts.leastAt}, and past it if the night is ${facts.band} K colder.`;
  }
  return facts.heated ? `Safe: the heater holds, ${kelvin} K to spare.` : `Safe: ${kelvin} K to spare.`;
}

/** What the sentence on the open air is made of. */
export interface OutdoorFacts {
  readonly margin: number;
  readonly band: number;
  readonly leastAt: string;
  readonly lotName: string;
  /** Lots past their limit besides the one named, in a night as bad as the verdict says. */
  readonly others: number;
  /** True where one plant is spoken of, not several. */
  readonly single: boolean;
}

/** One sentence for what stands outdoors; it can be carried in, and that is said. */
export function outdoorWords(verdict: Verdict, facts: OutdoorFacts): string {
  const kelvin = Math.abs(facts.margin).toFixed(1);
  if (verdict === 'safe') return `Safe: ${kelvin} K to spare.`;
  const more = facts.others === 1 ? ' (and another lot)' : ` (and ${facts.others} other lots)`;
  const who = facts.lotName + (facts.others === 0 ? '' : more);
  const [bears, its, them] = facts.single ? ['it bears', 'its', 'it'] : ['they bear', 'their', 'them'];
  return verdict === 'harm'
    ? `${who}: ${kelvin} K below what ${bears} about ${facts.leastAt}; bring ${them} in before dark.`
    : `${who}: ${kelvin} K above ${its} limit about ${facts.leastAt}, and past it if the night is ${facts.band} K colder; bring ${them} in to be sure.`;
}
