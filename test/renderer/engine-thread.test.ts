import { beforeEach, describe, expect, it, vi } from 'vitest';
import { demonstrationPlan } from '../../core/index.ts';
import type { Certainty } from '../../core/index.ts';
import type { Host } from '../../electron/contract.ts';
import { Engine } from '../../renderer/state/engine.ts';
import type { FromWorker, ToWorker } from '../../renderer/worker/messages.ts';

/** Workers that keep what they are sent, in the order they were started; the test answers. */
const { started, FakeWorker } = vi.hoisted(() => {
  class FakeWorker {
    readonly name: string;
    readonly sent: ToWorker[] = [];
    onmessage: ((event: { data: FromWorker }) => void) | null = null;
    ended = false;
    constructor(options: { name: string }) {
      this.name = options.name;
      started.push(this);
    }
    postMessage(message: ToWorker) {
      this.sent.push(message);
    }
    terminate() {
      this.ended = true;
    }
  }
  const started: FakeWorker[] = [];
  return { started, FakeWorker };
});

vi.mock('../../renderer/worker/engine-worker.ts?worker', () => ({ default: FakeWorker }));

const pieceOf = (winters: number) => ({ winters }) as Certainty;

const idOf = (message: ToWorker) => ('id' in message ? message.id : NaN);

describe('certainty in its thread', () => {
  beforeEach(() => void started.splice(0));
  const asked = async (onGrow?: (piece: Certainty) => void, signal?: AbortSignal) => {
    const engine = new Engine({} as Host);
    const answer = engine.certainty(demonstrationPlan, onGrow, signal);
    answer.catch(() => undefined);
    await Promise.resolve();
    await Promise.resolve();
    return { engine, answer, worker: started[0] };
  };

  it('tells every winter and then the whole, in a thread of its own', async () => {
    const told: number[] = [];
    const { answer, worker } = await asked(({ winters }) => told.push(winters));
    expect(started.map(({ name }) => name)).toEqual(['certainty']);
    const id = idOf(worker.sent[0]);
    for (const winters of [1, 2])
      worker.onmessage?.({ data: { kind: 'piece', id, piece: pieceOf(winters) } });
    worker.onmessage?.({ data: { kind: 'done', id, answer: pieceOf(3), milliseconds: 1 } });
    expect(await answer).toEqual(pieceOf(3));
    expect(told).toEqual([1, 2]);
  });
  it('is stopped by its signal at once, and the worker, told so, lives on for the next question', async () => {
    const told = vi.fn();
    const stop = new AbortController();
    const { engine, answer, worker } = await asked(told, stop.signal);
    const id = idOf(worker.sent[0]);
    stop.abort(new Error('the plan changed'));
    await expect(answer).rejects.toThrow('the plan changed');
    expect(worker.sent.at(-1)).toEqual({ kind: 'cancel', id });
    worker.onmessage?.({ data: { kind: 'piece', id, piece: pieceOf(4) } });
    expect(told).not.toHaveBeenCalled();
    const next = engine.certainty(demonstrationPlan);
    await Promise.resolve();
    await Promise.resolve();
    expect(started.length).toBe(1);
    expect(worker.ended).toBe(false);
    worker.onmessage?.({ data: { kind: 'done', id: id + 1, answer: pieceOf(9), milliseconds: 1 } });
    expect(await next).toEqual(pieceOf(9));
  });
  it('asks nothing where it is stopped before', async () => {
    const { answer } = await asked(undefined, AbortSignal.abort(new Error('no longer')));
    await expect(answer).rejects.toThrow('no longer');
    expect(started).toEqual([]);
  });
  it('leaves its signal alone once it is answered', async () => {
    const stop = new AbortController();
    const { answer, worker } = await asked(undefined, stop.signal);
    const id = idOf(worker.sent[0]);
    worker.onmessage?.({ data: { kind: 'done', id, answer: pieceOf(1), milliseconds: 1 } });
    await answer;
    stop.abort();
    expect(worker.sent.length).toBe(1);
  });
});
