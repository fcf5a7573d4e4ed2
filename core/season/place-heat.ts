import { covering } from '../plan/coverings.ts';
import type { Place } from '../plan/schema.ts';
import { wetCoverLoss } from '../light/index.ts';
import {
  AIR,
  LEAF,
  POTS,
  buildNetwork,
  emptyDrive,
  initialState,
  relativeHumidity,
  saturationRatio,
  stepHeat,
} from '../heat/index.ts';
import type { Drive, HeatState, Network } from '../heat/index.ts';
import type { SiteYear } from './site-year.ts';
import { moistureExcess } from './surroundings.ts';
import { lampOn } from './lamp-control.ts';
import { lightUnderSnow, placeSchedules } from './schedules.ts';
import type { Schedules } from './schedules.ts';
import type { LampRun } from './lamps.ts';
import type { PlaceLight } from './place-light.ts';

/** What a listener of a place's run is told after each step. */
export type StepListener = (index: number, drive: Drive, state: HeatState) => void;

/** A place made ready to run: network, lamps, sun and the schedules of its covers, in weather-year order. */
export interface PlaceRun extends Schedules {
  readonly network: Network;
  readonly lamps: readonly LampRun[];
  /** Share of each step for which each lamp is on, 0–1. */
  readonly lampFlags: readonly Float64Array[];
  readonly light: PlaceLight;
  readonly room: Float64Array | null;
  readonly wetness: number;
  /** Share of the daylight lost while the cover is wet inside, 0–1. */
  readonly wetLoss: number;
}

export function preparePlaceRun(
  place: Place,
  year: SiteYear,
  light: PlaceLight,
  lamps: readonly LampRun[],
  room: Float64Array | null,
  wetness: number,
): PlaceRun {
  return {
    network: buildNetwork(place, year.site, year.pressure, wetness),
    lamps,
    lampFlags: lamps.map(({ lamp }) => lampOn(lamp, year, light)),
    light,
    room,
    wetness,
    wetLoss: place.shape.kind === 'listed' ? 0 : wetCoverLoss(covering(place.covering)),
    ...placeSchedules(place, year),
  };
}

/** Fills the drive with step `k` of the weather year. */
export function setDrive(drive: Drive, run: PlaceRun, year: SiteYear, k: number, state: HeatState): void {
  const { steps, clock } = year;
  const { network, light } = run;
  drive.outdoor = steps.dryBulb[k];
  drive.sky = year.skyTemperature[k];
  drive.wind = steps.windSpeed[k];
  drive.humidity = year.humidity[k];
  drive.room = run.room === null ? drive.outdoor : run.room[k];
  drive.deepGround = year.deepGround[Math.floor((k * clock.stepMinutes) / 1440)];
  drive.roomHumidity =
    run.room === null ? drive.humidity : roomHumidity(drive, clock.dayMean[k], year.pressure);
  drive.snowDepth = run.snowDepth === null ? 0 : run.snowDepth[k];
  for (let i = 0; i < light.sunOnSurface.length; i++) drive.sunOnSurface[i] = light.sunOnSurface[i][k];
  const clear = coverClear(run, drive.snowDepth, state.condensing);
  drive.sunLeaf = light.sunLeaf[k] * clear;
  drive.sunPots = light.sunPots[k] * clear;
  drive.sunFloor = light.sunFloor[k] * clear;
  drive.sunWall = light.sunWall[k] * clear;
  drive.night = clock.sunUp[k] === 0;
  drive.screenClosed = run.screenClosed !== null && run.screenClosed[k] === 1;
  drive.curtainClosed = run.curtainClosed !== null && run.curtainClosed[k] === 1;
  drive.fleeceLaid = run.fleeceLaid !== null && run.fleeceLaid[k] === 1;
  drive.doorOpen = run.doorOpen !== null && run.doorOpen[k] === 1;
  drive.circulating = run.circulating !== null && run.circulating[k] === 1;
  for (let h = 0; h < run.heaterOn.length; h++) drive.heaterOn[h] = run.heaterOn[h]?.[k] ?? 1;
  drive.lampAir = state.fan * (network.fan?.watts ?? 0);
  if (drive.circulating && network.circulation !== null) drive.lampAir += network.circulation.watts;
  drive.lampLeaf = drive.lampPots = 0;
  for (let l = 0; l < run.lamps.length; l++) {
    const on = run.lampFlags[l][k];
    if (on === 0) continue;
    drive.lampAir += on * run.lamps[l].airHeat;
    drive.lampLeaf += on * run.lamps[l].leafHeat;
    drive.lampPots += on * run.lamps[l].potHeat;
  }
  drive.onFleece = 0;
  if (drive.fleeceLaid) shade(drive, light.fleeceShare);
  drive.wetness = run.wetness;
}

/** Share of the daylight left under snow and drops on the cover, 0–1. */
export function coverClear({ light, wetLoss }: PlaceRun, snowDepth: number, wet: boolean): number {
  const underSnow = snowDepth > 0 ? lightUnderSnow(snowDepth, light.snowShare) : 1;
  return wet ? underSnow * (1 - wetLoss) : underSnow;
}

/** A fleece lets `share` of the light through to leaves and pots and takes up the rest itself. */
function shade(drive: Drive, share: number): void {
  const above = drive.sunLeaf + drive.sunPots + drive.lampLeaf + drive.lampPots;
  drive.sunLeaf *= share;
  drive.sunPots *= share;
  drive.lampLeaf *= share;
  drive.lampPots *= share;
  drive.onFleece = above * (1 - share);
}

/** Humidity of a room: outdoors plus what people add, never above saturation; the last temperature's saturation is kept. */
function roomHumidity(drive: Drive, outdoorMean: number, pressure: number): number {
  if (drive.room !== saturated.temperature || pressure !== saturated.pressure) {
    saturated.temperature = drive.room;
    saturated.pressure = pressure;
    saturated.ratio = saturationRatio(drive.room, pressure);
  }
  return Math.min(drive.humidity + moistureExcess(outdoorMean), saturated.ratio);
}

const saturated = { temperature: NaN, pressure: NaN, ratio: NaN };

/** Days run before the season's first day so that masses have forgotten their start. */
const spinUpDays = 21;

/**
 * Runs a place through the season: `spinUpDays` first, unheard, then 365 days from `startDay` of the year
 * (the weather year is a ring). `hear` is called after each step with its index in the season.
 */
export function runPlaceHeat(run: PlaceRun, year: SiteYear, startDay: number, hear: StepListener): HeatState {
  const { clock } = year;
  const perDay = 1440 / clock.stepMinutes;
  const first = startDay * perDay;
  const begin = (first - spinUpDays * perDay + clock.n) % clock.n;
  const start = run.room === null ? year.clock.dayMean[begin] : run.room[begin];
  const state = initialState(run.network, start, year.humidity[begin]);
  const drive = emptyDrive(run.network, clock.stepMinutes * 60);
  for (let index = -spinUpDays * perDay; index < clock.n; index++) {
    const k = (first + index + clock.n) % clock.n;
    setDrive(drive, run, year, k, state);
    stepHeat(run.network, state, drive);
    if (index >= 0) hear(index, drive, state);
  }
  return state;
}

/** Readings a listener takes most often. */
export const airOf = (state: HeatState): number => state.temperature[AIR];
export const leafOf = (state: HeatState): number => state.temperature[LEAF];
export const potsOf = (state: HeatState): number => state.temperature[POTS];
export { relativeHumidity };
