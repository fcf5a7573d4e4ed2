import { planSchemaVersion } from './schema.ts';

export type Migration =
  { readonly ok: true; readonly plan: unknown } | { readonly ok: false; readonly message: string };

/** Brings a plan of an older schema version to the present one; one from the future is refused. */
export function migratePlan(input: unknown): Migration {
  if (typeof input !== 'object' || input === null) return { ok: true, plan: input };
  const version = (input as { schemaVersion?: unknown }).schemaVersion;
  if (typeof version === 'number' && version > planSchemaVersion) {
    return {
      ok: false,
      message: `this plan was written by a newer Winterbench (plan version ${version}; this one reads up to ${planSchemaVersion})`,
    };
  }
  return { ok: true, plan: input };
}
