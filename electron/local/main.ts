import { createServer as createHttpServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { getRequestListener } from '@hono/node-server';
import { startHost } from '../host/worker/bridge.ts';
import { dataFolder as platformDataFolder, programVersion } from '../platform.ts';
import { createGuard } from './guard.ts';
import { createServer } from './server.ts';

export interface LocalOptions {
  /** Where plans are kept; `WINTERBENCH_DATA` or the platform's folder by default. */
  readonly dataFolder?: string;
  /** 0, the default, takes a free one. */
  readonly port?: number;
  /** The built interface; `out/renderer` of the project by default. */
  readonly rendererFolder?: string;
}

export interface LocalShell {
  /** The address to open, with a token that is good once. */
  readonly url: string;
  readonly port: number;
  /** Another address that opens once, for a second browser. */
  newAddress(): string;
  close(): Promise<void>;
}

/** Serves the interface on 127.0.0.1 until closed. Rejects in plain words where the store or the port fails. */
export async function startLocal(options: LocalOptions = {}): Promise<LocalShell> {
  const { port = 0 } = options;
  const rendererFolder =
    options.rendererFolder ?? fileURLToPath(new URL('../../out/renderer/', import.meta.url));
  const host = await startHost(new URL('../host/worker/host.worker.ts', import.meta.url), {
    dataFolder: options.dataFolder ?? platformDataFolder(),
    shell: 'local',
    version: programVersion(new URL('../../package.json', import.meta.url)),
  });

  const server = createHttpServer();
  try {
    await new Promise<void>((resolve, reject) => {
      server.once('error', reject);
      server.listen(port, '127.0.0.1', resolve);
    });
  } catch (error) {
    await host.close();
    throw new Error(`Winterbench cannot listen on 127.0.0.1 port ${port}: ${(error as Error).message}`);
  }
  const bound = (server.address() as AddressInfo).port;
  const guard = createGuard(bound);
  server.on('request', getRequestListener(createServer({ host, guard, rendererFolder }).fetch));

  return {
    url: guard.address(),
    port: bound,
    newAddress: guard.address,
    async close() {
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      server.closeAllConnections();
      await closed;
      await host.close();
    },
  };
}
