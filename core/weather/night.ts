import type { Site } from '../plan/site.ts';
import {
  civilInstant,
  clearSky,
  cloudTransmission,
  dateMs,
  dayOfYear,
  daylight,
  splitGlobal,
  standardPressure,
} from '../sun/index.ts';
import { daytime, nighttime, partonLogan } from './diurnal.ts';
import { nightChill } from './frost-hollow.ts';
import { emptySteps, type GardenOffset, type OutdoorSteps } from './outdoor.ts';
import { clearSkyEmissivity, skyEmissivity, skyLongWave } from './sky.ts';
import { fillSun } from './steps.ts';

/** Tonight as the user knows it. */
export interface NightForecast {
  /** Date of the evening, YYYY-MM-DD in the site's time zone. */
  readonly dateISO: string;
  /** Air temperature at dusk and the night's low [°C]. */
  readonly duskTemperature: number;
  readonly low: number;
  /** Clock time of the low [h of the site's day, 0–24; 4 is 04:00 tomorrow, 22 tonight]; sunrise where not given. */
  readonly lowHour?: number | null;
  /** Cloud in oktas 0–8; clear where not given. */
  readonly cloudOktas?: number | null;
  /** Wind at 10 m [m s⁻¹]; 1.5 where not given. */
  readonly wind?: number | null;
  /** Temperatures at instants of the night in place of the curve from dusk to low. */
  readonly hourly?: readonly { readonly epochMs: number; readonly temperature: number }[] | null;
}

export interface NightOptions {
  /** Length of a step [min]; 5 where not given. */
  readonly stepMinutes?: number;
}

/** Wind of a night nobody named [m s⁻¹ at 10 m]: light air (common practice, no source). */
const usualWind = 1.5;

/** Clock hour at which a night's run ends [h]. */
const morningEnd = 10;

/**
 * The weather of a night, from sunset (18:00 where the sun does not set) to 10:00 next morning, in even steps. Air:
 * Parton & Logan's decay to the low, level till sunrise, their sine toward an afternoon as warm as the one before; or the hourly
 * table in straight lines. Dew point: the low (FAO-56 eq. 48). Radiation: cloudless sky less cloud (Kasten & Czeplak).
 */
export function nightWeather(
  forecast: NightForecast,
  site: Site & GardenOffset,
  options: NightOptions = {},
): OutdoorSteps {
  const { stepMinutes = 5 } = options;
  checkForecast(forecast);
  if (!(stepMinutes > 0 && stepMinutes <= 60))
    throw new RangeError(`expected a step of 0 to 60 min, got ${stepMinutes}`);
  const span = nightSpan(forecast, site);
  const stepMs = stepMinutes * 60_000;
  const startMs = Math.floor(span.duskMs / stepMs) * stepMs;
  const n = Math.max(1, Math.ceil((span.endMs - startMs) / stepMs));
  const steps = emptySteps(startMs, stepMinutes, n);
  const air = forecast.hourly ? tableCurve(forecast.hourly) : nightCurve(forecast, span);
  const cover = (forecast.cloudOktas ?? 0) / 8;
  steps.windSpeed.fill(forecast.wind ?? usualWind);
  steps.pressure.fill(standardPressure(site.elevation));
  steps.cloudCover.fill(cover);
  let least = Infinity;
  for (let j = 0; j < n; j++) {
    steps.dryBulb[j] = air(Math.max(span.duskMs, startMs + (j + 0.5) * stepMs));
    least = Math.min(least, steps.dryBulb[j]);
  }
  for (let j = 0; j < n; j++) steps.dewPoint[j] = Math.min(least, steps.dryBulb[j]);
  fillSun(steps, site.latitude, site.longitude);
  fillSky(steps, site, cover);
  if (site.frostHollow) nightChill(steps, site.frostHollow);
  return steps;
}

/** Throws where a forecast's numbers are missing or out of their range. */
function checkForecast(forecast: NightForecast): void {
  const { duskTemperature, low, cloudOktas, wind, lowHour, hourly } = forecast;
  dateMs(forecast.dateISO);
  for (const [name, value] of Object.entries({ duskTemperature, low })) {
    if (!(value >= -80 && value <= 60)) throw new RangeError(`expected ${name} −80 to 60 °C, got ${value}`);
  }
  if (!(low <= duskTemperature))
    throw new RangeError(`expected low at most duskTemperature ${duskTemperature}, got ${low}`);
  if (!((cloudOktas ?? 0) >= 0 && (cloudOktas ?? 0) <= 8))
    throw new RangeError(`expected cloudOktas 0 to 8, got ${cloudOktas}`);
  if (!((wind ?? 0) >= 0 && (wind ?? 0) <= 60))
    throw new RangeError(`expected wind 0 to 60 m/s, got ${wind}`);
  if (!((lowHour ?? 0) >= 0 && (lowHour ?? 0) <= 24))
    throw new RangeError(`expected lowHour 0 to 24, got ${lowHour}`);
  if (hourly && hourly.length < 2)
    throw new RangeError(`expected two or more hourly values, got ${hourly.length}`);
}

