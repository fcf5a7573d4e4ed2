import { plantGroups, planEdits, planGroup } from '../../core/index.ts';
import type { OwnGroup, Plan, PlantGroup } from '../../core/index.ts';
import { freshId, freshName } from '../place/edit.ts';

/** Longest name a plan takes [characters]. */
const longestName = 120;

/** The user's own group of an id; null where it is one of the catalogue. */
export function ownGroup(plan: Plan, id: string): OwnGroup | null {
  return plan.ownGroups.find((group) => group.id === id) ?? null;
}

/** The group of the catalogue that a group of the plan is, or was copied from. */
export function parentOf(plan: Plan, id: string): PlantGroup | null {
  return planGroup(plan, ownGroup(plan, id)?.from ?? id);
}

/**
 * A copy of a group with the numbers it has in this plan, under a name and an id of its own. A copy of an own group
 * goes back to the same group of the catalogue.
 */
export function copyOf(plan: Plan, id: string): OwnGroup {
  const group = planGroup(plan, id);
  if (!group) throw new Error(`expected a plant group of the plan, got ${id}`);
  const names = [...plan.ownGroups, ...plantGroups].map((one) => one.name);
  const stem = `${group.name.slice(0, longestName - 16)}, my own`;
  const name = freshName(ownGroup(plan, id) ? group.name : stem, names);
  const taken = [...plan.ownGroups, ...plantGroups].map((one) => one.id);
  return {
    id: freshId(name, taken),
    name,
    examples: group.examples.slice(0, 400),
    from: ownGroup(plan, id)?.from ?? id,
    numbers: { ...planEdits(plan, id) },
  };
}

export function withOwnGroup(plan: Plan, group: OwnGroup): Plan {
  return { ...plan, ownGroups: [...plan.ownGroups, group] };
}

export function withOwnPart(plan: Plan, id: string, part: Partial<OwnGroup>): Plan {
  return {
    ...plan,
    ownGroups: plan.ownGroups.map((group) => (group.id === id ? { ...group, ...part } : group)),
  };
}

/** The plan without an own group; its lots are then of the group it was copied from. */
export function withoutOwnGroup(plan: Plan, id: string): Plan {
  const from = ownGroup(plan, id)?.from;
  if (from === undefined) throw new Error(`expected an own group of the plan, got ${id}`);
  return {
    ...plan,
    ownGroups: plan.ownGroups.filter((group) => group.id !== id),
    lots: plan.lots.map((lot) => (lot.group === id ? { ...lot, group: from } : lot)),
  };
}

export function withLotGroup(plan: Plan, lotId: string, group: string): Plan {
  return { ...plan, lots: plan.lots.map((lot) => (lot.id === lotId ? { ...lot, group } : lot)) };
}

/** Lots that may be of an own group: those of the group it was copied from, and its own. */
export function lotsFor(plan: Plan, group: OwnGroup) {
  return plan.lots.filter((lot) => lot.group === group.from || lot.group === group.id);
}

/** Names in a row: `a, b and c`. */
export function listed(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}
