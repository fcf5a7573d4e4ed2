import { EventEmitter } from 'node:events';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { callNames } from '../../../electron/contract.ts';
import type { Answer } from '../../../electron/contract.ts';
import { answerCalls } from '../../../electron/desktop/calls.ts';
import { lockDown } from '../../../electron/desktop/lockdown.ts';
import { callChannel, isOwnPage } from '../../../electron/desktop/origin.ts';
import { registerScheme, servePages } from '../../../electron/desktop/protocol.ts';
import { openWindow } from '../../../electron/desktop/window.ts';
import { readWindowState } from '../../../electron/desktop/window-state.ts';
import { contentSecurityPolicy } from '../../../electron/host/page.ts';
import { useFolder } from '../store/folder.ts';
import { standIn } from './electron-stand-in.ts';

vi.mock('electron', async () => (await import('./electron-stand-in.ts')).standIn);

const newFolder = useFolder();
const { asked, app } = standIn;
beforeEach(() => {
  asked.windows.length = 0;
  asked.invoked.length = 0;
  app.removeAllListeners();
});

describe('preload', () => {
  it('shows the page exactly the calls of the contract, each sent over the one channel', async () => {
    await import('../../../electron/desktop/preload.ts');
    expect([...asked.exposed.keys()]).toEqual(['winterbench']);
    const surface = asked.exposed.get('winterbench')!;
    expect(Object.keys(surface).sort()).toEqual([...callNames].sort());
    await surface.readPlan({ id: 'a' });
    expect(asked.invoked).toEqual([[callChannel, 'readPlan', { id: 'a' }]]);
  });
});

describe('calls in main', () => {
  const call = vi.fn(async (): Promise<Answer> => ({ ok: true, value: 7 }));
  const from = (url: string, top = true) => {
    const frame = { url };
    return { senderFrame: frame, sender: { mainFrame: top ? frame : { url } } };
  };
  const send = (event: unknown) =>
    (asked.handlers.get(callChannel) as (event: unknown, name: unknown, input: unknown) => unknown)(
      event,
      'start',
      null,
    );

  beforeEach(() => {
    call.mockClear();
    answerCalls({ call, close: async () => {} }, null);
  });

  it('go to the host from our own top page', async () => {
    expect(await send(from('winterbench://app/'))).toEqual({ ok: true, value: 7 });
    expect(call).toHaveBeenCalledWith('start', null);
  });

  it.each([
    ['a page elsewhere', from('https://example.org/')],
    ['a page that only begins like ours', from('winterbench://app.example.org/')],
    ['a file', from('file:///winterbench')],
    ['a frame inside our page', from('winterbench://app/', false)],
    ['a frame that is gone', { senderFrame: null, sender: { mainFrame: {} } }],
  ])('are refused from %s', async (_whose, event) => {
    expect(await send(event)).toMatchObject({ ok: false });
    expect(call).not.toHaveBeenCalled();
  });
});

describe('pages', () => {
  it('come from the built folder under our scheme with the security headers, and from nowhere else', async () => {
    const folder = join(newFolder(), 'renderer');
    mkdirSync(folder);
    writeFileSync(join(folder, 'index.html'), '<p>sheet</p>');
    writeFileSync(join(folder, '..', 'secret.txt'), 'secret');
    registerScheme();
    servePages(folder);
    expect(asked.schemes[0]).toEqual({
      scheme: 'winterbench',
      privileges: { standard: true, secure: true, supportFetchAPI: true },
    });
    const get = asked.handlers.get('winterbench') as unknown as (request: Request) => Promise<Response>;
    const ask = (url: string, method = 'GET') => get({ url, method } as Request);
    const page = await ask('winterbench://app/');
    expect(await page.text()).toBe('<p>sheet</p>');
    expect(page.headers.get('content-security-policy')).toBe(contentSecurityPolicy);
    for (const url of [
      'winterbench://app/..%2fsecret.txt',
      'winterbench://other/',
      'winterbench://app/absent.js',
    ]) {
      expect((await ask(url)).status, url).toBe(404);
    }
    expect((await ask('winterbench://app/', 'POST')).status).toBe(404);
  });

  it('of our own are told from others', () => {
    expect(isOwnPage('winterbench://app/index.html', null)).toBe(true);
    expect(isOwnPage('http://localhost:5173/x', 'http://localhost:5173')).toBe(true);
    for (const other of ['http://localhost:5173/', 'about:blank', 'data:text/html,x', 'no address']) {
      expect(isOwnPage(other, null), other).toBe(false);
    }
  });
});

describe('the window', () => {
  it('is sandboxed and isolated, loads our page, and remembers where it stood', () => {
    app.userData = newFolder();
    const window = openWindow({ preload: '/p/preload.cjs', devServer: null });
    expect(asked.windows[0].loaded).toEqual(['winterbench://app/']);
    expect(asked.windows[0].options.webPreferences).toMatchObject({
      preload: '/p/preload.cjs',
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      webSecurity: true,
      webviewTag: false,
    });
    window.emit('close');
    const stored = { x: 10, y: 20, width: 900, height: 700, maximized: false };
    expect(JSON.parse(readFileSync(join(app.userData, 'window.json'), 'utf8'))).toEqual(stored);
    openWindow({ preload: '/p/preload.cjs', devServer: null });
    expect(asked.windows[1].options).toMatchObject({ x: 10, y: 20, width: 900, height: 700 });
  });

  it('takes its usual place where the remembered one is on no screen or unreadable', () => {
    const file = join(newFolder(), 'window.json');
    const screens = [{ x: 0, y: 0, width: 1920, height: 1080 }];
    const state = { x: 5000, y: 20, width: 900, height: 700, maximized: false };
    expect(readWindowState(file, screens)).toBeNull();
    writeFileSync(file, JSON.stringify(state));
    expect(readWindowState(file, screens)).toBeNull();
    writeFileSync(file, JSON.stringify({ ...state, x: 100 }));
    expect(readWindowState(file, screens)).toEqual({ ...state, x: 100 });
    for (const text of ['{', '[]', JSON.stringify({ ...state, x: 'left' })]) {
      writeFileSync(file, text);
      expect(readWindowState(file, screens), text).toBeNull();
    }
  });
});

describe('content', () => {
  it('may not leave our page, open windows, embed others or get permissions', () => {
    lockDown(null);
    const answered: boolean[] = [];
    asked.permissionRequest!(null, 'geolocation', (given) => answered.push(given));
    expect(answered).toEqual([false]);
    expect(asked.permissionCheck!()).toBe(false);

    let openHandler: (() => { action: string }) | null = null;
    const contents = Object.assign(new EventEmitter(), {
      setWindowOpenHandler: (handler: () => { action: string }) => (openHandler = handler),
    });
    app.emit('web-contents-created', {}, contents);
    expect(openHandler!()).toEqual({ action: 'deny' });
    const stopped = (name: string, details: object) => {
      const preventDefault = vi.fn();
      contents.emit(name, { preventDefault, ...details });
      return preventDefault.mock.calls.length === 1;
    };
    expect(stopped('will-frame-navigate', { isMainFrame: true, url: 'https://example.org/' })).toBe(true);
    expect(stopped('will-frame-navigate', { isMainFrame: false, url: 'winterbench://app/' })).toBe(true);
    expect(stopped('will-frame-navigate', { isMainFrame: true, url: 'winterbench://app/' })).toBe(false);
    expect(stopped('will-redirect', { url: 'https://example.org/' })).toBe(true);
    expect(stopped('will-attach-webview', {})).toBe(true);
  });
});
