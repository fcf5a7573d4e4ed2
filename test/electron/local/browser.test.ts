import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Answer } from '../../../electron/contract.ts';
import { launchBrowser } from '../../support/chromium.ts';
import { useFolder } from '../store/folder.ts';
import { serve, serveShell } from './serve.ts';
import type { Served } from './serve.ts';

/** What the shell's own page tries; each line of the body then says how it went. */
const ownScript = `
  const say = (text) => document.body.append(text + '\\n');
  try { (0, eval)('1'); say('eval ran'); } catch { say('eval blocked'); }
  const inline = document.createElement('script');
  inline.textContent = 'window.inlineRan = true';
  document.body.append(inline);
  inline.remove();
  say(window.inlineRan ? 'inline ran' : 'inline blocked');
  say(document.cookie === '' ? 'cookie hidden' : 'cookie seen');
  const elsewhere = new URL(location.hash.slice(1));
  await fetch(elsewhere, { mode: 'no-cors' }).then(() => say('fetch ran'), () => say('fetch blocked'));
  const call = await fetch('/call/start', { method: 'POST', headers: { 'content-type': 'application/json' }, body: '{}' });
  say('call ' + (await call.text()));
  say('finished');
`;

/** What a page on another port tries: cookies do not tell ports apart, so the browser sends ours along. */
const hostilePage = (shell: string) => `<!doctype html><body><script type="module">
  const say = (text) => document.body.append(text + '\\n');
  const send = (options) => fetch('${shell}/call/start', { method: 'POST', credentials: 'include', body: '{}', ...options });
  await send({ mode: 'no-cors' }).then((reply) => say('blind ' + reply.type), () => say('blind failed'));
  await send({ headers: { 'content-type': 'application/json' } }).then(() => say('call ran'), () => say('call blocked'));
  await fetch('${shell}/', { credentials: 'include' }).then(() => say('read ran'), () => say('read blocked'));
  await new Promise((resolve) => {
    const script = Object.assign(document.createElement('script'), { src: '${shell}/plain.js' });
    script.onload = () => (say('script ran'), resolve());
    script.onerror = () => (say('script blocked'), resolve());
    document.body.append(script);
  });
  say('finished');
</script><iframe src="${shell}/"></iframe></body>`;

const newFolder = useFolder();
const call = vi.fn(async (): Promise<Answer> => ({ ok: true, value: 'done' }));
let browser: Browser;
let page: Page;
let shell: Awaited<ReturnType<typeof serveShell>>;
let elsewhere: Served;
const reached: string[] = [];

beforeAll(async () => {
  browser = await launchBrowser();
}, 60_000);
afterAll(() => browser.close());

beforeEach(async () => {
  const folder = newFolder();
  writeFileSync(
    join(folder, 'index.html'),
    '<!doctype html><body><script type="module" src="/app.js"></script></body>',
  );
  writeFileSync(join(folder, 'app.js'), ownScript);
  writeFileSync(join(folder, 'plain.js'), 'window.plain = true;');
  call.mockClear();
  reached.length = 0;
  shell = await serveShell(folder, call);
  elsewhere = await serve(() => (request, response) => {
    reached.push(request.url ?? '');
    response.setHeader('content-type', 'text/html');
    response.end(hostilePage(`http://127.0.0.1:${shell.port}`));
  });
  page = await (await browser.newContext()).newPage();
});
afterEach(async () => {
  await page.context().close();
  await shell.close();
  await elsewhere.close();
});

const finished = () =>
  page.waitForFunction(() => document.body?.lastChild?.textContent === 'finished\n', undefined, {
    timeout: 20_000,
  });
const said = async () => (await page.textContent('body'))!.split('\n');

describe('in a real browser', () => {
  it('our page makes its calls; eval, inline scripts and other servers are out of its reach', async () => {
    await page.goto(`${shell.address()}#http://127.0.0.1:${elsewhere.port}/leak`);
    await finished();
    const lines = await said();
    for (const line of ['eval blocked', 'inline blocked', 'cookie hidden', 'fetch blocked'])
      expect(lines).toContain(line);
    expect(lines).toContain('call {"ok":true,"value":"done"}');
    expect(reached).toEqual([]);
  });

  it('a page on another port gets nothing and changes nothing, though the browser sends our cookie', async () => {
    await page.goto(`${shell.address()}#http://127.0.0.1:${elsewhere.port}/leak`);
    await finished();
    call.mockClear();
    shell.answered.length = 0;
    await page.goto(`http://127.0.0.1:${elsewhere.port}/`);
    await finished();
    const lines = await said();
    for (const line of ['call blocked', 'read blocked', 'script blocked']) expect(lines).toContain(line);
    expect(call).not.toHaveBeenCalled();
    const calls = shell.answered.filter(({ path }) => path === '/call/start');
    expect(calls).toContainEqual({ path: '/call/start', withCookie: true, status: 403 });
    expect(calls.every(({ status }) => status === 403)).toBe(true);
    const framed = page.frames().filter((frame) => frame !== page.mainFrame());
    for (const frame of framed) expect(frame.url()).not.toBe(`http://127.0.0.1:${shell.port}/`);
  });
});
