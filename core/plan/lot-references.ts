import { groupEditProblems, plantGroup } from './groups.ts';
import type { Problem } from './problem.ts';
import type { Plan } from './schema.ts';

/** Lots that point nowhere: to a place, a group or a move's place that is not there, or two moves on one day. */
export function lotProblems(plan: Plan, places: ReadonlySet<string>): Problem[] {
  const own = new Set(plan.ownGroups.map((group) => group.id));
  return plan.lots.flatMap((lot, index) => {
    const path = `lots.${index}`;
    const problems: Problem[] = [];
    if (!places.has(lot.place)) problems.push(unknown(`${path}.place`, 'place', lot.place));
    if (!own.has(lot.group) && plantGroup(lot.group) === null)
      problems.push(unknown(`${path}.group`, 'plant group', lot.group));
    const days = new Set<string>();
    lot.moves.forEach(({ on, to }, move) => {
      if (!places.has(to)) problems.push(unknown(`${path}.moves.${move}.to`, 'place', to));
      if (days.has(on))
        problems.push({
          path: `${path}.moves.${move}.on`,
          message: `expected one move a day, got ${on} again`,
        });
      days.add(on);
    });
    return problems;
  });
}

/** Own groups that take a name of the catalogue or of each other, copy nothing, or whose numbers contradict each other. */
export function ownGroupProblems(plan: Plan): Problem[] {
  const seen = new Set<string>();
  return plan.ownGroups.flatMap(({ id, from, numbers }, index) => {
    const path = `ownGroups.${index}`;
    const problems: Problem[] = [];
    if (plantGroup(id) !== null || seen.has(id))
      problems.push({ path: `${path}.id`, message: `expected an id used once, got ${id} again` });
    seen.add(id);
    const copied = plantGroup(from);
    if (copied === null) return [...problems, unknown(`${path}.from`, 'plant group', from)];
    const wrong = groupEditProblems(copied, numbers);
    return [...problems, ...wrong.map((message) => ({ path: `${path}.numbers`, message }))];
  });
}

function unknown(path: string, what: string, got: string): Problem {
  return { path, message: `expected a known ${what}, got ${got}` };
}
