import { planGroup, planGroups, planNumbers } from '../plan/plan-groups.ts';
import { lotOf } from '../plan/parts.ts';
import { outdoors } from '../plan/schema.ts';
import type { Plan } from '../plan/schema.ts';
import type { WeatherYear } from '../weather/index.ts';
import { benchTaken, createSeasonCache, judgeLot, seasonSetting } from '../season/index.ts';
import type { SeasonCache, SeasonSetting } from '../season/index.ts';
import { winterFit } from './rank-fit.ts';
import type { GroupRank, PlaceRank, WinterFit } from './rank-result.ts';

/**
 * Where a group may spend the winter: every place of the plan and the open air, best first. A plant of the group,
 * watered by the season, is judged as if it stood in the place all year, and the winter half-year of it is scored, with
 * the harms of that half-year; the heat of the places is as the plan has it.
 * @throws where the plan knows no such group
 */
export function rankPlaces(
  plan: Plan,
  weather: WeatherYear,
  groupId: string,
  cache: SeasonCache = createSeasonCache(),
): readonly PlaceRank[] {
  const setting = seasonSetting(plan, weather, cache);
  const placeIds = [...plan.places.map(({ id }) => id), outdoors];
  return bestFirst(
    placeIds.map((placeId) => {
      const freeArea = freeBench(setting, placeId);
      const fit = fitOf(setting, groupId, placeId);
      const full = freeArea !== null && freeArea < leastBench ? `${fit.words} No bench is free there.` : null;
      return { placeId, freeArea, ...fit, words: full ?? fit.words };
    }),
  );
}

/**
 * What can live in a place, or `outdoors`, over the winter: every group that the plan knows, best first, judged as in
 * `rankPlaces`.
 * @throws where the plan has no such place
 */
export function rankGroups(
  plan: Plan,
  weather: WeatherYear,
  placeId: string,
  cache: SeasonCache = createSeasonCache(),
): readonly GroupRank[] {
  const setting = seasonSetting(plan, weather, cache);
  return bestFirst(planGroups(plan).map(({ id }) => ({ groupId: id, ...fitOf(setting, id, placeId) })));
}

/** Bench area under which a place is full: a pot of 10 cm [m²]. */
const leastBench = 0.01;

function fitOf(setting: SeasonSetting, groupId: string, placeId: string): WinterFit {
  const { plan, year } = setting;
  const group = planGroup(plan, groupId);
  if (group === null) throw new RangeError(`expected a plant group of the plan, got ${groupId}`);
  const lot = lotOf({ id: 'ranked', name: group.name, group: groupId, place: placeId, area: 1 });
  const winter = { ...year.winter, startDay: year.startDay };
  const fit = winterFit(judgeLot(setting, lot), group, planNumbers(plan, groupId), winter);
  const inRain = placeId === outdoors && fit.verdict !== 'unsafe';
  return inRain ? { ...fit, words: `${fit.words} ${rainKeptOff}` } : fit;
}

/** What a verdict in the open takes for granted: rain is no part of the season, so that mix dries there as indoors. */
const rainKeptOff = 'That is with the rain kept off.';

/** Bench area free in a place on every day of the winter half-year [m²]; null outdoors. */
function freeBench({ plan, year }: SeasonSetting, placeId: string): number | null {
  const place = plan.places.find(({ id }) => id === placeId);
  if (place === undefined) return null;
  const taken = benchTaken(plan.lots, year.startDay, placeId);
  const most = taken.subarray(year.winter.from, year.winter.to + 1).reduce((a, b) => Math.max(a, b), 0);
  return Math.max(0, place.growingArea - most);
}

/** Best score first; equal ones stay in the plan's order. */
function bestFirst<T extends WinterFit>(fits: readonly T[]): T[] {
  return [...fits].sort((a, b) => b.score - a.score);
}
