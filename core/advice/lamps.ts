import type { Place, Plan } from '../plan/schema.ts';
import type { Lamp } from '../plan/equipment.ts';
import type { WeatherYear } from '../weather/index.ts';
import { lampLight, lampWatts } from '../light/index.ts';
import { spanHours } from '../cost/index.ts';
import { createSeasonCache, runSeason } from '../season/index.ts';
import type { PlaceSeason, SeasonCache, SeasonResult } from '../season/index.ts';
import { onlyPlace } from './ways.ts';
import type { LampComparison, LampOption } from './result.ts';

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
 */
export function compareLamps(options: readonly LampOption[], setting: LampSetting): LampComparison[] {
  const cache = setting.cache ?? createSeasonCache();
  const place = setting.plan.places.find((each) => each.id === setting.placeId);
  if (place === undefined) throw new RangeError(`expected a place of the plan, got ${setting.placeId}`);
  const results = options.map((option) => {
    const fitted: Place = { ...place, lamps: [...option.lamps] };
    const season = runSeason(
      onlyPlace({ ...setting.plan, places: [fitted] }, fitted),
      setting.weather,
      cache,
    );
    return { option, fitted, season };
  });
  const first = results[0];
  return results.map((result) => comparison(result, first, setting.plan));
}

interface Result {
  readonly option: LampOption;
  readonly fitted: Place;
  readonly season: SeasonResult;
}

function comparison({ option, fitted, season }: Result, first: Result, plan: Plan): LampComparison {
  const field = combinedField(fitted);
  const place = season.places[0];
  const reference = first.season.places[0];
  const { from, to } = { from: season.winterFrom, to: season.winterTo };
  const moles = sum(place.daily.lampLight, from, to) * fitted.growingArea;
  const lampCost = place.totals.lampCost * winterShare(place, from, to);
  const price = sumOf(option.lamps, (lamp) => lamp.price);
  return {
    name: option.name,
    watts: sumOf(option.lamps, lampWatts),
    ...field,
    evenness: field.average > 0 ? field.least / field.average : 0,
    dailyLight: mean(place.daily.lampLight, from, to),
    hours: Math.max(0, ...option.lamps.map((lamp) => spanHours(lamp.on, lamp.off, plan.tariff).total)),
    photonsOnArea: field.average * fitted.growingArea,
    kwhWinter: sum(place.daily.lampElectricity, from, to),
    costWinter: lampCost,
    heaterCostWinter: sum(place.daily.cost, from, to) - lampCost,
    costPerMole: moles > 0 ? lampCost / moles : 0,
    yearsToRepay: yearsToRepay(price, place, first, reference),
    airDayChange: mean(place.daily.airDay, from, to) - mean(reference.daily.airDay, from, to),
    airNightChange: mean(place.daily.airLeast, from, to) - mean(reference.daily.airLeast, from, to),
    price,
    lots: place.lots.map((lot) => ({
      lotId: lot.lotId,
      midWinterState: lot.state[Math.round((from + to) / 2)],
      growingDays: lot.state.slice(from, to + 1).reduce((days, state) => days + (state === 0 ? 1 : 0), 0),
    })),
  };
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

/** Share of the season's lamp electricity that falls in winter, 0–1. */
function winterShare(place: PlaceSeason, from: number, to: number): number {
  const all = place.totals.lampElectricity;
  return all > 0 ? sum(place.daily.lampElectricity, from, to) / all : 0;
}

/** The fields of all lamps of a place added up on one grid. */
function combinedField(place: Place) {
  const fields = place.lamps.map((lamp: Lamp) => lampLight(place, lamp));
  if (fields.length === 0) {
    const side = Math.sqrt(place.growingArea);
    return {
      average: 0,
      least: 0,
      most: 0,
      map: new Float64Array(1),
      columns: 1,
      rows: 1,
      areaLength: side,
      areaWidth: side,
    };
  }
  const map = new Float64Array(fields[0].map.length);
  for (const field of fields) for (let i = 0; i < map.length; i++) map[i] += field.map[i];
  let least = Infinity;
  let most = 0;
  let total = 0;
  for (const value of map) {
    least = Math.min(least, value);
    most = Math.max(most, value);
    total += value;
  }
  const { columns, rows, target } = fields[0];
  return {
    average: total / map.length,
    least,
    most,
    map,
    columns,
    rows,
    areaLength: target.length,
    areaWidth: target.width,
  };
}

const sumOf = <T>(items: readonly T[], of: (item: T) => number) =>
  items.reduce((total, item) => total + of(item), 0);

function sum(values: Float64Array, from: number, to: number): number {
  let total = 0;
  for (let day = from; day <= to; day++) total += values[day];
  return total;
}

const mean = (values: Float64Array, from: number, to: number) => sum(values, from, to) / (to - from + 1);
