import type { Place, Plan } from '../plan/schema.ts';
import type { WeatherYear } from '../weather/index.ts';
import { nightWeather } from '../weather/index.ts';
import {
  clockOf,
  createSeasonCache,
  humidityRatios,
  lightOf,
  runSeason,
  siteYear,
  skyTemperatures,
} from '../season/index.ts';
import type { SeasonCache, SeasonResult, SiteYear } from '../season/index.ts';
import { weatherFromPlan } from '../season/weather-from-plan.ts';
import { plainHeater } from '../heat/index.ts';
import { cheapActs } from './acts.ts';
import {
  coldLimits,
  fuelsTonight,
  leastOf,
  nightCost,
  runTrace,
  settle,
  shiftedNight,
} from './place-night.ts';
import type { NightSetting, NightTrace } from './place-night.ts';
import { outdoorNight } from './outdoor-night.ts';
import type { LeadIn } from './lead-in.ts';
import type { NightInput, NightLot, NightResult, PlaceNight } from './result.ts';
import { clockWords, nightWords, verdictOf, worstMargin } from './verdict.ts';

/** Length of a night's step [min]. */
const nightStepMinutes = 5;

/** A heater that is never too small, to find the power that would hold. */
const unlimited = 1e6;

/**
 * Tonight in every place and outdoors, from dusk to mid-morning by 5 min, worst place first: the season's own network with its
 * masses brought to dusk through the days before, then the forecast night.
 * @param weather the plan's year; may be left out where the climate is typed normals
 */
export function runNight(
  plan: Plan,
  input: NightInput,
  weather: WeatherYear | null = weatherFromPlan(plan),
  cache: SeasonCache = createSeasonCache(),
): NightResult {
  if (weather === null)
    throw new RangeError('expected the weather of the plan, got none: its climate is a file');
  const year = siteYear(plan, weather, cache);
  const season = runSeason(plan, weather, cache);
  const night = nightYear(plan, input, year);
  const day = dayOfSeason(night, year);
  const lead: LeadIn = {
    year,
    duskStep: stepOfYear(night.steps.startMs, year),
    duskTemperature: input.duskTemperature,
    lightOf: (place) => lightOf(place, year, cache),
  };
  const places = plan.places.map((place) => placeNight(plan, place, night, lead, input, season, day));
  places.sort((a, b) => (a.margin ?? Infinity) - (b.margin ?? Infinity));
  return {
    startMs: night.steps.startMs,
    stepMinutes: nightStepMinutes,
    n: night.steps.n,
    outdoor: night.steps.dryBulb,
    skyTemperature: night.skyTemperature,
    input,
    places,
    outdoors: outdoorNight(plan, night, input, season, day),
  };
}

/** The night as the season's code sees a year: steps, clock, sky, humidity; ground of the date. */
function nightYear(plan: Plan, input: NightInput, year: SiteYear): SiteYear {
  const steps = nightWeather(
    {
      dateISO: input.dateISO,
      duskTemperature: input.duskTemperature,
      low: input.low,
      ...(input.cloudOktas === null ? {} : { cloudOktas: input.cloudOktas }),
      ...(input.wind === null ? {} : { wind: input.wind }),
    },
    year.site,
    { stepMinutes: nightStepMinutes },
  );
  const fill = (value: number) => new Float64Array(steps.n).fill(value);
  const begin = stepOfYear(steps.startMs, year) * year.clock.stepMinutes;
  const ground =
    year.deepGround[Math.floor((stepOfYear(steps.startMs, year) * year.clock.stepMinutes) / 1440)];
  return {
    ...year,
    key: `${year.key} night`,
    steps,
    clock: clockOf(
      steps,
      year.site.timeZone,
      plan.tariff,
      fill(input.low),
      fill((input.duskTemperature + input.low) / 2),
    ),
    skyTemperature: skyTemperatures(steps.skyLongWave),
    humidity: humidityRatios(steps),
    deepGround: new Float64Array(3).fill(ground),
    beginMinutes: begin,
  };
}

/** Step of the nominal weather year that holds the same month, day and time. */
function stepOfYear(ms: number, year: SiteYear): number {
  const local = new Date(ms);
  const nominal = new Date(year.steps.startMs);
  const from = Date.UTC(local.getUTCFullYear(), 0, 1) + (nominal.getTime() - Date.UTC(2025, 0, 1));
  const step = Math.floor((ms - from) / (year.clock.stepMinutes * 60_000));
  return ((step % year.clock.n) + year.clock.n) % year.clock.n;
}

function dayOfSeason(night: SiteYear, year: SiteYear): number {
  const perDay = 1440 / year.clock.stepMinutes;
  const day = Math.floor(stepOfYear(night.steps.startMs, year) / perDay);
  return (day - year.startDay + 365) % 365;
}

