/**
 * Published thresholds at which grey mould (Botrytis cinerea) takes hold; they disagree, so the plan says which
 * one counts. An hour is at risk while leaves are wet in air at least so damp and within so many degrees, once
 * this has lasted `after` hours.
 */
export interface MouldRule {
  readonly id: 'wet-93' | 'wet-85' | 'wet-night';
  readonly name: string;
  /** Least relative humidity 0–1 that counts as wet, beside dew on the leaf. */
  readonly humidity: number;
  /** Air temperature from and to [°C]. */
  readonly from: number;
  readonly to: number;
  /** Hours on end before the risk counts [h]. */
  readonly after: number;
  readonly source: string;
}

export const mouldRules: readonly MouldRule[] = [
  {
    id: 'wet-93',
    name: 'Very damp air: 93 % and 12 to 24 °C, from the eighth hour',
    humidity: 0.93,
    from: 12,
    to: 24,
    after: 8,
    source: 'horticultural advice page: film of water 8–12 h, 93 % or more, 12–24 °C',
  },
  {
    id: 'wet-85',
    name: 'Damp air: 85 % and 13 to 24 °C, from the eighth hour',
    humidity: 0.85,
    from: 12.8,
    to: 23.9,
    after: 8,
    source: 'extension text: film of water 8–12 h, 85 % or more, 55–75 °F',
  },
  {
    id: 'wet-night',
    name: 'Wet leaves for seven hours at 9 to 21 °C',
    humidity: 1,
    from: 9,
    to: 21,
    after: 7,
    source: 'Yunis et al. 1994: foliage wet more than 7 h a day and nights of 9–21 °C',
  },
];

export function mouldRule(id: MouldRule['id']): MouldRule {
  const found = mouldRules.find((rule) => rule.id === id);
  if (found === undefined) throw new Error(`expected a mould rule, got ${id}`);
  return found;
}
