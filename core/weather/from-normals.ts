import type { Site } from '../plan/site.ts';
import { halfDayHours, solarClock } from './solar-clock.ts';
import { diurnalTemperature, partonLogan, type DiurnalDay } from './diurnal.ts';
import { drawDays, type DrawnDays } from './drawn-year.ts';
import type { YearKind } from './anomalies.ts';
import { hourlyShare } from './hourly-radiation.ts';
import { fillLongWave } from './long-wave.ts';
import { fullNormals, type ClimateNormals } from './normals.ts';
import { splitHour } from './sun-hours.ts';
import { standardOffsetHours, standardPressure } from '../sun/index.ts';
import { hoursOfYear, nominalStart, type WeatherYear } from './year.ts';

/**
 * An hourly year drawn from monthly normals. Monthly means are kept by Rymes & Myers' interpolation, days depart from
 * them by AR(1), the daily cycle is Parton & Logan's, hourly radiation Collares-Pereira & Rabl's, its split Erbs'.
 * Half of all seeds meet the typical low, one in ten the rare low. The same seed gives the same year. The months of a
 * `usual` year stay near their normals; those of `many` years differ from year to year as measured (`anomalies.ts`).
 */
export function weatherFromNormals(
  normals: ClimateNormals,
  site: Site,
  seed: number,
  kind: YearKind = 'usual',
): WeatherYear {
  const notes: string[] = [];
  const full = fullNormals(normals, site.latitude, notes);
  const days = drawDays(full, site, seed, kind);
  const utcOffsetHours = standardOffsetHours(site.timeZone);
  const startMs = nominalStart(utcOffsetHours);
  const clock = solarClock(site, utcOffsetHours);
  const column = (): Float64Array => new Float64Array(hoursOfYear);
  const year: WeatherYear = {
    name: `Monthly normals, winter ${seed}`,
    origin: 'normals',
    latitude: site.latitude,
    longitude: site.longitude,
    elevation: site.elevation,
    utcOffsetHours,
    startMs,
    hours: hoursOfYear,
    dryBulb: hourlyTemperature(days, clock),
    dewPoint: column(),
    windSpeed: column(),
    pressure: column().fill(Math.round(standardPressure(site.elevation))),
    globalHorizontal: hourlyGlobal(days, clock),
    beamNormal: column(),
    diffuseHorizontal: column(),
    cloudCover: column(),
    skyLongWave: column().fill(NaN),
    skyLongWaveFrom: new Uint8Array(hoursOfYear).fill(1),
    radiationShiftMinutes: 0,
    notes,
  };
  fillRest(year, days, site);
  fillLongWave(year, site, startMs, []);
  for (const values of [year.skyLongWave, year.beamNormal, year.diffuseHorizontal]) round(values);
  return year;
}

/** Values to a thousandth: a last-digit difference between machines' sines does not reach the year. */
function round(values: Float64Array): Float64Array {
  for (let i = 0; i < values.length; i++) values[i] = Math.round(values[i] * 1000) / 1000;
  return values;
}

type Clock = ReturnType<typeof solarClock>;

/** Temperature at the end of every hour [°C]. The minimum is put on a whole hour, so that hourly rows meet it. */
function hourlyTemperature(days: DrawnDays, clock: Clock): Float64Array {
  const shaped: DiurnalDay[] = [];
  for (let day = 0; day < 365; day++) {
    // Where the sun hardly rises or sets the cycle keeps a day of three to twenty-one hours.
    const half = Math.max(1.5, Math.min(10.5, halfDayHours(clock, day)));
    const low = Math.round(clock.noon[day] - half + partonLogan.minimumLag);
    shaped.push({
      sunrise: low - partonLogan.minimumLag,
      sunset: clock.noon[day] + half,
      minimum: days.minimum[day],
      maximum: days.maximum[day],
    });
  }
  const hourly = new Float64Array(hoursOfYear);
  for (let i = 0; i < hoursOfYear; i++) {
    // Row i ends at hour i + 1; the last row of a day is the next day's midnight.
    const day = Math.floor((i + 1) / 24) % 365;
    hourly[i] = diurnalTemperature(
      (i + 1) % 24,
      shaped[(day + 364) % 365],
      shaped[day],
      shaped[(day + 1) % 365],
    );
  }
  return round(hourly);
}

