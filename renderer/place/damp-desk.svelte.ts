import type { DampAdvice, DampChoice, Plan } from '../../core/index.ts';
import type { Bench } from '../state/bench.svelte.ts';

/**
 * What would help against damp in a place, as far as it is worked out. The newest question wins; it outlives the
 * view, so that looking elsewhere loses nothing. What follows from its state are getters, since a `$derived` would
 * end with the view that first read it.
 */
export class DampDesk {
  #bench: Bench;
  #search = $state.raw<AbortController | null>(null);
  #plan = $state.raw<Plan | null>(null);
  #found = $state.raw<readonly DampChoice[]>([]);

  placeId = $state<string | null>(null);
  advice = $state.raw<DampAdvice | null>(null);
  stopped = $state(false);
  error = $state<string | null>(null);

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  get running(): boolean {
    return this.#search !== null;
  }
  get choices(): readonly DampChoice[] {
    return this.advice?.choices ?? this.#found;
  }
  /** True where the plan looked at is no longer the one this was worked out for. */
  get outdated(): boolean {
    return this.#plan !== null && this.#plan !== this.#bench.shown;
  }

  stop() {
    this.#search?.abort(new DOMException('stopped by the user', 'AbortError'));
  }

  async start(placeId: string) {
    this.stop();
    const mine = new AbortController();
    const plan = this.#bench.shown;
    this.#search = mine;
    this.#plan = plan;
    this.#found = [];
    this.placeId = placeId;
    this.advice = null;
    this.error = null;
    this.stopped = false;
    const onChoice = (choice: DampChoice) => {
      if (this.#search === mine) this.#found = [...this.#found, choice];
    };
    try {
      const advice = await this.#bench.engine.damp(plan, placeId, onChoice, mine.signal);
      if (this.#search === mine) this.advice = advice;
    } catch (failure) {
      if (this.#search !== mine) return;
      if (mine.signal.aborted) this.stopped = true;
      else this.error = failure instanceof Error ? failure.message : String(failure);
    } finally {
      if (this.#search === mine) this.#search = null;
    }
  }
}

const desks = new WeakMap<Bench, DampDesk>();

/** The one desk of a bench. */
export function dampDesk(bench: Bench): DampDesk {
  const desk = desks.get(bench) ?? new DampDesk(bench);
  desks.set(bench, desk);
  return desk;
}
