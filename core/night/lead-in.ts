import type { Place } from '../plan/schema.ts';
import { emptyDrive, initialState, saturationRatio, stepHeat } from '../heat/index.ts';
import type { HeatState, Network } from '../heat/index.ts';
import { lampRuns, preparePlaceRun, roomTemperatures, setDrive } from '../season/index.ts';
import type { SiteYear } from '../season/index.ts';
import type { PlaceLight } from '../season/place-light.ts';

/** The days before tonight: the usual weather of the date, bent so that it meets the dusk temperature given. */
export interface LeadIn {
  readonly year: SiteYear;
  /** Step of the weather year in which dusk falls. */
  readonly duskStep: number;
  readonly duskTemperature: number;
  readonly lightOf: (place: Place) => PlaceLight;
}

/** Days run before dusk; the last one is shifted whole, the ones before by a growing share [d]. */
const leadDays = 6;

/**
 * State of a place at dusk: run through the days before with the year's own weather, its temperature moved
 * step by step so that at dusk it is what the user read.
 */
export function leadIn(place: Place, lead: LeadIn, network: Network, wetness: number): HeatState {
  const { year, duskStep } = lead;
  const { clock, steps } = year;
  const perDay = 1440 / clock.stepMinutes;
  const run = preparePlaceRun(
    place,
    year,
    lead.lightOf(place),
    lampRuns(place),
    roomTemperatures(place.room, clock),
    wetness,
  );
  const n = clock.n;
  const at = (index: number) => (duskStep - leadDays * perDay + index + n) % n;
  const state = initialState(network, year.clock.dayMean[at(0)], year.humidity[at(0)]);
  const drive = emptyDrive(network, clock.stepMinutes * 60);
  const shift = lead.duskTemperature - steps.dryBulb[duskStep];
  const count = leadDays * perDay;
  for (let index = 0; index < count; index++) {
    const k = at(index);
    setDrive(drive, run, year, k, state);
    const share = Math.min(1, index / (count - perDay));
    drive.outdoor += share * shift;
    drive.sky += share * shift;
    if (place.room === null) drive.room = drive.outdoor;
    drive.humidity = Math.min(drive.humidity, saturationRatio(drive.outdoor, network.pressure));
    stepHeat(network, state, drive);
  }
  return state;
}
