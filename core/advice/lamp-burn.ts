import type { Place, Plan } from '../plan/schema.ts';
import type { BurnRisk, FieldLevel } from '../light/index.ts';
import type { DailySeries } from '../season/index.ts';

export function burnOf(
  _place: Place,
  _plan: Plan,
  levels: readonly FieldLevel[],
  _daily: DailySeries,
  _from: number,
  _to: number,
): BurnRisk {
  const ppfd = Math.max(0, ...levels.map((level) => level.most));
  return { ppfd, leafOver: 0, level: 'none', words: '' };
}
