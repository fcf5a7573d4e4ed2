import type { OutdoorSteps } from '../weather/index.ts';
import type { Room } from '../plan/equipment.ts';
import { minutesOf } from '../plan/fields.ts';
import { skyTemperature } from '../weather/index.ts';
import { saturationRatio } from '../heat/index.ts';
import { dayOfMonthDay, within } from './calendar.ts';
import type { SeasonClock } from './clock.ts';

/** Sky temperature [°C] of each step from the sky's long-wave irradiance [W m⁻²], the sky as a black body. */
export function skyTemperatures(skyLongWave: Float64Array): Float64Array {
  return skyLongWave.map(skyTemperature);
}

/** Outdoor humidity ratio of each step [kg kg⁻¹]. */
export function humidityRatios(steps: OutdoorSteps): Float64Array {
  const ratios = new Float64Array(steps.n);
  for (let k = 0; k < steps.n; k++) ratios[k] = saturationRatio(steps.dewPoint[k], steps.pressure[k]);
  return ratios;
}

/** Indoor moisture excess over outdoors on a day at 0 °C or colder [kg kg⁻¹]: near 4 g m⁻³, a lived-in dwelling (ISO 13788 class 2, from memory). */
const winterExcess = 0.003;

/** Excess at a 24-h mean outdoors [°C]: falls straight to nothing at 20 °C, when windows stand open (ISO 13788 annex A). */
export function moistureExcess(outdoorMean: number): number {
  return winterExcess * Math.min(1, Math.max(0, (20 - outdoorMean) / 20));
}

/**
 * Room temperature of each step [°C]; null where the place stands in no room.
 * @param beginMinutes minutes from 1 January 00:00 standard time to the clock's first step
 */
export function roomTemperatures(
  room: Room | null,
  clock: SeasonClock,
  beginMinutes = 0,
): Float64Array | null {
  if (room === null) return null;
  const values = new Float64Array(clock.n);
  if (room.kind === 'constant') return values.fill(room.temperature);
  if (room.kind === 'following') {
    for (let k = 0; k < clock.n; k++) values[k] = room.temperature + room.factor * clock.dayMean[k];
    return values;
  }
  if (room.kind === 'series') return seriesTemperatures(room, clock, beginMinutes);
  const from = minutesOf(room.dayFrom);
  const to = minutesOf(room.dayTo);
  for (let k = 0; k < clock.n; k++) values[k] = within(clock.civil[k], from, to) ? room.day : room.night;
  return values;
}

/** Measured temperatures laid into the ring of the year from their first day on, straight between two readings. */
function seriesTemperatures(
  room: Extract<Room, { kind: 'series' }>,
  clock: SeasonClock,
  beginMinutes: number,
): Float64Array {
  const { values, stepHours, otherwise } = room;
  const result = new Float64Array(clock.n).fill(otherwise);
  const first = dayOfMonthDay(room.from) * 1440;
  for (let k = 0; k < clock.n; k++) {
    const since = (beginMinutes + k * clock.stepMinutes - first + 2 * yearMinutes) % yearMinutes;
    const at = since / (stepHours * 60);
    const low = Math.floor(at);
    if (low + 1 >= values.length) continue;
    result[k] = values[low] + (at - low) * (values[low + 1] - values[low]);
  }
  return result;
}

const yearMinutes = 365 * 1440;
