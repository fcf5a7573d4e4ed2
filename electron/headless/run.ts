import { exitCodes, RefusedInput, WrongUse } from './outcome.ts';
import { NotSerialisable } from './serialise.ts';
import { calendar } from './verbs/calendar.ts';
import { hours } from './verbs/hours.ts';
import { lamps } from './verbs/lamps.ts';
import { photometry } from './verbs/photometry.ts';
import { demo, schema } from './verbs/plan.ts';
import { season } from './verbs/season.ts';
import { sun } from './verbs/sun.ts';
import { tonight } from './verbs/tonight.ts';
import { ways } from './verbs/ways.ts';
import type { World } from './world.ts';

const verbs: Readonly<Record<string, (words: readonly string[], world: World) => void>> = {
  schema,
  demo,
  season,
  calendar,
  tonight,
  lamps,
  hours,
  photometry,
  ways,
  sun,
};

export const usage = `Usage: npm run -s winterbench -- VERB …
  schema                                   the plan's JSON Schema
  demo                                     the demonstration plan
  season PLAN [--weather FILE] [--from MM-DD] [--to MM-DD] [--csv]
  calendar PLAN [--weather FILE] [--ical FILE [--year YYYY]]   what to do and when; as iCalendar in FILE
  tonight PLAN --dusk 4 --low -6 [--cloud 2] [--wind 1] [--band 2] [--date YYYY-MM-DD] [--weather FILE]
  lamps PLAN [--place ID] [--options FILE] [--view as-given|equal-light|equal-watts] [--weather FILE]
  hours PLAN --place ID --lamp ID [--weather FILE]
  photometry FILE                          a lamp's photometric file (IES LM-63) as a plan keeps it
  ways PLAN --wish keep-growing --lot ID --from DAY --to DAY
            --wish safe-rest --lot ID --never-below 4 --weeks 10
            --wish hold-temperature --place ID --temperature 5
            --wish daily-light --place ID --least 12
            --wish '{"kind":…}'            [--weather FILE]
  sun --latitude 54 --longitude -7 --elevation 60 --at FILE
PLAN is a plan file, FILE an EPW or TMY3 weather file (for sun: an instant a line). DAY counts from the
season's first day, 0. Temperatures in °C, cloud in eighths, wind in m/s, light in mol a square metre and day.
JSON on standard output, messages on standard error.
Exit 0 done, 1 input refused with the reasons, 2 wrong use, 3 a fault of the program.
`;

/** Runs one verb and gives the exit code. Nothing is written to standard output unless the verb succeeds. */
export function run(words: readonly string[], world: World): number {
  const [name, ...rest] = words;
  if (name === 'help' || name === '--help' || name === '-h') {
    world.out(usage);
    return exitCodes.done;
  }
  try {
    if (name === undefined || !Object.hasOwn(verbs, name))
      throw new WrongUse(name === undefined ? 'expected a verb' : `unknown verb ${name}`);
    verbs[name](rest, world);
    return exitCodes.done;
  } catch (error) {
    return explainFailure(error, world);
  }
}

function explainFailure(error: unknown, world: World): number {
  if (error instanceof WrongUse) {
    world.note(`${error.message}\n${usage}`);
    return exitCodes.wrongUse;
  }
  if (error instanceof RefusedInput) {
    world.note(error.message);
    for (const { path, message } of error.problems)
      world.note(path === '' ? `  ${message}` : `  ${path}: ${message}`);
    return exitCodes.refused;
  }
  if (error instanceof NotSerialisable) world.note(`Fault: the result is not whole: ${error.message}`);
  else world.note(`Fault: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
  return exitCodes.fault;
}
