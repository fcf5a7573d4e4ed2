import { outdoors } from '../plan/schema.ts';
import type { Lot, Place, Plan } from '../plan/schema.ts';
import type { WeatherYear } from '../weather/index.ts';
import { sharedSkySeries } from '../light/index.ts';
import { handbookFigure } from './handbook-figure.ts';
import { placeLight } from './place-light.ts';
import type { PlaceLight } from './place-light.ts';
import { runPlaceYear } from './place-season.ts';
import type { PlaceYear } from './place-season.ts';
import { prepareSiteYear } from './site-year.ts';
import type { SiteYear } from './site-year.ts';
import { isoDate } from './calendar.ts';
import { livedIn } from './lot-season.ts';
import type { PlantClimate } from './plant-climate.ts';
import { judgeLot, openClimate, placeClimate } from './setting.ts';
import type { SeasonSetting } from './setting.ts';
import { shareOfSeason } from './stays.ts';
import type { LotSeason, OutdoorDaily, PlaceSeason, SeasonResult } from './result.ts';
import { createSeasonCache } from './cache.ts';
import type { SeasonCache } from './cache.ts';

/**
 * Runs a plan through a year of weather: light, heat, plants and cost of every place, day by day from the
 * season's first day (1 August; 1 February south of the equator). Deterministic: the same plan and weather give
 * the same numbers. Every number in the result is finite.
 * @param cache kept by the caller between runs; without it everything is computed afresh
 */
export function runSeason(
  plan: Plan,
  weather: WeatherYear,
  cache: SeasonCache = createSeasonCache(),
): SeasonResult {
  const setting = seasonSetting(plan, weather, cache);
  const { year, outdoor, climates } = setting;
  const lots = plan.lots.map((lot) => judgeLot(setting, lot));
  const places = plan.places.map((place) => placeSeason(setting, place, standingIn(lots, place.id)));
  const startMs = year.steps.startMs + year.startDay * 86_400_000;
  const open = climates.get(outdoors) as PlantClimate;
  return {
    plan,
    planName: plan.name,
    weatherName: weather.name,
    startMs,
    days: outdoor.mean.length,
    startDate: isoDate(startMs, weather.utcOffsetHours, 0),
    startDay: year.startDay,
    winterFrom: year.winter.from,
    winterTo: year.winter.to,
    outdoor,
    outdoors: { lived: livedIn(open), lots: standingIn(lots, outdoors) },
    lots,
    places,
    totals: {
      cost: total(places, (place) => place.totals.cost),
      electricity: total(
        places,
        ({ totals }) => totals.heaterElectricity + totals.lampElectricity + totals.fanElectricity,
      ),
      heaterHeat: total(places, (place) => place.totals.heaterHeat),
    },
    notes: year.notes,
  };
}

/** Lots that stand in a place on any day. */
function standingIn(lots: readonly LotSeason[], placeId: string): LotSeason[] {
  return lots.filter((lot) => lot.stays.some((stay) => stay.placeId === placeId));
}

/** Runs the heat of every place of a plan, so that lots may be judged in them. */
export function seasonSetting(
  plan: Plan,
  weather: WeatherYear,
  cache: SeasonCache = createSeasonCache(),
): SeasonSetting {
  const year = siteYear(plan, weather, cache);
  const outdoor = outdoorDaily(year, year.startDay);
  const coldestNight = coldestNightOf(year, year.startDay);
  const places = new Map<string, PlaceYear>();
  const climates = new Map<string, PlantClimate>();
  for (const place of plan.places) {
    const wetness = wetnessOf(place, plan.lots, (lot) => shareOfSeason(lot, year.startDay, place.id));
    const key = JSON.stringify([year.key, { ...place, id: '', name: '' }, wetness, plan.mouldRule]);
    const heat = cache.places.get(key, () =>
      runPlaceYear(plan, place, year, lightOf(place, year, cache), wetness, year.startDay, coldestNight),
    );
    places.set(place.id, heat);
    climates.set(
      place.id,
      cache.climates.get(key, () => placeClimate(key, place, heat, year)),
    );
  }
  climates.set(
    outdoors,
    cache.climates.get(year.key, () => openClimate(year, outdoor)),
  );
  return { plan, weather, year, outdoor, places, climates, cache };
}

function total(places: readonly PlaceSeason[], of: (place: PlaceSeason) => number): number {
  return places.reduce((sum, place) => sum + of(place), 0);
}

/** The site's year, from the cache where site, climate and tariff are the same. */
export function siteYear(plan: Plan, weather: WeatherYear, cache: SeasonCache): SiteYear {
  let id = cache.weatherIds.get(weather);
  if (id === undefined) {
    id = cache.nextWeather++;
    cache.weatherIds.set(weather, id);
  }
  const key = JSON.stringify([id, plan.site, plan.tariff]);
  return cache.years.get(key, () => prepareSiteYear(plan, weather, key));
}

/** Light of a place, from the cache where nothing that light depends on has changed. */
export function lightOf(place: Place, year: SiteYear, cache: SeasonCache): PlaceLight {
  const {
    id,
    name,
    heaters,
    water,
    lamps,
    leakage,
    fan,
    vents,
    floor,
    potMass,
    door,
    circulation,
    curtain,
    ground,
    edgeInsulation,
    ceilingReflectance,
    benchReflectance,
    ...rest
  } = place;
  const key = JSON.stringify([year.key, rest]);
  return cache.lights.get(key, () => placeLight(place, year));
}

