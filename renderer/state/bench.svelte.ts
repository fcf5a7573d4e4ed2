import { getContext, setContext } from 'svelte';
import type { Lot, Place, PlaceSeason, Plan, SeasonResult } from '../../core/index.ts';
import type { Host, PlanDocument, Start } from '../../electron/contract.ts';
import { outdoors, parsePlan } from '../../core/index.ts';
import { Engine } from './engine.ts';
import { HostError } from './host.ts';
import { PreferencesState } from './preferences.svelte.ts';
import type { UnitPreferences } from './units.ts';

export type ViewId =
  'sheet' | 'calendar' | 'place' | 'tonight' | 'lamps' | 'ways' | 'plants' | 'site' | 'meters';
export interface Selection {
  readonly placeId?: string | null;
  readonly lotId?: string | null;
}

/** The host takes no longer name for a change. */
const longestWords = 200;

function wordsOf(error: unknown): string {
  if (error instanceof HostError && error.failure.problems?.length)
    return `${error.message} ${error.failure.problems.map((problem) => problem.message).join('; ')}`;
  return error instanceof Error ? error.message : String(error);
}

/** The open plan, its season, what is being tried on it, and where the user is. */
export class Bench {
  readonly host: Host;
  readonly engine: Engine;
  readonly preferences: PreferencesState;

  #document = $state.raw<PlanDocument | null>(null);
  #plan = $state.raw<Plan | null>(null);
  #season = $state.raw<SeasonResult | null>(null);
  #ghost = $state.raw<SeasonResult | null>(null);
  #trial = $state.raw<{ readonly words: string; readonly plan: Plan } | null>(null);
  #start = $state.raw<Start | null>(null);
  #running = $state(0);
  #epoch = 0;
  #saving: Promise<void> = Promise.resolve();

  /** What went wrong with the last act, in words; cleared by the next. */
  error = $state<string | null>(null);
  view = $state<ViewId>('sheet');
  #placeId = $state<string | null>(null);
  #leverId = $state<string | null>(null);
  lotId = $state<string | null>(null);
  cursorDay = $state(0);

  constructor(host: Host, engine: Engine = new Engine(host)) {
    this.host = host;
    this.engine = engine;
    this.preferences = new PreferencesState(host);
  }

