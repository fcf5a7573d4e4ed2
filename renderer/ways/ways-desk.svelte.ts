import type { Plan, Way, WaysResult, Wish } from '../../core/index.ts';
import type { Bench } from '../state/bench.svelte.ts';
import type { WishDraft } from './wish.ts';
import { firstWish, ranked, wishOf } from './wish.ts';

/**
 * The wish, the search for ways to it and what it found. It outlives the view, so that a try on the sheet loses
 * none; what follows from its state are getters, since a `$derived` would end with the view that first read it.
 */
export class WaysDesk {
  #bench: Bench;
  #found = $state.raw<readonly Way[]>([]);
  #search = $state.raw<AbortController | null>(null);
  #plan = $state.raw<Plan | null>(null);

  #draft = $state.raw<WishDraft | null>(null);

  result = $state.raw<WaysResult | null>(null);
  /** The wish that was asked; null before the first search. */
  asked = $state.raw<WishDraft | null>(null);
  stopped = $state(false);
  error = $state<string | null>(null);

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
  get ways(): readonly Way[] {
    return this.result?.ways ?? ranked(this.#found);
  }
  get running(): boolean {
    return this.#search !== null;
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
    this.#search?.abort(new DOMException('stopped by the user', 'AbortError'));
  }

  async start() {
    const { wish } = this;
    if (wish === null) return;
    this.stop();
    const mine = new AbortController();
    this.#search = mine;
    this.#found = [];
    this.result = null;
    this.error = null;
    this.stopped = false;
    this.#draft = this.draft;
    this.asked = this.#draft;
    this.#plan = this.#bench.plan;
    const onWay = (way: Way) => {
      if (this.#search === mine) this.#found = [...this.#found, way];
    };
    try {
      const answer = await this.#bench.engine.ways(this.#plan, wish, onWay, mine.signal);
      if (this.#search === mine) this.result = answer;
    } catch (failure) {
      if (this.#search !== mine) return;
      if (mine.signal.aborted) this.stopped = true;
      else this.error = failure instanceof Error ? failure.message : String(failure);
    } finally {
      if (this.#search === mine) this.#search = null;
    }
  }
}

const desks = new WeakMap<Bench, WaysDesk>();

/** The one desk of a bench. */
export function waysDesk(bench: Bench): WaysDesk {
  const desk = desks.get(bench) ?? new WaysDesk(bench);
  desks.set(bench, desk);
  return desk;
}
