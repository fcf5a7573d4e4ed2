import {
  faoDaylightHours,
  faoExtraterrestrial,
  radiationFromRange,
  radiationFromSunshine,
} from '../sun/index.ts';
import { monthStarts } from './year.ts';

/** Long-term means of one month; what is null or absent is estimated. */
export interface MonthNormalsInput {
  /** Mean daily least and most air temperature [°C]. */
  readonly meanMinimum: number;
  readonly meanMaximum: number;
  /** Mean daily global radiation [MJ m⁻² d⁻¹]. */
  readonly globalRadiation?: number | null;
  /** Mean daily bright sunshine [h d⁻¹]. */
  readonly sunshineHours?: number | null;
  /** Mean wind at 10 m [m s⁻¹]. */
  readonly wind?: number | null;
  /** Mean relative humidity 0–1. */
  readonly humidity?: number | null;
}

export interface ClimateNormals {
  readonly months: readonly MonthNormalsInput[];
  /** The coldest night of a usual winter, and of one winter in ten [°C]. */
  readonly typicalLow?: number | null;
  readonly rareLow?: number | null;
}

/** The normals with every gap filled. */
export interface FullNormals {
  readonly minimum: readonly number[];
  readonly maximum: readonly number[];
  readonly radiation: readonly number[];
  readonly wind: readonly number[];
  readonly humidity: readonly (number | null)[];
  readonly typicalLow: number;
  readonly rareLow: number;
}

/** Wind where none is given [m s⁻¹ at 10 m] (common practice, no source). */
const usualWind = 3.5;

/** Fills what the normals leave open and says so in `notes`; throws on numbers no climate has. */
export function fullNormals(normals: ClimateNormals, latitude: number, notes: string[]): FullNormals {
  const { months } = normals;
  if (months.length !== 12) throw new RangeError(`expected twelve months, got ${months.length}`);
  months.forEach(checkMonth);
  const minimum = months.map((month) => month.meanMinimum);
  const radiation = months.map((month, k) => monthRadiation(month, latitude, k));
  const estimated = months.filter((month) => !given(month.globalRadiation));
  const sunny = estimated.filter((month) => given(month.sunshineHours)).length;
  if (sunny > 0)
    notes.push(`Global radiation of ${sunny} months from sunshine hours (Ångström–Prescott, FAO-56 eq. 35).`);
  if (estimated.length > sunny) {
    notes.push(
      `Global radiation of ${estimated.length - sunny} months from the temperature range (Hargreaves, FAO-56 eq. 50).`,
    );
  }
  const windless = months.filter((month) => !given(month.wind)).length;
  if (windless > 0) notes.push(`Wind of ${windless} months taken as ${usualWind} m/s.`);
  return {
    minimum,
    maximum: months.map((month) => month.meanMaximum),
    radiation,
    wind: months.map((month) => month.wind ?? usualWind),
    humidity: months.map((month) => month.humidity ?? null),
    ...lows(normals, Math.min(...minimum), notes),
  };
}

const given = (value: number | null | undefined): boolean => value !== null && value !== undefined;

function checkMonth(month: MonthNormalsInput, k: number): void {
  const at = `month ${k + 1}`;
  const { meanMinimum, meanMaximum, globalRadiation, sunshineHours, wind, humidity } = month;
  if (!(meanMinimum >= -80 && meanMaximum <= 60 && meanMinimum <= meanMaximum)) {
    throw new RangeError(
      `expected meanMinimum at most meanMaximum in ${at}, got ${meanMinimum} and ${meanMaximum}`,
    );
  }
  checkOptional(globalRadiation, 0, 45, `globalRadiation 0 to 45 MJ m⁻² d⁻¹ in ${at}`);
  checkOptional(sunshineHours, 0, 24, `sunshineHours 0 to 24 in ${at}`);
  checkOptional(wind, 0, 40, `wind 0 to 40 m/s in ${at}`);
  checkOptional(humidity, 0.01, 1, `humidity 0.01 to 1 in ${at}`);
}

function checkOptional(value: number | null | undefined, least: number, most: number, words: string): void {
  if (value === null || value === undefined) return;
  if (!(value >= least && value <= most)) throw new RangeError(`expected ${words}, got ${value}`);
}

/** Mean radiation of a month [MJ m⁻² d⁻¹] as given, from sunshine, or from the temperature range, by FAO-56. */
function monthRadiation(month: MonthNormalsInput, latitude: number, k: number): number {
  if (month.globalRadiation !== null && month.globalRadiation !== undefined) return month.globalRadiation;
  let above = 0;
  let longest = 0;
  const days = monthStarts[k + 1] - monthStarts[k];
  for (let day = monthStarts[k] + 1; day <= monthStarts[k + 1]; day++) {
    above += faoExtraterrestrial(latitude, day) / days;
    longest += faoDaylightHours(latitude, day) / days;
  }
  if (month.sunshineHours !== null && month.sunshineHours !== undefined) {
    return radiationFromSunshine(month.sunshineHours, longest, above);
  }
  return radiationFromRange(month.meanMinimum, month.meanMaximum, above);
}

/** The two lows as given, or set from the coldest month's mean minimum (by eye from a few stations; common practice, no source). */
function lows(
  normals: ClimateNormals,
  coldest: number,
  notes: string[],
): { typicalLow: number; rareLow: number } {
  const typical = normals.typicalLow ?? coldest - 8 - 0.35 * Math.max(0, -coldest);
  const rare = normals.rareLow ?? typical - 4 - 0.1 * Math.max(0, -coldest);
  if (!(Number.isFinite(typical) && Number.isFinite(rare))) {
    throw new TypeError(`expected finite winter lows, got ${typical} and ${rare}`);
  }
  // A night of the coldest month is colder than that month's mean somewhere: less apart than this is no weather.
  const typicalLow = Math.min(typical, coldest - 1);
  const rareLow = Math.min(rare, typicalLow - 0.5);
  if (typicalLow < typical)
    notes.push(
      `Low of a usual winter lowered to ${typicalLow.toFixed(1)} °C, below the coldest month's mean minimum.`,
    );
  if (rareLow < rare)
    notes.push(`Low of one winter in ten lowered to ${rareLow.toFixed(1)} °C, below the usual low.`);
  if (!given(normals.typicalLow)) notes.push(`Low of a usual winter taken as ${typicalLow.toFixed(1)} °C.`);
  if (!given(normals.rareLow)) notes.push(`Low of one winter in ten taken as ${rareLow.toFixed(1)} °C.`);
  return { typicalLow, rareLow };
}
