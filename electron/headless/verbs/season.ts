import { csvFormatRows } from 'd3';
import { plantStates, runSeason } from '../../../core/index.ts';
import type { PlaceSeason, SeasonResult } from '../../../core/index.ts';
import { weatherSummary } from '../../host/weather-reading.ts';
import { planFile, weatherFor } from '../files.ts';
import { readOptions, textOption } from '../options.ts';
import { rounded, serialise } from '../serialise.ts';
import { checkDateForm, cutTo, dateOf, spanOf } from '../span.ts';
import type { Span } from '../span.ts';
import type { World } from '../world.ts';

const options = {
  weather: { type: 'string' },
  from: { type: 'string' },
  to: { type: 'string' },
  csv: { type: 'boolean' },
} as const;

/** `season PLAN`: the whole season, or with `--csv` a row a day and place. */
export function season(words: readonly string[], world: World): void {
  const given = readOptions(words, options, ['PLAN']);
  const from = textOption(given, 'from');
  const to = textOption(given, 'to');
  checkDateForm('from', from);
  checkDateForm('to', to);
  const plan = planFile(world, given.positionals[0]);
  const weather = weatherFor(world, plan, textOption(given, 'weather'));
  const result = runSeason(plan, weather);
  const span = spanOf(result, from, to);
  if (given.values['csv'] === true) return world.out(csv(result, span));
  const dates = { from: dateOf(result, span.from), to: dateOf(result, span.to) };
  world.out(serialise({ ...dates, weather: weatherSummary(weather), ...cutTo(result, span) }));
}

/** Series by name and the state of each lot; units are those of the engine's `DailySeries`. */
function csv(result: SeasonResult, span: Span): string {
  const names = Object.keys(result.places[0]?.daily ?? {}) as (keyof PlaceSeason['daily'])[];
  const rows: string[][] = [['date', 'place', ...names, 'states']];
  for (let day = span.from; day <= span.to; day++) {
    for (const place of result.places) {
      const figures = names.map((name) =>
        String(rounded(place.daily[name][day], `${place.placeId}.${name}[${day}]`)),
      );
      const states = place.lots.map((lot) => `${lot.lotId}=${plantStates[lot.state[day]].id}`);
      rows.push([dateOf(result, day), place.placeId, ...figures, states.join(' ')]);
    }
  }
  return `${csvFormatRows(rows)}\n`;
}
