import { groupNumbers, plantGroup } from '../../core/index.ts';
import type { Lot, Plan } from '../../core/index.ts';

/** The daily light [mol m⁻² d⁻¹] a lot's group wants for compact growth. */
export interface LightNeed {
  readonly mol: number;
  readonly names: readonly string[];
}

function needOf(plan: Plan, lot: Lot): number | null {
  const group = plantGroup(lot.group);
  return group ? groupNumbers(group, plan.groupEdits[lot.group]).lightGood : null;
}

/** One line a need: lots that want the same share it. */
export function lightNeeds(plan: Plan, placeId: string): LightNeed[] {
  const needs = new Map<number, string[]>();
  for (const lot of plan.lots) {
    if (lot.place !== placeId) continue;
    const mol = needOf(plan, lot);
    if (mol === null) continue;
    needs.set(mol, [...(needs.get(mol) ?? []), lot.name]);
  }
  return [...needs].map(([mol, names]) => ({ mol, names })).sort((a, b) => b.mol - a.mol);
}
