import type { Plan } from '../../core/index.ts';
import type { Host } from '../../electron/contract.ts';
import type {
  CancelMessage,
  FromWorker,
  RequestMessage,
  RequestName,
  Requests,
  WeatherMessage,
} from '../worker/messages.ts';
import EngineWorker from '../worker/engine-worker.ts?worker';

interface Pending {
  readonly settle: (answer: unknown) => void;
  readonly refuse: (error: unknown) => void;
  readonly onPiece?: (piece: never) => void;
}

function bytesOf(base64: string): Uint8Array {
  return Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
}

/** One worker with the engine in it: started at the first question, ended and started anew when stopped. */
export class EngineThread {
  #host: Host;
  #name: string;
  #worker: Worker | null = null;
  #pending = new Map<number, Pending>();
  #known = new Set<string>();
  #lastId = 0;

  constructor(host: Host, name: string) {
    this.#host = host;
    this.#name = name;
  }

  /** @param signal aborting it rejects with its reason, and tells a question that looks for it to end */
  async ask<N extends RequestName>(
    name: N,
    ask: Requests[N]['ask'],
    onPiece?: (piece: Requests[N]['piece']) => void,
    signal?: AbortSignal,
  ): Promise<Requests[N]['answer']> {
    signal?.throwIfAborted();
    const weather = await this.#weatherFor(ask.plan);
    signal?.throwIfAborted();
    const worker = this.#started();
    if (weather) {
      worker.postMessage(weather);
      this.#known.add(weather.weatherId);
    }
    const id = (this.#lastId += 1);
    const cancel = () => this.#cancel(id, signal?.reason);
    signal?.addEventListener('abort', cancel, { once: true });
    const asked = new Promise<Requests[N]['answer']>((settle, refuse) => {
      this.#pending.set(id, {
        settle: settle as Pending['settle'],
        refuse,
        onPiece: onPiece as Pending['onPiece'],
      });
      const message: RequestMessage<N> = { kind: 'request', id, name, ask };
      worker.postMessage(message);
    });
    return asked.finally(() => signal?.removeEventListener('abort', cancel));
  }

  #cancel(id: number, reason: unknown) {
    const message: CancelMessage = { kind: 'cancel', id };
    this.#worker?.postMessage(message);
    this.#pending.get(id)?.refuse(reason);
    this.#pending.delete(id);
  }

  /** Ends the worker; every question still open is refused with `reason`. */
  stop(reason: unknown) {
    this.#worker?.terminate();
    this.#worker = null;
    this.#known.clear();
    const pending = [...this.#pending.values()];
    this.#pending.clear();
    for (const question of pending) question.refuse(reason);
  }

  #started(): Worker {
    if (this.#worker) return this.#worker;
    const worker = new EngineWorker({ name: this.#name });
    worker.onmessage = (event: MessageEvent<FromWorker>) => this.#receive(event.data);
    worker.onerror = (event) =>
      this.stop(new Error(event.message || 'the engine stopped; change anything to start it again'));
    this.#worker = worker;
    return worker;
  }

  #receive(message: FromWorker) {
    const question = this.#pending.get(message.id);
    if (!question) return;
    if (message.kind === 'piece') {
      question.onPiece?.(message.piece as never);
      return;
    }
    this.#pending.delete(message.id);
    if (message.kind === 'done') question.settle(message.answer);
    else question.refuse(new Error(message.message));
  }

  async #weatherFor(plan: Plan): Promise<WeatherMessage | null> {
    if (plan.climate.kind !== 'file' || this.#known.has(plan.climate.weatherId)) return null;
    const weatherId = plan.climate.weatherId;
    const file = await this.#host.readWeather({ id: weatherId });
    const { name, format } = file.record;
    return { kind: 'weather', weatherId, name, format, bytes: bytesOf(file.base64) };
  }
}
