import * as v from 'valibot';
import { findWays } from '../../../core/index.ts';
import type { Plan, Wish } from '../../../core/index.ts';
import { planFile, weatherFor } from '../files.ts';
import { neededText, readOptions, textOption } from '../options.ts';
import type { Given } from '../options.ts';
import { RefusedInput, WrongUse } from '../outcome.ts';
import { serialise } from '../serialise.ts';
import type { World } from '../world.ts';

const options = {
  wish: { type: 'string' },
  weather: { type: 'string' },
  lot: { type: 'string' },
  place: { type: 'string' },
  from: { type: 'string' },
  to: { type: 'string' },
  weeks: { type: 'string' },
  'never-below': { type: 'string' },
  temperature: { type: 'string' },
  least: { type: 'string' },
} as const;

const day = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(364));
const celsius = v.pipe(v.number(), v.minValue(-40), v.maxValue(50));
const wishSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('keep-growing'), lotId: v.string(), fromDay: day, toDay: day }),
  v.strictObject({
    kind: v.literal('safe-rest'),
    lotId: v.string(),
    neverBelow: celsius,
    weeks: v.pipe(v.number(), v.minValue(1), v.maxValue(52)),
  }),
  v.strictObject({ kind: v.literal('hold-temperature'), placeId: v.string(), temperature: celsius }),
  v.strictObject({
    kind: v.literal('daily-light'),
    placeId: v.string(),
    least: v.pipe(v.number(), v.minValue(0.1), v.maxValue(60)),
  }),
]) satisfies v.GenericSchema<unknown, Wish>;

/**
 * `ways PLAN --wish`: the single changes that would fulfil a wish, ranked. The wish is its kind with options
 * (`--wish daily-light --place tent --least 12`) or the whole as JSON.
 */
export function ways(words: readonly string[], world: World): void {
  const given = readOptions(words, options, ['PLAN']);
  const wish = wishOf(given);
  const plan = planFile(world, given.positionals[0]);
  known(plan, wish);
  const weather = weatherFor(world, plan, textOption(given, 'weather'));
  world.out(serialise(findWays(plan, weather, wish)));
}

function wishOf(given: Given): Wish {
  const text = neededText(given, 'wish');
  const reading = v.safeParse(
    wishSchema,
    text.trimStart().startsWith('{') ? wishJson(text) : wishFromOptions(text, given),
  );
  if (reading.success) return reading.output;
  const reasons = reading.issues.map((issue) => {
    const field = v.getDotPath(issue) ?? 'wish';
    return issue.message.startsWith('Invalid key') && issue.expected !== 'never'
      ? `${field}: expected this option, got nothing`
      : `${field}: ${issue.message}`;
  });
  throw new WrongUse(`--wish: ${reasons.join('; ')}`);
}

function wishJson(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    if (error instanceof SyntaxError) throw new WrongUse(`--wish: not JSON (${error.message})`);
    throw error;
  }
}

/** Options named as a grower would, put under the wish's own names; those not given are left out and so refused. */
function wishFromOptions(kind: string, { values }: Given): unknown {
  const number = (name: string) => (values[name] === undefined ? undefined : Number(values[name]));
  const all = {
    lotId: values['lot'],
    placeId: values['place'],
    fromDay: number('from'),
    toDay: number('to'),
    weeks: number('weeks'),
    neverBelow: number('never-below'),
    temperature: number('temperature'),
    least: number('least'),
  };
  return { kind, ...Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) };
}

function known(plan: Plan, wish: Wish): void {
  const [word, id, list] =
    'lotId' in wish ? ['lot', wish.lotId, plan.lots] : ['place', wish.placeId, plan.places];
  if (list.some((item) => item.id === id)) return;
  throw new RefusedInput(
    `The plan has no ${word} ${id}; it has ${list.map((item) => item.id).join(', ') || 'none'}.`,
  );
}
