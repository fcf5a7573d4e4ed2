/** `npm run -s winterbench -- VERB …`: the engine from a terminal. */
import { readFileSync, writeFileSync, writeSync } from 'node:fs';
import { run } from './run.ts';

/**
 * Writes all of it even where the pipe is full: exiting early would cut a long result. A reader that has
 * seen enough (`| head`) closes the pipe; that is no fault.
 */
function writeAll(descriptor: number, text: string): void {
  const bytes = Buffer.from(text, 'utf8');
  let written = 0;
  while (written < bytes.length) {
    try {
      written += writeSync(descriptor, bytes, written);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === 'EPIPE') return;
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5);
    }
  }
}

process.exitCode = run(process.argv.slice(2), {
  readFile: (path) => readFileSync(path === '-' ? 0 : path),
  writeFile: (path, text) => writeFileSync(path, text),
  out: (text) => writeAll(1, text),
  note: (text) => writeAll(2, `${text}\n`),
  nowMs: () => Date.now(),
});
