import type {
  Certainty,
  DampAdvice,
  DampChoice,
  FlowerMeeting,
  FlowerWay,
  GroupRank,
  LampComparison,
  LampOption,
  LampPlacing,
  LampView,
  NightInput,
  NightResult,
  PlaceRank,
  Plan,
  SeasonResult,
  SiteCard,
  Way,
  WaysResult,
  Wish,
} from '../../core/index.ts';
import type { Host } from '../../electron/contract.ts';
import type { FoundPlacings } from '../worker/messages.ts';
import { unpackSeason } from '../worker/season-parcel.ts';
import { EngineThread } from './engine-thread.ts';

/**
 * The engine in its workers: one for the sheet, the night and the rankings (which start from the season the sheet
 * has), one for lamps, one each for what takes longer and can be stopped: the placing of a lamp's hours, the search
 * for ways, advice against damp, certainty, flowering together and the site card. The page waits for none of them.
 */
export class Engine {
  #sheet: EngineThread;
  #desk: EngineThread;
  #placing: EngineThread;
  #search: EngineThread;
  #damp: EngineThread;
  #certainty: EngineThread;
  #flower: EngineThread;
  #site: EngineThread;
  #waiting: {
    plan: Plan;
    settle: (result: SeasonResult | null) => void;
    refuse: (error: unknown) => void;
  } | null = null;
  #running = false;
  #former: SeasonResult | null = null;

  constructor(host: Host) {
    this.#sheet = new EngineThread(host, 'sheet');
    this.#desk = new EngineThread(host, 'desk');
    this.#placing = new EngineThread(host, 'placing');
    this.#search = new EngineThread(host, 'search');
    this.#damp = new EngineThread(host, 'damp');
    this.#certainty = new EngineThread(host, 'certainty');
    this.#flower = new EngineThread(host, 'flower');
    this.#site = new EngineThread(host, 'site');
  }

  /** The season of a plan. One runs and at most one waits: null where a later request took the waiting one's place. */
  season(plan: Plan): Promise<SeasonResult | null> {
    return new Promise((settle, refuse) => {
      this.#waiting?.settle(null);
      this.#waiting = { plan, settle, refuse };
      void this.#next();
    });
  }

  async #next() {
    if (this.#running || !this.#waiting) return;
    const { plan, settle, refuse } = this.#waiting;
    this.#waiting = null;
    this.#running = true;
    try {
      const parcel = await this.#sheet.ask('season', { plan });
      this.#former = unpackSeason(parcel, this.#former);
      settle(this.#former);
    } catch (error) {
      refuse(error);
    } finally {
      this.#running = false;
      void this.#next();
    }
  }

  night(plan: Plan, input: NightInput): Promise<NightResult> {
    return this.#sheet.ask('night', { plan, input });
  }

  lamps(
    plan: Plan,
    placeId: string,
    options: readonly LampOption[],
    view: LampView,
  ): Promise<readonly LampComparison[]> {
    return this.#desk.ask('lamps', { plan, placeId, options, view });
  }

  /** Where a lamp's hours are best put, each placing told as it is run; stopped as `ways` is. */
  placing(
    plan: Plan,
    placeId: string,
    lampId: string,
    onPlacing?: (placing: LampPlacing) => void,
    signal?: AbortSignal,
  ): Promise<FoundPlacings> {
    const ask = () => this.#placing.ask('placing', { plan, placeId, lampId }, onPlacing);
    return stoppable(this.#placing, signal, ask);
  }

  /** Ways to a wish, each told as it is found. Aborting `signal` stops the search and rejects with its reason. */
  ways(plan: Plan, wish: Wish, onWay?: (way: Way) => void, signal?: AbortSignal): Promise<WaysResult> {
    return stoppable(this.#search, signal, () => this.#search.ask('ways', { plan, wish }, onWay));
  }

  /** What would help against damp in a place, each choice told as it is found; stopped as `ways` is. */
  damp(
    plan: Plan,
    placeId: string,
    onChoice?: (choice: DampChoice) => void,
    signal?: AbortSignal,
  ): Promise<DampAdvice> {
    return stoppable(this.#damp, signal, () => this.#damp.ask('damp', { plan, placeId }, onChoice));
  }

  /**
   * How often other winters and other thresholds agree with the season, told again after each winter. Aborting
   * `signal` ends it after the winter it is at and rejects with its reason at once.
   */
  certainty(plan: Plan, onGrow?: (certainty: Certainty) => void, signal?: AbortSignal): Promise<Certainty> {
    return this.#certainty.ask('certainty', { plan }, onGrow, signal);
  }

  /** Every place, and outdoors, for a group; best first. */
  rankPlaces(plan: Plan, groupId: string): Promise<readonly PlaceRank[]> {
    return this.#sheet.ask('rankPlaces', { plan, groupId });
  }

  /** Every group for a place, or outdoors; best first. */
  rankGroups(plan: Plan, placeId: string): Promise<readonly GroupRank[]> {
    return this.#sheet.ask('rankGroups', { plan, placeId });
  }

  /** How two lots may be brought to flower together, each way told as it is found; stopped as `ways` is. */
  flowerTogether(
    plan: Plan,
    one: string,
    other: string,
    onWay?: (way: FlowerWay) => void,
    signal?: AbortSignal,
  ): Promise<FlowerMeeting> {
    return stoppable(this.#flower, signal, () => this.#flower.ask('flower', { plan, one, other }, onWay));
  }

  /** What the site's climate is to plants; stopped as `ways` is. */
  siteCard(plan: Plan, signal?: AbortSignal): Promise<SiteCard> {
    return stoppable(this.#site, signal, () => this.#site.ask('siteCard', { plan }));
  }
}

/** Asks a thread; aborting `signal` ends the thread and with it the question. */
async function stoppable<Answer>(
  thread: EngineThread,
  signal: AbortSignal | undefined,
  ask: () => Promise<Answer>,
): Promise<Answer> {
  signal?.throwIfAborted();
  const stop = () => thread.stop(signal?.reason);
  signal?.addEventListener('abort', stop, { once: true });
  try {
    return await ask();
  } finally {
    signal?.removeEventListener('abort', stop);
  }
}
