import {
  clearSkyEmissivity,
  coverFromTransmission,
  dewPointOfHumidity,
  lowestBeamZenith,
  nominalStart,
  skyEmissivity,
  skyLongWave,
  standardPressure,
} from '../../core/index.ts';
import type { WeatherYear } from '../../core/index.ts';
import { clearHour, sunHour } from '../../core/weather/sun-hours.ts';
import type { Station } from '../../core/weather/sun-hours.ts';
import { atticOffsetHours } from './attic-data.ts';
import type { AtticReadings } from './attic-data.ts';

/** The weather station next to the house: the airport of Vantaa (position and height from memory). */
export const station: Station = { latitude: 60.3, longitude: 25.0, elevation: 50 };

const hourMs = 3_600_000;

/** A year of readings as a weather year, with the index of the reading at the end of each of its hours. */
export interface AtticYear {
  readonly weather: WeatherYear;
  readonly reading: Int32Array;
}

/**
 * Lays 365 days of readings from index `from` on into the nominal year by their dates, 29 February left out. The
 * reading at a full hour is the end of the hour before; its radiation is centred there, half an hour after the
 * middle of that hour.
 */
export function atticYear(readings: AtticReadings, from: number): AtticYear {
  const cover = cloudCover(readings);
  const reading = new Int32Array(8760).fill(-1);
  for (let i = from, laid = 0; laid < 8760; i++) {
    if (i >= readings.n) throw new RangeError(`expected a year of readings from ${from}, got ${laid} hours`);
    const row = rowOf(readings.startMs + i * hourMs);
    if (row === null) continue;
    reading[row] = i;
    laid++;
  }
  const column = (of: (i: number) => number) => Float64Array.from(reading, of);
  const { outdoor, humidity, global } = readings;
  const pressure = standardPressure(station.elevation);
  const dew = (i: number) => Math.min(outdoor[i], dewPointOfHumidity(outdoor[i], humidity[i]));
  const longWave = (i: number) => {
    const solarHour = (((readings.startMs / hourMs + i + station.longitude / 15) % 24) + 24) % 24;
    return skyLongWave(outdoor[i], skyEmissivity(clearSkyEmissivity(dew(i), solarHour, pressure), cover[i]));
  };
  const weather: WeatherYear = {
    name: 'Vantaa, measured',
    origin: 'epw',
    ...station,
    utcOffsetHours: atticOffsetHours,
    startMs: nominalStart(atticOffsetHours),
    hours: 8760,
    dryBulb: column((i) => outdoor[i]),
    dewPoint: column(dew),
    windSpeed: column((i) => readings.wind[i]),
    pressure: new Float64Array(8760).fill(pressure),
    globalHorizontal: column((i) => global[i]),
    beamNormal: column((i) => beamOf(readings, i)),
    diffuseHorizontal: column((i) => (beamOf(readings, i) > 0 ? readings.diffuse[i] : global[i])),
    cloudCover: column((i) => meanOfHour((k) => cover[k], i)),
    skyLongWave: column((i) => meanOfHour(longWave, i)),
    skyLongWaveFrom: new Uint8Array(8760).fill(1),
    radiationShiftMinutes: 30,
    notes: [],
  };
  return { weather, reading };
}

/** Mean of what holds at the beginning and at the end of the hour that ends with a reading. */
const meanOfHour = (of: (i: number) => number, i: number): number => (of(Math.max(0, i - 1)) + of(i)) / 2;

/** Row of the nominal year whose end a moment is; null for the hours of 29 February. */
function rowOf(moment: number): number | null {
  const middle = new Date(moment + atticOffsetHours * hourMs - hourMs / 2);
  if (middle.getUTCMonth() === 1 && middle.getUTCDate() === 29) return null;
  return Math.floor(
    (Date.UTC(2025, middle.getUTCMonth(), middle.getUTCDate(), middle.getUTCHours()) - Date.UTC(2025, 0, 1)) /
      hourMs,
  );
}

/** Beam from measured global and diffuse [W m⁻²]; none where the sun stands too low to tell or diffuse is all. */
function beamOf({ global, diffuse, startMs }: AtticReadings, i: number): number {
  const direct = global[i] - diffuse[i];
  if (!(direct > 0)) return 0;
  const sun = sunHour(startMs + (i - 0.5) * hourMs, station);
  if (sun.lit === 0 || !(sun.zenith < lowestBeamZenith)) return 0;
  // No more than passes the clearest air (Linke turbidity near 2): beyond it the moment was not the hour's mean.
  return Math.min(1000, direct / Math.cos((sun.zenith * Math.PI) / 180));
}

/** Cloudless radiation from which the clearness of a moment is told [W m⁻²]: a sun some 4° high. */
const leastClear = 20;

/**
 * Cloud cover of every reading, 0–1: by day from the share of the cloudless radiation that came through in the three
 * hours round it (Kasten & Czeplak 1980), by night straight from evening to morning; covered where it rains or snows.
 */
export function cloudCover(readings: AtticReadings): Float64Array {
  const { n, startMs, global, precipitation } = readings;
  const clear = Float64Array.from({ length: n }, (_, i) => clearHour(startMs + (i - 0.5) * hourMs, station));
  const cover = new Float64Array(n).fill(NaN);
  for (let i = 0; i < n; i++) {
    if (!(clear[i] > leastClear)) continue;
    let came = 0;
    let could = 0;
    for (let k = Math.max(0, i - 1); k <= Math.min(n - 1, i + 1); k++) {
      if (!(clear[k] > leastClear)) continue;
      came += global[k];
      could += clear[k];
    }
    cover[i] = coverFromTransmission(came / could);
  }
  carryThroughNights(cover);
  for (let i = 0; i < n; i++) if (precipitation[i] > 0) cover[i] = 1;
  return cover;
}

function carryThroughNights(cover: Float64Array): void {
  let last = -1;
  const n = cover.length;
  for (let i = 0; i <= n; i++) {
    if (i < n && Number.isNaN(cover[i])) continue;
    const evening = last < 0 ? cover[i] : cover[last];
    const morning = i === n ? evening : cover[i];
    for (let k = last + 1; k < i; k++) cover[k] = evening + ((morning - evening) * (k - last)) / (i - last);
    last = i;
  }
}
