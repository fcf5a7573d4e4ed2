import { planGroup, planNumbers } from '../plan/plan-groups.ts';
import { lampPpfd } from '../light/index.ts';
import { spotDaylight, spotLampShare } from '../light/index.ts';
import { outdoors } from '../plan/schema.ts';
import type { Lot, Place, Plan, Spot } from '../plan/schema.ts';
import type { GroupNumbers } from '../plan/groups.ts';
import type { WeatherYear } from '../weather/index.ts';
import { placeCover } from './place-cover.ts';
import { isWhole } from './plant-climate.ts';
import type { PlantClimate } from './plant-climate.ts';
import { outdoorClimate } from './outdoors.ts';
import type { PlaceYear } from './place-season.ts';
import type { OutdoorDaily, LotSeason } from './result.ts';
import type { SeasonCache } from './cache.ts';
import type { SiteYear } from './site-year.ts';
import { runLot } from './lot-season.ts';
import { staysOf } from './stays.ts';

/**
 * A plan whose places have been run through the weather: lots of any group may be judged anywhere in it, with the
 * heat of the places as it is (pots, leaves and watering held as the plan has them).
 */
export interface SeasonSetting {
  readonly plan: Plan;
  readonly weather: WeatherYear;
  readonly year: SiteYear;
  readonly outdoor: OutdoorDaily;
  readonly places: ReadonlyMap<string, PlaceYear>;
  /** Climates by place id, and `outdoors`. */
  readonly climates: ReadonlyMap<string, PlantClimate>;
  readonly cache: SeasonCache;
}

/**
 * Judges a lot in a setting; it need not be one of the plan's.
 * @param numbers others than the plan's for its group, such as a draw within their spread
 */
export function judgeLot(setting: SeasonSetting, lot: Lot, numbers?: GroupNumbers): LotSeason {
  const stays = staysOf(lot, setting.year.startDay).map((stay) => {
    const climate = setting.climates.get(stay.placeId);
    if (climate === undefined) throw new RangeError(`expected a place of the plan, got ${stay.placeId}`);
    return { ...stay, climate };
  });
  const make = () =>
    runLot(setting.plan, lot, stays, numbers ?? planNumbers(setting.plan, lot.group), setting.year);
  if (numbers !== undefined) return make();
  const key = JSON.stringify([
    stays.map(({ climate, from, to }) => [climate.key, from, to]),
    { ...lot, name: '', plants: null, area: 0 },
    planNumbers(setting.plan, lot.group),
    habitOf(setting.plan, lot.group),
  ]);
  return setting.cache.lots.get(key, make);
}

/** What of a group counts beside its numbers: an own group may be copied from another and keep its id and numbers. */
function habitOf(plan: Plan, id: string) {
  const group = planGroup(plan, id);
  return group === null ? null : [group.flowering, group.dayLength, group.rest];
}

/** Climate of a place for its plants. */
export function placeClimate(key: string, place: Place, heat: PlaceYear, year: SiteYear): PlantClimate {
  const { daily } = heat;
  const whole = daily.daylight.map((light, day) => light + daily.lampLight[day]);
  const known = new Map<string, Float64Array>();
  const lightAt = (spot: Spot): Float64Array => {
    if (isWhole(spot)) return whole;
    const name = JSON.stringify(spot);
    const light = known.get(name) ?? lightAtSpot(place, heat, year, spot);
    known.set(name, light);
    return light;
  };
  return { key, daily, leaf: heat.leaf, lightAt };
}

/** Climate of the open air beside the places. */
export function openClimate(year: SiteYear, outdoor: OutdoorDaily): PlantClimate {
  return { ...outdoorClimate(year, outdoor), key: JSON.stringify([year.key, outdoors]) };
}

/** Light of each day at a part of the growing area, sky and lamps [mol m⁻² d⁻¹]. */
function lightAtSpot(place: Place, heat: PlaceYear, year: SiteYear, spot: Spot): Float64Array {
  const { clock, startDay } = year;
  const perDay = 1440 / clock.stepMinutes;
  const moles = (clock.stepMinutes * 60) / 1e6;
  const light = new Float64Array(heat.leaf.length / perDay);
  place.lamps.forEach((lamp, index) => {
    const share = lampPpfd(place, lamp) > 0 ? spotLampShare(place, lamp, spot) : 0;
    heat.lampLightBy[index].forEach((value, day) => (light[day] += value * share));
  });
  if (!heat.run.light.seesDay) return light;
  const photons = spotDaylight(place, year.site, year.steps, placeCover(place, year), spot);
  for (let index = 0; index < heat.leaf.length; index++) {
    const k = (startDay * perDay + index) % clock.n;
    light[Math.floor(index / perDay)] += photons[k] * heat.passing[index] * moles;
  }
  return light;
}
