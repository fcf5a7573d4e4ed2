import type { Place } from '../plan/schema.ts';
import type { Screen } from '../plan/equipment.ts';
import { minutesOf } from '../plan/fields.ts';
import { dayOfMonthDay, within } from './calendar.ts';
import type { SiteYear } from './site-year.ts';

/** Screens and fleece stay on until the sun stands this high, and go on when it sinks below [degrees] (common practice, no source). */
const drawnBelow = 5;

/** Snow falls or stays while the 24-h mean outdoors is at or under this [°C] (rain–snow threshold, common practice). */
const snowFalls = 1;

/** Melt by degree-days: 3 mm of water a day and kelvin above 0 °C (Hock 2003: 1–8 mm; from memory), at 220 kg m⁻³ [m K⁻¹ d⁻¹]. */
const meltPerKelvinDay = 0.003 / 0.22;

/** Depth of snow through which light falls to a third [m]: fresh snow 0.05 to 0.1 (from memory). */
const snowDepthOfLight = 0.06;

/** Share of daylight left under snow on a roof. @param share of the light that comes through the parts that hold snow, 0–1 */
export function lightUnderSnow(depth: number, share: number): number {
  return 1 - share * (1 - Math.exp(-depth / snowDepthOfLight));
}

/** When covers, doors and devices of a place are in use, for each step of a year or a night. */
export interface Schedules {
  /** 1 in steps in which the cover is drawn, the door open, the fan running, snow lying; null where there is none. */
  readonly screenClosed: Uint8Array | null;
  readonly curtainClosed: Uint8Array | null;
  readonly fleeceLaid: Uint8Array | null;
  readonly doorOpen: Uint8Array | null;
  readonly circulating: Uint8Array | null;
  readonly snowDepth: Float64Array | null;
  /** For each heater 1 in steps in which its set points hold; null where they hold all day. */
  readonly heaterOn: readonly (Uint8Array | null)[];
}

/** When covers are drawn, doors open, fans and heaters run and snow lies, for each step of a year or a night. */
export function placeSchedules(place: Place, year: SiteYear): Schedules {
  const { clock, steps } = year;
  const flags = (on: (k: number) => boolean) => {
    const result = new Uint8Array(clock.n);
    for (let k = 0; k < clock.n; k++) result[k] = on(k) ? 1 : 0;
    return result;
  };
  const lowSun = (k: number) => steps.sunElevation[k] < drawnBelow;
  const byClock = (from: string, to: string) => {
    const [begin, end] = [minutesOf(from), minutesOf(to)];
    return (k: number) => within(clock.civil[k], begin, end);
  };
  const drawn = (screen: Screen | null) => {
    if (screen === null) return null;
    if (screen.closedWhen === 'hours') return flags(byClock(screen.from, screen.to));
    return flags((k) => lowSun(k) && (screen.closedWhen === 'night' || clock.nightLow[k] < screen.below));
  };
  const { fleece, door, circulation } = place;
  return {
    screenClosed: drawn(place.screen),
    curtainClosed: drawn(place.curtain),
    fleeceLaid:
      fleece === null
        ? null
        : flags(
            (k) =>
              fleece.laidWhen === 'always' ||
              (lowSun(k) && (fleece.laidWhen === 'night' || clock.nightLow[k] < fleece.below)),
          ),
    doorOpen:
      door === null
        ? null
        : flags(
            (k) => byClock(door.from, door.to)(k) && (door.above === null || steps.dryBulb[k] >= door.above),
          ),
    circulating:
      circulation === null
        ? null
        : flags(
            (k) => circulation.runs === 'always' || (circulation.runs === 'day') === (clock.sunUp[k] === 1),
          ),
    snowDepth: place.snow === 'left' ? lyingSnow(year) : null,
    heaterOn: place.heaters.map(({ hours }) =>
      hours === null ? null : flags(byClock(hours.from, hours.to)),
    ),
  };
}

/** Depth of lying snow in each step [m], made up on cold days and melting on mild ones; null where the site has none. */
export function lyingSnow(year: SiteYear): Float64Array | null {
  const { snow } = year.site;
  if (snow === null) return null;
  const { clock } = year;
  const depth = new Float64Array(clock.n);
  const from = dayOfMonthDay(snow.from);
  const to = dayOfMonthDay(snow.to);
  let lying = 0;
  for (let index = -clock.n; index < clock.n; index++) {
    const k = (index + clock.n) % clock.n;
    const day = Math.floor((year.beginMinutes + k * clock.stepMinutes) / 1440) % 365;
    const inSeason = from <= to ? day >= from && day <= to : day >= from || day <= to;
    const mean = clock.dayMean[k];
    if (inSeason && mean <= snowFalls) lying = snow.depth;
    else lying = Math.max(0, lying - (Math.max(0, mean) * meltPerKelvinDay * clock.stepMinutes) / 1440);
    depth[k] = lying;
  }
  return depth;
}
