/** The repository as its own tests see it. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));

export function readJson(file: string) {
  return JSON.parse(readFileSync(root + file, 'utf8'));
}

/** Every tracked file, relative to the root; null outside a git checkout. */
export function trackedFiles(): string[] | null {
  try {
    return execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8', stdio: 'pipe' })
      .split('\0')
      .filter(Boolean);
  } catch {
    return null;
  }
}
