import { availableParallelism } from 'node:os';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';
import { BaseSequencer } from 'vitest/node';
import type { TestSpecification } from 'vitest/node';

// One zone for every run: a test that reads the machine's own zone would pass on one machine only.
process.env.TZ = 'Europe/Dublin';

/** All cores: by itself the runner leaves one free, and of two that is half. */
const maxWorkers = availableParallelism();

/** Without the times of an earlier run files go by their size; the plans at random take longest and are short files. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const long = (file: TestSpecification) => file.moduleId.includes('/test/whole/sweep-');
    return [...sorted.filter(long), ...sorted.filter((file) => !long(file))];
  }
}

/** Folders of the engine's tests: the rooms of `core/`, checks against sources, whole plans. */
const rooms = 'plan,sun,weather,fabric,light,heat,plants,season,night,advice,explain,reference,whole';
const engine = [`test/{${rooms}}/**/*.test.ts`];

export default defineConfig({
  test: {
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        // The engine is pure: its tests share one load of it a worker, which spares a fifth of their time.
        test: {
          name: 'engine',
          maxWorkers,
          isolate: false,
          include: engine,
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: 'unit',
          maxWorkers,
          include: ['test/**/*.test.ts'],
          exclude: ['test/renderer/**', 'test/e2e/**', 'test/bench/**', ...engine],
          testTimeout: 30_000,
        },
      },
      {
        // Components mount in happy-dom; the browser condition picks Svelte's client build.
        plugins: [svelte({ configFile: false })],
        resolve: { conditions: ['browser'] },
        test: {
          name: 'renderer',
          maxWorkers,
          include: ['test/renderer/**/*.test.ts'],
          environment: 'happy-dom',
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: 'e2e',
          include: ['test/e2e/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
