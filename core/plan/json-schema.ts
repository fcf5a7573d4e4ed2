import { toJsonSchema } from '@valibot/to-json-schema';
import { planSchema, planSchemaVersion } from './schema.ts';

/**
 * The plan's format as JSON Schema (draft 2020-12). Checks across fields (a ridge above its eaves, names that
 * must exist) are `parsePlan`'s; the schema describes the shape, and ranges as `minimum` and `maximum`.
 */
export const planJsonSchema: Record<string, unknown> = {
  ...toJsonSchema(planSchema, { target: 'draft-2020-12', errorMode: 'ignore', typeMode: 'input' }),
  title: `Winterbench plan, version ${planSchemaVersion}`,
};