  /** True once a plan is open; views are shown only then. */
  readonly ready: boolean = $derived(this.#plan !== null);
  /** The plan as kept. Reading it before one is open is wrong use. */
  get plan(): Plan {
    if (!this.#plan) throw new Error('expected an open plan, got none yet');
    return this.#plan;
  }
  /** The plan being looked at: the trial where one is on, else the plan as kept. */
  readonly shown: Plan = $derived.by(() => this.#trial?.plan ?? this.plan);
  get planId(): string {
    if (!this.#document) throw new Error('expected an open plan, got none yet');
    return this.#document.id;
  }
  get season(): SeasonResult | null {
    return this.#season;
  }
  /** The season before the change being tried; null where none is tried. */
  get ghost(): SeasonResult | null {
    return this.#ghost;
  }
  get trial(): Plan | null {
    return this.#trial?.plan ?? null;
  }
  get trialWords(): string | null {
    return this.#trial?.words ?? null;
  }
  get start(): Start | null {
    return this.#start;
  }
  get busy(): boolean {
    return this.#running > 0;
  }
  get canUndo(): boolean {
    return this.#document?.canUndo ?? false;
  }
  get canRedo(): boolean {
    return this.#document?.canRedo ?? false;
  }
  get undoWords(): string | null {
    return this.#document?.undoWords ?? null;
  }
  get redoWords(): string | null {
    return this.#document?.redoWords ?? null;
  }
  readonly units: UnitPreferences = $derived.by(() => this.preferences.units);
  /** What is selected: a place, or `outdoors`; null where nothing is. */
  get placeId(): string | null {
    return this.#placeId;
  }
  set placeId(id: string | null) {
    this.#placeId = id;
    if (id !== outdoors) this.#leverId = id;
  }
  /** The selected place and lot as shown (with the trial); null where none is selected, as outdoors, or it is gone. */
  readonly place: Place | null = $derived.by(
    () => this.shown.places.find((place) => place.id === this.placeId) ?? null,
  );
  readonly lot: Lot | null = $derived.by(() => this.shown.lots.find((lot) => lot.id === this.lotId) ?? null);

  /** The place whose levers are at hand: the one selected last, while the open air is looked at too. */
  readonly leverPlace: Place | null = $derived.by(
    () => this.shown.places.find((place) => place.id === this.#leverId) ?? null,
  );

  placeSeason(placeId: string): PlaceSeason | null {
    return this.#season?.places.find((place) => place.placeId === placeId) ?? null;
  }

  /** First call: preferences, the plan that was open last, its season. */
  async open() {
    await this.#guarded(async () => {
      this.#start = await this.host.start();
      this.preferences.load(this.#start.preferences);
      this.#accept(await this.host.readPlan({ id: this.#start.openPlanId }));
      await this.#run(this.plan);
      if (this.#season)
        this.cursorDay = Math.floor((this.#season.winterFrom + this.#season.winterTo) / 14) * 7 + 3;
    });
  }

  async openPlan(id: string) {
    this.error = null;
    await this.#guarded(async () => this.#adopt(await this.host.openPlan({ id })));
  }

  /** Puts a document that a host call gave (a new, imported or restored plan) on the bench. */
  async adopt(document: PlanDocument) {
    this.error = null;
    await this.#guarded(() => this.#adopt(document));
  }

  /** Makes and keeps a change to the plan: shown at once, saved through the host, the season run anew. */
  update(words: string, change: (plan: Plan) => Plan, mergeKey?: string): void {
    this.error = null;
    const reading = parsePlan(change(this.plan));
    if (!reading.ok) {
      this.error = `${words}: ${reading.problems[0].message}`;
      return;
    }
    const plan = reading.plan;
    if (this.#trial) this.#clearTrial();
    this.#plan = plan;
    this.#epoch += 1;
    void this.#guarded(() => this.#run(plan));
    this.#save(words, plan, mergeKey);
  }

  /** Shows a changed plan without keeping it; what was before stays as the ghost. */
  tryPlan(words: string, plan: Plan): void {
    this.error = null;
    if (!this.#trial) {
      this.#ghost = this.#season;
      this.#epoch += 1;
    }
    this.#trial = { words, plan };
    void this.#guarded(() => this.#run(plan));
  }

  keepTrial(): void {
    if (!this.#trial) return;
    const { words, plan } = this.#trial;
    this.#plan = plan;
    this.#trial = null;
    this.#ghost = null;
    this.#save(words, plan);
  }

  dropTrial(): void {
    if (!this.#trial) return;
    this.#clearTrial();
    this.#epoch += 1;
    void this.#guarded(() => this.#run(this.plan));
  }

  async undo() {
    this.error = null;
    if (this.#trial) return this.dropTrial();
    await this.#guarded(async () => {
      await this.#saving;
      if (this.canUndo) await this.#adopt(await this.host.undo({ id: this.planId }));
    });
  }

  async redo() {
    this.error = null;
    await this.#guarded(async () => {
      await this.#saving;
      if (this.canRedo) await this.#adopt(await this.host.redo({ id: this.planId }));
    });
  }

  show(view: ViewId, selection: Selection = {}): void {
    if (selection.placeId !== undefined) this.placeId = selection.placeId;
    if (selection.lotId !== undefined) this.lotId = selection.lotId;
    this.view = view;
  }

  #clearTrial() {
    if (this.#ghost) this.#season = this.#ghost;
    this.#trial = null;
    this.#ghost = null;
  }

  #accept(document: PlanDocument) {
    this.#document = document;
    this.#plan = document.plan;
    const there = (id: string | null) => document.plan.places.some((place) => place.id === id);
    const first = document.plan.places[0]?.id ?? null;
    if (!there(this.#leverId)) this.#leverId = first;
    if (this.placeId !== outdoors && !there(this.placeId)) this.placeId = first;
    if (!document.plan.lots.some((lot) => lot.id === this.lotId)) this.lotId = null;
  }

  async #adopt(document: PlanDocument) {
    this.#clearTrial();
    this.#epoch += 1;
    this.#accept(document);
    await this.#run(document.plan);
  }

  /** Runs the season; an answer that belongs to a plan no longer on the bench is dropped. */
  async #run(plan: Plan) {
    const epoch = this.#epoch;
    this.#running += 1;
    const season = await this.engine.season(plan).finally(() => (this.#running -= 1));
    if (!season || epoch !== this.#epoch) return;
    this.#season = season;
  }

  /** Saves follow one another, so that versions stand in the order the user made them. */
  #save(what: string, plan: Plan, mergeKey?: string) {
    const id = this.planId;
    const words = what.length > longestWords ? `${what.slice(0, longestWords - 1)}…` : what;
    this.#saving = this.#saving.then(() =>
      this.#guarded(async () => {
        try {
          const document = await this.host.savePlan({ id, plan, words, mergeKey });
          if (this.#document?.id === id) this.#document = document;
        } catch (error) {
          await this.#takeBack(plan, error);
        }
      }),
    );
  }

  /** A change the host refused is taken back to what is stored; what could not be written stays on the bench. */
  async #takeBack(plan: Plan, error: unknown): Promise<never> {
    const refused = error instanceof HostError && error.failure.code === 'refused';
    if (refused && this.#document && this.#plan === plan) await this.#adopt(this.#document);
    throw error;
  }

  async #guarded(work: () => Promise<void>) {
    try {
      await work();
    } catch (error) {
      this.error = wordsOf(error);
    }
  }
}

const key = Symbol('bench');

export function setBench(bench: Bench): Bench {
  return setContext(key, bench);
}

export function getBench(): Bench {
  return getContext<Bench>(key);
}
