import { globSync } from 'node:fs';
import { basename } from 'node:path';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'electron-vite';

/** Worker threads of the host need a file of their own beside main: every `*.worker.ts` under electron/. */
function workerEntries(): Record<string, string> {
  const files = globSync('electron/**/*.worker.ts', { cwd: import.meta.dirname });
  return Object.fromEntries(files.map((file) => [basename(file, '.ts'), file]));
}

export default defineConfig({
  main: {
    build: {
      rolldownOptions: {
        input: { main: 'electron/desktop/main.ts', ...workerEntries() },
        output: { format: 'es', entryFileNames: '[name].js' },
      },
    },
  },
  preload: {
    build: {
      // A sandboxed preload may require `electron` only and must be CommonJS: bundle all else into it.
      externalizeDeps: false,
      rolldownOptions: {
        input: { preload: 'electron/desktop/preload.ts' },
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer: {
    root: 'renderer',
    plugins: [svelte({ configFile: false })],
    worker: { format: 'es' },
    build: {
      // The content security policy knows no data: scripts or fonts, so nothing is inlined.
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      rolldownOptions: { input: 'renderer/index.html' },
    },
  },
});