/** Global radiation of every hour [W m⁻²]: each day's energy over its hours. */
function hourlyGlobal(days: DrawnDays, clock: Clock): Float64Array {
  const hourly = new Float64Array(hoursOfYear);
  const share = new Float64Array(24);
  for (let day = 0; day < 365; day++) {
    if (!(days.radiation[day] > 0)) continue;
    let sum = 0;
    for (let hour = 0; hour < 24; hour++) {
      share[hour] = hourlyShare(hourAngle(hour + 0.5, clock.noon[day]), clock.sunset[day]);
      sum += share[hour];
    }
    if (!(sum > 0)) {
      share[Math.floor(clock.noon[day] + 24) % 24] = 1;
      sum = 1;
    }
    for (let hour = 0; hour < 24; hour++)
      hourly[day * 24 + hour] = (days.radiation[day] * 1e6 * share[hour]) / sum / 3600;
  }
  return round(hourly);
}

/** Hour angle −180…180 of a clock hour [degrees]. */
function hourAngle(hour: number, noon: number): number {
  return ((((hour - noon + 12) % 24) + 24) % 24) * 15 - 180;
}

/**
 * Nights colder than their month are clearer and calmer: cloud cover by 0.18 and the logarithm of the wind by 0.13
 * for one standard departure of the least temperature. Medians over the October-to-March nights of five typical
 * years (Sand Point, Quillayute, International Falls, Denver, San Francisco; US TMY3): 0.15, 0.24, 0.17, 0.00, 0.18
 * and −0.14, 0.33, 0.13, 0.10, 0.14; derived.
 */
const clearerByCold = 0.18;
const calmerByCold = 0.13;

/** Share of a night's departure that holds at an hour [h of the day]: all from 18:00 to 06:00, none at noon. */
function nightShare(hour: number): number {
  const fromNoon = Math.abs(hour - 12);
  return Math.min(1, fromNoon / 6);
}

/** Dew point, wind, cloud and the split of the radiation. */
function fillRest(year: WeatherYear, days: DrawnDays, site: Site): void {
  for (let i = 0; i < hoursOfYear; i++) {
    const end = i + 1;
    year.dewPoint[i] = Math.min(between(days.dew, end, 6), year.dryBulb[i]);
    // The night from noon to noon belongs to the day it ends on.
    const coldness = days.coldness[Math.floor((i + 12) / 24) % 365] * nightShare((i % 24) + 0.5);
    const cover = between(days.cloudCover, i + 0.5, 12) + clearerByCold * coldness;
    year.cloudCover[i] = Math.max(0, Math.min(1, cover));
    // Afternoons are windier than nights by a quarter each way (common practice, no source).
    const daily = 1 + 0.25 * Math.cos((2 * Math.PI * ((end % 24) - 14)) / 24);
    year.windSpeed[i] = between(days.wind, end, 12) * daily * Math.exp(calmerByCold * coldness);
    if (!(year.globalHorizontal[i] > 0)) continue;
    const split = splitHour(year.globalHorizontal[i], year.startMs + i * 3_600_000, site);
    year.beamNormal[i] = split.beam;
    year.diffuseHorizontal[i] = split.diffuse;
  }
  for (const values of [year.dewPoint, year.cloudCover, year.windSpeed]) round(values);
}

/** Daily values, each standing at `hour` of its day, brought to an hour of the year in a straight line. */
function between(daily: Float64Array, hourOfYear: number, hour: number): number {
  const at = (hourOfYear - hour) / 24;
  const floor = Math.floor(at);
  const before = daily[(floor + 365) % 365];
  const after = daily[(floor + 366) % 365];
  return before + (after - before) * (at - floor);
}
