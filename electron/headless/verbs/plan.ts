import { demonstrationPlan, planJsonSchema } from '../../../core/index.ts';
import { readOptions } from '../options.ts';
import type { World } from '../world.ts';

/** `schema`: the plan's JSON Schema. */
export function schema(words: readonly string[], world: World): void {
  readOptions(words, {}, []);
  world.out(`${JSON.stringify(planJsonSchema, null, 2)}\n`);
}

/** `demo`: the demonstration plan, to edit and to give back. */
export function demo(words: readonly string[], world: World): void {
  readOptions(words, {}, []);
  world.out(`${JSON.stringify(demonstrationPlan, null, 2)}\n`);
}
