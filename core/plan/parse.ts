import * as v from 'valibot';
import { planSchema } from './schema.ts';
import type { Plan } from './schema.ts';
import { references } from './references.ts';
import { migratePlan } from './migrate.ts';
import type { Problem } from './problem.ts';

export type { Problem };

export type PlanReading =
  { readonly ok: true; readonly plan: Plan } | { readonly ok: false; readonly problems: readonly Problem[] };

/** At most this many problems are listed; a plan that is wrong everywhere is not worth more. */
const mostProblems = 40;

/** Checks anything against the plan's schema and its own cross references (coverings, groups, places, sizes). */
export function parsePlan(input: unknown): PlanReading {
  const migrated = migratePlan(input);
  if (!migrated.ok) return { ok: false, problems: [{ path: 'schemaVersion', message: migrated.message }] };
  const reading = v.safeParse(planSchema, migrated.plan);
  if (!reading.success) {
    const problems = reading.issues.slice(0, mostProblems).map((issue) => ({
      path: v.getDotPath(issue) ?? '',
      message: plain(issue),
    }));
    return { ok: false, problems };
  }
  const problems = references(reading.output);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, plan: reading.output };
}

/** What the schema found, in words: a field that is missing, one it does not know, a value of the wrong kind. */
function plain(issue: { message: string; expected: string | null; received: string }): string {
  const { message, expected, received } = issue;
  if (message.startsWith('Invalid key')) {
    if (expected === 'never') return `expected no field of this name, got ${received}`;
    return 'expected this field, got nothing';
  }
  if (received === 'undefined') return message.replace(/, got undefined$/, ', got nothing');
  const many = message.replace(
    /^Invalid length: Expected (>=|<=)?(\d+) but received (\d+)$/,
    (_all, bound: string | undefined, count: string, got: string) =>
      `expected a list of ${bound === '>=' ? 'at least ' : bound === '<=' ? 'at most ' : ''}${count}, got ${got}`,
  );
  return many.replace(/^Invalid type: Expected (.*) but received (.*)$/, 'expected $1, got $2');
}
