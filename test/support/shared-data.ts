/**
 * Measured weather and logger files lie beside the project in `../shared/data`, not in the repository. Tests that
 * need one are skipped, with the reason in their name, where it is missing.
 */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, test } from 'vitest';
import type { TestContext } from 'vitest';

const folder = new URL('../../../shared/data/', import.meta.url);

/** Absolute path of a file or folder under `../shared/data`, such as `weather/x.epw`; null where it is missing. */
export function sharedData(path: string): string | null {
  const file = fileURLToPath(new URL(path, folder));
  return existsSync(file) ? file : null;
}

/**
 * `describe` for tests that read shared data: `body` gets the absolute path. Where the data is missing, `body` does
 * not run (it may read the file at once) and one skipped test stands for the group.
 */
export function describeWithData(path: string, name: string, body: (file: string) => void): void {
  const file = sharedData(path);
  if (file !== null) {
    describe(name, () => body(file));
    return;
  }
  const skipReason = `../shared/data/${path} is not on this machine`;
  test.skip(`${name} [${skipReason}]`, { meta: { skipReason } });
}

/** Skips the running test and leaves the reason where the counts in `.ci/run` find it. */
export function skipBecause(context: TestContext, skipReason: string): never {
  context.task.meta.skipReason = skipReason;
  return context.skip(skipReason);
}

declare module 'vitest' {
  interface TaskMeta {
    /** Why the test was skipped, in words. */
    skipReason?: string;
  }
}
