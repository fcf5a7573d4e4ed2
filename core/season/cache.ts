import type { WeatherYear } from '../weather/index.ts';
import { boundedMap } from './bounded-map.ts';
import type { BoundedMap } from './bounded-map.ts';
import type { PlaceLight } from './place-light.ts';
import type { PlaceYear } from './place-season.ts';
import type { PlantClimate } from './plant-climate.ts';
import type { LotSeason } from './result.ts';
import type { SiteYear } from './site-year.ts';

/**
 * Intermediate results kept between runs: what depends on site and weather once a site, light once a shape and
 * covering, heat once a place, plants once a lot. Only what a change touches is run again.
 */
export interface SeasonCache {
  readonly weatherIds: WeakMap<WeatherYear, number>;
  readonly years: BoundedMap<SiteYear>;
  readonly lights: BoundedMap<PlaceLight>;
  readonly places: BoundedMap<PlaceYear>;
  readonly climates: BoundedMap<PlantClimate>;
  readonly lots: BoundedMap<LotSeason>;
  nextWeather: number;
}

export function createSeasonCache(): SeasonCache {
  return {
    weatherIds: new WeakMap(),
    years: boundedMap(2),
    lights: boundedMap(24),
    places: boundedMap(60),
    climates: boundedMap(64),
    lots: boundedMap(400),
    nextWeather: 1,
  };
}
