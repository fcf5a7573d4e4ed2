/** Child process of electron-binary.ts: downloads Electron, telling its parent the percentage, and unpacks it. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { electronFolder } from './electron-binary.ts';

const folder = electronFolder();
const readJson = (name: string) => JSON.parse(readFileSync(join(folder, name), 'utf8'));
const getter = createRequire(join(folder, 'package.json')).resolve('@electron/get');

let lastPercent = -1;
async function tellParent(progress: { percent: number }): Promise<void> {
  const percent = Math.floor(progress.percent * 100);
  if (percent === lastPercent) return;
  lastPercent = percent;
  process.send?.(percent);
}

try {
  const { downloadArtifact } = await import(pathToFileURL(getter).href);
  await downloadArtifact({
    version: readJson('package.json').version,
    artifactName: 'electron',
    checksums: readJson('checksums.json'),
    platform: process.platform,
    arch: process.arch,
    downloadOptions: { quiet: true, getProgressCallback: tellParent },
  });
  // The archive now lies in the download cache; Electron's own installer unpacks it from there.
  const unpacked = spawnSync(process.execPath, [join(folder, 'install.js')], { stdio: 'inherit' });
  process.exitCode = unpacked.status ?? 1;
} catch (error) {
  const cause = error instanceof Error && error.cause instanceof Error ? `: ${error.cause.message}` : '';
  console.error(error instanceof Error ? error.message + cause : String(error));
  process.exitCode = 1;
}
process.disconnect?.();
