import type { Lamp } from '../plan/lamp.ts';
import type { Place, Plan } from '../plan/schema.ts';
import { planNumbers } from '../plan/plan-groups.ts';
import type { WeatherYear } from '../weather/index.ts';
import { createSeasonCache, runSeason } from '../season/index.ts';
import type { PlaceSeason, SeasonCache, SeasonResult } from '../season/index.ts';
import { burningHours, placedLamps } from './lamp-hours.ts';
import { mean } from './winter-sums.ts';
import { onlyPlace } from './ways.ts';
import type { LampPlacing, LampPlacings } from './result.ts';

export interface PlacingOptions {
  readonly cache?: SeasonCache;
  /** Told of each placing as it has been run; `done` of `all`. */
  readonly onPlacing?: (placing: LampPlacing, done: number, all: number) => void;
  readonly cancelled?: () => boolean;
}

/** First look every two hours, then an hour either side of the best. */
const coarse = Array.from({ length: 12 }, (_, index) => index * 120);

/**
 * Where in the day a lamp's hours cost least: a lamp gives its watts as heat, so burnt in the cold hours it spares
 * the heater, and under a night price it is cheap. The same hours are laid elsewhere, each way is run through the
 * whole season with heater, tariff and plants, and the cheapest that harms no plant is proposed.
 */
export function placeLampHours(
  plan: Plan,
  weather: WeatherYear,
  placeId: string,
  lampId: string,
  options: PlacingOptions = {},
): LampPlacings {
  const place = plan.places.find((each) => each.id === placeId);
  if (place === undefined) throw new RangeError(`expected a place of the plan, got ${placeId}`);
  const lamp = place.lamps.find((each) => each.id === lampId);
  if (lamp === undefined) throw new RangeError(`expected a lamp of the place, got ${lampId}`);
  const cache = options.cache ?? createSeasonCache();
  const run = (changed: Lamp) => runWith(plan, place, changed, weather, cache);
  const before = run(lamp);
  const now = placing(lamp, before, before, place);
  const found = new Map<string, LampPlacing>();
  const look = (lamps: readonly Lamp[]) => {
    const fresh = lamps.filter((each) => !found.has(keyOf(each)) && keyOf(each) !== keyOf(lamp));
    for (const each of fresh) {
      if (options.cancelled?.() === true) return;
      const one = placing(each, run(each), before, place);
      found.set(keyOf(each), one);
      options.onPlacing?.(one, found.size, Math.max(found.size, lamps.length));
    }
  };
  look(placedLamps(lamp, coarse, plan.tariff));
  const best = ranked(found)[0];
  if (best !== undefined && best.end === null && best.second === null) {
    const start = Number(best.on.slice(0, 2)) * 60 + Number(best.on.slice(3));
    look(placedLamps(lamp, [(start + 1380) % 1440, (start + 60) % 1440], plan.tariff));
  }
  const placings = ranked(found);
  const proposed =
    placings.find((each) => each.against === null && each.saves > worthSaying * now.cost) ?? null;
  return { placeId, lampId, hours: burningHours(lamp), now, placings, proposed };
}

/** A saving under this share of the season's cost is not worth a changed clock (common practice, no source). */
const worthSaying = 0.01;

const keyOf = ({ on, off, second, control }: Lamp) =>
  JSON.stringify(control.kind === 'extend' ? [control.end] : [on, off, second]);

function ranked(found: ReadonlyMap<string, LampPlacing>): LampPlacing[] {
  const rank = (each: LampPlacing) => (each.against === null ? 0 : 1);
  return [...found.values()].sort((a, b) => rank(a) - rank(b) || b.saves - a.saves);
}

function runWith(
  plan: Plan,
  place: Place,
  lamp: Lamp,
  weather: WeatherYear,
  cache: SeasonCache,
): SeasonResult {
  const lamps = place.lamps.map((each) => (each.id === lamp.id ? lamp : each));
  const changed: Place = { ...place, lamps };
  return runSeason(onlyPlace({ ...plan, places: [changed] }, changed), weather, cache);
}

