import type { DampAdvice, DampChoice, Plan } from '../../core/index.ts';
import type { Bench } from '../state/bench.svelte.ts';
import { Search } from '../state/search.svelte.ts';

/** What would help against damp in a place, as far as it is worked out. */
export class DampDesk {
  #bench: Bench;
  #search = new Search<DampChoice, DampAdvice>();
  #plan = $state.raw<Plan | null>(null);

  placeId = $state<string | null>(null);

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  get advice(): DampAdvice | null {
    return this.#search.answer;
  }
  get running(): boolean {
    return this.#search.running;
  }
  get stopped(): boolean {
    return this.#search.stopped;
  }
  get error(): string | null {
    return this.#search.error;
  }
  get choices(): readonly DampChoice[] {
    return this.advice?.choices ?? this.#search.found;
  }
  /** True where the plan looked at is no longer the one this was worked out for. */
  get outdated(): boolean {
    return this.#plan !== null && this.#plan !== this.#bench.shown;
  }

  stop() {
    this.#search.stop();
  }

  async start(placeId: string) {
    const plan = this.#bench.shown;
    this.#plan = plan;
    this.placeId = placeId;
    await this.#search.run((onChoice, signal) => this.#bench.engine.damp(plan, placeId, onChoice, signal));
  }
}

const desks = new WeakMap<Bench, DampDesk>();

/** The one desk of a bench. */
export function dampDesk(bench: Bench): DampDesk {
  const desk = desks.get(bench) ?? new DampDesk(bench);
  desks.set(bench, desk);
  return desk;
}
