/** A case through the year of the standard's weather: hourly air temperature and heat. */
import { readFileSync } from 'node:fs';
import { readEpwBytes } from '../../../core/weather/index.ts';
import { AIR } from '../../../core/heat/index.ts';
import { airDensity, airHeat } from '../../../core/heat/air.ts';
import { airOf, preparePlaceRun, runPlaceHeat } from '../../../core/season/place-heat.ts';
import type { PlaceRun } from '../../../core/season/place-heat.ts';
import { placeLight } from '../../../core/season/place-light.ts';
import { prepareSiteYear } from '../../../core/season/site-year.ts';
import type { SiteYear } from '../../../core/season/site-year.ts';
import { lampRuns } from '../../../core/season/lamps.ts';
import { cases, planOfCase } from './cases.ts';
import type { Case } from './cases.ts';

export function yearOf(file: string): SiteYear {
  const reading = readEpwBytes(readFileSync(file));
  if (!reading.ok) throw new Error(`${file} cannot be read`);
  return prepareSiteYear(planOfCase(cases[600]), reading.weather, 'ashrae-140');
}

/** Means of the hours of the year from 1 January [°C, W]. */
export interface CaseYear {
  readonly air: Float64Array;
  readonly heat: Float64Array;
}

/**
 * The standard's building stands empty: only the air itself holds heat, not the light contents that go with the air of a
 * place (four times its capacity; with them the most of 600FF is 3.2 K lower and falls 2.4 K short of the range).
 */
function emptied({ capacity, volume, pressure }: PlaceRun['network']): void {
  capacity[AIR] = volume * airDensity(10, pressure) * airHeat;
}

/** First day of the season, 1 August, counted from 1 January. */
const startDay = 212;

export function runCase(each: Case, year: SiteYear): CaseYear {
  const [place] = planOfCase(each).places;
  const run = preparePlaceRun(place, year, placeLight(place, year), lampRuns(place), null, 0);
  emptied(run.network);
  const { n, stepMinutes } = year.clock;
  const perHour = 60 / stepMinutes;
  const air = new Float64Array(n / perHour);
  const heat = new Float64Array(n / perHour);
  const first = startDay * 24 * perHour;
  runPlaceHeat(run, year, startDay, (index, _, state) => {
    const hour = Math.floor(((first + index) % n) / perHour);
    air[hour] += airOf(state) / perHour;
    for (const watts of state.heaterPower) heat[hour] += watts / perHour;
  });
  return { air, heat };
}

export const sumOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);
export const meanOf = (values: Float64Array): number => sumOf(values) / values.length;
export const leastOf = (values: Float64Array): number => values.reduce((a, b) => Math.min(a, b), Infinity);
export const mostOf = (values: Float64Array): number => values.reduce((a, b) => Math.max(a, b), -Infinity);

/** The 24 hours of 1 February. */
export const februaryFirst = (hourly: Float64Array): Float64Array => hourly.slice(31 * 24, 32 * 24);
