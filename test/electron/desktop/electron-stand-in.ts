import { EventEmitter } from 'node:events';

type Handler = (...values: never[]) => unknown;

/** What the shell asked of Electron, kept for the tests to look at. */
export interface Asked {
  readonly exposed: Map<string, Record<string, (input?: unknown) => Promise<unknown>>>;
  readonly invoked: unknown[][];
  readonly handlers: Map<string, Handler>;
  readonly schemes: { scheme: string; privileges: Record<string, boolean> }[];
  /** Words of error boxes, roles of the top menu, ends of the program. */
  readonly errors: string[];
  readonly menu: unknown[];
  readonly ends: string[];
  readonly windows: { options: Record<string, unknown>; loaded: string[] }[];
  permissionRequest:
    ((contents: unknown, permission: string, answer: (given: boolean) => void) => void) | null;
  permissionCheck: (() => boolean) | null;
}

const asked: Asked = {
  exposed: new Map(),
  invoked: [],
  handlers: new Map(),
  schemes: [],
  errors: [],
  menu: [],
  ends: [],
  windows: [],
  permissionRequest: null,
  permissionCheck: null,
};

class Window extends EventEmitter {
  readonly #record: Asked['windows'][number];
  static getAllWindows(): Window[] {
    return [];
  }
  constructor(options: Record<string, unknown>) {
    super();
    this.#record = { options, loaded: [] };
    asked.windows.push(this.#record);
  }
  loadURL(address: string) {
    this.#record.loaded.push(address);
    return Promise.resolve();
  }
  show() {}
  maximize() {}
  getNormalBounds() {
    return { x: 10, y: 20, width: 900, height: 700 };
  }
  isMaximized() {
    return false;
  }
}

const app = Object.assign(new EventEmitter(), {
  userData: '',
  isPackaged: true,
  getPath: () => app.userData,
  setPath: (_name: string, folder: string) => (app.userData = folder),
  getVersion: () => '1.2.3',
  whenReady: () => Promise.resolve(),
  enableSandbox: () => {},
  requestSingleInstanceLock: () => true,
  quit: () => asked.ends.push('quit'),
  exit: (code: number) => asked.ends.push(`exit ${code}`),
});

/** The part of Electron's main and preload surface that the shell uses. */
export const standIn = {
  asked,
  app,
  BrowserWindow: Window,
  dialog: { showErrorBox: (title: string, words: string) => asked.errors.push(`${title}: ${words}`) },
  Menu: {
    buildFromTemplate: (template: unknown[]) => template,
    setApplicationMenu: (template: unknown[]) => asked.menu.push(...template),
  },
  screen: { getAllDisplays: () => [{ workArea: { x: 0, y: 0, width: 1920, height: 1080 } }] },
  contextBridge: {
    exposeInMainWorld: (name: string, surface: Record<string, () => Promise<unknown>>) =>
      asked.exposed.set(name, surface),
  },
  ipcRenderer: {
    invoke: (...words: unknown[]) => {
      asked.invoked.push(words);
      return Promise.resolve({ ok: true, value: null });
    },
  },
  ipcMain: { handle: (channel: string, handler: Handler) => asked.handlers.set(channel, handler) },
  protocol: {
    registerSchemesAsPrivileged: (schemes: Asked['schemes']) => asked.schemes.push(...schemes),
    handle: (scheme: string, handler: Handler) => asked.handlers.set(scheme, handler),
  },
  session: {
    defaultSession: {
      setPermissionRequestHandler: (handler: NonNullable<Asked['permissionRequest']>) =>
        (asked.permissionRequest = handler),
      setPermissionCheckHandler: (handler: () => boolean) => (asked.permissionCheck = handler),
      setDevicePermissionHandler: () => {},
    },
  },
};
