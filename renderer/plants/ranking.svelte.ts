import { SvelteMap } from 'svelte/reactivity';
import type { Plan } from '../../core/index.ts';

interface Answer<Rank> {
  readonly plan: Plan;
  readonly ranks: readonly Rank[];
}

/**
 * Rankings by what they are of (a group, or a place). One is worked out at a time; while the plan changes faster than
 * that, only the newest is asked for. The former answer stays to be seen until the new one is there.
 */
export class Ranking<Rank> {
  #work: (plan: Plan, id: string) => Promise<readonly Rank[]>;
  readonly #wanted: Record<string, Plan> = {};
  #running = false;
  readonly #answers = new SvelteMap<string, Answer<Rank>>();
  readonly #errors = new SvelteMap<string, { readonly plan: Plan; readonly words: string }>();

  constructor(work: (plan: Plan, id: string) => Promise<readonly Rank[]>) {
    this.#work = work;
  }

  /** The newest answer there is; null before the first. */
  of(id: string): readonly Rank[] | null {
    return this.#answers.get(id)?.ranks ?? null;
  }
  /** True where neither an answer nor a failure is there for this plan. */
  awaits(id: string, plan: Plan): boolean {
    return this.#answers.get(id)?.plan !== plan && this.#errors.get(id)?.plan !== plan;
  }
  /** Why there is no newer answer; null where nothing failed. */
  error(id: string): string | null {
    return this.#errors.get(id)?.words ?? null;
  }

  /** Asks for an answer to this plan, unless it is there or on its way. */
  ask(plan: Plan, id: string): void {
    this.#wanted[id] = plan;
    void this.#next();
  }

  #pending(): [string, Plan] | undefined {
    return Object.entries(this.#wanted).find(([id, plan]) => this.awaits(id, plan));
  }

  async #next(): Promise<void> {
    const next = this.#running ? undefined : this.#pending();
    if (next === undefined) return;
    const [id, plan] = next;
    this.#running = true;
    try {
      const ranks = await this.#work(plan, id);
      if (this.#wanted[id] === plan) {
        this.#answers.set(id, { plan, ranks });
        this.#errors.delete(id);
      }
    } catch (failure) {
      const words = failure instanceof Error ? failure.message : String(failure);
      this.#errors.set(id, { plan, words });
    } finally {
      this.#running = false;
    }
    void this.#next();
  }
}
