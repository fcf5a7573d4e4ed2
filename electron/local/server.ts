import { Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import type { Answer, HostFailure } from '../contract.ts';
import { pageFile, securityHeaders } from '../host/page.ts';
import type { HostThread } from '../host/worker/bridge.ts';
import type { createGuard } from './guard.ts';

/** Longest request body [bytes]: the largest weather file in base64 with room around it. */
const longestBody = 30_000_000;

const statusOf: Readonly<Record<HostFailure['code'], 404 | 413 | 422 | 500 | 507>> = {
  refused: 422,
  'not-found': 404,
  'unknown-call': 404,
  'too-large': 413,
  store: 507,
  internal: 500,
};

interface ServerParts {
  readonly host: HostThread;
  readonly guard: ReturnType<typeof createGuard>;
  readonly rendererFolder: string;
}

/** The loopback server: the built page by GET, calls by POST `/call/<name>` with a JSON body. */
export function createServer({ host, guard, rendererFolder }: ServerParts) {
  const app = new Hono();

  app.use(async (context, next) => {
    const { req } = context;
    for (const [name, value] of Object.entries(securityHeaders)) context.header(name, value);
    const entry = guard.admit({
      method: req.method,
      host: req.header('host'),
      origin: req.header('origin'),
      cookies: req.header('cookie'),
      token: req.query('token') ?? null,
    });
    if (entry.let === 'out') return context.text(`${entry.message}\n`, entry.status);
    if (entry.let === 'in-with-cookie') context.header('set-cookie', entry.cookie);
    await next();
  });

  app.post(
    '/call/:name',
    bodyLimit({ maxSize: longestBody, onError: (context) => context.json(tooLarge, 413) }),
    async (context) => {
      if (!context.req.header('content-type')?.startsWith('application/json')) {
        return context.json(refused('A call is sent as JSON.'), 422);
      }
      const body = parsed(await context.req.text());
      if (body === undefined) return context.json(refused('The call was not readable JSON.'), 422);
      const answer = await host.call(context.req.param('name'), body);
      return context.json(answer, answer.ok ? 200 : statusOf[answer.error.code]);
    },
  );

  app.get('*', async (context) => {
    const file = await pageFile(rendererFolder, new URL(context.req.url).pathname);
    if (file === null) return context.text('There is nothing at this address.\n', 404);
    return context.body(file.bytes, 200, { 'content-type': file.contentType });
  });

  app.onError((error, context) => {
    console.error(error);
    return context.json(
      refused('Something went wrong inside Winterbench; the terminal says more.', 'internal'),
      500,
    );
  });
  return {
    /** Hono would answer HEAD as GET and so use up the start token: HEAD is refused before it. */
    fetch(request: Request): Response | Promise<Response> {
      if (request.method !== 'HEAD') return app.fetch(request);
      return new Response(null, { status: 405, headers: { ...securityHeaders, allow: 'GET, POST' } });
    },
  };
}

const refused = (message: string, code: HostFailure['code'] = 'refused'): Answer => ({
  ok: false,
  error: { code, message },
});
const tooLarge = refused(`A call takes at most ${longestBody / 1e6} million bytes.`, 'too-large');

/** The JSON value, null for an empty body, undefined where it is not JSON. */
function parsed(text: string): unknown {
  if (text === '') return null;
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}
