import type { Plan } from '../plan/schema.ts';
import type { WeatherYear } from '../weather/index.ts';
import { createSeasonCache, runSeason } from '../season/index.ts';
import type { PlaceSeason, SeasonCache } from '../season/index.ts';
import { applyDampChange, dampChanges } from './damp-changes.ts';
import type { DampChangeId } from './damp-changes.ts';
import { onlyPlace } from './ways.ts';

/** What a season says of damp in one place: hours over the season [h], its cost in the plan's currency, least air [°C]. */
export interface DampFigures {
  readonly leafDewHours: number;
  readonly mouldHours: number;
  readonly dampHours: number;
  readonly dewHours: number;
  readonly cost: number;
  readonly leastAir: number;
}

export interface DampChoice {
  readonly id: DampChangeId;
  /** In the grower's words, with the figure. */
  readonly words: string;
  /** What to mind about it; '' where nothing. */
  readonly caution: string;
  /** The season with the change made. */
  readonly figures: DampFigures;
}

export interface DampAdvice {
  readonly placeId: string;
  /** The season as the plan is. */
  readonly now: DampFigures;
  /** In the order the changes were tried; sort for worth. */
  readonly choices: readonly DampChoice[];
}

export interface DampOptions {
  readonly cache?: SeasonCache;
  /** Called with each choice as it is found. */
  readonly onChoice?: (choice: DampChoice) => void;
  /** Asked before each season run; true stops and returns what there is. */
  readonly cancelled?: () => boolean;
}

/**
 * What a degree of heat, more air, moving air or less water do to the damp of one place. Nothing here is a rule of
 * thumb: every line is the whole season run with that one change.
 */
export function dampChoices(
  plan: Plan,
  weather: WeatherYear,
  placeId: string,
  options: DampOptions = {},
): DampAdvice {
  const cache = options.cache ?? createSeasonCache();
  const place = plan.places.find((each) => each.id === placeId);
  if (place === undefined) throw new RangeError(`expected a place of the plan, got ${placeId}`);
  const alone: Plan = onlyPlace(plan, place);
  const figuresOf = (tried: Plan) => dampFigures(runSeason(tried, weather, cache).places[0]);
  const now = figuresOf(alone);
  const choices: DampChoice[] = [];
  for (const { id, words, caution } of dampChanges(alone, place)) {
    if (options.cancelled?.() === true) break;
    const choice = { id, words, caution, figures: figuresOf(applyDampChange(alone, place.id, id)) };
    choices.push(choice);
    options.onChoice?.(choice);
  }
  return { placeId, now, choices };
}

export function dampFigures({ totals }: { readonly totals: PlaceSeason['totals'] }): DampFigures {
  const { leafDewHours, mouldHours, dampHours, dewHours, cost, leastAir } = totals;
  return { leafDewHours, mouldHours, dampHours, dewHours, cost, leastAir };
}
