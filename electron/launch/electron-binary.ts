/**
 * The Electron program inside node_modules. `require('electron')` is not used to find it: where the program is
 * missing that call starts a download and blocks until it ends.
 */
import { fork } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** A download that brings nothing for this long is given up [ms]. */
const stallLimitMs = 60_000;

export function electronFolder(): string {
  return dirname(createRequire(import.meta.url).resolve('electron/package.json'));
}

/** Path of the Electron program, null where it was never downloaded. */
export function findElectron(folder: string = electronFolder()): string | null {
  const pathFile = join(folder, 'path.txt');
  if (!existsSync(pathFile)) return null;
  const dist = process.env.ELECTRON_OVERRIDE_DIST_PATH ?? join(folder, 'dist');
  const program = join(dist, readFileSync(pathFile, 'utf8').trim());
  return existsSync(program) ? program : null;
}

/** Downloads the Electron program in a child process. Null when it is there, else why it is not. */
export function fetchElectron(limitMs: number = stallLimitMs): Promise<string | null> {
  console.log('The Electron program is not here yet: fetching it once (about 120 MB) …');
  const script = fileURLToPath(new URL('./fetch-electron.ts', import.meta.url));
  return new Promise((settle) => {
    const child = fork(script, { stdio: ['ignore', 'inherit', 'pipe', 'ipc'] });
    let complaint = '';
    let stalled = false;
    const giveUp = () => {
      stalled = true;
      child.kill('SIGKILL');
    };
    let timer = setTimeout(giveUp, limitMs);
    child.stderr!.on('data', (chunk) => (complaint += chunk));
    child.on('message', (percent) => {
      clearTimeout(timer);
      timer = setTimeout(giveUp, limitMs);
      process.stdout.write(`\r  ${percent} %`);
    });
    child.on('close', (code) => {
      clearTimeout(timer);
      process.stdout.write('\r');
      if (code === 0) settle(null);
      else if (stalled) settle(`the download of Electron stood still for ${limitMs / 1000} s`);
      else settle(`Electron could not be downloaded (${lastLine(complaint)})`);
    });
  });
}

function lastLine(text: string): string {
  return text.trim().split('\n').at(-1) || 'no reason given';
}
