import { spawn } from 'node:child_process';

function opener(platform: string): [string, ...string[]] {
  if (platform === 'win32') return ['rundll32', 'url.dll,FileProtocolHandler'];
  if (platform === 'darwin') return ['open'];
  return ['xdg-open'];
}

/** Hands an address to the user's browser. False where the machine has no way to do so. */
export function openBrowser(url: string): Promise<boolean> {
  const [program, ...before] = opener(process.platform);
  return new Promise((settle) => {
    const child = spawn(program, [...before, url], { stdio: 'ignore', detached: true });
    child.on('error', () => settle(false));
    child.on('spawn', () => {
      child.unref();
      settle(true);
    });
  });
}
