import { faoExtraterrestrial } from '../sun/index.ts';
import {
  clearRangeGain,
  dayMinimum,
  drawDepartures,
  fitSpread,
  halfWidening,
  ringProcess,
  seasonalSpread,
  widerCooling,
  type Spread,
  type TemperatureCurves,
  type YearKind,
} from './anomalies.ts';
import { dailyFromMonthly, restore } from './monthly.ts';
import type { FullNormals } from './normals.ts';
import { dewPointOfHumidity } from './humidity.ts';
import { randomStream } from './random.ts';
import { monthStarts } from './year.ts';

/** One drawn year, day by day. */
export interface DrawnDays {
  /** [°C] */
  readonly minimum: Float64Array;
  readonly maximum: Float64Array;
  readonly dew: Float64Array;
  /** Global radiation [MJ m⁻² d⁻¹], cloud cover 0–1, wind at 10 m [m s⁻¹]. */
  readonly radiation: Float64Array;
  readonly cloudCover: Float64Array;
  readonly wind: Float64Array;
  /** How far each day's least temperature departs from the mean one, in standard departures; it tells its night's cloud and wind. */
  readonly coldness: Float64Array;
}

/** Least share of the mean daily range that a dull windy day keeps (Dublin Airport 1991–2020: 0.2 on one day in two hundred). */
const leastRange = 0.2;

/** Greatest and least share of the extraterrestrial radiation a day brings (Dublin Airport 1991–2020: 0.04 to 0.74 between the hundredths). */
const clearest = 0.78;
const dullest = 0.04;

/** Draws the days of a year from the normals; the same seed draws the same year. */
export function drawDays(
  normals: FullNormals,
  site: { latitude: number; elevation: number },
  seed: number,
  kind: YearKind = 'usual',
): DrawnDays {
  const { curves, spread } = fittedClimate(normals, kind);
  const random = randomStream(seed);
  const departures = drawDepartures(random, kind, curves.coldestDay);
  const minimum = new Float64Array(365);
  const maximum = new Float64Array(365);
  for (let day = 0; day < 365; day++) {
    minimum[day] = dayMinimum(curves, spread, departures, day);
    maximum[day] =
      minimum[day] +
      curves.range[day] * (1 + clearRangeGain(day, curves.coldestDay) * departures.clearness[day]) +
      2 * halfWidening(curves, spread, day) * departures.range[day];
    maximum[day] = Math.max(maximum[day], minimum[day] + leastRange * curves.range[day]);
  }
  const wind = drawWind(normals.wind, ringProcess(random, 0.4), departures.clearness);
  const brighter = kind === 'usual' ? null : normals.radiation.map(() => random.normal());
  const radiation = drawRadiation(normals.radiation, site.latitude, departures.clearness, brighter);
  const cloudCover = radiation.map((global, day) =>
    coverOfDay(global, faoExtraterrestrial(site.latitude, day + 1)),
  );
  return {
    minimum,
    maximum,
    dew: dewPoints(normals, minimum, maximum, curves.range),
    radiation,
    cloudCover,
    coldness: minimum.map((low, day) => {
      const own = spread.kelvin * seasonalSpread(day, curves.coldestDay, kind);
      const wider = kind === 'usual' ? 0 : widerCooling(curves, spread, day);
      return (low - curves.minimum[day]) / Math.hypot(own, wider);
    }),
    wind,
  };
}

/**
 * Cloud cover of a day from its global and extraterrestrial radiation [MJ m⁻² d⁻¹]: Ångström–Prescott turned round
 * with FAO-56's 0.25 and 0.50, cover being the part of the day without sunshine. 0.5 where there is no day to tell.
 */
function coverOfDay(global: number, above: number): number {
  if (!(above > 0.5)) return 0.5;
  return Math.max(0, Math.min(1, 1 - (global / above - 0.25) / 0.5));
}

interface FittedClimate {
  readonly curves: TemperatureCurves;
  readonly spread: Spread;
}

/** The climate fitted last: many seeds are drawn from one, and fitting takes most of a draw's time. Saves time, changes nothing. */
const last = new Map<YearKind, { key: string; fitted: FittedClimate }>();

