import type { NightLot, NightResult, OutdoorNight, PlaceNight } from '../../core/index.ts';

/** What a night chart draws of a place or of the open air; inside air where there is an inside. */
export interface NightTraces {
  readonly air: Float64Array | null;
  readonly leaf: Float64Array;
  /** Inside air without the heater; null where there is none. */
  readonly unheated: Float64Array | null;
  readonly colder: Float64Array;
  readonly milder: Float64Array;
  readonly lots: readonly NightLot[];
  readonly least: number;
  readonly leastMs: number;
}

export function placeTraces(place: PlaceNight): NightTraces {
  return {
    air: place.air,
    leaf: place.leaf,
    unheated: place.powerThere > 0 ? place.airUnheated : null,
    colder: place.airColdForecast,
    milder: place.airWarmForecast,
    lots: place.lots,
    least: place.least,
    leastMs: place.leastMs,
  };
}

/** In the open the band is of the leaf: there is no other air than the forecast's. */
export function openTraces(open: OutdoorNight): NightTraces {
  const { leaf, leafColdForecast: colder, leafWarmForecast: milder, lots, least, leastMs } = open;
  return { air: null, leaf, unheated: null, colder, milder, lots, least, leastMs };
}

/** Places and the open air (null) in the order in which they need looking after. */
export function standsTonight({ places, outdoors }: NightResult): (PlaceNight | null)[] {
  if (outdoors === null) return [...places];
  const after = places.findIndex((place) => (place.margin ?? Infinity) > outdoors.margin);
  const at = after < 0 ? places.length : after;
  return [...places.slice(0, at), null, ...places.slice(at)];
}
