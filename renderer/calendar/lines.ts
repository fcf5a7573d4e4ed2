import { visits } from '../../core/index.ts';
import type { CalendarTask, Lot, Plan } from '../../core/index.ts';
import { dayOfYear, listed } from '../place/lots/stays.ts';
import { dateOf, daysInSeason, formatDay } from '../sheet/time.ts';
import type { Family } from './kinds.ts';
import { kinds } from './kinds.ts';

/** What of the calendar is shown; null shows all. */
export interface Filter {
  readonly placeId: string | null;
  readonly groupId: string | null;
  readonly family: Family | null;
}

export const everything: Filter = { placeId: null, groupId: null, family: null };

export function filtered(tasks: readonly CalendarTask[], plan: Plan, filter: Filter): CalendarTask[] {
  const groupOf = new Map(plan.lots.map((lot) => [lot.id, lot.group]));
  return tasks.filter(
    (task) =>
      (filter.placeId === null || task.placeId === filter.placeId) &&
      (filter.groupId === null || groupOf.get(task.lotId) === filter.groupId) &&
      (filter.family === null || kinds[task.kind].family === filter.family),
  );
}

/** Lots of a place and group for which the season has no date at all; none while only one kind of task is shown. */
export function dateless(tasks: readonly CalendarTask[], plan: Plan, filter: Filter): Lot[] {
  if (filter.family !== null) return [];
  const dated = new Set(tasks.map((task) => task.lotId));
  return plan.lots.filter(
    (lot) =>
      !dated.has(lot.id) &&
      (filter.groupId === null || lot.group === filter.groupId) &&
      (filter.placeId === null || visits(lot, filter.placeId)),
  );
}

/** What a task says at a glance: the first clause of its words, such as `Rest from cold begins`. */
export const headOf = (task: Pick<CalendarTask, 'words'>) => task.words.split(/[:;,.](?:\s|$)/u)[0];

/** The same task of one or more lots on the same days. */
export interface TaskLine {
  readonly key: string;
  readonly from: number;
  readonly to: number | null;
  readonly tasks: readonly CalendarTask[];
}

/** Tasks as lines in the order of their days; the same to do on the same days is one line. */
export function linesOf(tasks: readonly CalendarTask[]): TaskLine[] {
  const lines = new Map<string, CalendarTask[]>();
  for (const task of tasks) {
    const key = [task.from, task.to ?? '', task.kind, task.nextSeason, task.words].join(' ');
    lines.set(key, [...(lines.get(key) ?? []), task]);
  }
  return [...lines]
    .map(([key, same]) => ({ key, from: same[0].from, to: same[0].to, tasks: same }))
    .sort((a, b) => a.from - b.from || (a.to ?? a.from) - (b.to ?? b.from));
}

/** Families whose tasks of one day belong to one walk along the bench. */
const walks = new Set<Family>(['rest', 'water', 'feed']);
const lotsOf = (line: TaskLine) => [...new Set(line.tasks.map(({ lotId }) => lotId))];

/** Lines of the same plants on the same day made one where it is a rest, water or feed that changes; order kept. */
export function joined(lines: readonly TaskLine[]): TaskLine[] {
  const all: TaskLine[] = [];
  for (const line of lines) {
    const fits = (other: TaskLine) =>
      other.from === line.from &&
      other.tasks[0].nextSeason === line.tasks[0].nextSeason &&
      lotsOf(other).join(' ') === lotsOf(line).join(' ') &&
      [other, line].every(({ to, tasks }) => to === null && walks.has(kinds[tasks[0].kind].family));
    const at = all.findIndex(fits);
    if (at < 0) all.push(line);
    else all[at] = { ...all[at], tasks: [...all[at].tasks, ...line.tasks] };
  }
  return all;
}

/** What a line says: the head of each kind of task in it, once. */
export function headsOf(line: TaskLine): string {
  const heads = [...new Set(line.tasks.map(headOf))];
  return heads
    .map((head, index) => (index === 0 ? head : head.charAt(0).toLocaleLowerCase() + head.slice(1)))
    .join('; ');
}

/** The families of a line's tasks, each once. */
export const familiesOf = (line: TaskLine): Family[] => [
  ...new Set(line.tasks.map(({ kind }) => kinds[kind].family)),
];

/** True where a line's last day is before today; a date of the next season never is. */
export function isPast(line: TaskLine, today: number): boolean {
  return !line.tasks[0].nextSeason && (line.to ?? line.from) < today;
}

export interface MonthOfLines {
  readonly key: string;
  readonly name: string;
  /** First day of the season that lies in it. */
  readonly fromDay: number;
  readonly lines: readonly TaskLine[];
}

const monthName = new Intl.DateTimeFormat(undefined, { month: 'long', timeZone: 'UTC' });

/** Months from the season's start that have something in them. */
export function monthsOfLines(lines: readonly TaskLine[], startDate: string): MonthOfLines[] {
  const months: { key: string; name: string; fromDay: number; lines: TaskLine[] }[] = [];
  for (const line of lines) {
    const date = dateOf(startDate, line.from);
    const key = `${date.getUTCFullYear()}-${date.getUTCMonth()}`;
    const last = months.at(-1);
    if (last?.key === key) last.lines.push(line);
    else
      months.push({
        key,
        name: monthName.format(date),
        fromDay: line.from - date.getUTCDate() + 1,
        lines: [line],
      });
  }
  return months;
}

/** `12 October`, or `12 Oct to 3 Nov`. */
export function daysWords({ from, to }: Pick<TaskLine, 'from' | 'to'>, startDate: string): string {
  if (to === null || to === from) return formatDay(startDate, from, 'short');
  return `${formatDay(startDate, from, 'short')} to ${formatDay(startDate, to, 'short')}`;
}

/** Civil date at an instant in a zone, `YYYY-MM-DD`. */
export function civilDate(nowMs: number, timeZone: string): string {
  return new Intl.DateTimeFormat('sv-SE', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).format(nowMs);
}

/** Day of the season on which an instant falls; a 29 February counts as the day after it. */
export function todayInSeason(nowMs: number, timeZone: string, startDay: number): number {
  const today = civilDate(nowMs, timeZone).slice(5);
  return (dayOfYear(today) - startDay + daysInSeason) % daysInSeason;
}

/** Civil years in which the running season and the next begin. */
export function seasonYears(nowMs: number, timeZone: string, startDate: string): [number, number] {
  const today = civilDate(nowMs, timeZone);
  const year = Number(today.slice(0, 4));
  const running = today.slice(5) >= startDate.slice(5) ? year : year - 1;
  return [running, running + 1];
}

/** Most names that a line gives; all of them stand below it when it is opened. */
const mostNames = 6;

/** The plants a line is for: `Agaves and Aeoniums`, or the first few `and 12 more`. */
export function namesOf(line: TaskLine, plan: Plan): string {
  const names = lotsOf(line).map((lotId) => plan.lots.find((lot) => lot.id === lotId)?.name ?? 'Plants');
  if (names.length <= mostNames) return listed(names);
  const told = names.slice(0, mostNames - 1);
  return listed([...told, `${names.length - told.length} more`]);
}
