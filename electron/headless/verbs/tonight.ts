import { runNight } from '../../../core/index.ts';
import { planFile, weatherFor } from '../files.ts';
import { neededNumber, numberOption, readOptions, textOption } from '../options.ts';
import { WrongUse } from '../outcome.ts';
import { serialise } from '../serialise.ts';
import { isCalendarDate } from '../span.ts';
import type { World } from '../world.ts';

const options = {
  dusk: { type: 'string' },
  low: { type: 'string' },
  cloud: { type: 'string' },
  wind: { type: 'string' },
  band: { type: 'string' },
  date: { type: 'string' },
  weather: { type: 'string' },
} as const;

/** `tonight PLAN --dusk --low`: the night ahead in every place, worst first. */
export function tonight(words: readonly string[], world: World): void {
  const given = readOptions(words, options, ['PLAN']);
  const night = {
    duskTemperature: neededNumber(given, 'dusk', -80, 60),
    low: neededNumber(given, 'low', -80, 60),
    cloudOktas: numberOption(given, 'cloud', 0, 8),
    wind: numberOption(given, 'wind', 0, 60),
    band: numberOption(given, 'band', 0, 15) ?? 2,
  };
  const plan = planFile(world, given.positionals[0]);
  const dateISO = textOption(given, 'date') ?? dateIn(plan.site.timeZone, world.nowMs());
  if (!isCalendarDate(dateISO)) throw new WrongUse(`--date: expected a date as YYYY-MM-DD, got ${dateISO}`);
  const weather = weatherFor(world, plan, textOption(given, 'weather'));
  world.out(serialise(runNight(plan, { dateISO, ...night }, weather)));
}

/** The civil date at a place, as YYYY-MM-DD (the Swedish form of dates is the ISO one). */
function dateIn(timeZone: string, epochMs: number): string {
  return new Intl.DateTimeFormat('sv-SE', { timeZone }).format(epochMs);
}
