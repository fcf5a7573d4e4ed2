/** The Electron shell: one window on the built interface, the host in a thread of its own. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { app, BrowserWindow, dialog } from 'electron';
import { startHost } from '../host/worker/bridge.ts';
import type { HostThread } from '../host/worker/bridge.ts';
import { dataFolder } from '../platform.ts';
import { answerCalls } from './calls.ts';
import { lockDown } from './lockdown.ts';
import { setMenu } from './menu.ts';
import { registerScheme, servePages } from './protocol.ts';
import { openWindow } from './window.ts';

/** Vite's server while developing; a packaged program never loads from it. */
const devServer = app.isPackaged ? null : (process.env['ELECTRON_RENDERER_URL'] ?? null);
const here = import.meta.dirname;
const parts = { preload: join(here, '../preload/preload.cjs'), devServer };

async function run(): Promise<void> {
  const folder = dataFolder();
  await app.whenReady();
  let host: HostThread;
  try {
    const setting = { dataFolder: folder, shell: 'desktop', version: app.getVersion() } as const;
    host = await startHost(new URL('./host.worker.js', import.meta.url), setting);
  } catch (error) {
    dialog.showErrorBox('Winterbench cannot start', (error as Error).message);
    app.exit(1);
    return;
  }
  lockDown(devServer);
  servePages(join(here, '../renderer'));
  answerCalls(host, devServer);
  setMenu(process.platform, app.isPackaged);
  openWindow(parts);
  keepRunning(host);
}

function keepRunning(host: HostThread): void {
  app.on('second-instance', () => {
    const [window] = BrowserWindow.getAllWindows();
    if (window?.isMinimized()) window.restore();
    window?.focus();
  });
  app.on('activate', () => {
    if (BrowserWindow.getAllWindows().length === 0) openWindow(parts);
  });
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
  let closed = false;
  app.on('will-quit', (event) => {
    if (closed) return;
    event.preventDefault();
    void host.close().then(() => {
      closed = true;
      app.quit();
    });
  });
}

/** Chromium's own files beside the plans, so that one folder holds all the program leaves on the machine. */
function claimFolder(): boolean {
  const folder = join(dataFolder(), 'window');
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    dialog.showErrorBox(
      'Winterbench cannot start',
      `It cannot keep its data in ${folder}: ${(error as Error).message}`,
    );
    return false;
  }
  app.setPath('userData', folder);
  return true;
}

registerScheme();
app.enableSandbox();
if (!claimFolder()) app.exit(1);
else if (app.requestSingleInstanceLock()) void run();
else app.quit();
