import type { FlowerMeeting, FlowerWay, Plan } from '../../core/index.ts';
import type { Bench } from '../state/bench.svelte.ts';
import { Search } from '../state/search.svelte.ts';
import { everything } from './lines.ts';
import type { Filter } from './lines.ts';

/** How the calendar is being read, and the search for two lots in flower together; both outlive the view. */
export class CalendarDesk {
  #bench: Bench;
  #search = new Search<FlowerWay, FlowerMeeting>();
  #plan = $state.raw<Plan | null>(null);

  reading = $state<'date' | 'plant' | 'flower'>('date');
  filter = $state.raw<Filter>(everything);
  /** Whether the dates gone by stand open. */
  past = $state(false);
  /** The two lots; null where none is chosen yet. */
  one = $state<string | null>(null);
  other = $state<string | null>(null);
  /** The two lots that were asked about. */
  asked = $state.raw<readonly [one: string, other: string] | null>(null);

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  get running(): boolean {
    return this.#search.running;
  }
  get meeting(): FlowerMeeting | null {
    return this.#search.answer;
  }
  get ways(): readonly FlowerWay[] {
    return this.meeting?.ways ?? [...this.#search.found].sort((a, b) => b.overlap - a.overlap);
  }
  get stopped(): boolean {
    return this.#search.stopped;
  }
  get error(): string | null {
    return this.#search.error;
  }
  /** True where the plan is no longer the one the answer is about. */
  get outdated(): boolean {
    return this.#plan !== null && this.#plan !== this.#bench.plan;
  }
  /** The plan the ways were found in. */
  get searched(): Plan | null {
    return this.#plan;
  }

  /** The two lots as chosen, else the first two of the plan whose flowering has a known rule. */
  get pair(): readonly [one: string, other: string] | null {
    const { lots } = this.#bench.plan;
    const known = (this.#bench.season?.lots ?? [])
      .filter((lot) => lot.flowering.cue !== 'unknown')
      .map((lot) => lot.lotId);
    const order = [...known, ...lots.map((lot) => lot.id)].filter((id) => lots.some((lot) => lot.id === id));
    const chosen = (id: string | null) => (id !== null && order.includes(id) ? id : null);
    const one = chosen(this.one) ?? order.find((id) => id !== this.other);
    const other = chosen(this.other) ?? order.find((id) => id !== one);
    return one === undefined || other === undefined ? null : [one, other];
  }

  stop() {
    this.#search.stop();
  }

  async start() {
    const { pair } = this;
    if (pair === null || pair[0] === pair[1]) return;
    const { plan } = this.#bench;
    this.asked = pair;
    this.#plan = plan;
    await this.#search.run((onWay, signal) =>
      this.#bench.engine.flowerTogether(plan, ...pair, onWay, signal),
    );
  }
}

const desks = new WeakMap<Bench, CalendarDesk>();

/** The one desk of a bench. */
export function calendarDesk(bench: Bench): CalendarDesk {
  const desk = desks.get(bench) ?? new CalendarDesk(bench);
  desks.set(bench, desk);
  return desk;
}
