/** The thread that owns the store: neither an import nor a large save stops the window. */
import { parentPort, workerData } from 'node:worker_threads';
import { createHost } from '../host.ts';
import { isStoreError, storeMessage } from '../store/failure.ts';
import { createStore } from '../store/store.ts';
import type { Store } from '../store/store.ts';
import type { FromHost, HostSetting, ToHost } from './messages.ts';

const port = parentPort;
if (port === null) throw new Error('expected to run as a worker thread, got the main thread');

const tell = (message: FromHost) => port.postMessage(message);
const now = () => Date.now();

function open(folder: string): Store | null {
  try {
    return createStore({ folder, now });
  } catch (error) {
    if (!isStoreError(error)) throw error;
    tell({ kind: 'failed', message: storeMessage(error) });
    return null;
  }
}

const { dataFolder, shell, version } = workerData as HostSetting;
const store = open(dataFolder);
if (store === null) port.close();
else {
  const answer = createHost({ store, shell, version, now });
  port.on('message', (message: ToHost) => {
    if (message.kind === 'call') {
      tell({ kind: 'answer', ticket: message.ticket, answer: answer(message.name, message.input) });
      return;
    }
    store.close();
    tell({ kind: 'closed' });
    port.close();
  });
  tell({ kind: 'ready' });
}
