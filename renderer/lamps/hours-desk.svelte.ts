import type { LampPlacing, LampPlacings, Plan } from '../../core/index.ts';
import type { Bench } from '../state/bench.svelte.ts';
import { planWith } from './options.ts';

/** Where the hours of one lamp of the plan are best put: the question, how far it is, and the answer. */
export class HoursDesk {
  #bench: Bench;
  #search = $state.raw<AbortController | null>(null);
  #plan = $state.raw<Plan | null>(null);

  tried = $state.raw<readonly LampPlacing[]>([]);
  answer = $state.raw<LampPlacings | null>(null);
  /** Mean outdoor temperature of each hour of a winter's day [°C]. */
  outdoors = $state.raw<readonly number[]>([]);
  error = $state<string | null>(null);
  stopped = $state(false);

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  get running(): boolean {
    return this.#search !== null;
  }
  /** True where the plan is no longer the one the placings were worked out for. */
  get outdated(): boolean {
    return this.answer !== null && this.#plan !== this.#bench.plan;
  }

  stop() {
    this.#search?.abort(new DOMException('stopped by the user', 'AbortError'));
  }

  /** Drops what was worked out: another place or lamp is looked at. */
  clear() {
    this.stop();
    this.#search = null;
    this.answer = null;
    this.tried = [];
    this.error = null;
    this.stopped = false;
  }

  /** Works the placings out; a newer question cancels the one that runs. */
  async start(placeId: string, lampId: string) {
    this.clear();
    const mine = new AbortController();
    this.#search = mine;
    this.#plan = this.#bench.plan;
    const onPlacing = (placing: LampPlacing) => {
      if (this.#search === mine) this.tried = [...this.tried, placing];
    };
    try {
      const found = await this.#bench.engine.placing(this.#plan, placeId, lampId, onPlacing, mine.signal);
      if (this.#search !== mine) return;
      this.answer = found.placings;
      this.outdoors = found.outdoors;
    } catch (failure) {
      if (this.#search !== mine) return;
      if (mine.signal.aborted) this.stopped = true;
      else this.error = failure instanceof Error ? failure.message : String(failure);
    } finally {
      if (this.#search === mine) this.#search = null;
    }
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
