import type { Site } from '../plan/site.ts';
import { lampTechnology } from '../plan/lamps.ts';
import { dailyLight, luxOfFootCandles, ppfdOfLux, sunLuxPerMicromole } from './daily-light.ts';
import type { SkyDay } from './meter-day.ts';
import { openSky, sillSkyOf, skyDay } from './meter-day.ts';
import { bandOf, levelError, readingErrors, spotErrors, together } from './meter-errors.ts';
import type {
  Band,
  DaylightReading,
  LampLight,
  MeterError,
  MeterReading,
  MeterResult,
  SkyState,
} from './meter-reading.ts';

/** Under a sun this low a reading says too little of the day [degrees] (common practice, no source). */
const lowestSun = 5;

/** The photon flux density and the daily light of a meter's reading, with how sure they are and why. */
export function readMeter(reading: MeterReading, site: Site): MeterResult {
  const { light } = reading;
  return light.kind === 'lamp' ? lampResult(reading, light) : daylightResult([{ reading, light }], site);
}

/**
 * One day's daylight from readings hours apart at one spot under one sky: their sum stands for the day, and the sky's
 * own error falls with the root of their number (it fell at least so in 48 days of two to five readings at 52° N).
 */
export function readMeterOverDay(readings: readonly MeterReading[], site: Site): MeterResult {
  if (readings.length === 0) throw new Error('expected one reading or more, got none');
  const taken = readings.map((reading) => {
    if (reading.light.kind === 'lamp') throw new Error('expected readings of daylight, got one of lamps');
    return { reading, light: reading.light };
  });
  for (const { light } of taken) {
    for (const name of ['day', 'sky', 'where', 'facing'] as const) {
      const [one, other] = [taken[0].light[name] ?? null, light[name] ?? null];
      if (one !== other) throw new Error(`expected readings of one ${name}, got ${one} and ${other}`);
    }
  }
  return daylightResult(taken, site);
}

/** Photon flux density of a reading [µmol m⁻² s⁻¹]: by the light's own lux a micromole. */
function photonsOf({ value, unit, light }: MeterReading): number {
  if (!(value >= 0 && value < 1e7)) throw new Error(`expected a reading of 0 to 10,000,000, got ${value}`);
  if (unit === 'ppfd') return value;
  const lux = unit === 'lux' ? value : luxOfFootCandles(value);
  const factor =
    light.kind === 'lamp' ? lampTechnology(light.technology).luxPerMicromole.value : sunLuxPerMicromole;
  return ppfdOfLux(lux, factor);
}

function lampResult(reading: MeterReading, { hours }: LampLight): MeterResult {
  const ppfd = photonsOf(reading);
  if (!(hours >= 0 && hours <= 24)) throw new Error(`expected hours of 0 to 24, got ${hours}`);
  const errors = readingErrors(reading, 90);
  const error = together(errors);
  return {
    ppfd: bandOf(ppfd, error),
    dailyLight: bandOf(dailyLight(ppfd, hours), error),
    refused: null,
    errors: sorted(errors),
    skies: null,
    share: null,
    assumption: `The lamps give this light for all of their ${hours} hours. ${independent}`,
    cautions: lampCautions(reading),
  };
}

const independent = 'The errors are taken as independent: nine readings of ten lie in the band.';

function lampCautions({ unit, light }: MeterReading): string[] {
  if (light.kind !== 'lamp' || unit === 'ppfd') return [];
  return lampTechnology(light.technology).luxPerMicromole.value < 20
    ? ['A lux meter is no measure of red and blue light: borrow a quantum meter.']
    : [];
}

interface Taken {
  readonly reading: MeterReading;
  readonly light: DaylightReading;
}

