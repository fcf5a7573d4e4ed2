import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

// One zone for every run: a test that reads the machine's own zone would pass on one machine only.
process.env.TZ = 'Europe/Dublin';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['test/**/*.test.ts'],
          exclude: ['test/renderer/**', 'test/e2e/**', 'test/bench/**'],
          testTimeout: 30_000,
        },
      },
      {
        // Components mount in happy-dom; the browser condition picks Svelte's client build.
        plugins: [svelte({ configFile: false })],
        resolve: { conditions: ['browser'] },
        test: {
          name: 'renderer',
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
