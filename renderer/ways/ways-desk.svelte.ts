import type { Plan, Way, WaysResult, Wish } from '../../core/index.ts';
import type { Bench } from '../state/bench.svelte.ts';
import { Search } from '../state/search.svelte.ts';
import type { WishDraft } from './wish.ts';
import { firstWish, ranked, wishOf } from './wish.ts';

/**
 * The wish, the search for ways to it and what it found. It outlives the view, so that a try on the sheet loses
 * none; what follows from its state are getters, since a `$derived` would end with the view that first read it.
 */
export class WaysDesk {
  #bench: Bench;
  #search = new Search<Way, WaysResult>();
  #plan = $state.raw<Plan | null>(null);

  #draft = $state.raw<WishDraft | null>(null);

  /** The wish that was asked; null before the first search. */
  asked = $state.raw<WishDraft | null>(null);

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  /** The sentence as it stands; a suggestion until it is touched. */
  get draft(): WishDraft {
    const { plan, season, lotId, placeId } = this.#bench;
    return this.#draft ?? firstWish(plan, season, lotId, placeId);
  }
  set draft(draft: WishDraft) {
    this.#draft = draft;
  }
  get wish(): Wish | null {
    return wishOf(this.draft, this.#bench.plan);
  }
  get result(): WaysResult | null {
    return this.#search.answer;
  }
  get ways(): readonly Way[] {
    return this.result?.ways ?? ranked(this.#search.found);
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
  /** True where the plan is no longer the one the ways were found for. */
  get outdated(): boolean {
    return this.#plan !== null && this.#plan !== this.#bench.plan;
  }
  /** The lot the wish that was asked is about; null where it is about a place. */
  get targetLotId(): string | null {
    const { asked } = this;
    return asked !== null && (asked.kind === 'keep-growing' || asked.kind === 'safe-rest')
      ? asked.lotId
      : null;
  }

  stop() {
    this.#search.stop();
  }

  async start() {
    const { wish } = this;
    if (wish === null) return;
    const { plan } = this.#bench;
    this.#draft = this.draft;
    this.asked = this.#draft;
    this.#plan = plan;
    await this.#search.run((onWay, signal) => this.#bench.engine.ways(plan, wish, onWay, signal));
  }
}

const desks = new WeakMap<Bench, WaysDesk>();

/** The one desk of a bench. */
export function waysDesk(bench: Bench): WaysDesk {
  const desk = desks.get(bench) ?? new WaysDesk(bench);
  desks.set(bench, desk);
  return desk;
}
