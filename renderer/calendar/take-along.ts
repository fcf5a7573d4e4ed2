import { outdoors } from '../../core/index.ts';
import type { CalendarTask, Plan } from '../../core/index.ts';
import type { CallInput } from '../../electron/contract.ts';
import type { UnitPreferences } from '../state/units.ts';
import { inUnits } from '../state/words-in-units.ts';
import { familyOf } from './kinds.ts';
import { headOf } from './lines.ts';

/** What the host writes as a calendar file, in the reader's words and units. */
export function calendarInput(
  tasks: readonly CalendarTask[],
  plan: Plan,
  startDate: string,
  year: number,
  units: UnitPreferences,
): CallInput<'calendarFile'> {
  const nameOf = (id: string) => plan.lots.find((lot) => lot.id === id)?.name ?? 'Plants';
  const placeOf = (id: string) =>
    id === outdoors ? 'Outdoors' : (plan.places.find((place) => place.id === id)?.name ?? '');
  return {
    title: plan.name,
    timeZone: plan.site.timeZone,
    year,
    startsOn: startDate.slice(5),
    tasks: tasks.map((task) => ({
      id: task.id,
      on: task.on,
      until: task.until,
      nextSeason: task.nextSeason,
      summary: `${inUnits(headOf(task), units)}: ${nameOf(task.lotId)}`,
      description: inUnits(`${task.words}\n${task.because}`, units),
      location: placeOf(task.placeId),
      category: familyOf(task.kind).name,
    })),
  };
}
