/**
 * How long it takes to compare six lamp options with their maps on the demonstration's bright tent: each option's
 * light field and its whole season, the site's weather alone made before. Every round has heights nobody asked
 * before, so that no field and no season is kept from an earlier one.
 */
import {
  compareLamps,
  createSeasonCache,
  demonstrationPlan,
  runSeason,
  weatherFromPlan,
} from '../../core/index.ts';
import type { SeasonCache, WeatherYear } from '../../core/index.ts';
import { median } from './figures.ts';
import type { Figure } from './figures.ts';

/** Most that six options may take [ms]. */
const target = 500;
const warmUps = 2;
const rounds = 7;

export function lampFigures(): Figure[] {
  const plan = demonstrationPlan;
  const weather = weatherFromPlan(plan) as WeatherYear;
  const shared = createSeasonCache();
  runSeason(plan, weather, shared);
  const tent = plan.places.find(({ id }) => id === 'bright-tent')!;
  const [lamp] = tent.lamps;
  const times: number[] = [];
  for (let round = -warmUps; round < rounds; round++) {
    const cache: SeasonCache = { ...createSeasonCache(), weatherIds: shared.weatherIds, years: shared.years };
    const options = [1, 2, 3, 4, 5, 6].map((index) => ({
      name: `option ${index}`,
      lamps: [{ ...lamp, watts: 30 + 12 * index, height: 0.25 + 0.05 * index + 0.001 * round }],
    }));
    const started = performance.now();
    const rows = compareLamps(options, { plan, weather, placeId: tent.id, cache });
    const taken = performance.now() - started;
    if (rows.some((row) => row.map.length < 100)) throw new Error('expected a map with every option');
    if (round >= 0) times.push(taken);
  }
  return [{ name: 'Six lamp options with maps and seasons', value: median(times), unit: 'ms', target }];
}
