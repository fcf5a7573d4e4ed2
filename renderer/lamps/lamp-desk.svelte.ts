import type { LampComparison, LampOption, LampView, Place, Plan } from '../../core/index.ts';
import type { Bench } from '../state/bench.svelte.ts';
import { freshName } from '../place/edit.ts';
import type { LampDraft } from './options.ts';
import { draftOf, firstDrafts, freeId, mostOptions, placeWith, planWith } from './options.ts';

/**
 * The options being compared, place by place. It outlives the view, so that a try on the sheet loses none; what
 * follows from its state are getters, since a `$derived` would end with the view that first read it.
 */
export class LampDesk {
  #bench: Bench;
  #request = 0;
  #drafts = $state.raw<Readonly<Record<string, readonly LampDraft[]>>>({});
  #chosen = $state<string | null>(null);

  placeId = $state('');
  view = $state<LampView>('as-given');
  results = $state.raw<readonly LampComparison[]>([]);
  /** How the options were set side by side for these results. */
  resultsView = $state<LampView>('as-given');
  error = $state<string | null>(null);
  busy = $state(false);

  constructor(bench: Bench) {
    this.#bench = bench;
    const { places } = bench.plan;
    const chosen = places.find((place) => place.id === bench.placeId && place.lamps.length > 0);
    this.placeId = (chosen ?? places.find((place) => place.lamps.length > 0) ?? places[0])?.id ?? '';
  }

  get place(): Place | null {
    return this.#bench.plan.places.find((one) => one.id === this.placeId) ?? null;
  }
  /** The options beside what is there; a suggestion until the first is touched. */
  get drafts(): readonly LampDraft[] {
    return this.#drafts[this.placeId] ?? (this.place ? firstDrafts(this.place) : []);
  }
  get full(): boolean {
    return this.drafts.length + 1 >= mostOptions;
  }
  /** The option looked at closely: the one chosen, else the first; null where there is none. */
  get chosen(): LampDraft | null {
    return this.drafts.find((draft) => draft.id === this.#chosen) ?? this.drafts[0] ?? null;
  }

  indexOf(draft: LampDraft): number {
    return this.drafts.findIndex(({ id }) => id === draft.id);
  }

  /** An option run through the winter; null until all that are shown have been. */
  resultOf(draft: LampDraft): LampComparison | null {
    const { drafts, results } = this;
    return results.length === drafts.length + 1 ? (results[this.indexOf(draft) + 1] ?? null) : null;
  }

  choose(placeId: string) {
    this.placeId = placeId;
    this.results = [];
  }

  look(draftId: string) {
    this.#chosen = draftId;
  }

  add() {
    if (this.full || !this.place) return;
    const id = freeId(this.drafts);
    const there = this.place.lamps[0];
    const like = this.drafts.at(-1) ?? (there ? draftOf(there, id) : firstDrafts(this.place)[0]);
    const taken = this.drafts.map((draft) => draft.lamp.name);
    const stem = like.lamp.name.replace(/ \d+$/, '');
    const name = freshName((taken.includes(stem) ? stem : like.lamp.name).slice(0, 54), taken);
    // A copy has the results of what it is a copy of until its own are in.
    if (this.results.length === this.drafts.length + 1 && this.drafts.length > 0)
      this.results = [...this.results, this.results[this.results.length - 1]];
    this.#set([...this.drafts, { ...like, id, lamp: { ...like.lamp, id, name } }]);
    this.#chosen = id;
  }

  change(draft: LampDraft) {
    this.#set(this.drafts.map((one) => (one.id === draft.id ? draft : one)));
  }

  remove(id: string) {
    const at = this.drafts.findIndex((draft) => draft.id === id);
    if (this.results.length === this.drafts.length + 1)
      this.results = this.results.filter((_, index) => index !== at + 1);
    this.#set(this.drafts.filter((one) => one.id !== id));
  }

  /** An option carried into the plan and taken out again by undo stands at its place's desk once more. */
  bringBack(draft: LampDraft, placeId: string, at: number) {
    const drafts = this.#drafts[placeId] ?? [];
    if (drafts.length + 1 >= mostOptions) return;
    const id = drafts.some((one) => one.id === draft.id) ? freeId(drafts) : draft.id;
    this.#drafts = { ...this.#drafts, [placeId]: drafts.toSpliced(at, 0, { ...draft, id }) };
  }

  /** The plan with an option hung in the place instead of what is there. */
  withOption(plan: Plan, draft: LampDraft): Plan {
    const place = plan.places.find((one) => one.id === this.placeId);
    return place ? planWith(plan, placeWith(place, draft)) : plan;
  }

  /** What is shown is about to be asked for anew. */
  expect() {
    this.busy = true;
  }

  /** Asks the engine; an answer that a newer question has overtaken is dropped. */
  async ask(plan: Plan, placeId: string, options: readonly LampOption[], view: LampView) {
    const mine = ++this.#request;
    this.busy = true;
    try {
      const answer = await this.#bench.engine.lamps(plan, placeId, options, view);
      if (mine !== this.#request) return;
      this.results = answer;
      this.resultsView = view;
      this.error = null;
    } catch (failure) {
      if (mine === this.#request) this.error = failure instanceof Error ? failure.message : String(failure);
    } finally {
      if (mine === this.#request) this.busy = false;
    }
  }

  #set(drafts: readonly LampDraft[]) {
    this.#drafts = { ...this.#drafts, [this.placeId]: drafts };
  }
}

const desks = new WeakMap<Bench, LampDesk>();

/** The one desk of a bench. */
export function lampDesk(bench: Bench): LampDesk {
  const desk = desks.get(bench) ?? new LampDesk(bench);
  desks.set(bench, desk);
  return desk;
}
