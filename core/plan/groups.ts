import type { PlantGroup } from './group.ts';
import { cactusGroups } from './groups-cacti.ts';
import { gardenGroups } from './groups-garden.ts';
import { leafSucculentGroups } from './groups-leaf-succulents.ts';
import { rosetteGroups } from './groups-rosettes.ts';
import { stemSucculentGroups } from './groups-stem-succulents.ts';

export type { Confidence, CoolRest, DayLengthCue, Figure, Habit, PlantGroup, Trait } from './group.ts';
export type { GroupEdits, GroupNumberName, GroupNumbers } from './group-numbers.ts';
export {
  groupEditProblems,
  groupFigure,
  groupNumberNames,
  groupNumberProblems,
  groupNumbers,
} from './group-numbers.ts';

/**
 * The catalogue of plant groups. Published base temperatures and light needs of succulents are rare: figures
 * marked `common practice, no source` are placeholders set by judgement, and every one can be changed.
 */
export const plantGroups: readonly PlantGroup[] = [
  ...rosetteGroups,
  ...leafSucculentGroups,
  ...stemSucculentGroups,
  ...cactusGroups,
  ...gardenGroups,
];

const byId = new Map(plantGroups.map((group) => [group.id, group]));

/** The plant group of an identifier, or null where there is none. */
export function plantGroup(id: string): PlantGroup | null {
  return byId.get(id) ?? null;
}
