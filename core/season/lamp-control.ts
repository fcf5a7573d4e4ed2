import type { Lamp } from '../plan/lamp.ts';
import { minutesOf } from '../plan/fields.ts';
import { daylight, solarNoon } from '../sun/index.ts';
import { spanMinutes } from '../cost/index.ts';
import type { SiteYear } from './site-year.ts';

/** What of a year or a night the switching of lamps depends on. */
export type LampYear = Pick<SiteYear, 'site' | 'steps' | 'clock'>;

/** Daylight at the plants for each step [µmol m⁻² s⁻¹], and whether any reaches them at all. */
export interface DaylightAtPlants {
  readonly benchPhotons: Float64Array;
  readonly seesDay: boolean;
}

/** Share of each step of a year or a night for which a lamp is on, 0–1: its clock switches to the minute, daylight by the step. */
export function lampOn(lamp: Lamp, year: LampYear, light: DaylightAtPlants): Float64Array {
  const flags = wanted(lamp, year, light);
  return lamp.mostDay === null ? flags : withinDay(flags, lamp, lamp.mostDay, year, light.seesDay);
}

function wanted(lamp: Lamp, year: LampYear, light: DaylightAtPlants): Float64Array {
  const { control } = lamp;
  switch (control.kind) {
    case 'clock':
      return byClock(lamp, year);
    case 'extend':
      return extension(control.hours, control.end, year);
    case 'daylight':
      return onDimDays(byClock(lamp, year), control.below, control.deadTime, year, light);
  }
}

function byClock({ on, off, second }: Lamp, { clock }: LampYear): Float64Array {
  const first = sharesOf(clock, minutesOf(on), spanMinutes(on, off));
  if (second === null) return first;
  const again = sharesOf(clock, minutesOf(second.on), spanMinutes(second.on, second.off));
  return first.map((share, k) => Math.min(1, share + again[k]));
}

/** Share of each step that lies in a daily span of so many minutes, begun at a civil minute of the day. */
function sharesOf({ n, stepMinutes, civil }: LampYear['clock'], from: number, length: number): Float64Array {
  const shares = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    // Minutes from the span's beginning to the step's; `civil` is the whole minute of the step's middle.
    const since = (civil[k] - Math.floor(stepMinutes / 2) - from + 2880) % 1440;
    const inIt = Math.max(0, Math.min(stepMinutes, length - since));
    const inNext = Math.max(0, Math.min(since + stepMinutes - 1440, length));
    shares[k] = (inIt + inNext) / stepMinutes;
  }
  return shares;
}

const dayMs = 86_400_000;
const hourMs = 3_600_000;

/** Middle of each natural day that touches the steps [epoch ms UTC], and its hours from civil dawn to dusk. */
function naturalDays({ site, steps }: LampYear): { noon: number; hours: number }[] {
  const days: { noon: number; hours: number }[] = [];
  const end = steps.startMs + steps.n * steps.stepMinutes * 60_000;
  for (let at = steps.startMs - dayMs; at < end + dayMs; at += dayMs) {
    const noon = solarNoon(at, site.longitude);
    const date = new Date(noon + (site.longitude / 15) * hourMs).toISOString().slice(0, 10);
    days.push({ noon, hours: daylight(date, { ...site, timeZone: 'UTC' }).civilHours });
  }
  return days;
}

/** Marks the steps whose middle lies between two instants [epoch ms UTC]. */
function mark(flags: Float64Array, { steps }: LampYear, from: number, to: number): void {
  const stepMs = steps.stepMinutes * 60_000;
  const first = Math.max(0, Math.ceil((from - steps.startMs) / stepMs - 0.5));
  const last = Math.min(steps.n - 1, Math.ceil((to - steps.startMs) / stepMs - 0.5) - 1);
  for (let k = first; k <= last; k++) flags[k] = 1;
}

/** Burns what the natural day is short of `hours`; by night where the sun does not rise to twilight at all. */
function extension(hours: number, end: 'dawn' | 'dusk' | 'both', year: LampYear): Float64Array {
  const flags = new Float64Array(year.clock.n);
  for (const day of naturalDays(year)) {
    const short = (hours - day.hours) * hourMs;
    if (!(short > 0)) continue;
    const half = (day.hours / 2) * hourMs;
    const before = end === 'dawn' ? short : end === 'both' ? short / 2 : 0;
    mark(flags, year, day.noon - half - before, day.noon - half);
    mark(flags, year, day.noon + half, day.noon + half + short - before);
  }
  return flags;
}

/**
 * A switch that looks at the daylight: on while it is dim, off while it is bright, and once switched left so for
 * the dead time; outside its clock hours it is off and looks afresh when they begin.
 */
function onDimDays(
  clocked: Float64Array,
  below: number,
  deadTime: number,
  { clock }: LampYear,
  { benchPhotons }: DaylightAtPlants,
): Float64Array {
  const flags = new Float64Array(clock.n);
  const rest = deadTime / clock.stepMinutes;
  let on = 0;
  let since = Infinity;
  for (let k = 0; k < clock.n; k++) {
    if (clocked[k] === 0) {
      since = Infinity;
      continue;
    }
    const dim = benchPhotons[k] < below ? 1 : 0;
    if (since === Infinity || (dim !== on && since >= rest)) {
      on = dim;
      since = 0;
    }
    since += 1;
    flags[k] = on * clocked[k];
  }
  return flags;
}

/**
 * Takes the lamp out of the hours that would make the plants' day longer than `most` [h]. Where daylight reaches
 * them their day is centred on solar noon and never shorter than the natural one; else it begins with the lamp.
 */
function withinDay(
  flags: Float64Array,
  lamp: Lamp,
  most: number,
  year: LampYear,
  seesDay: boolean,
): Float64Array {
  const { clock } = year;
  if (!seesDay) {
    const inDay = sharesOf(clock, minutesOf(lamp.on), most * 60);
    return flags.map((on, k) => Math.min(on, inDay[k]));
  }
  const allowed = new Float64Array(clock.n);
  for (const day of naturalDays(year)) {
    const half = (Math.max(most, day.hours) / 2) * hourMs;
    mark(allowed, year, day.noon - half, day.noon + half);
  }
  return flags.map((on, k) => Math.min(on, allowed[k]));
}
