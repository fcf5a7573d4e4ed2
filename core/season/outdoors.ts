import { outdoorLeaf } from '../heat/index.ts';
import { DayReducer } from './reduce.ts';
import type { OutdoorDaily } from './result.ts';
import type { PlantClimate } from './plant-climate.ts';
import type { SiteYear } from './site-year.ts';
import { sharedSkySeries } from '../light/index.ts';
import type { OutdoorSteps } from '../weather/index.ts';

/** Share of sunlight that a leaf takes up (0.85 of light, 0.15 of near infra-red; Campbell & Norman 1998). */
const leafAbsorptance = 0.5;

/** Time in which a pot of two litres in the open follows air and sun [h] (estimate, no source). */
const potHours = 6;

/**
 * Plants standing in the open on level ground through the season: the leaf by its balance with sky, air, wind and
 * sun, the pot following it by a few hours, the light of the open sky. Rain, snow on plants and the shade of what
 * stands around are left out.
 */
export function outdoorClimate(year: SiteYear, outdoor: OutdoorDaily): PlantClimate {
  const { steps, clock, startDay } = year;
  const perDay = 1440 / clock.stepMinutes;
  const reducer = new DayReducer(clock.n / perDay, clock.stepMinutes);
  const leaf = new Float64Array(clock.n);
  const leaves = openLeaves(steps, year.skyTemperature);
  const follow = 1 - Math.exp(-clock.stepMinutes / 60 / potHours);
  let pot = steps.dryBulb[(startDay * perDay - 1 + clock.n) % clock.n];
  for (let index = 0; index < clock.n; index++) {
    const k = (startDay * perDay + index) % clock.n;
    const air = steps.dryBulb[k];
    const warm = leaves[k];
    pot += follow * (warm - pot);
    leaf[index] = warm;
    reducer.temperatures(air, warm, pot, clock.sunUp[k] === 1);
    const day = Math.floor(index / perDay);
    if (clock.twilight[k] === 1) reducer.hours(reducer.series.photoperiod, day);
    if ((index + 1) % perDay === 0) reducer.close(day);
  }
  return {
    key: JSON.stringify([year.key, 'outdoors']),
    daily: reducer.series,
    leaf,
    lightAt: () => outdoor.daylight,
  };
}

/** Leaves of plants standing in the open at each step [°C], under its air, sky, wind and sun. */
export function openLeaves(steps: OutdoorSteps, skyTemperature: Float64Array): Float64Array {
  const sun = globalSun(steps);
  return steps.dryBulb.map((air, k) =>
    outdoorLeaf(air, skyTemperature[k], steps.windSpeed[k], undefined, leafAbsorptance * sun[k]),
  );
}

/** Sunlight on level ground for each step [W m⁻²]. */
function globalSun(steps: OutdoorSteps): Float64Array {
  const sun = new Float64Array(steps.n);
  const sky = sharedSkySeries(steps);
  sky.index.forEach((k, j) => {
    sun[k] = sky.global[j];
  });
  return sun;
}
