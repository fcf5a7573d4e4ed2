import type { OutdoorSteps } from '../weather/index.ts';
import type { Room } from '../plan/equipment.ts';
import { minutesOf } from '../plan/fields.ts';
import { skyTemperature } from '../weather/index.ts';
import { saturationRatio } from '../heat/index.ts';
import { within } from './calendar.ts';
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

/** Indoor moisture excess over outdoors [kg kg⁻¹]: about 2.5 g m⁻³ in a dwelling (ISO 13788 class 2, from memory). */
export const roomMoistureExcess = 0.002;

/** Room temperature of each step [°C]; null where the place stands in no room. */
export function roomTemperatures(room: Room | null, clock: SeasonClock): Float64Array | null {
  if (room === null) return null;
  const values = new Float64Array(clock.n);
  if (room.kind === 'constant') return values.fill(room.temperature);
  if (room.kind === 'following') {
    for (let k = 0; k < clock.n; k++) values[k] = room.temperature + room.factor * clock.dayMean[k];
    return values;
  }
  const from = minutesOf(room.dayFrom);
  const to = minutesOf(room.dayTo);
  for (let k = 0; k < clock.n; k++) values[k] = within(clock.civil[k], from, to) ? room.day : room.night;
  return values;
}