function placeSeason(setting: SeasonSetting, place: Place, lots: readonly LotSeason[]): PlaceSeason {
  const { plan, year, outdoor } = setting;
  const heat = setting.places.get(place.id) as PlaceYear;
  return {
    placeId: place.id,
    daily: heat.daily,
    lots,
    totals: totalsOf(heat, lots, outdoor),
    heat: heat.parts,
    heights: heat.heights,
    fuels: heat.fuels,
    handbook: handbookFigure(place, plan, heat.run.network, year),
    energyResidual: heat.energyResidual,
  };
}

/**
 * Moist share of the mix by the lots' watering: dry 0.02, by season 0.12, watered 0.4 (estimates, no source).
 * @param share how much of the season each lot stands here, 0–1
 */
export function wetnessOf(
  place: Place,
  lots: readonly Plan['lots'][number][],
  share: (lot: Lot) => number = () => 1,
): number {
  const moist = { dry: 0.02, 'by-season': 0.12, watered: 0.4 };
  const area = lots.reduce((sum, lot) => sum + lot.area * share(lot), 0);
  const wet = lots.reduce((sum, lot) => sum + lot.area * share(lot) * moist[lot.watering], 0);
  return Math.min(1, wet / Math.max(area, place.growingArea));
}

const sumOf = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0);
const leastOf = (values: Float64Array) => values.reduce((least, value) => Math.min(least, value), Infinity);

function totalsOf(heat: PlaceYear, lots: readonly LotSeason[], outdoor: OutdoorDaily): PlaceSeason['totals'] {
  const { daily } = heat;
  const outdoorLight = sumOf(outdoor.daylight);
  return {
    heaterHeat: sumOf(daily.heaterHeat),
    heaterElectricity: heat.heaterElectricity,
    lampElectricity: sumOf(daily.lampElectricity),
    fanElectricity: sumOf(daily.fanElectricity),
    cost: heat.heaterCost + heat.lampCost + heat.fanCost,
    heaterCost: heat.heaterCost,
    lampCost: heat.lampCost,
    fanCost: heat.fanCost,
    leastAir: leastOf(daily.airLeast),
    leastLeaf: leastOf(daily.leafLeast),
    frostHours: lots.reduce((most, lot) => Math.max(most, lot.harm.frostHours), 0),
    dampHours: sumOf(daily.dampHours),
    dewHours: sumOf(daily.dewHours),
    leafDewHours: sumOf(daily.leafDewHours),
    mouldHours: sumOf(daily.mouldHours),
    mostCarbonDioxide: heat.mostCarbonDioxide,
    shortfallHours: sumOf(daily.shortfallHours),
    peakWatts: heat.peakWatts,
    lampPpfd: heat.lampPpfd,
    daylightShare: outdoorLight > 0 ? sumOf(daily.daylight) / outdoorLight : 0,
  };
}

/** Outdoor days of the season. */
export function outdoorDaily(year: SiteYear, startDay: number): OutdoorDaily {
  const { steps, clock } = year;
  const perDay = 1440 / clock.stepMinutes;
  const days = clock.n / perDay;
  const series = () => new Float64Array(days);
  const daily = { least: series(), mean: series(), most: series(), daylight: series(), dayLength: series() };
  const moles = (clock.stepMinutes * 60) / 1e6;
  const photons = outdoorPhotons(year);
  for (let day = 0; day < days; day++) {
    let least = Infinity;
    let most = -Infinity;
    let sum = 0;
    for (let step = 0; step < perDay; step++) {
      const k = ((startDay + day) * perDay + step) % clock.n;
      const value = steps.dryBulb[k];
      least = Math.min(least, value);
      most = Math.max(most, value);
      sum += value;
      daily.daylight[day] += photons[k] * moles;
      daily.dayLength[day] += clock.sunUp[k] * (clock.stepMinutes / 60);
    }
    daily.least[day] = least;
    daily.most[day] = most;
    daily.mean[day] = sum / perDay;
  }
  return daily;
}

/** Photons 400–700 nm on the open level ground for each step [µmol m⁻² s⁻¹]. */
function outdoorPhotons({ steps }: SiteYear): Float64Array {
  const photons = new Float64Array(steps.n);
  const sky = sharedSkySeries(steps);
  sky.index.forEach((k, j) => {
    photons[k] = sky.global[j] * sky.photonsPerJoule[j];
  });
  return photons;
}

/** Day of the season on whose evening the coldest night begins: the noon before the least temperature. */
export function coldestNightOf(year: SiteYear, startDay: number): number {
  const { steps, clock } = year;
  const perDay = 1440 / clock.stepMinutes;
  let at = 0;
  for (let index = 0; index < clock.n; index++) {
    const k = (startDay * perDay + index) % clock.n;
    if (steps.dryBulb[k] < steps.dryBulb[(startDay * perDay + at) % clock.n]) at = index;
  }
  return Math.max(0, Math.floor((at - perDay / 2) / perDay));
}
