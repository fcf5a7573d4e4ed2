import { join } from 'node:path';
import { app, BrowserWindow, screen } from 'electron';
import { pageOrigin } from './origin.ts';
import { readWindowState, writeWindowState } from './window-state.ts';

interface WindowParts {
  /** The built preload script. */
  readonly preload: string;
  readonly devServer: string | null;
}

/** Opens the one window where it stood last, shown when its first picture is ready. */
export function openWindow({ preload, devServer }: WindowParts): BrowserWindow {
  const stateFile = join(app.getPath('userData'), 'window.json');
  const state = readWindowState(
    stateFile,
    screen.getAllDisplays().map((display) => display.workArea),
  );
  const { x, y, width, height } = state ?? { x: undefined, y: undefined, width: 1440, height: 900 };
  const window = new BrowserWindow({
    x,
    y,
    width,
    height,
    minWidth: 720,
    minHeight: 480,
    show: false,
    title: 'Winterbench',
    webPreferences: {
      preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      spellcheck: false,
    },
  });
  if (state?.maximized) window.maximize();
  window.once('ready-to-show', () => window.show());
  window.on('close', () =>
    writeWindowState(stateFile, { ...window.getNormalBounds(), maximized: window.isMaximized() }),
  );
  void window.loadURL(devServer ?? `${pageOrigin}/`);
  return window;
}
