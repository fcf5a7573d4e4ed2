import type { NightInput, NightResult, Plan } from '../../core/index.ts';
import type { Bench } from '../state/bench.svelte.ts';
import { dateAt, firstNight, nightProblem } from './night.ts';

const wordsOf = (failure: unknown) => (failure instanceof Error ? failure.message : String(failure));
/** How long a forecast must stand before it is kept for next time [ms]. */
const keepAfter = 600;

/**
 * The forecast being typed and the night it gives. It outlives the view, so that coming back shows it at once;
 * what follows from its state are getters, since a `$derived` would end with the view that first read it.
 */
export class TonightDesk {
  #bench: Bench;
  #request = 0;
  #keeping: ReturnType<typeof setTimeout> | undefined;

  input: NightInput = $state.raw({} as NightInput);
  /** What the host remembered from last time; null where nothing was. */
  remembered = $state.raw<NightInput | null>(null);
  night = $state.raw<NightResult | null>(null);
  error = $state<string | null>(null);
  busy = $state(false);
  ready = $state(false);
  touched = $state(false);
  constructor(bench: Bench, nowMs: number) {
    this.#bench = bench;
    this.input = firstNight(bench.plan, dateAt(nowMs, bench.plan.site.timeZone));
  }

  /** Why the forecast cannot be worked with, in words; null where it can. */
  get problem(): string | null {
    return nightProblem(this.input);
  }

  /** Brings the date up to now and, the first time, the forecast that was typed last. */
  async open(nowMs: number) {
    const dateISO = dateAt(nowMs, this.#bench.plan.site.timeZone);
    if (this.ready) {
      if (this.input.dateISO !== dateISO) this.input = { ...this.input, dateISO };
      return;
    }
    try {
      this.remembered = await this.#bench.host.lastNight();
      if (this.remembered !== null && !this.touched) this.input = { ...this.remembered, dateISO };
    } catch (failure) {
      this.error = `The last forecast could not be read: ${wordsOf(failure)}`;
    }
    this.ready = true;
  }

  change(input: NightInput) {
    this.input = input;
    this.touched = true;
    clearTimeout(this.#keeping);
    if (nightProblem(input) !== null) return;
    this.#keeping = setTimeout(() => void this.#keep(input), keepAfter);
  }

  /** Asks the engine; an answer that a newer question has overtaken is dropped. */
  async ask(plan: Plan, input: NightInput) {
    const mine = ++this.#request;
    this.busy = true;
    try {
      const answer = await this.#bench.engine.night(plan, input);
      if (mine !== this.#request) return;
      this.night = answer;
      this.error = null;
    } catch (failure) {
      if (mine === this.#request) this.error = wordsOf(failure);
    } finally {
      if (mine === this.#request) this.busy = false;
    }
  }

  async #keep(input: NightInput) {
    try {
      await this.#bench.host.rememberNight({ night: input });
    } catch (failure) {
      this.error = `The forecast could not be kept: ${wordsOf(failure)}`;
    }
  }
}

const desks = new WeakMap<Bench, TonightDesk>();

/** The one desk of a bench. */
export function tonightDesk(bench: Bench, nowMs: number): TonightDesk {
  const desk = desks.get(bench) ?? new TonightDesk(bench, nowMs);
  desks.set(bench, desk);
  return desk;
}
