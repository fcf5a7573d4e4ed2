import { airMass, solarCoordinates, localSun, refraction, solarConstant } from '../sun/index.ts';
import type { WeatherYear } from './year.ts';
import { emptySteps, type GardenOffset, type OutdoorSteps, type StepOptions } from './outdoor.ts';
import { nightChill } from './frost-hollow.ts';

/**
 * The weather year in even steps. Temperatures and wind run straight between the hours' ends, long-wave and cloud
 * between their middles; each hour's radiation is spread over its sunlit steps so that its energy is kept. The sun is
 * that of the place the data belong to, so that beam and sun agree.
 */
export function outdoorSteps(weather: WeatherYear, site: GardenOffset, options: StepOptions): OutdoorSteps {
  const { stepMinutes } = options;
  if (!(stepMinutes >= 1 && stepMinutes <= 60 && Number.isInteger(60 / stepMinutes))) {
    throw new RangeError(`expected a step that divides the hour, got ${stepMinutes} min`);
  }
  const perHour = 60 / stepMinutes;
  const steps = emptySteps(weather.startMs, stepMinutes, weather.hours * perHour);
  interpolate(weather.dryBulb, steps.dryBulb, perHour, 1);
  interpolate(weather.dewPoint, steps.dewPoint, perHour, 1);
  interpolate(weather.windSpeed, steps.windSpeed, perHour, 1);
  interpolate(weather.pressure, steps.pressure, perHour, 1);
  interpolate(weather.skyLongWave, steps.skyLongWave, perHour, 0.5);
  interpolate(weather.cloudCover, steps.cloudCover, perHour, 0.5);
  fillSun(steps, weather.latitude, weather.longitude);
  spreadRadiation(weather, steps, perHour);
  const hollow = site.frostHollow ?? 0;
  if (hollow !== 0) nightChill(steps, hollow);
  return steps;
}

/** Hourly values, each standing at `offset` hours after its hour's beginning, brought to the middles of steps; the year is a ring. */
function interpolate(hourly: Float64Array, out: Float64Array, perHour: number, offset: number): void {
  const hours = hourly.length;
  for (let j = 0; j < out.length; j++) {
    const at = (j + 0.5) / perHour - offset;
    const floor = Math.floor(at);
    const share = at - floor;
    const before = hourly[floor < 0 ? floor + hours : floor];
    const next = floor + 1;
    const after = hourly[next >= hours ? next - hours : next];
    out[j] = before + (after - before) * share;
  }
}

/** The sun at the middle of every step. Its coordinates run straight between noons six hours apart to within 0.0005°. */
export function fillSun(steps: OutdoorSteps, latitude: number, longitude: number): void {
  const stepMs = steps.stepMinutes * 60_000;
  const knotMs = 6 * 3_600_000;
  let from = solarCoordinates(steps.startMs);
  let to = solarCoordinates(steps.startMs + knotMs);
  let knot = 0;
  for (let j = 0; j < steps.n; j++) {
    const since = (j + 0.5) * stepMs;
    while (since >= (knot + 1) * knotMs) {
      knot++;
      from = to;
      to = solarCoordinates(steps.startMs + (knot + 1) * knotMs);
    }
    const share = since / knotMs - knot;
    const sun = localSun(between(from, to, share), latitude, longitude);
    steps.sunElevation[j] = sun.elevation + refraction(sun.elevation, steps.pressure[j], steps.dryBulb[j]);
    steps.sunAzimuth[j] = sun.azimuth;
    steps.extraterrestrialNormal[j] = solarConstant / (moment.distance * moment.distance);
  }
}

/** Scratch for `between`: the hot loop allocates nothing for it. */
const moment = { rightAscension: 0, declination: 0, distance: 1, siderealTime: 0, equationOfTime: 0 };

type Coordinates = ReturnType<typeof solarCoordinates>;

function between(from: Coordinates, to: Coordinates, share: number): Coordinates {
  moment.rightAscension = from.rightAscension + forward(to.rightAscension - from.rightAscension) * share;
  moment.siderealTime = from.siderealTime + forward(to.siderealTime - from.siderealTime) * share;
  moment.declination = from.declination + (to.declination - from.declination) * share;
  moment.distance = from.distance + (to.distance - from.distance) * share;
  return moment;
}

const forward = (angle: number): number => (angle < 0 ? angle + 360 : angle);

const rise = Math.PI / 180;

/** Each hour's energy over the steps it stands for: global and diffuse with the sine of the sun's elevation, beam with its clear-sky strength. */
function spreadRadiation(weather: WeatherYear, steps: OutdoorSteps, perHour: number): void {
  const shift = Math.round(weather.radiationShiftMinutes / steps.stepMinutes);
  const level = new Float64Array(perHour);
  const direct = new Float64Array(perHour);
  for (let hour = 0; hour < weather.hours; hour++) {
    const global = weather.globalHorizontal[hour];
    const diffuse = weather.diffuseHorizontal[hour];
    const beam = weather.beamNormal[hour];
    if (!(global > 0 || diffuse > 0 || beam > 0)) continue;
    const first = hour * perHour + shift;
    const lit = weigh(steps, first, level, direct);
    for (let k = 0; k < perHour; k++) {
      const j = (first + k + steps.n) % steps.n;
      steps.globalHorizontal[j] += global * (lit ? level[k] : 1);
      steps.diffuseHorizontal[j] += diffuse * (lit ? level[k] : 1);
      steps.beamNormal[j] += beam * (lit ? direct[k] : 0);
    }
  }
}

/** Fills the steps' weights, each set with a mean of one; false where the sun is down at the middle of every step. */
function weigh(steps: OutdoorSteps, first: number, level: Float64Array, direct: Float64Array): boolean {
  let levelSum = 0;
  let directSum = 0;
  for (let k = 0; k < level.length; k++) {
    const elevation = steps.sunElevation[(first + k + steps.n) % steps.n];
    const up = elevation > 0;
    level[k] = up ? Math.sin(elevation * rise) : 0;
    // The clear-sky beam of Ineichen & Perez 2002 at a Linke turbidity of 3.
    direct[k] = up ? Math.exp(-0.18 * airMass(90 - elevation)) : 0;
    levelSum += level[k];
    directSum += direct[k];
  }
  if (!(levelSum > 0)) return false;
  for (let k = 0; k < level.length; k++) {
    level[k] *= level.length / levelSum;
    direct[k] *= level.length / directSum;
  }
  return true;
}
