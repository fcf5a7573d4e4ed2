import type { OutdoorDaily, PlaceSeason, SeasonResult } from '../../core/index.ts';

/**
 * A season on its way from the worker: what is as it was in the parcel before is left out, so that a moved lever
 * sends one place and the sheet draws one place.
 */
export interface SeasonParcel {
  readonly season: Omit<SeasonResult, 'places' | 'outdoor'>;
  /** Null where it is as before. */
  readonly outdoor: OutdoorDaily | null;
  /** A number says which place of the season before it is. */
  readonly places: readonly (PlaceSeason | number)[];
}

/** The engine's cache gives the same objects for the same place and lots. */
function samePlace(a: PlaceSeason, b: PlaceSeason): boolean {
  return (
    a.placeId === b.placeId &&
    a.daily === b.daily &&
    a.lots.length === b.lots.length &&
    a.lots.every((lot, index) => lot === b.lots[index])
  );
}

function sameDays(a: Float64Array, b: Float64Array): boolean {
  return a.length === b.length && a.every((value, day) => value === b[day]);
}

function sameOutdoor(a: OutdoorDaily, b: OutdoorDaily): boolean {
  return sameDays(a.least, b.least) && sameDays(a.most, b.most) && sameDays(a.daylight, b.daylight);
}

export function packSeason(result: SeasonResult, former: SeasonResult | null): SeasonParcel {
  const { places, outdoor, ...season } = result;
  if (!former) return { season, outdoor, places };
  return {
    season,
    outdoor: sameOutdoor(outdoor, former.outdoor) ? null : outdoor,
    places: places.map((place) => {
      const at = former.places.findIndex((each) => samePlace(each, place));
      return at < 0 ? place : at;
    }),
  };
}

/** Puts a parcel together with the season before it. */
export function unpackSeason(parcel: SeasonParcel, former: SeasonResult | null): SeasonResult {
  const known = () => {
    if (!former) throw new Error('expected a whole season first, got one with parts left out');
    return former;
  };
  return {
    ...parcel.season,
    outdoor: parcel.outdoor ?? known().outdoor,
    places: parcel.places.map((place) => (typeof place === 'number' ? known().places[place] : place)),
  };
}
