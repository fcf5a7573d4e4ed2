import type {
  DampAdvice,
  DampChoice,
  LampComparison,
  LampOption,
  LampPlacing,
  LampView,
  NightInput,
  NightResult,
  Plan,
  SeasonResult,
  Way,
  WaysResult,
  Wish,
} from '../../core/index.ts';
import type { Host } from '../../electron/contract.ts';
import type { FoundPlacings } from '../worker/messages.ts';
import { unpackSeason } from '../worker/season-parcel.ts';
import { EngineThread } from './engine-thread.ts';

/**
 * The engine in its workers: one for the sheet and the night (which starts from the season the sheet has), one
 * for lamps, one each for the placing of a lamp's hours, the search for ways and advice against damp, which can be
 * stopped. The page waits for none of them.
 */
export class Engine {
  #sheet: EngineThread;
  #desk: EngineThread;
  #placing: EngineThread;
  #search: EngineThread;
  #damp: EngineThread;
  #waiting: {
    plan: Plan;
    settle: (result: SeasonResult | null) => void;
    refuse: (error: unknown) => void;
  } | null = null;
  #running = false;
  #former: SeasonResult | null = null;

  constructor(host: Host) {
    this.#sheet = new EngineThread(host, 'sheet');
    this.#desk = new EngineThread(host, 'desk');
    this.#placing = new EngineThread(host, 'placing');
    this.#search = new EngineThread(host, 'search');
    this.#damp = new EngineThread(host, 'damp');
  }

  /** The season of a plan. One runs and at most one waits: null where a later request took the waiting one's place. */
  season(plan: Plan): Promise<SeasonResult | null> {
    return new Promise((settle, refuse) => {
      this.#waiting?.settle(null);
      this.#waiting = { plan, settle, refuse };
      void this.#next();
    });
  }

  async #next() {
    if (this.#running || !this.#waiting) return;
    const { plan, settle, refuse } = this.#waiting;
    this.#waiting = null;
    this.#running = true;
    try {
      const parcel = await this.#sheet.ask('season', { plan });
      this.#former = unpackSeason(parcel, this.#former);
      settle(this.#former);
    } catch (error) {
      refuse(error);
    } finally {
      this.#running = false;
      void this.#next();
    }
  }

  night(plan: Plan, input: NightInput): Promise<NightResult> {
    return this.#sheet.ask('night', { plan, input });
  }

  lamps(
    plan: Plan,
    placeId: string,
    options: readonly LampOption[],
    view: LampView,
  ): Promise<readonly LampComparison[]> {
    return this.#desk.ask('lamps', { plan, placeId, options, view });
  }

  /** Where a lamp's hours are best put, each placing told as it is run; stopped as `ways` is. */
  placing(
    plan: Plan,
    placeId: string,
    lampId: string,
    onPlacing?: (placing: LampPlacing) => void,
    signal?: AbortSignal,
  ): Promise<FoundPlacings> {
    const ask = () => this.#placing.ask('placing', { plan, placeId, lampId }, onPlacing);
    return stoppable(this.#placing, signal, ask);
  }

  /** Ways to a wish, each told as it is found. Aborting `signal` stops the search and rejects with its reason. */
  ways(plan: Plan, wish: Wish, onWay?: (way: Way) => void, signal?: AbortSignal): Promise<WaysResult> {
    return stoppable(this.#search, signal, () => this.#search.ask('ways', { plan, wish }, onWay));
  }

  /** What would help against damp in a place, each choice told as it is found; stopped as `ways` is. */
  damp(
    plan: Plan,
    placeId: string,
    onChoice?: (choice: DampChoice) => void,
    signal?: AbortSignal,
  ): Promise<DampAdvice> {
    return stoppable(this.#damp, signal, () => this.#damp.ask('damp', { plan, placeId }, onChoice));
  }
}

/** Asks a thread; aborting `signal` ends the thread and with it the question. */
async function stoppable<Answer>(
  thread: EngineThread,
  signal: AbortSignal | undefined,
  ask: () => Promise<Answer>,
): Promise<Answer> {
  signal?.throwIfAborted();
  const stop = () => thread.stop(signal?.reason);
  signal?.addEventListener('abort', stop, { once: true });
  try {
    return await ask();
  } finally {
    signal?.removeEventListener('abort', stop);
  }
}
