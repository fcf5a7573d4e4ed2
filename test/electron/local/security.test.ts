import { request } from 'node:http';
import type { IncomingHttpHeaders } from 'node:http';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Answer } from '../../../electron/contract.ts';
import { contentSecurityPolicy } from '../../../electron/host/page.ts';
import { useFolder } from '../store/folder.ts';
import { serveShell } from './serve.ts';

interface Reply {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
}

const newFolder = useFolder();
const call = vi.fn(async (): Promise<Answer> => ({ ok: true, value: 'done' }));
let served: Awaited<ReturnType<typeof serveShell>>;
let port: number;
let address: string;
let another: () => string;

beforeEach(async () => {
  const folder = join(newFolder(), 'renderer');
  mkdirSync(folder);
  writeFileSync(join(folder, 'index.html'), '<p>sheet</p>');
  writeFileSync(join(folder, 'app.js'), 'export {};');
  writeFileSync(join(folder, '..', 'secret.txt'), 'secret');
  writeFileSync(join(folder, '.hidden'), 'hidden');
  call.mockClear();
  served = await serveShell(folder, call);
  port = served.port;
  another = served.address;
  address = another();
});
afterEach(() => served.close());

/** `fetch` sets Host itself; these tests need to set it wrong. */
function send(path: string, headers: Record<string, string> = {}, method = 'GET', body = ''): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port, path, method, headers }, (response) => {
      let text = '';
      response.setEncoding('utf8');
      response.on('data', (part: string) => (text += part));
      response.on('end', () => resolve({ status: response.statusCode!, headers: response.headers, text }));
    });
    asked.on('error', reject);
    asked.end(body);
  });
}

const path = (url: string) => url.slice(url.indexOf('/', 8));
const cookieOf = (reply: Reply) => reply.headers['set-cookie']![0].split(';')[0];
const enter = async () => cookieOf(await send(path(address)));
const callHeaders = (cookie: string) => ({
  cookie,
  origin: `http://127.0.0.1:${port}`,
  'content-type': 'application/json',
});

