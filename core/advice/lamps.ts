import type { Place, Plan } from '../plan/schema.ts';
import type { Lamp } from '../plan/equipment.ts';
import { lampTechnology } from '../plan/lamps.ts';
import type { WeatherYear } from '../weather/index.ts';
import { lampWatts, placeField } from '../light/index.ts';
import { createSeasonCache, runSeason } from '../season/index.ts';
import type { PlaceSeason, SeasonCache, SeasonResult } from '../season/index.ts';
import { burnOf } from './lamp-burn.ts';
import { scaledOption } from './lamp-view.ts';
import { mean, monthsOf, sum } from './winter-sums.ts';
import { onlyPlace } from './ways.ts';
import type { LampComparison, LampOption, LampView } from './result.ts';

export interface LampSetting {
  readonly plan: Plan;
  readonly weather: WeatherYear;
  readonly placeId: string;
  readonly cache?: SeasonCache;
}

/**
 * Compares lamp options on one place's own growing area: the light field of each, and the place's whole season
 * run with it, so that the heat a lamp gives, what a heater then need not give, and what the plants do are
 * results and not rules. The first option is what the others are compared with.
 * @param view as given, or with watts scaled to the first lit option's daily light or to its watts
 */
export function compareLamps(
  options: readonly LampOption[],
  setting: LampSetting,
  view: LampView = 'as-given',
): LampComparison[] {
  const cache = setting.cache ?? createSeasonCache();
  const place = setting.plan.places.find((each) => each.id === setting.placeId);
  if (place === undefined) throw new RangeError(`expected a place of the plan, got ${setting.placeId}`);
  const run = (lamps: readonly Lamp[]) => {
    const fitted: Place = { ...place, lamps: [...lamps] };
    return runSeason(onlyPlace({ ...setting.plan, places: [fitted] }, fitted), setting.weather, cache);
  };
  const given = options.map((option) => ({ option, lamps: option.lamps, scale: 1 }));
  const scaled =
    view === 'as-given' ? given : scaledOption(options, view, (lamps) => winterLight(run(lamps)));
  const results = scaled.map(({ option, lamps, scale }) => ({
    option: { ...option, lamps },
    scale,
    fitted: { ...place, lamps: [...lamps] },
    season: run(lamps),
  }));
  return results.map((result) => comparison(result, results[0], setting.plan));
}

/** Daily light of the lamps, mean of the winter [mol m⁻² d⁻¹]. */
const winterLight = (season: SeasonResult) =>
  mean(season.places[0].daily.lampLight, season.winterFrom, season.winterTo);

interface Result {
  readonly option: LampOption;
  readonly scale: number;
  readonly fitted: Place;
  readonly season: SeasonResult;
}

function comparison({ option, scale, fitted, season }: Result, first: Result, plan: Plan): LampComparison {
  const { levels, average } = placeField(fitted);
  const [lower] = levels;
  const place = season.places[0];
  const reference = first.season.places[0];
  const { winterFrom: from, winterTo: to } = season;
  const { daily } = place;
  const watts = sumOf(option.lamps, lampWatts);
  const kwhWinter = sum(daily.lampElectricity, from, to);
  const moles = sum(daily.lampLight, from, to) * fitted.growingArea;
  const lampCost = sum(daily.lampCost, from, to);
  const price = sumOf(option.lamps, (lamp) => lamp.price);
  const months = monthsOf(season, place);
  return {
    name: option.name,
    lamps: option.lamps,
    scale,
    watts,
    average,
    least: Math.min(...levels.map((level) => level.least)),
    most: Math.max(...levels.map((level) => level.most)),
    evenness: average > 0 ? Math.min(...levels.map((level) => level.least)) / average : 0,
    dailyLight: mean(daily.lampLight, from, to),
    dailyLightWithDay: mean(daily.lampLight, from, to) + mean(daily.daylight, from, to),
    hours: watts > 0 ? (kwhWinter * 1000) / watts / (to - from + 1) : 0,
    photonsOnArea: average * fitted.growingArea,
    kwhWinter,
    costWinter: lampCost,
    heaterCostWinter: sum(daily.cost, from, to) - lampCost,
    heaterKwhWinter: sum(daily.heaterHeat, from, to),
    costPerMole: moles > 0 ? lampCost / moles : 0,
    months,
    wearWinter: sumOf(option.lamps, (lamp) => wear(lamp, kwhWinter, watts)),
    leafMost: daily.leafMost.subarray(from, to + 1).reduce((most, value) => Math.max(most, value), -Infinity),
    burn: burnOf(fitted, plan, levels, place, from, to),
    yearsToRepay: yearsToRepay(price, place, first, reference),
    airDayChange: mean(daily.airDay, from, to) - mean(reference.daily.airDay, from, to),
    airNightChange: mean(daily.airLeast, from, to) - mean(reference.daily.airLeast, from, to),
    price,
    lots: place.lots.map((lot) => ({
      lotId: lot.lotId,
      midWinterState: lot.state[Math.round((from + to) / 2)],
      growingDays: lot.state.slice(from, to + 1).reduce((days, state) => days + (state === 0 ? 1 : 0), 0),
      limiting: mostFrequent(lot.limiting.subarray(from, to + 1)),
    })),
    map: lower.map,
    columns: lower.columns,
    rows: lower.rows,
    areaLength: lower.length,
    areaWidth: lower.width,
    levels,
  };
}

/** Share of the purchase that a winter's hours wear off; all lamps of the option are taken to burn alike. */
function wear(lamp: Lamp, kwhWinter: number, watts: number): number {
  const hours = watts > 0 ? (kwhWinter * 1000) / watts : 0;
  return (lamp.price * hours) / (lamp.life ?? lampTechnology(lamp.technology).life.value);
}

/** Purchase beyond the first option's over what it saves a year in running; null where it saves nothing or costs no more. */
function yearsToRepay(
  price: number,
  place: PlaceSeason,
  first: Result,
  reference: PlaceSeason,
): number | null {
  const dearer = price - sumOf(first.option.lamps, (lamp) => lamp.price);
  const saved = reference.totals.cost - place.totals.cost;
  return dearer > 0 && saved > 0 ? dearer / saved : null;
}

/** The code that stands on most days. */
function mostFrequent(codes: Uint8Array): number {
  const counts = new Uint16Array(256);
  for (const code of codes) counts[code] += 1;
  return counts.indexOf(counts.reduce((most, count) => Math.max(most, count), 0));
}

const sumOf = <T>(items: readonly T[], of: (item: T) => number) =>
  items.reduce((total, item) => total + of(item), 0);