interface NightSpan {
  readonly duskMs: number;
  readonly lowMs: number;
  /** When the air begins to warm: at the low, or at sunrise where the low comes before it. */
  readonly morningMs: number;
  readonly endMs: number;
  /** Length of the day before, for the shape of the morning [h]. */
  readonly dayLength: number;
}

function nightSpan(forecast: NightForecast, site: Site): NightSpan {
  const tomorrow = new Date(dateMs(forecast.dateISO) + 86_400_000).toISOString().slice(0, 10);
  const today = daylight(forecast.dateISO, site);
  const duskMs = today.sunsetMs ?? civilInstant(forecast.dateISO, 18 * 60, site.timeZone);
  const endMs = Math.max(civilInstant(tomorrow, morningEnd * 60, site.timeZone), duskMs + 3_600_000);
  const sunrise = daylight(tomorrow, site).sunriseMs ?? civilInstant(tomorrow, 7 * 60, site.timeZone);
  const dayLength = Math.max(3, Math.min(21, today.hours));
  const { lowHour } = forecast;
  if (lowHour === null || lowHour === undefined) {
    const lowMs = Math.max(sunrise, duskMs + 3_600_000);
    return { duskMs, lowMs, morningMs: lowMs, endMs, dayLength };
  }
  const evening = civilInstant(forecast.dateISO, lowHour * 60, site.timeZone);
  const named =
    lowHour > 12 && evening > duskMs ? evening : civilInstant(tomorrow, (lowHour % 24) * 60, site.timeZone);
  const lowMs = Math.max(named, duskMs + 600_000);
  return { duskMs, lowMs, morningMs: Math.max(lowMs, sunrise), endMs: Math.max(endMs, named), dayLength };
}

/** Air temperature at an instant from dusk to low and up the morning. */
function nightCurve(forecast: NightForecast, span: NightSpan): (epochMs: number) => number {
  const { duskTemperature, low } = forecast;
  const night = (span.lowMs - span.duskMs) / 3_600_000;
  const shape = partonLogan;
  // The afternoon's maximum behind the dusk temperature: dusk stands `dayLength` − c after the minimum on the sine.
  const dusk = Math.sin((Math.PI * (span.dayLength - shape.minimumLag)) / (span.dayLength + 2 * shape.lag));
  const maximum = low + (duskTemperature - low) / Math.max(0.3, dusk);
  return (epochMs) => {
    const since = (epochMs - span.duskMs) / 3_600_000;
    if (since <= night) return nighttime(since, night, duskTemperature, low, shape);
    const warming = Math.max(0, epochMs - span.morningMs) / 3_600_000;
    return daytime(warming, span.dayLength, low, maximum, shape);
  };
}

/** Temperatures of a table in straight lines, level beyond its ends. */
function tableCurve(table: NonNullable<NightForecast['hourly']>): (epochMs: number) => number {
  const rows = [...table].sort((a, b) => a.epochMs - b.epochMs);
  for (const row of rows) {
    if (!(Number.isFinite(row.epochMs) && row.temperature >= -80 && row.temperature <= 60)) {
      throw new RangeError(
        `expected hourly temperatures −80 to 60 °C at finite instants, got ${row.temperature}`,
      );
    }
  }
  return (epochMs) => {
    let k = 0;
    while (k < rows.length - 1 && rows[k + 1].epochMs <= epochMs) k++;
    const from = rows[k];
    const to = rows[Math.min(k + 1, rows.length - 1)];
    const gap = to.epochMs - from.epochMs;
    const share = gap > 0 ? Math.max(0, Math.min(1, (epochMs - from.epochMs) / gap)) : 0;
    return from.temperature + (to.temperature - from.temperature) * share;
  };
}

/** Long-wave by dew point and cloud; what sun the evening and morning have through the cloud. */
function fillSky(steps: OutdoorSteps, site: Site, cover: number): void {
  for (let j = 0; j < steps.n; j++) {
    const clear = clearSkyEmissivity(steps.dewPoint[j], null, steps.pressure[j]);
    steps.skyLongWave[j] = skyLongWave(steps.dryBulb[j], skyEmissivity(clear, cover));
    const apparentZenith = 90 - steps.sunElevation[j];
    if (!(apparentZenith < 90)) continue;
    const bare = clearSky({ apparentZenith, extraterrestrialNormal: steps.extraterrestrialNormal[j] }, site);
    const global = bare.globalHorizontal * cloudTransmission(cover);
    const day = dayOfYear(steps.startMs + (j + 0.5) * steps.stepMinutes * 60_000);
    const split = cover === 0 ? bare : splitGlobal(global, apparentZenith, day);
    steps.globalHorizontal[j] = global;
    steps.beamNormal[j] = split.beamNormal;
    steps.diffuseHorizontal[j] = split.diffuseHorizontal;
  }
}
