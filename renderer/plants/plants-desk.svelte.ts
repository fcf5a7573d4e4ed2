import { planGroup, plantGroups } from '../../core/index.ts';
import type { GroupRank, PlaceRank, PlantGroup } from '../../core/index.ts';
import type { Bench } from '../state/bench.svelte.ts';
import { Ranking } from './ranking.svelte.ts';

/** What the Plants view answers; the first is the sheet of a group. */
export type Question = 'one' | 'where' | 'here' | 'compare';

export const questions: readonly { readonly id: Question; readonly words: string }[] = [
  { id: 'one', words: 'One plant' },
  { id: 'where', words: 'Where should it spend the winter?' },
  { id: 'here', words: 'What can live here?' },
  { id: 'compare', words: 'Side by side' },
];

/** At most this many groups side by side: more lines in one drawing cannot be told apart. */
export const mostCompared = 4;

/** What is asked in the Plants view, of which group and place. It outlives the view, and others may set it before showing it. */
export class PlantsDesk {
  #bench: Bench;
  #groupId = $state<string | null>(null);
  #placeId = $state<string | null>(null);
  #compared = $state.raw<readonly string[] | null>(null);
  /** The lot whose group was last taken up from the rest of the program. */
  #followed: string | null = null;

  question = $state<Question>('one');
  readonly places: Ranking<PlaceRank>;
  readonly groups: Ranking<GroupRank>;

  constructor(bench: Bench) {
    this.#bench = bench;
    this.places = new Ranking((plan, groupId) => bench.engine.rankPlaces(plan, groupId));
    this.groups = new Ranking((plan, placeId) => bench.engine.rankGroups(plan, placeId));
  }

  /** The group that is asked about: the chosen, while the plan has it, else that of the plan's first lot. */
  get group(): PlantGroup {
    const plan = this.#bench.shown;
    const first = plan.lots[0]?.group;
    const chosen = this.#groupId === null ? null : planGroup(plan, this.#groupId);
    return chosen ?? (first === undefined ? null : planGroup(plan, first)) ?? plantGroups[0];
  }
  chooseGroup(id: string) {
    this.#groupId = id;
  }

  /** The place that is asked about; null where the plan has none. */
  get placeId(): string | null {
    const { places } = this.#bench.shown;
    const known = (id: string | null) => id === 'outdoors' || places.some((place) => place.id === id);
    if (known(this.#placeId)) return this.#placeId;
    return known(this.#bench.placeId) ? this.#bench.placeId : (places[0]?.id ?? null);
  }
  choosePlace(id: string) {
    this.#placeId = id;
  }

  /** The groups side by side that the plan still has; the chosen one and those of its first other lots to begin with. */
  get compared(): readonly string[] {
    const plan = this.#bench.shown;
    const begin = [this.group.id, ...plan.lots.map((lot) => lot.group)];
    const ids = this.#compared ?? begin.filter((id, at) => begin.indexOf(id) === at).slice(0, 2);
    return ids.filter((id) => planGroup(plan, id) !== null);
  }
  get full(): boolean {
    return this.compared.length >= mostCompared;
  }
  /** Takes a group into the comparison or out of it; a fifth is not taken. */
  compare(id: string, on: boolean) {
    const others = this.compared.filter((one) => one !== id);
    if (on && others.length >= mostCompared) return;
    this.#compared = on ? [...others, id] : others;
  }

  /** Begins with the group of the lot that is chosen elsewhere, once for each lot chosen. */
  follow() {
    const { lot } = this.#bench;
    if (!lot || lot.id === this.#followed) return;
    this.#followed = lot.id;
    this.#groupId = lot.group;
  }

  ask(question: Question, about: { groupId?: string; placeId?: string } = {}) {
    this.question = question;
    if (about.groupId !== undefined) this.#groupId = about.groupId;
    if (about.placeId !== undefined) this.#placeId = about.placeId;
    this.#followed = this.#bench.lotId;
  }
}

const desks = new WeakMap<Bench, PlantsDesk>();

/** The one desk for plants of a bench. */
export function plantsDesk(bench: Bench): PlantsDesk {
  const desk = desks.get(bench) ?? new PlantsDesk(bench);
  desks.set(bench, desk);
  return desk;
}
