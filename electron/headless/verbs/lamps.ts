import * as v from 'valibot';
import { compareLamps, parsePlan } from '../../../core/index.ts';
import type { LampOption, LampView, Plan } from '../../../core/index.ts';
import { bytesOf, planFile, weatherFor } from '../files.ts';
import { readOptions, textOption } from '../options.ts';
import { RefusedInput, WrongUse } from '../outcome.ts';
import { serialise } from '../serialise.ts';
import type { World } from '../world.ts';

const options = {
  place: { type: 'string' },
  options: { type: 'string' },
  view: { type: 'string' },
  weather: { type: 'string' },
} as const;

const optionsSchema = v.pipe(
  v.array(v.strictObject({ name: v.pipe(v.string(), v.minLength(1)), lamps: v.array(v.unknown()) })),
  v.minLength(1, 'expected at least one option'),
  v.maxLength(12, 'expected at most twelve options'),
);

/**
 * `lamps PLAN`: the lamps of every lit place, or those in `--options FILE`, compared over the growing area
 * of `--place ID` (the first lit place where it is not given), as given or at equal light or watts (`--view`).
 */
export function lamps(words: readonly string[], world: World): void {
  const given = readOptions(words, options, ['PLAN']);
  const view = chosenView(textOption(given, 'view'));
  const plan = planFile(world, given.positionals[0]);
  const place = chosenPlace(plan, textOption(given, 'place'));
  const file = textOption(given, 'options');
  const compared = file === null ? lampsOf(plan) : optionsFile(world, file, plan);
  if (compared.length === 0)
    throw new RefusedInput('No place of the plan has a lamp: name options with --options FILE.');
  const weather = weatherFor(world, plan, textOption(given, 'weather'));
  const setting = { plan, weather, placeId: place.id };
  world.out(serialise({ placeId: place.id, view, options: compareLamps(compared, setting, view) }));
}

const views: readonly LampView[] = ['as-given', 'equal-light', 'equal-watts'];

function chosenView(text: string | null): LampView {
  if (text === null) return 'as-given';
  const found = views.find((view) => view === text);
  if (found === undefined) throw new WrongUse(`--view: expected ${views.join(' or ')}, got ${text}`);
  return found;
}

function chosenPlace(plan: Plan, id: string | null): Plan['places'][number] {
  const place = plan.places.find((candidate) =>
    id === null ? candidate.lamps.length > 0 : candidate.id === id,
  );
  if (place) return place;
  const known = plan.places.map((candidate) => candidate.id).join(', ') || 'none';
  if (id === null) throw new RefusedInput('No place of the plan has a lamp: name one with --place.');
  throw new RefusedInput(`The plan has no place ${id}; its places are ${known}.`);
}

/** The lamps of each lit place as an option named after it; the same set of lamps only once. */
function lampsOf(plan: Plan): LampOption[] {
  return plan.places.filter((place) => place.lamps.length > 0).map(({ name, lamps }) => ({ name, lamps }));
}

/** Lamps are checked as a plan's are: put over its first place, so that the same words name the same faults. */
function optionsFile(world: World, file: string, plan: Plan): LampOption[] {
  const refuse = (problems: { path: string; message: string }[]) =>
    new RefusedInput(`${file} cannot be used.`, problems);
  let input: unknown;
  try {
    input = JSON.parse(new TextDecoder().decode(bytesOf(world, file, 1_000_000)));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    throw new RefusedInput(`${file} is not JSON (${error.message}).`);
  }
  const reading = v.safeParse(optionsSchema, input);
  if (!reading.success) {
    throw refuse(
      reading.issues.map((issue) => ({ path: v.getDotPath(issue) ?? '', message: issue.message })),
    );
  }
  return reading.output.map(({ name, lamps }, index) => {
    const [first, ...others] = plan.places;
    const checked = parsePlan({ ...plan, places: [{ ...first, lamps }, ...others] });
    if (checked.ok) return { name, lamps: checked.plan.places[0].lamps };
    throw refuse(
      checked.problems.map(({ path, message }) => ({
        path: path.replace(/^places\.0/, String(index)),
        message,
      })),
    );
  });
}