function fittedClimate(normals: FullNormals, kind: YearKind): FittedClimate {
  const key = JSON.stringify([normals.minimum, normals.maximum, normals.typicalLow, normals.rareLow]);
  const known = last.get(kind);
  if (known?.key === key) return known.fitted;
  const curves = temperatureCurves(normals, kind);
  const fitted = { curves, spread: fitSpread(curves, normals.typicalLow, normals.rareLow) };
  last.set(kind, { key, fitted });
  return fitted;
}

/** Mean daily least temperature and range through the year, and the day it is coldest. */
function temperatureCurves(normals: FullNormals, kind: YearKind): TemperatureCurves {
  const minimum = dailyFromMonthly(normals.minimum);
  const range = dailyFromMonthly(
    normals.maximum.map((value, k) => Math.max(0.1, value - normals.minimum[k])),
    true,
  );
  let coldestDay = 0;
  for (let day = 0; day < 365; day++) if (minimum[day] < minimum[coldestDay]) coldestDay = day;
  return { minimum, range, coldestDay, kind };
}

/**
 * Daily radiation: the month's clearness, more or less by the day's departure, each month's mean kept [MJ m⁻² d⁻¹].
 * @param brighter standard departures of the months' own means; null in a usual year
 */
function drawRadiation(
  usual: readonly number[],
  latitude: number,
  departure: Float64Array,
  brighter: readonly number[] | null,
): Float64Array {
  const monthly = usual.map((mean, month) => {
    if (brighter === null) return mean;
    return mean * (1 + monthSwing(mean, latitude, month) * Math.max(-2.5, Math.min(2.5, brighter[month])));
  });
  const above = Float64Array.from(departure, (_, day) => faoExtraterrestrial(latitude, day + 1));
  const means = monthly.map((mean, month) => {
    let sum = 0;
    for (let day = monthStarts[month]; day < monthStarts[month + 1]; day++) sum += above[day];
    const per = sum / (monthStarts[month + 1] - monthStarts[month]);
    return per > 0 ? Math.min(clearest - 0.02, mean / per) : 0;
  });
  const clearness = dailyFromMonthly(means, true);
  const days = above.map((value, day) => {
    // Dull climates swing by half of their mean (0.33 to 0.50 at Dublin by month), sunny ones by little.
    const swing = 0.86 * (1 - clearness[day] / 0.78);
    return value * held(clearness[day] * (1 + swing * departure[day]));
  });
  const reachable = monthly.map((mean, month) => (means[month] > 0 ? mean : 0));
  for (let round = 0; round < 30; round++) {
    restore(days, reachable, true);
    for (let day = 0; day < 365; day++)
      days[day] = above[day] * held(above[day] > 0 ? days[day] / above[day] : 0);
  }
  return days;
}

/**
 * Share by which a month's radiation differs from year to year, one standard departure: less under sunny skies. At
 * Dublin Airport 0.10 (mean of the twelve months 1991–2020, 0.06 to 0.13).
 */
function monthSwing(mean: number, latitude: number, month: number): number {
  const above = faoExtraterrestrial(latitude, monthStarts[month] + 15);
  return above > 0 ? 0.2 * Math.max(0, 1 - mean / above / 0.78) : 0;
}

const held = (clearness: number): number => Math.max(dullest, Math.min(clearest, clearness));

/** Daily dew point from the month's relative humidity at the day's mean, or from the day's least temperature (FAO-56 eq. 48). */
function dewPoints(
  normals: FullNormals,
  minimum: Float64Array,
  maximum: Float64Array,
  range: Float64Array,
): Float64Array {
  const known = normals.humidity.every((value) => value !== null);
  const humidity = known ? dailyFromMonthly(normals.humidity as number[], true) : null;
  return minimum.map((low, day) => {
    if (humidity !== null) return dewPointOfHumidity((low + maximum[day]) / 2, humidity[day]);
    // FAO-56 takes 2 K off in dry lands; a wide daily range is their sign (12 to 16 K; common practice, no source).
    return low - 2 * Math.max(0, Math.min(1, (range[day] - 12) / 4));
  });
}

/** Daily wind: log-normal about the month's mean, calmer under clear skies; each month's mean kept. */
function drawWind(
  monthly: readonly number[],
  departure: Float64Array,
  clearness: Float64Array,
): Float64Array {
  const mean = dailyFromMonthly(monthly, true);
  const days = mean.map((value, day) => value * Math.exp(0.45 * departure[day] - 0.15 * clearness[day]));
  restore(days, monthly, true);
  return days;
}
