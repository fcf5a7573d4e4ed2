import type { Plan, SiteCard } from '../../../core/index.ts';
import type { Bench } from '../../state/bench.svelte.ts';

/** What a card depends on: where the site lies, its frost hollow and its climate. */
export function cardKey({ site, climate }: Plan): string {
  const { latitude, longitude, elevation, timeZone, frostHollow } = site;
  return JSON.stringify([latitude, longitude, elevation, timeZone, frostHollow, climate]);
}

/** The site card of a bench, worked out anew where site or climate change; what it was stays until then. */
export class SiteCardDesk {
  #bench: Bench;
  #key: string | null = null;
  #search: AbortController | null = null;

  card = $state.raw<SiteCard | null>(null);
  running = $state(false);
  error = $state<string | null>(null);

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  /** Asks for the card of a plan unless it is there or on its way; an older question is dropped. */
  async want(plan: Plan): Promise<void> {
    const key = cardKey(plan);
    if (key === this.#key) return;
    this.#search?.abort(new DOMException('the site has changed', 'AbortError'));
    const mine = new AbortController();
    this.#search = mine;
    this.#key = key;
    this.running = true;
    this.error = null;
    try {
      const card = await this.#bench.engine.siteCard(plan, mine.signal);
      if (this.#search === mine) this.card = card;
    } catch (failure) {
      if (this.#search !== mine) return;
      // The next look asks again.
      this.#key = null;
      this.error = failure instanceof Error ? failure.message : String(failure);
    } finally {
      if (this.#search === mine) {
        this.#search = null;
        this.running = false;
      }
    }
  }
}

const desks = new WeakMap<Bench, SiteCardDesk>();

/** The one desk of a bench. */
export function siteCardDesk(bench: Bench): SiteCardDesk {
  const desk = desks.get(bench) ?? new SiteCardDesk(bench);
  desks.set(bench, desk);
  return desk;
}
