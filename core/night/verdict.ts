import type { NightLot } from './result.ts';

/** How near a limit counts as close [K]. */
const closeMargin = 1.5;

export function verdictOf(margin: number | null): 'safe' | 'close' | 'harm' {
  if (margin === null) return 'safe';
  if (!(margin >= 0)) return 'harm';
  return margin < closeMargin ? 'close' : 'safe';
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

/** One sentence for a place. */
export function nightWords(
  verdict: 'safe' | 'close' | 'harm',
  facts: {
    margin: number | null;
    empty: boolean;
    failsAt: string | null;
    heated: boolean;
    lotName: string;
    leastAt: string;
  },
): string {
  if (facts.empty) return 'No plants stand here.';
  const kelvin = Math.abs(facts.margin ?? 0).toFixed(1);
  if (facts.failsAt !== null && verdict !== 'safe') {
    return `The heater holds until ${facts.failsAt}; ${facts.lotName} then come within ${kelvin} K of their limit${verdict === 'harm' ? ' and past it' : ''}.`;
  }
  if (verdict === 'harm')
    return `${facts.lotName}: ${kelvin} K below what they bear, about ${facts.leastAt}.`;
  if (verdict === 'close')
    return `${facts.lotName}: only ${kelvin} K above their limit, about ${facts.leastAt}.`;
  return facts.heated ? `Safe: the heater holds, ${kelvin} K to spare.` : `Safe: ${kelvin} K to spare.`;
}
