import type { Site } from '../plan/site.ts';
import { lampTechnology } from '../plan/lamps.ts';
import { dailyLight, luxOfFootCandles, ppfdOfLux, sunLuxPerMicromole } from './daily-light.ts';
import type { SkyDay } from './meter-day.ts';
import { openSky, sillSkyOf, skyDay } from './meter-day.ts';
import { bandOf, levelError, readingErrors, spotErrors, together } from './meter-errors.ts';
import type {
  Band,
  DaylightReading,
  MeterError,
  MeterReading,
  MeterResult,
  SkyState,
} from './meter-reading.ts';

/** Under a sun this low a reading says too little of the day [degrees] (common practice, no source). */
const lowestSun = 5;

/** The photon flux density and the daily light of a meter's reading, with how sure they are and why. */
export function readMeter(reading: MeterReading, site: Site): MeterResult {
  if (!(reading.value >= 0 && reading.value < 1e7)) {
    throw new Error(`expected a reading of 0 to 10,000,000, got ${reading.value}`);
  }
  const ppfd = photonsOf(reading);
  return reading.light.kind === 'lamp'
    ? lampResult(reading, ppfd, reading.light.hours)
    : daylightResult(reading, ppfd, reading.light, site);
}

/** Photon flux density of a reading [µmol m⁻² s⁻¹]: by the light's own lux a micromole. */
function photonsOf({ value, unit, light }: MeterReading): number {
  if (unit === 'ppfd') return value;
  const lux = unit === 'lux' ? value : luxOfFootCandles(value);
  const factor =
    light.kind === 'lamp' ? lampTechnology(light.technology).luxPerMicromole.value : sunLuxPerMicromole;
  return ppfdOfLux(lux, factor);
}

function lampResult(reading: MeterReading, ppfd: number, hours: number): MeterResult {
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

function daylightResult(
  reading: MeterReading,
  ppfd: number,
  light: DaylightReading,
  site: Site,
): MeterResult {
  const known = light.where === 'sill' && light.facing !== undefined && light.facing !== null;
  const open = skyDay(light, site, openSky(site));
  const spot = known ? skyDay(light, site, sillSkyOf(site, light.facing)) : open;
  const errors = readingErrors(reading, open.elevation);
  const refused = refusal(light, open);
  const result = { ppfd: bandOf(ppfd, together(errors)), refused };
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
  const all = [...errors, ...spotErrors(light, open.elevation)];
  const skies = skiesOf(ppfd / spot.now[light.sky], spot, light.sky, all);
  const share = ppfd / open.now[light.sky];
  return {
    ...result,
    dailyLight: skies[light.sky],
    errors: sorted(all),
    skies,
    share,
    assumption: `The day is taken to stay as its sky was at ${light.time}. ${independent}`,
    cautions: daylightCautions(light, share, all),
  };
}

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

function daylightCautions(light: DaylightReading, share: number, errors: readonly MeterError[]): string[] {
  const cautions: string[] = [];
  if (share > 1 + together(errors)) {
    cautions.push(
      'More light than the sky gives at that hour: look again at the unit, the day, the hour and the sky.',
    );
  }
  if (light.sky !== 'clear')
    cautions.push('Under cloud take several readings over the day and use their mean.');
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