function placing(lamp: Lamp, season: SeasonResult, before: SeasonResult, place: Place): LampPlacing {
  const [here] = season.places;
  const [former] = before.places;
  const { totals } = here;
  const spent = (one: PlaceSeason) => one.totals.lampElectricity + one.totals.heaterHeat;
  return {
    lamp,
    on: lamp.on,
    off: lamp.off,
    second: lamp.second,
    end: lamp.control.kind === 'extend' ? lamp.control.end : null,
    lampKwh: totals.lampElectricity,
    lampCost: totals.lampCost,
    heaterKwh: totals.heaterHeat,
    heaterCost: totals.heaterCost,
    cost: totals.cost,
    saves: former.totals.cost - totals.cost,
    savesKwh: spent(former) - spent(here),
    longestDay: longestDay(here, season),
    lots: here.lots.map((lot, index) => ({
      lotId: lot.lotId,
      growingDays: growing(lot.state) - growing(former.lots[index].state),
    })),
    against: season === before ? null : objection(season, before, place),
  };
}

const growing = (states: Uint8Array) => states.reduce((days, state) => days + (state === 0 ? 1 : 0), 0);

function longestDay({ daily }: PlaceSeason, { winterFrom, winterTo }: SeasonResult): number {
  return daily.photoperiod
    .subarray(winterFrom, winterTo + 1)
    .reduce((most, hours) => Math.max(most, hours), 0);
}

/** Winter days on which the plants' day is longer than so many hours. */
function daysLonger({ daily }: PlaceSeason, { winterFrom, winterTo }: SeasonResult, hours: number): number {
  const winter = daily.photoperiod.subarray(winterFrom, winterTo + 1);
  return winter.reduce((days, length) => days + (length > hours ? 1 : 0), 0);
}

/** Plants want some dark: most succulents take carbon in by night (common practice, no source) [h]. */
const leastDark = 6;
/** Days of growth a season, share of winter light and degree-hours of harm that a placing may cost unremarked. */
const daysUnremarked = 3;
const lightUnremarked = 0.02;
const harmUnremarked = 1;

/** What speaks against a placing beside the hours as they are: its day, its light, its plants; null where nothing does. */
function objection(season: SeasonResult, before: SeasonResult, place: Place): string | null {
  const [here] = season.places;
  const [former] = before.places;
  const [longest, usual] = [longestDay(here, season), longestDay(former, before)];
  if (longest > 24 - leastDark && longest > usual) {
    return `it leaves the plants under ${leastDark} h of dark`;
  }
  const { winterFrom: from, winterTo: to } = season;
  const light = mean(here.daily.lampLight, from, to);
  const less = 1 - light / mean(former.daily.lampLight, from, to);
  if (less > lightUnremarked)
    return `the lamp may then burn only part of its hours: ${percent(less)} less light`;
  for (const [index, lot] of here.lots.entries()) {
    const name = lotName(season.plan, lot.lotId);
    const numbers = planNumbers(season.plan, lot.groupId);
    const critical = numbers.criticalDayLength;
    if (numbers.dayLengthKind === -1 && critical !== null) {
      const spoilt = daysLonger(here, season, critical) - daysLonger(former, before, critical);
      if (spoilt > daysUnremarked) {
        return `${name} flower in short days: on ${spoilt} more days of winter the day is longer than their ${critical} h`;
      }
    }
    const lost = growing(former.lots[index].state) - growing(lot.state);
    if (lost > daysUnremarked) return `${name} grow on ${lost} days fewer`;
    const worse = harmOf(lot.harm) - harmOf(former.lots[index].harm);
    if (worse > harmUnremarked) return `${name} come to more harm from cold or heat in ${place.name}`;
  }
  return null;
}

const harmOf = ({ frost, chill, heat }: { frost: number; chill: number; heat: number }) =>
  frost + chill + heat;
const percent = (share: number) => `${Math.round(share * 100)} %`;
const lotName = (plan: Plan, id: string) => plan.lots.find((lot) => lot.id === id)?.name ?? 'Plants';
