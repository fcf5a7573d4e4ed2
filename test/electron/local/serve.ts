import { createServer as createHttpServer } from 'node:http';
import type { RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { getRequestListener } from '@hono/node-server';
import type { HostThread } from '../../../electron/host/worker/bridge.ts';
import { createGuard } from '../../../electron/local/guard.ts';
import { createServer } from '../../../electron/local/server.ts';

export interface Served {
  readonly port: number;
  close(): Promise<void>;
}

/** Any listener on a free port of 127.0.0.1. */
export async function serve(listener: (port: number) => RequestListener): Promise<Served> {
  const server = createHttpServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  server.on('request', listener(port));
  return {
    port,
    async close() {
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      server.closeAllConnections();
      await closed;
    },
  };
}

/** A request as the server saw it, and the status it answered. */
export interface Answered {
  readonly path: string;
  readonly withCookie: boolean;
  readonly status: number;
}

/** The loopback server before a host of the test's own, and what hands out addresses. */
export async function serveShell(rendererFolder: string, call: HostThread['call']) {
  let address!: () => string;
  const answered: Answered[] = [];
  const served = await serve((port) => {
    const guard = createGuard(port);
    address = guard.address;
    const app = createServer({ host: { call, close: async () => {} }, guard, rendererFolder });
    const listener = getRequestListener(app.fetch);
    return (request, response) => {
      const { url = '', headers } = request;
      const withCookie = headers.cookie !== undefined;
      response.on('finish', () => answered.push({ path: url, withCookie, status: response.statusCode }));
      void listener(request, response);
    };
  });
  return { ...served, address, answered };
}
