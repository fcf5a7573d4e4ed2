/**
 * `npm run dev`: the window with live replacement where Electron is there; else `npm start` in a browser, begun
 * anew at every change of a source.
 */
import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { findElectron } from './electron-binary.ts';
import { desktopObstacle, thisMachine } from './obstacle.ts';
import { projectRoot } from './paths.ts';

function command(): string[] {
  if (findElectron() !== null && desktopObstacle(thisMachine()) === null) {
    const manifest = createRequire(import.meta.url).resolve('electron-vite/package.json');
    return [join(dirname(manifest), 'bin', 'electron-vite.js'), 'dev'];
  }
  const watched = ['core', 'electron', 'renderer'].map((room) => `--watch-path=${join(projectRoot, room)}`);
  return [...watched, join(projectRoot, 'electron', 'start.ts'), '--browser', '--no-open'];
}

const child = spawn(process.execPath, command(), { cwd: projectRoot, stdio: 'inherit' });
child.on('exit', (code) => process.exit(code ?? 1));
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => child.kill(signal));
