/** Whether `out/` was built from the sources as they stand. */
import { createHash } from 'node:crypto';
import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { outFolder, projectRoot } from './paths.ts';

const sources = [
  'core/**/*.{ts,json}',
  'electron/**/*.{ts,json}',
  'renderer/**/*',
  'package-lock.json',
  'electron.vite.config.ts',
];

/** Written last into a finished build. */
export const fingerprintName = 'sources.sha256';

/**
 * One hash over name and content of every file the build reads. Contents rather than times: a checkout, a copy or
 * a deleted file changes times in ways that say nothing about the sources.
 */
export function sourceFingerprint(root: string = projectRoot): string {
  const hash = createHash('sha256');
  const entries = globSync(sources, { cwd: root, withFileTypes: true }).filter((entry) => entry.isFile());
  const files = entries.map((entry) => join(entry.parentPath, entry.name)).sort();
  for (const file of files) {
    hash.update(file.slice(root.length)).update('\0').update(readFileSync(file)).update('\0');
  }
  return hash.digest('hex');
}

export function isStale(fingerprint: string, folder: string = outFolder): boolean {
  const file = join(folder, fingerprintName);
  return !existsSync(file) || readFileSync(file, 'utf8') !== fingerprint;
}
