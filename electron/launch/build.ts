/**
 * `npm run build`: main, preload and renderer into `out/`.
 *
 *   --if-stale     only when the sources changed since the last build
 *   --out FOLDER   into another folder
 */
import { rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { build } from 'electron-vite';
import { outFolder, projectRoot } from './paths.ts';
import { fingerprintName, isStale, sourceFingerprint } from './stale.ts';

export async function buildAll(folder: string = outFolder): Promise<void> {
  const fingerprint = sourceFingerprint();
  rmSync(join(folder, fingerprintName), { force: true });
  await build({ root: projectRoot, logLevel: 'warn', build: { outDir: folder, emptyOutDir: true } });
  writeFileSync(join(folder, fingerprintName), fingerprint);
}

/** Builds what is stale; true where a build was needed. */
export async function buildIfStale(): Promise<boolean> {
  if (!isStale(sourceFingerprint())) return false;
  console.error('Building Winterbench …');
  await buildAll();
  return true;
}

if (import.meta.main) {
  const { values } = parseArgs({
    options: { 'if-stale': { type: 'boolean', default: false }, out: { type: 'string', default: outFolder } },
  });
  if (values['if-stale']) await buildIfStale();
  else await buildAll(resolve(values.out));
}
