import type { Lamp } from '../plan/lamp.ts';
import { minutesOf } from '../plan/fields.ts';
import { daylight, solarNoon } from '../sun/index.ts';
import { within } from './calendar.ts';
import type { SiteYear } from './site-year.ts';

/** What of a year or a night the switching of lamps depends on. */
export type LampYear = Pick<SiteYear, 'site' | 'steps' | 'clock'>;

/** Daylight at the plants for each step [µmol m⁻² s⁻¹], and whether any reaches them at all. */
export interface DaylightAtPlants {
  readonly benchPhotons: Float64Array;
  readonly seesDay: boolean;
}

/** 1 where a lamp is on, for each step of a year or a night. */
export function lampOn(lamp: Lamp, year: LampYear, light: DaylightAtPlants): Uint8Array {
  const flags = wanted(lamp, year, light);
  return lamp.mostDay === null ? flags : withinDay(flags, lamp, lamp.mostDay, year, light.seesDay);
}

function wanted(lamp: Lamp, year: LampYear, light: DaylightAtPlants): Uint8Array {
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

function byClock({ on, off, second }: Lamp, { clock }: LampYear): Uint8Array {
  const flags = new Uint8Array(clock.n);
  const [from, to] = [minutesOf(on), minutesOf(off)];
  const [again, until] = second === null ? [0, 0] : [minutesOf(second.on), minutesOf(second.off)];
  for (let k = 0; k < clock.n; k++) {
    const minute = clock.civil[k];
    flags[k] = within(minute, from, to) || within(minute, again, until) ? 1 : 0;
  }
  return flags;
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
function mark(flags: Uint8Array, { steps }: LampYear, from: number, to: number): void {
  const stepMs = steps.stepMinutes * 60_000;
  const first = Math.max(0, Math.ceil((from - steps.startMs) / stepMs - 0.5));
  const last = Math.min(steps.n - 1, Math.ceil((to - steps.startMs) / stepMs - 0.5) - 1);
  for (let k = first; k <= last; k++) flags[k] = 1;
}

/** Burns what the natural day is short of `hours`; by night where the sun does not rise to twilight at all. */
function extension(hours: number, end: 'dawn' | 'dusk' | 'both', year: LampYear): Uint8Array {
  const flags = new Uint8Array(year.clock.n);
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
  clocked: Uint8Array,
  below: number,
  deadTime: number,
  { clock }: LampYear,
  { benchPhotons }: DaylightAtPlants,
): Uint8Array {
  const flags = new Uint8Array(clock.n);
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
    flags[k] = on;
  }
  return flags;
}

/**
 * Takes the lamp out of the hours that would make the plants' day longer than `most` [h]. Where daylight reaches
 * them their day is centred on solar noon and never shorter than the natural one; else it begins with the lamp.
 */
function withinDay(
  flags: Uint8Array,
  lamp: Lamp,
  most: number,
  year: LampYear,
  seesDay: boolean,
): Uint8Array {
  const { clock } = year;
  if (!seesDay) {
    const begin = minutesOf(lamp.on);
    return flags.map((on, k) => (on === 1 && (clock.civil[k] - begin + 1440) % 1440 < most * 60 ? 1 : 0));
  }
  const allowed = new Uint8Array(clock.n);
  for (const day of naturalDays(year)) {
    const half = (Math.max(most, day.hours) / 2) * hourMs;
    mark(allowed, year, day.noon - half, day.noon + half);
  }
  return flags.map((on, k) => on & allowed[k]);
}
