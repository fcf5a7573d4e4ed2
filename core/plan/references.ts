import type { Problem } from './problem.ts';
import type { Place, Plan } from './schema.ts';
import { contradictions } from './contradictions.ts';
import { coveringProblems } from './fitting.ts';
import { impossible } from './impossible.ts';
import { lampTechnologies } from './lamps.ts';
import { groupEditProblems, plantGroup } from './groups.ts';
import { lotProblems, ownGroupProblems } from './lot-references.ts';
import { outdoors } from './schema.ts';

const technologyIds = new Set(lampTechnologies.map((each) => each.id));

/** Problems that a schema alone cannot see: names that point nowhere, twins, a place in a room that is not described. */
export function references(plan: Plan): Problem[] {
  const problems: Problem[] = [...snowProblems(plan)];
  twins(
    plan.places.map((place) => place.id),
    'places',
    problems,
  );
  plan.places.forEach(({ id }, index) => {
    if (id === outdoors)
      problems.push({ path: `places.${index}.id`, message: `expected another id than '${outdoors}'` });
  });
  twins(
    plan.lots.map((lot) => lot.id),
    'lots',
    problems,
  );
  plan.places.forEach((place, index) => placeReferences(place, `places.${index}`, problems));
  const placeIds = new Set(plan.places.map((place) => place.id));
  placeIds.add(outdoors);
  problems.push(...lotProblems(plan, placeIds), ...ownGroupProblems(plan));
  for (const [id, edits] of Object.entries(plan.groupEdits)) {
    const group = plantGroup(id);
    if (group === null) problems.push(unknown(`groupEdits.${id}`, 'plant group', id));
    else
      for (const message of groupEditProblems(group, edits))
        problems.push({ path: `groupEdits.${id}`, message });
  }
  return problems;
}

function placeReferences(place: Place, path: string, problems: Problem[]): void {
  problems.push(...coveringProblems(place, path), ...impossible(place, path), ...contradictions(place, path));
  place.lamps.forEach((lamp, index) => {
    if (!technologyIds.has(lamp.technology)) {
      problems.push(unknown(`${path}.lamps.${index}.technology`, 'lamp technology', lamp.technology));
    }
  });
  if (needsRoom(place) && place.room === null) {
    problems.push({ path: `${path}.room`, message: `expected the room around this place, got none` });
  }
}

/** Places that stand in or lean on a heated room. */
export function needsRoom(place: Place): boolean {
  const { shape } = place;
  if (shape.kind === 'tent' || shape.kind === 'shelf' || shape.kind === 'window-bay') return true;
  if (shape.kind === 'lean-to') return shape.wall.behind === 'room';
  return shape.kind === 'listed' && shape.surfaces.some((surface) => surface.behind === 'room');
}

/** Snow that goes on the day it comes lies on no day. */
function snowProblems({ site }: Plan): Problem[] {
  const { snow } = site;
  if (snow === null || snow.from !== snow.to) return [];
  return [
    {
      path: 'site.snow.to',
      message: `expected another day than the snow comes on (${snow.from}), got ${snow.to}`,
    },
  ];
}

function twins(ids: readonly string[], path: string, problems: Problem[]): void {
  const seen = new Set<string>();
  ids.forEach((id, index) => {
    if (seen.has(id))
      problems.push({ path: `${path}.${index}.id`, message: `expected an id used once, got ${id} again` });
    seen.add(id);
  });
}

function unknown(path: string, what: string, got: string): Problem {
  return { path, message: `expected a known ${what}, got ${got}` };
}
