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
