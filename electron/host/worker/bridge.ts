import { Worker } from 'node:worker_threads';
import type { Answer } from '../../contract.ts';
import type { FromHost, HostSetting, ToHost } from './messages.ts';

/** The host as the shells hold it: calls go to its thread, answers come back as promises. */
export interface HostThread {
  call(name: string, input: unknown): Promise<Answer>;
  /** Lets calls under way finish, then closes the store. */
  close(): Promise<void>;
}

/** Rejects with an Error in plain words where the store cannot be opened. */
export async function startHost(workerFile: URL, setting: HostSetting): Promise<HostThread> {
  const worker = new Worker(workerFile, { workerData: setting });
  const waiting = new Map<number, (answer: Answer) => void>();
  const ended = deferred<void>();
  const opened = deferred<void>();
  let fault = 'the store is closed';
  let running = true;
  let nextTicket = 1;

  const take = (message: FromHost) => {
    if (message.kind === 'ready') opened.resolve();
    else if (message.kind === 'failed') opened.reject(new Error(message.message));
    else if (message.kind === 'answer') {
      waiting.get(message.ticket)?.(message.answer);
      waiting.delete(message.ticket);
    }
  };
  worker.on('message', take);
  worker.on('error', (error) => {
    fault = String(error);
    opened.reject(error);
  });
  worker.on('exit', () => {
    running = false;
    opened.reject(new Error(`The store's thread ended before it was open (${fault}).`));
    for (const resolve of waiting.values()) resolve(stopped(fault));
    waiting.clear();
    ended.resolve();
  });

  const send = (message: ToHost) => worker.postMessage(message);
  await opened.promise;
  return {
    call(name, input) {
      if (!running) return Promise.resolve(stopped(fault));
      const ticket = nextTicket++;
      const { promise, resolve } = deferred<Answer>();
      waiting.set(ticket, resolve);
      try {
        send({ kind: 'call', ticket, name, input });
      } catch (error) {
        // Nested beyond what can be copied to another thread, or something that cannot be copied at all.
        waiting.delete(ticket);
        return Promise.resolve(unsendable(error));
      }
      return promise;
    },
    async close() {
      if (running) send({ kind: 'close' });
      await ended.promise;
    },
  };
}

function deferred<T>() {
  let resolve!: (value: T) => void;
  let reject!: (reason: Error) => void;
  const promise = new Promise<T>((...settle) => ([resolve, reject] = settle));
  return { promise, resolve, reject };
}

const stopped = (why: string): Answer => ({
  ok: false,
  error: { code: 'internal', message: `Winterbench's store has stopped (${why}). Start Winterbench again.` },
});

const unsendable = (error: unknown): Answer => ({
  ok: false,
  error: { code: 'refused', message: `What was sent cannot be read (${String(error)}).` },
});