describe('the loopback shell', () => {
  it('opens with its printed address and trades the token for a cookie that scripts and other sites cannot use', async () => {
    const reply = await send(path(address));
    expect(reply.status).toBe(200);
    expect(reply.text).toBe('<p>sheet</p>');
    const [cookie] = reply.headers['set-cookie']!;
    expect(cookie).toMatch(new RegExp(`^winterbench-${port}=[\\w-]{43}; HttpOnly; SameSite=Strict; Path=/$`));
    expect(cookie).not.toContain(new URL(address).searchParams.get('token')!);
    expect((await send('/app.js', { cookie: cookieOf(reply) })).text).toBe('export {};');
  });

  it('takes a token once, and each address handed out has its own', async () => {
    const cookie = await enter();
    expect((await send(path(address))).status).toBe(403);
    expect((await send(path(address), { cookie })).status).toBe(200);
    expect((await send(path(another()))).status).toBe(200);
  });

  it.each(['/', '/index.html', '/app.js', '/absent', '/call/start'])(
    'answers nothing at %s without the token',
    async (where) => {
      const reply = await send(where);
      expect(reply.status).toBe(401);
      expect(reply.text).toBe('Open the address that Winterbench printed when it started.\n');
      expect(reply.headers['set-cookie']).toBeUndefined();
    },
  );

  it.each(['', 'x', 'A'.repeat(43)])('refuses the wrong token "%s"', async (token) => {
    expect((await send(`/?token=${token}`)).status).toBe(403);
  });

  it('refuses a wrong, empty or foreign cookie', async () => {
    for (const cookie of [
      `winterbench-${port}=`,
      `winterbench-${port}=x`,
      `winterbench-1=${'A'.repeat(43)}`,
    ]) {
      expect((await send('/', { cookie })).status, cookie).toBe(401);
    }
  });

  it.each(['example.org', 'localhost', '127.0.0.1', '127.0.0.1:1'])(
    'refuses the Host %s even with the cookie',
    async (host) => {
      const reply = await send('/', { host, cookie: await enter() });
      expect(reply.status).toBe(403);
    },
  );

  it.each(['http://example.org', 'null', 'http://127.0.0.1:1', 'https://127.0.0.1'])(
    'refuses the Origin %s even with the cookie',
    async (origin) => {
      const headers = { ...callHeaders(await enter()), origin };
      expect((await send('/call/start', headers, 'POST', 'null')).status).toBe(403);
      expect(call).not.toHaveBeenCalled();
    },
  );

  it('refuses a call that names no origin', async () => {
    const { cookie, 'content-type': type } = callHeaders(await enter());
    expect((await send('/call/start', { cookie, 'content-type': type }, 'POST', 'null')).status).toBe(403);
  });

  it('does not trade a token in anything but opening a page', async () => {
    const headers = { origin: `http://127.0.0.1:${port}`, 'content-type': 'application/json' };
    expect((await send(`/call/start${path(address).slice(1)}`, headers, 'POST', 'null')).status).toBe(401);
    expect(call).not.toHaveBeenCalled();
    expect((await send(path(address), {}, 'HEAD')).status).toBe(405);
    expect((await send(path(address))).status).toBe(200);
  });

  it.each([
    '/../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/%2e%2e%2fsecret.txt',
    '/..%5csecret.txt',
    '/.hidden',
    '/%00',
    '/%ff',
    '//secret.txt',
  ])('serves nothing outside the built folder: %s', async (where) => {
    const reply = await send(where, { cookie: await enter() });
    expect(reply.status).toBe(404);
    expect(reply.text).not.toContain('secret');
  });

  it('sends the strict policy with every answer, refusals too', async () => {
    const cookie = await enter();
    const replies = [await send('/', { cookie }), await send('/absent', { cookie }), await send('/')];
    for (const { headers } of replies) {
      expect(headers['content-security-policy']).toBe(contentSecurityPolicy);
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['referrer-policy']).toBe('no-referrer');
      expect(headers['access-control-allow-origin']).toBeUndefined();
    }
    expect(contentSecurityPolicy).not.toMatch(/unsafe|https?:|\*/);
  });

  it('passes a call on as it came and its answer back', async () => {
    const reply = await send('/call/readPlan', callHeaders(await enter()), 'POST', '{"id":"a"}');
    expect(reply.status).toBe(200);
    expect(JSON.parse(reply.text)).toEqual({ ok: true, value: 'done' });
    expect(call).toHaveBeenCalledWith('readPlan', { id: 'a' });
  });

  it('gives a refused call as the same JSON under its status', async () => {
    const error = { code: 'not-found', message: 'This plan is not here any more.' } as const;
    call.mockResolvedValueOnce({ ok: false, error });
    const reply = await send('/call/readPlan', callHeaders(await enter()), 'POST', '{"id":"a"}');
    expect(reply.status).toBe(404);
    expect(JSON.parse(reply.text)).toEqual({ ok: false, error });
  });

  it('refuses what is not JSON, by its name or by its content', async () => {
    const headers = callHeaders(await enter());
    const form = { ...headers, 'content-type': 'text/plain' };
    expect((await send('/call/start', form, 'POST', 'null')).status).toBe(422);
    expect((await send('/call/start', headers, 'POST', '{"a":')).status).toBe(422);
    expect(call).not.toHaveBeenCalled();
  });

  it('refuses a body of more than thirty million bytes, however it is announced', async () => {
    const headers = callHeaders(await enter());
    const body = 'x'.repeat(30_000_001);
    const announced: Record<string, string>[] = [
      { 'content-length': String(body.length) },
      { 'transfer-encoding': 'chunked' },
    ];
    for (const how of announced) {
      const reply = await send('/call/start', { ...headers, ...how }, 'POST', body);
      expect(reply.status).toBe(413);
      expect(JSON.parse(reply.text).error.code).toBe('too-large');
    }
    expect(call).not.toHaveBeenCalled();
  });
});
