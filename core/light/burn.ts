/** What a lamp does to the leaf nearest to it. */
export interface BurnRisk {
  /** Most photon flux density at the tops of the plants [µmol m⁻² s⁻¹]. */
  readonly ppfd: number;
  /** Leaf above the air there, lamps alone, still air [K]. */
  readonly leafOver: number;
  readonly level: 'none' | 'watch' | 'burn';
  /** Why, in the grower's words with the figures; '' where there is no risk. */
  readonly words: string;
}
