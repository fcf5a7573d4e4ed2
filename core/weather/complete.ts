import { cloudTransmission, coverFromTransmission, standardPressure } from '../sun/index.ts';
import { fillGaps } from './gaps.ts';
import { dewPointOfHumidity } from './humidity.ts';
import type { RawTable } from './raw-table.ts';
import { fillLongWave } from './long-wave.ts';
import { coverFromLongWave } from './sky.ts';
import { clearHour, splitHour, sunHour, type FileHeader, type Station } from './sun-hours.ts';
import { sunClock } from './sun-clock.ts';
import {
  hoursOfYear,
  nominalStart,
  type WeatherProblem,
  type WeatherReading,
  type WeatherYear,
} from './year.ts';

/** A raw year made whole: what can be computed is computed, short gaps are filled, longer ones refused. */
export function completeYear(table: RawTable, header: FileHeader, notes: string[]): WeatherReading {
  const problems: WeatherProblem[] = [];
  const { columns } = table;
  if (table.leapHours > 0)
    notes.push(`29 February (${table.leapHours} hours) left out: the year has 365 days.`);
  fillAndNote(columns.dryBulb, 'air temperature', table, problems, notes);
  completeHumidity(table, problems, notes);
  fillAndNote(columns.windSpeed, 'wind speed', table, problems, notes);
  completePressure(columns.pressure, header, notes);
  if (problems.length > 0) return { ok: false, problems };
  const clock = sunClock(columns.globalHorizontal, header, notes);
  const startMs = nominalStart(clock.utcOffsetHours);
  const radiationStart = startMs + header.radiationShiftMinutes * 60_000;
  completeRadiation(table, header, radiationStart, problems, notes);
  if (problems.length > 0) return { ok: false, problems };
  completeCloud(table, header, radiationStart, notes);
  const skyLongWaveFrom = fillLongWave(columns, header, startMs, notes);
  const weather: WeatherYear = {
    name: header.name,
    origin: header.origin,
    latitude: header.latitude,
    longitude: header.longitude,
    elevation: header.elevation,
    utcOffsetHours: clock.utcOffsetHours,
    startMs,
    hours: hoursOfYear,
    dryBulb: columns.dryBulb,
    dewPoint: columns.dewPoint,
    windSpeed: columns.windSpeed,
    pressure: columns.pressure,
    globalHorizontal: columns.globalHorizontal,
    beamNormal: columns.beamNormal,
    diffuseHorizontal: columns.diffuseHorizontal,
    cloudCover: columns.cloudCover,
    skyLongWave: columns.skyLongWave,
    skyLongWaveFrom,
    radiationShiftMinutes: header.radiationShiftMinutes,
    notes,
  };
  return { ok: true, weather };
}

function fillAndNote(
  values: Float64Array,
  what: string,
  table: RawTable,
  problems: WeatherProblem[],
  notes: string[],
): void {
  const filled = fillGaps(values, what, table, problems);
  if (filled > 0) notes.push(`${filled} missing hours of ${what} filled in a straight line.`);
}

/** Dew point from relative humidity where the file lacks it; never above the air temperature. */
function completeHumidity(table: RawTable, problems: WeatherProblem[], notes: string[]): void {
  const { dryBulb, dewPoint, humidity } = table.columns;
  let computed = 0;
  for (let i = 0; i < hoursOfYear; i++) {
    if (!Number.isNaN(dewPoint[i]) || Number.isNaN(humidity[i])) continue;
    dewPoint[i] = dewPointOfHumidity(dryBulb[i], humidity[i]);
    computed++;
  }
  if (computed > 0) notes.push(`${computed} hours of dew point computed from relative humidity.`);
  fillAndNote(dewPoint, 'dew point and humidity', table, problems, notes);
  for (let i = 0; i < hoursOfYear; i++) if (dewPoint[i] > dryBulb[i]) dewPoint[i] = dryBulb[i];
}

/** Missing pressure is that of the standard atmosphere at the station's height. */
function completePressure(pressure: Float64Array, header: FileHeader, notes: string[]): void {
  let computed = 0;
  for (let i = 0; i < hoursOfYear; i++) {
    if (!Number.isNaN(pressure[i])) continue;
    pressure[i] = standardPressure(header.elevation);
    computed++;
  }
  if (computed > 0)
    notes.push(`${computed} hours of missing pressure set to that of the standard atmosphere.`);
}

