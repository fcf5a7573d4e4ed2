import { readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';

const folderName = 'Winterbench';

interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly home: string;
}

/**
 * Where the user's plans are kept: `WINTERBENCH_DATA` where it is set, else the platform's folder for
 * program data (XDG Base Directory, Windows roaming AppData, macOS Application Support). Both shells use it.
 */
export function dataFolder(
  { platform, env, home }: Surroundings = { platform: process.platform, env: process.env, home: homedir() },
): string {
  if (env['WINTERBENCH_DATA']) return resolve(env['WINTERBENCH_DATA']);
  if (platform === 'win32') return join(env['APPDATA'] ?? join(home, 'AppData', 'Roaming'), folderName);
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', folderName);
  return join(env['XDG_DATA_HOME'] || join(home, '.local', 'share'), 'winterbench');
}

/** The program's version, from the package file `levels` folders above the caller. */
export function programVersion(packageFile: URL): string {
  const { version } = JSON.parse(readFileSync(packageFile, 'utf8')) as { version: string };
  return version;
}
