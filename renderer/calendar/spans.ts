import type { CalendarTask, TaskKind } from '../../core/index.ts';
import { daysInSeason } from '../sheet/time.ts';
import type { Family } from './kinds.ts';
import { families, kinds } from './kinds.ts';

/** A stretch of the season on a lot's row; `to` is its last day. `form` tells how it is drawn. */
export interface Span {
  readonly family: Family;
  readonly from: number;
  readonly to: number;
  readonly form: 'full' | 'half' | 'hollow' | 'point';
  /** The task it begins with. */
  readonly task: CalendarTask;
}

const last = daysInSeason - 1;

/** What begins a stretch that the next task of its family ends, and how it is drawn; null ends without beginning. */
const running: Partial<Record<TaskKind, Span['form'] | null>> = {
  'rest-begins': 'full',
  'rest-ends': null,
  'stop-water': 'hollow',
  'water-sparingly': 'half',
  'water-again': 'full',
  feed: 'full',
  'stop-feeding': null,
  'first-safe-night': 'full',
  'last-safe-night': null,
};

/** Nights outdoors are safe up to and with the last; the others end the day before the task that ends them. */
const endsWith = (task: CalendarTask) => (task.kind === 'last-safe-night' ? task.from : task.from - 1);

/** A stretch of days cut at the season's ends, since the season is a ring; one that goes on may be written either way. */
function around(from: number, end: number): [number, number][] {
  const to = end > last ? end - daysInSeason : end;
  if (end > last && to >= from - 1) return [[0, last]];
  if (to >= from) return [[from, to]];
  return to < 0
    ? [[from, last]]
    : [
        [from, last],
        [0, to],
      ];
}

function stretches(tasks: readonly CalendarTask[], family: Family): Span[] {
  const sorted = [...tasks].sort((a, b) => a.from - b.from);
  return sorted.flatMap((task, index) => {
    const form = running[task.kind];
    if (form === undefined || form === null) return [];
    const next = sorted[(index + 1) % sorted.length];
    const alone = next === task;
    const to = task.to ?? (alone ? last : endsWith(next));
    return around(task.from, to).map(([from, end]) => ({ family, from, to: end, form, task }));
  });
}

/** The spans of one lot, family by family, from its tasks. */
export function spansOf(tasks: readonly CalendarTask[]): Span[] {
  return families.flatMap(({ id: family }) => {
    const own = tasks.filter((task) => kinds[task.kind].family === family);
    const moments = own
      .filter((task) => !(task.kind in running))
      .flatMap((task) =>
        around(task.from, task.to ?? task.from).map(([from, to]): Span => {
          return { family, from, to, form: task.to === null ? 'point' : 'full', task };
        }),
      );
    return [
      ...stretches(
        own.filter((task) => task.kind in running),
        family,
      ),
      ...moments,
    ];
  });
}
