/**
 * How long a place's year takes at 15 min: all of light, heat, plants and cost of each place of the demonstration
 * plan. What depends on the site and its weather alone is made once before the clock starts; nothing of the place
 * is kept from an earlier run.
 */
import {
  buildNetwork,
  createSeasonCache,
  demonstrationPlan,
  runSeason,
  weatherFromPlan,
} from '../../core/index.ts';
import type { Place, Plan, SeasonCache } from '../../core/index.ts';
import { bareLoop } from './bare-loop.ts';
import { median } from './figures.ts';
import type { Figure } from './figures.ts';

const warmUps = 3;
const rounds = 9;

/** Steps of a year of quarter hours. What the engine runs beyond it (days before the season) counts against it. */
const stepsOfYear = 365 * 96;

/** Most that a place-year may take, as a multiple of the bare loop. */
const ratioTarget = 6;

const plan = demonstrationPlan;

export function placeYearFigures(): Figure[] {
  const weather = weatherFromPlan(plan);
  if (weather === null) throw new Error('expected the demonstration plan to carry monthly normals');
  const shared = createSeasonCache();
  runSeason(plan, weather, shared);
  const run = (place: Place) => {
    const cache: SeasonCache = { ...createSeasonCache(), weatherIds: shared.weatherIds, years: shared.years };
    return () => void runSeason(alone(place), weather, cache);
  };
  const whole = plan.places.map(() => [] as number[]);
  const bare = plan.places.map(() => [] as number[]);
  for (let round = -warmUps; round < rounds; round++) {
    plan.places.forEach((place, index) => {
      const { size, surfaceCount, layerCapacity } = buildNetwork(place, plan.site, 101325);
      const wholeTime = timeOf(run(place));
      const bareTime = timeOf(() => keep(bareLoop(stepsOfYear, size, surfaceCount, layerCapacity.length)));
      if (round < 0) return;
      whole[index].push(wholeTime);
      bare[index].push(bareTime);
    });
  }
  const wholeMean = meanOf(whole.map(median));
  const bareMean = meanOf(bare.map(median));
  return [
    ...plan.places.map((place, index) => ({
      name: `A year of: ${place.name}`,
      value: median(whole[index]),
      unit: 'ms',
      target: null,
    })),
    { name: 'A place-year at 15 min, mean of the places', value: wholeMean, unit: 'ms', target: null },
    { name: 'The bare loop, mean of the places', value: bareMean, unit: 'ms', target: null },
    {
      name: 'A place-year as a multiple of the bare loop',
      value: wholeMean / bareMean,
      unit: '',
      target: ratioTarget,
    },
  ];
}

function alone(place: Place): Plan {
  return { ...plan, places: [place], lots: plan.lots.filter((lot) => lot.place === place.id) };
}

function timeOf(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** Takes the loop's result, so that the loop cannot be left out as useless; throws where it went astray. */
function keep(check: number): void {
  if (!Number.isFinite(check)) throw new Error(`expected a finite sum from the bare loop, got ${check}`);
}

const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
