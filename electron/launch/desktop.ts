/** Opening the Electron window from a terminal. */
import { spawn } from 'node:child_process';
import { fetchElectron, findElectron } from './electron-binary.ts';
import { desktopObstacle, thisMachine } from './obstacle.ts';
import { projectRoot } from './paths.ts';

/** An Electron that fails before this age never opened a window [ms]. */
const startMs = 8_000;

/**
 * Runs the desktop application until its window is closed. Null when it ran, else why it did not.
 * `insist` skips the look at display and user and lets Electron itself complain.
 */
export async function runDesktop(insist: boolean): Promise<string | null> {
  const obstacle = insist ? null : desktopObstacle(thisMachine());
  if (obstacle !== null) return obstacle;
  if (findElectron() === null) {
    const failure = await fetchElectron();
    if (failure !== null) return failure;
  }
  const program = findElectron();
  return program === null ? 'Electron is not where its installer puts it' : runElectron(program);
}

function runElectron(program: string): Promise<string | null> {
  const { ELECTRON_RUN_AS_NODE: _, ...environment } = process.env;
  const startedAt = Date.now();
  return new Promise((settle) => {
    const child = spawn(program, [projectRoot], { stdio: 'inherit', env: environment });
    child.on('error', (error) => settle(`Electron does not start (${error.message})`));
    child.on('exit', (code, signal) => {
      const failed = code !== 0;
      if (failed && Date.now() - startedAt < startMs) {
        settle(`Electron does not start (it ended with ${signal ?? `code ${code}`})`);
        return;
      }
      process.exitCode = code ?? 1;
      settle(null);
    });
  });
}