/** Global from its parts or the parts from the global where one is missing; short gaps of all by their share of the clear sky. */
function completeRadiation(
  table: RawTable,
  station: Station,
  beginMs: number,
  problems: WeatherProblem[],
  notes: string[],
): void {
  const { globalHorizontal: global, beamNormal: beam, diffuseHorizontal: diffuse } = table.columns;
  let summed = 0;
  for (let i = 0; i < hoursOfYear; i++) {
    if (!Number.isNaN(global[i]) || Number.isNaN(beam[i]) || Number.isNaN(diffuse[i])) continue;
    const sun = sunHour(beginMs + i * 3_600_000, station);
    global[i] = diffuse[i] + (sun.lit > 0 ? beam[i] * Math.cos((sun.zenith * Math.PI) / 180) : 0);
    summed++;
  }
  if (summed > 0) notes.push(`${summed} hours of global radiation computed from beam and diffuse.`);
  fillGlobal(table, station, beginMs, problems, notes);
  if (problems.length > 0) return;
  let split = 0;
  for (let i = 0; i < hoursOfYear; i++) {
    if (!Number.isNaN(beam[i]) && !Number.isNaN(diffuse[i])) continue;
    const parts = splitHour(global[i], beginMs + i * 3_600_000, station);
    if (Number.isNaN(beam[i])) beam[i] = parts.beam;
    if (Number.isNaN(diffuse[i])) diffuse[i] = parts.diffuse;
    split++;
  }
  if (split > 0)
    notes.push(`${split} hours of beam or diffuse radiation computed from the global (Erbs 1982).`);
}

/** Missing global radiation: as large a share of the cloudless as its neighbours have, for gaps up to the longest allowed. */
function fillGlobal(
  table: RawTable,
  station: Station,
  beginMs: number,
  problems: WeatherProblem[],
  notes: string[],
): void {
  const global = table.columns.globalHorizontal;
  const share = new Float64Array(hoursOfYear);
  const clear = new Map<number, number>();
  let gaps = false;
  for (let i = 0; i < hoursOfYear; i++) if (Number.isNaN(global[i])) gaps = true;
  if (!gaps) return;
  for (let i = 0; i < hoursOfYear; i++) {
    const sky = clearHour(beginMs + i * 3_600_000, station);
    clear.set(i, sky);
    share[i] = sky > 1 ? global[i] / sky : Number.isNaN(global[i]) ? NaN : 0.5;
  }
  const missing = global.map((value) => (Number.isNaN(value) ? 1 : 0));
  const filled = fillGaps(share, 'global radiation', table, problems);
  if (problems.length > 0) return;
  for (let i = 0; i < hoursOfYear; i++) if (missing[i] === 1) global[i] = share[i] * (clear.get(i) ?? 0);
  notes.push(`${filled} missing hours of global radiation filled by their neighbours' share of a clear sky.`);
}

/** Missing cloud: from measured long-wave, or by day from the share of the cloudless radiation that came through. */
function completeCloud(table: RawTable, station: Station, beginMs: number, notes: string[]): void {
  const { cloudCover, skyLongWave: longWave, dryBulb, dewPoint, globalHorizontal } = table.columns;
  let computed = 0;
  let cover = 0.5;
  for (let i = 0; i < hoursOfYear; i++) {
    if (!Number.isNaN(cloudCover[i])) continue;
    computed++;
    if (!Number.isNaN(longWave[i])) {
      cloudCover[i] = coverFromLongWave(longWave[i], dryBulb[i], dewPoint[i]);
      continue;
    }
    const clear = clearHour(beginMs + i * 3_600_000, station);
    // By night and at low sun the last cover seen by day stands.
    if (clear > 50)
      cover = coverFromTransmission(Math.max(cloudTransmission(1), globalHorizontal[i] / clear));
    cloudCover[i] = cover;
  }
  if (computed > 0)
    notes.push(`${computed} hours of cloud cover estimated from long-wave or global radiation.`);
}