function placeNight(
  plan: Plan,
  place: Place,
  night: SiteYear,
  lead: LeadIn,
  input: NightInput,
  season: SeasonResult,
  day: number,
): PlaceNight {
  const setting = settle(plan, place, night, lead, day);
  const trace = runTrace(setting);
  const bare = { ...setting.run.network, heaters: [] };
  const unheated = runTrace(setting, { network: bare });
  const least = leastOf(trace.air);
  const leaf = leastOf(trace.leaf);
  const limits = coldLimits(plan, setting.lots, season, day);
  const lots: NightLot[] = setting.lots.map((lot, index) => ({
    lotId: lot.id,
    groupId: lot.group,
    limit: limits[index],
    leastLeaf: leaf.value,
    margin: leaf.value - limits[index],
  }));
  const margin = worstMargin(lots);
  const cold = runTrace(shiftedNight(setting, -input.band));
  const coldMargin = lots.length === 0 ? null : leastOf(cold.leaf).value - Math.max(...limits);
  const verdict = verdictOf(margin, coldMargin);
  const heated = trace.power.some((watts) => watts > 0);
  const failsAt = lots.length === 0 ? -1 : firstHarm(trace, Math.max(...limits), setting);
  const failsAtMs = failsAt < 0 ? null : night.steps.startMs + failsAt * nightStepMinutes * 60_000;
  const worst = lots.reduce<NightLot | null>(
    (found, lot) => (found === null || lot.margin < found.margin ? lot : found),
    null,
  );
  return {
    placeId: place.id,
    air: trace.air,
    leaf: trace.leaf,
    airUnheated: unheated.air,
    heaterPower: trace.power,
    airColdForecast: cold.air,
    airWarmForecast: runTrace(shiftedNight(setting, input.band)).air,
    least: least.value,
    leastMs: night.steps.startMs + least.at * nightStepMinutes * 60_000,
    leastUnheated: leastOf(unheated.air).value,
    lots,
    margin,
    powerNeeded: powerNeeded(setting, limits),
    powerThere: setting.run.network.heaters.reduce((sum, heater) => sum + heater.power, 0),
    failsAtMs,
    ...nightCost(setting, trace),
    hoursToHarm: hoursToHarm(setting, limits),
    heights: trace.heights,
    fuels: fuelsTonight(setting, trace),
    heat: trace.heat,
    dewHours: trace.dewHours,
    leafDewHours: trace.leafDewHours,
    mostCarbonDioxide: trace.mostCarbonDioxide,
    acts: setting.lots.length === 0 ? [] : cheapActs(setting, leaf.value),
    verdict,
    words: nightWords(verdict, {
      margin,
      empty: lots.length === 0,
      failsAt: failsAt < 0 ? null : clockWords(night.clock.civil[failsAt]),
      band: input.band,
      heated,
      lotName: plan.lots.find((lot) => lot.id === worst?.lotId)?.name ?? '',
      leastAt: clockWords(night.clock.civil[leaf.at]),
    }),
  };
}

/** First step at which a leaf is below the neediest limit although every heater gives all it has, −1 where it holds or there is none. */
function firstHarm(trace: NightTrace, limit: number, setting: NightSetting): number {
  const there = setting.run.network.heaters.reduce((sum, heater) => sum + heater.power, 0);
  if (there <= 0) return -1;
  return trace.leaf.findIndex((leaf, k) => leaf < limit && trace.power[k] >= there * 0.999);
}

/** Margin kept over the neediest limit when the needed power is asked for [K]. */
const heldMargin = 0.5;

/** Power that keeps every leaf `heldMargin` above its limit all night [W], 0 where none is needed: the set point is moved until the leaf holds. */
function powerNeeded(setting: NightSetting, limits: readonly number[]): number {
  if (limits.length === 0) return 0;
  const wanted = Math.max(...limits) + heldMargin;
  const withSetPoint = (setPoint: number) =>
    runTrace(setting, {
      network: {
        ...setting.run.network,
        heaters: [plainHeater(unlimited, setPoint)],
      },
    });
  const free = runTrace(setting, { network: { ...setting.run.network, heaters: [] } });
  if (leastOf(free.leaf).value >= wanted) return 0;
  let setPoint = wanted;
  let trace = withSetPoint(setPoint);
  for (let round = 0; round < 8 && Math.abs(leastOf(trace.leaf).value - wanted) > 0.05; round++) {
    setPoint += wanted - leastOf(trace.leaf).value;
    trace = withSetPoint(setPoint);
  }
  return Math.max(...trace.power.subarray(1));
}

/** Hours from a power cut at 22:00 civil time until the first lot is below its limit; null where none is by morning. */
function hoursToHarm(setting: NightSetting, limits: readonly number[]): number | null {
  if (limits.length === 0) return null;
  const { civil } = setting.night.clock;
  const cut = civil.findIndex((minutes) => minutes >= 22 * 60);
  const from = Math.max(0, cut);
  const trace = runTrace(setting, { powerCutAt: from });
  const limit = Math.max(...limits);
  for (let k = from; k < trace.leaf.length; k++) {
    if (trace.leaf[k] < limit) return ((k - from) * nightStepMinutes) / 60;
  }
  return null;
}
