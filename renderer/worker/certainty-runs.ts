import { beginCertainty } from '../../core/index.ts';
import type { Certainty, CertaintyRun, Plan, SeasonCache, WeatherYear } from '../../core/index.ts';

/** Certainties that are kept: enough for undoing and redoing a few changes. */
const kept = 8;

/** A plan without what certainty does not look at: the names. */
function contentOf(plan: Plan): string {
  const unnamed = <Part extends { readonly name: string }>(part: Part) => ({ ...part, name: '' });
  return JSON.stringify({
    ...plan,
    name: '',
    places: plan.places.map(unnamed),
    lots: plan.lots.map(unnamed),
    ownGroups: plan.ownGroups.map(unnamed),
  });
}

/** A run with the weather it was begun in. */
interface KeptRun {
  readonly weather: WeatherYear;
  readonly run: CertaintyRun;
}

/**
 * Certainties by the plan they are of, so that a plan come back to goes on where it was left. Between winters it lets
 * messages in, and ends where the question is no longer wanted.
 */
export class CertaintyRuns {
  #runs = new Map<string, KeptRun>();
  #cache: SeasonCache;

  constructor(cache: SeasonCache) {
    this.#cache = cache;
  }

  async grow(
    plan: Plan,
    weather: WeatherYear,
    tell: (certainty: Certainty) => void,
    unwanted: () => boolean,
  ): Promise<Certainty> {
    const run = this.#runOf(plan, weather);
    if (run.now.winters > 0) tell(run.now);
    while (!run.done) {
      await messagesIn();
      if (unwanted()) throw new Error('certainty was stopped');
      tell(run.grow());
    }
    return run.now;
  }

  #runOf(plan: Plan, weather: WeatherYear): CertaintyRun {
    const content = contentOf(plan);
    const known = this.#runs.get(content);
    this.#runs.delete(content);
    const now =
      known?.weather === weather
        ? known
        : { weather, run: beginCertainty(plan, weather, { cache: this.#cache }) };
    this.#runs.set(content, now);
    const [oldest] = this.#runs.keys();
    if (this.#runs.size > kept) this.#runs.delete(oldest);
    return now.run;
  }
}

/** A turn of the event loop, in which waiting messages are received. */
function messagesIn(): Promise<void> {
  return new Promise((settle) => setTimeout(settle));
}
