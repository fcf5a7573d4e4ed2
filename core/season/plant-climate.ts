import type { Spot } from '../plan/schema.ts';
import type { DailySeries } from './result.ts';

/** What plants need of a place's year, so that lots may be judged there without running its heat again. */
export interface PlantClimate {
  /** Names everything the climate depends on: equal keys, equal climates. */
  readonly key: string;
  readonly daily: Pick<
    DailySeries,
    'leafLeast' | 'leafMean' | 'leafMost' | 'leafNight' | 'potMean' | 'potLeast' | 'photoperiod'
  >;
  /** Leaf temperature of every step of the season [°C]. */
  readonly leaf: Float64Array;
  /** Light of each day at a part of the growing area, sky and lamps together [mol m⁻² d⁻¹]. */
  readonly lightAt: (spot: Spot) => Float64Array;
}

/** True where a spot is the whole growing area. */
export function isWhole({ across, along, level }: Spot): boolean {
  return across === 'all' && along === 'all' && level === 'all';
}
