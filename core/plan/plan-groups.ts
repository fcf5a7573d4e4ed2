import { groupFigure, groupNumberNames, groupNumbers, plantGroup, plantGroups } from './groups.ts';
import type { GroupEdits, GroupNumbers, PlantGroup } from './groups.ts';
import type { Plan } from './schema.ts';

/**
 * A group by its id as the plan knows it: of the catalogue, or the user's own, which is the group it was copied from
 * under its own name. Figures are the catalogue's; the user's numbers are in `planEdits`. Null where there is none.
 */
export function planGroup(plan: Plan, id: string): PlantGroup | null {
  const own = plan.ownGroups.find((group) => group.id === id);
  if (own === undefined) return plantGroup(id);
  const copied = plantGroup(own.from);
  return copied === null ? null : { ...copied, id, name: own.name, examples: own.examples };
}

/** The user's numbers over a group's: number name → value; empty where nothing is changed. */
export function planEdits(plan: Plan, id: string): GroupEdits {
  return plan.ownGroups.find((group) => group.id === id)?.numbers ?? plan.groupEdits[id] ?? {};
}

/** The numbers the engine computes with for a group of the plan. @throws where the plan knows no such group */
export function planNumbers(plan: Plan, id: string): GroupNumbers {
  const group = planGroup(plan, id);
  if (group === null) throw new RangeError(`expected a plant group of the plan, got ${id}`);
  return groupNumbers(group, planEdits(plan, id));
}

/** All groups of a plan: the user's own first, then the catalogue. */
export function planGroups(plan: Plan): PlantGroup[] {
  const own = plan.ownGroups.flatMap(({ id }) => planGroup(plan, id) ?? []);
  return [...own, ...plantGroups];
}

/** Which of a group's numbers the user has set, in the order in which they are shown. */
export function editedNames(plan: Plan, id: string) {
  const edits = planEdits(plan, id);
  return groupNumberNames.filter((name) => Object.hasOwn(edits, name) && name in groupFigure);
}