function daylightResult(taken: readonly Taken[], site: Site): MeterResult {
  const { reading, light } = taken[0];
  const { sky, where, facing } = light;
  const open = taken.map((one) => skyDay(one.light, site, openSky(site)));
  const sill = where === 'sill' && facing !== undefined && facing !== null ? sillSkyOf(site, facing) : null;
  const spot = sill === null ? open : taken.map((one) => skyDay(one.light, site, sill));
  const elevations = open.map((one) => one.elevation);
  const photons = sum(taken.map((one) => photonsOf(one.reading)));
  const errors = readingErrors(reading, sum(elevations) / taken.length);
  const refused = taken.map((one, i) => refusal(one.light, open[i])).find((words) => words !== null) ?? null;
  const result = { ppfd: bandOf(photons / taken.length, together(errors)), refused };
  if (refused !== null) {
    return {
      ...result,
      dailyLight: null,
      errors: sorted(errors),
      skies: null,
      share: null,
      assumption: '',
      cautions: [],
    };
  }
  const all = [...errors, ...spotErrors(light, elevations)];
  const skies = skiesOf(photons / sum(spot.map((one) => one.now[sky])), spot[0], sky, all);
  const share = photons / sum(open.map((one) => one.now[sky]));
  return {
    ...result,
    dailyLight: skies[sky],
    errors: sorted(all),
    skies,
    share,
    assumption: `The day is taken to stay as its sky was at ${taken.map((one) => one.light.time).join(', ')}. ${independent}`,
    cautions: daylightCautions(light, share, all, taken.length),
  };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Why the day cannot be told from the hour; null where it can. */
function refusal(light: DaylightReading, day: SkyDay): string | null {
  if (!(day.highest > 0))
    return 'The sun does not rise here on that day: there is no daylight to sum, only twilight.';
  if (day.elevation >= lowestSun) return null;
  if (!(day.highest >= lowestSun)) {
    return `The sun stays under ${lowestSun}° here all that day: too low to tell the day's light from one hour.`;
  }
  const stands = day.elevation > 0 ? `stands ${day.elevation.toFixed(1)}° high` : 'is down';
  return `At ${light.time} the sun ${stands}: under ${lowestSun}° an hour tells too little of the day. Read nearer to noon.`;
}

/** What each sky would make of the day at a spot that gets `share` of the model's light. */
function skiesOf(
  share: number,
  day: SkyDay,
  read: SkyState,
  errors: readonly MeterError[],
): Record<SkyState, Band> {
  const under = (sky: SkyState) => {
    const others = sky === read ? errors : [...errors, { share: levelError(sky) }];
    return bandOf(share * day.sum[sky], together(others));
  };
  return { clear: under('clear'), broken: under('broken'), overcast: under('overcast') };
}

function daylightCautions(
  light: DaylightReading,
  share: number,
  errors: readonly MeterError[],
  taken: number,
): string[] {
  const cautions: string[] = [];
  if (share > 1 + together(errors)) {
    cautions.push(
      'More light than the sky gives at that hour: look again at the unit, the day, the hour and the sky.',
    );
  }
  if (light.sky !== 'clear' && taken < 3)
    cautions.push('Under cloud take three readings or more, hours apart.');
  if (
    light.where === 'sill' &&
    (light.facing === undefined || light.facing === null) &&
    light.sky !== 'overcast'
  ) {
    cautions.push(
      'Say which way the window faces, or read under an overcast sky: the band is then far narrower.',
    );
  }
  return cautions;
}

const sorted = (errors: readonly MeterError[]) => [...errors].sort((a, b) => b.share - a.share);

/**
 * Daily light of readings taken apart, such as the lamps by night and the daylight with the lamps off [mol m⁻² d⁻¹];
 * their errors are independent. Null where one of them could not be told.
 */
export function sumOfReadings(results: readonly MeterResult[]): Band | null {
  let [value, below, above] = [0, 0, 0];
  for (const { dailyLight: each } of results) {
    if (each === null) return null;
    value += each.value;
    below += (each.value - each.low) ** 2;
    above += (each.high - each.value) ** 2;
  }
  return { value, low: value - Math.sqrt(below), high: value + Math.sqrt(above) };
}
