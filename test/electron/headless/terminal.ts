import { readFileSync } from 'node:fs';
import { run } from '../../../electron/headless/run.ts';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly notes: string;
  /** Text files it wrote, by path. */
  readonly written: Readonly<Record<string, string>>;
}

/** Runs one verb in this process; `files` stand before those on disk. */
export function terminal(
  words: readonly string[],
  files: Readonly<Record<string, string | Uint8Array>> = {},
): Ran {
  let out = '';
  let notes = '';
  const written: Record<string, string> = {};
  const code = run(words, {
    readFile: (path) => {
      const content = files[path];
      if (content === undefined) return readFileSync(path);
      return typeof content === 'string' ? new TextEncoder().encode(content) : content;
    },
    writeFile: (path, text) => {
      written[path] = text;
    },
    out: (text) => (out += text),
    note: (text) => (notes += `${text}\n`),
    nowMs: () => Date.UTC(2026, 0, 15, 17),
  });
  return { code, out, notes, written };
}
