import type { Certainty, LotCertainty, Plan } from '../../core/index.ts';
import type { Bench } from '../state/bench.svelte.ts';

/** The bench must have been quiet for this long before winters are drawn [ms]. */
export const quietBefore = 1500;

/** How sure the sheet is: grown in the background once the bench is quiet, grey from the first change on. */
export class CertaintyDesk {
  #ask: Bench['engine']['certainty'];
  #plan: Plan | null = null;
  /** The plan whose result stands. */
  #of: Plan | null = null;
  #done = false;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #running: AbortController | null = null;
  #result = $state.raw<Certainty | null>(null);
  #stale = $state(false);
  #failure = $state('');
  #growing = $state(false);

  constructor(ask: Bench['engine']['certainty']) {
    this.#ask = ask;
  }

  /** What the samples say so far; of a plan gone by where `stale`. */
  get result(): Certainty | null {
    return this.#result;
  }
  get stale(): boolean {
    return this.#stale;
  }
  get growing(): boolean {
    return this.#growing;
  }
  get failure(): string {
    return this.#failure;
  }
  lot(lotId: string): LotCertainty | null {
    return this.#result?.lots.find((each) => each.lotId === lotId) ?? null;
  }

  /** Told of every change on the bench. `shown` is what the sheet shows; `quiet` where nothing is tried or worked out. */
  watch(shown: Plan, quiet: boolean): void {
    this.#stale = this.#result !== null && shown !== this.#of;
    if (shown === this.#plan && (this.#done || this.#running)) return;
    this.stop();
    if (quiet) this.#timer = setTimeout(() => void this.#grow(shown), quietBefore);
  }

  /** Ends what is under way; what is known stays. */
  stop(): void {
    clearTimeout(this.#timer);
    this.#running?.abort(new DOMException('The bench has changed.', 'AbortError'));
    this.#running = null;
    this.#growing = false;
  }

  async #grow(plan: Plan): Promise<void> {
    const running = new AbortController();
    this.#running = running;
    this.#plan = plan;
    this.#done = false;
    this.#failure = '';
    this.#growing = true;
    const take = (certainty: Certainty) => {
      if (this.#running !== running) return;
      this.#result = certainty;
      this.#of = plan;
      this.#stale = false;
    };
    try {
      take(await this.#ask(plan, take, running.signal));
      if (this.#running === running) this.#done = true;
    } catch (error) {
      if (running.signal.aborted) return;
      this.#failure = error instanceof Error ? error.message : String(error);
      this.#done = true;
    } finally {
      if (this.#running === running) {
        this.#running = null;
        this.#growing = false;
      }
    }
  }
}

const desks = new WeakMap<Bench, CertaintyDesk>();

/** The one desk of a bench, so that what is known outlasts a look at another view. */
export function certaintyDesk(bench: Bench): CertaintyDesk {
  const known = desks.get(bench);
  if (known) return known;
  const desk = new CertaintyDesk((...asked) => bench.engine.certainty(...asked));
  desks.set(bench, desk);
  return desk;
}
