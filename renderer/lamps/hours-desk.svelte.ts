import type { LampPlacing, LampPlacings, Plan } from '../../core/index.ts';
import type { Bench } from '../state/bench.svelte.ts';
import { Search } from '../state/search.svelte.ts';
import type { FoundPlacings } from '../worker/messages.ts';
import { planWith } from './options.ts';

/** Where the hours of one lamp of the plan are best put: the question, how far it is, and the answer. */
export class HoursDesk {
  #bench: Bench;
  #search = new Search<LampPlacing, FoundPlacings>();
  #plan = $state.raw<Plan | null>(null);

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  get tried(): readonly LampPlacing[] {
    return this.#search.found;
  }
  get answer(): LampPlacings | null {
    return this.#search.answer?.placings ?? null;
  }
  /** Mean outdoor temperature of each hour of a winter's day [°C]; empty before the answer. */
  get outdoors(): readonly number[] {
    return this.#search.answer?.outdoors ?? [];
  }
  get stopped(): boolean {
    return this.#search.stopped;
  }
  get error(): string | null {
    return this.#search.error;
  }
  get running(): boolean {
    return this.#search.running;
  }
  /** True where the plan is no longer the one the placings were worked out for. */
  get outdated(): boolean {
    return this.answer !== null && this.#plan !== this.#bench.plan;
  }

  stop() {
    this.#search.stop();
  }

  /** Drops what was worked out: another place or lamp is looked at. */
  clear() {
    this.#search.clear();
  }

  /** Works the placings out; a newer question cancels the one that runs. */
  async start(placeId: string, lampId: string) {
    const { plan } = this.#bench;
    this.#plan = plan;
    await this.#search.run((onPlacing, signal) =>
      this.#bench.engine.placing(plan, placeId, lampId, onPlacing, signal),
    );
  }

  /** The plan with a lamp's hours as a placing has them. */
  withHours(plan: Plan, placeId: string, placing: LampPlacing): Plan {
    const place = plan.places.find((one) => one.id === placeId);
    if (!place) return plan;
    const lamps = place.lamps.map((one) => (one.id === placing.lamp.id ? placing.lamp : one));
    return planWith(plan, { ...place, lamps });
  }
}

const desks = new WeakMap<Bench, HoursDesk>();

/** The one desk for hours of a bench. */
export function hoursDesk(bench: Bench): HoursDesk {
  const desk = desks.get(bench) ?? new HoursDesk(bench);
  desks.set(bench, desk);
  return desk;
}
