/** What a machine has to offer a window, judged without starting anything. */

export interface Machine {
  readonly platform: string;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** User id where the platform has one. */
  readonly userId: number | null;
}

export function thisMachine(): Machine {
  return { platform: process.platform, environment: process.env, userId: process.getuid?.() ?? null };
}

export function hasDisplay({ platform, environment }: Machine): boolean {
  if (platform === 'win32' || platform === 'darwin') return true;
  return Boolean(environment.DISPLAY || environment.WAYLAND_DISPLAY);
}

/** Why no Electron window can open here, in words that end a sentence; null where nothing stands against it. */
export function desktopObstacle(machine: Machine): string | null {
  if (!hasDisplay(machine)) return 'there is no display here';
  if (machine.platform === 'linux' && machine.userId === 0) {
    return 'Electron does not run as root with its sandbox on';
  }
  return null;
}
