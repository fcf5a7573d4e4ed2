/** `npm run build`: main, preload and renderer into `out/`. With `--if-stale` only when the sources changed. */
import { rmSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { build } from 'electron-vite';
import { outFolder, projectRoot } from './paths.ts';
import { fingerprintFile, isStale, sourceFingerprint } from './stale.ts';

export async function buildAll(): Promise<void> {
  const fingerprint = sourceFingerprint();
  rmSync(outFolder, { recursive: true, force: true });
  await build({ root: projectRoot, logLevel: 'warn' });
  writeFileSync(fingerprintFile, fingerprint);
}

/** Builds what is stale; true where a build was needed. */
export async function buildIfStale(): Promise<boolean> {
  if (!isStale(sourceFingerprint())) return false;
  console.error('Building Winterbench …');
  await buildAll();
  return true;
}

if (import.meta.main) {
  const { values } = parseArgs({ options: { 'if-stale': { type: 'boolean', default: false } } });
  if (values['if-stale']) await buildIfStale();
  else await buildAll();
}
