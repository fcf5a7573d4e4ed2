import type { Plan } from '../plan/schema.ts';
import { weatherFromNormals } from '../weather/index.ts';
import type { WeatherYear } from '../weather/index.ts';

/** The seeded year of a plan whose climate is typed normals; null where the climate is a file, which the caller reads. */
export function weatherFromPlan(plan: Plan): WeatherYear | null {
  const { climate } = plan;
  if (climate.kind !== 'normals') return null;
  return weatherFromNormals(climate, plan.site, climate.seed);
}
