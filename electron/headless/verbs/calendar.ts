import * as v from 'valibot';
import { calendarOf, outdoors, runSeason } from '../../../core/index.ts';
import type { CalendarTask, Plan, SeasonResult, TaskKind } from '../../../core/index.ts';
import { calendarFileSchema } from '../../contract.ts';
import type { CheckedInput } from '../../contract.ts';
import { calendarFile } from '../../host/calls/calendar-file.ts';
import { planFile, weatherFor } from '../files.ts';
import { numberOption, readOptions, textOption } from '../options.ts';
import { RefusedInput, WrongUse } from '../outcome.ts';
import { serialise } from '../serialise.ts';
import { dateOf } from '../span.ts';
import type { World } from '../world.ts';

const options = {
  weather: { type: 'string' },
  ical: { type: 'string' },
  year: { type: 'string' },
} as const;

const names: Readonly<Record<TaskKind, readonly [name: string, category: string]>> = {
  'rest-begins': ['Rest begins', 'Rest'],
  'rest-ends': ['Rest ends', 'Rest'],
  'stop-water': ['Stop watering', 'Water'],
  'water-sparingly': ['Water sparingly', 'Water'],
  'water-again': ['Water again', 'Water'],
  feed: ['Feed', 'Feed'],
  'stop-feeding': ['Stop feeding', 'Feed'],
  repot: ['Repot', 'Repot'],
  'last-safe-night': ['Last safe night outdoors', 'Outdoors'],
  'first-safe-night': ['First safe night outdoors', 'Outdoors'],
  'bring-in': ['Bring in', 'Carry'],
  'put-out': ['Put out', 'Carry'],
  carry: ['Carry', 'Carry'],
  flowers: ['Flowers expected', 'Flowers'],
  harm: ['Harm', 'Harm'],
};

/**
 * `calendar PLAN`: what there is to do through the season, by day; with `--ical FILE` as a calendar file besides. Its
 * first day lies in `--year`, without it in the year of the season now on at the site.
 */
export function calendar(words: readonly string[], world: World): void {
  const given = readOptions(words, options, ['PLAN']);
  const file = textOption(given, 'ical');
  const year = numberOption(given, 'year', 1970, 2999);
  if (year !== null && !Number.isInteger(year)) throw new WrongUse(`--year: expected a year, got ${year}`);
  if (year !== null && file === null) throw new WrongUse('--year is of use only with --ical');
  const plan = planFile(world, given.positionals[0]);
  const season = runSeason(plan, weatherFor(world, plan, textOption(given, 'weather')));
  const tasks = calendarOf(season);
  if (file !== null) {
    const input = entriesOf(season, tasks, year ?? yearOfSeason(season, world.nowMs()));
    writeText(world, file, calendarFile(checked(input), world.nowMs()).text);
  }
  world.out(serialise({ startDate: season.startDate, weather: season.weatherName, tasks }));
}

function writeText(world: World, path: string, text: string): void {
  try {
    world.writeFile(path, text);
  } catch (error) {
    throw new RefusedInput(`${path} cannot be written: ${(error as Error).message}`);
  }
}

function checked(input: v.InferInput<typeof calendarFileSchema>): CheckedInput<'calendarFile'> {
  const reading = v.safeParse(calendarFileSchema, input);
  if (reading.success) return reading.output;
  const problems = reading.issues.map((issue) => ({
    path: v.getDotPath(issue) ?? '',
    message: issue.message,
  }));
  throw new RefusedInput('This season makes no calendar file.', problems);
}

/** The tasks as the calendar file takes them. */
export function entriesOf(season: SeasonResult, tasks: readonly CalendarTask[], year: number) {
  const { plan } = season;
  return {
    title: plan.name,
    timeZone: plan.site.timeZone,
    year,
    startsOn: season.startDate.slice(5),
    tasks: tasks.map((task) => ({
      id: task.id,
      on: task.on,
      until: task.until,
      nextSeason: task.nextSeason,
      summary: `${names[task.kind][0]}: ${lotName(plan, task.lotId)}`,
      description: `${task.words}\n${task.because}`,
      location: placeName(plan, task.placeId),
      category: names[task.kind][1],
    })),
  };
}

const lotName = (plan: Plan, id: string) => plan.lots.find((lot) => lot.id === id)?.name ?? id;
const placeName = (plan: Plan, id: string) =>
  id === outdoors ? 'Outdoors' : (plan.places.find((place) => place.id === id)?.name ?? id);

/** Civil year in which the season that is on at an instant began. */
function yearOfSeason(season: SeasonResult, nowMs: number): number {
  const { timeZone } = season.plan.site;
  const today = new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short' }).format(nowMs);
  return Number(today.slice(0, 4)) - (today.slice(5) < dateOf(season, 0).slice(5) ? 1 : 0);
}
