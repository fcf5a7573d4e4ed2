import { planNumbers } from '../../core/index.ts';
import type { Plan } from '../../core/index.ts';

/** The daily light [mol m⁻² d⁻¹] a lot's group wants for compact growth. */
export interface LightNeed {
  readonly mol: number;
  readonly names: readonly string[];
}

/** One line a need: lots that want the same share it. A lot counts wherever it stands on any day of the season. */
export function lightNeeds(plan: Plan, placeId: string): LightNeed[] {
  const needs = new Map<number, string[]>();
  for (const lot of plan.lots) {
    if (lot.place !== placeId && !lot.moves.some((move) => move.to === placeId)) continue;
    const mol = planNumbers(plan, lot.group).lightGood;
    needs.set(mol, [...(needs.get(mol) ?? []), lot.name]);
  }
  return [...needs].map(([mol, names]) => ({ mol, names })).sort((a, b) => b.mol - a.mol);
}
