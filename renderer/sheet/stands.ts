import { outdoors } from '../../core/index.ts';
import type { DailySeries, LotSeason, Place, PlaceSeason, Plan, SeasonResult } from '../../core/index.ts';

export type AirDays = Pick<DailySeries, 'airLeast' | 'airMean' | 'airMost'>;
export type LightDays = Pick<DailySeries, 'daylight' | 'lampLight'>;

/** One band of the sheet: a place, or the open air, with every lot that stands there on any day. */
export interface Stand {
  readonly id: string;
  readonly name: string;
  /** Null in the open air. */
  readonly place: Place | null;
  readonly result: PlaceSeason | null;
  readonly lots: readonly LotSeason[];
  /** Inside air; in the open the leaves of what stands there. */
  readonly air: AirDays;
  readonly light: LightDays;
}

export const openAirName = 'Outdoors';

/** Name of a place of the plan, or of the open air; '' where the plan has no such place. */
export function standName(plan: Plan, id: string): string {
  if (id === outdoors) return openAirName;
  return plan.places.find((place) => place.id === id)?.name ?? '';
}

const noLamps = new Float64Array(365);

/** The bands in order: the plan's places, then the open air where any lot ever stands in it. */
export function standsOf(plan: Plan, season: SeasonResult): Stand[] {
  const stands = plan.places.flatMap((place): Stand[] => {
    const result = season.places.find((each) => each.placeId === place.id);
    if (!result) return [];
    const { daily, lots } = result;
    return [{ id: place.id, name: place.name, place, result, lots, air: daily, light: daily }];
  });
  const { lots, lived } = season.outdoors;
  if (lots.length === 0) return stands;
  const open: Stand = {
    id: outdoors,
    name: openAirName,
    place: null,
    result: null,
    lots,
    air: { airLeast: lived.leafLeast, airMean: lived.leafMean, airMost: lived.leafMost },
    light: { daylight: lived.dailyLight, lampLight: noLamps },
  };
  return [...stands, open];
}

function same(a: Stand, b: Stand): boolean {
  return (
    a.id === b.id &&
    a.place === b.place &&
    a.result === b.result &&
    a.lots.length === b.lots.length &&
    a.lots.every((lot, index) => lot === b.lots[index])
  );
}

/** `standsOf` that gives a band back as the same object where nothing in it has changed, so that it is not drawn again. */
export function keptStands(): typeof standsOf {
  let former: Stand[] = [];
  return (plan, season) => {
    former = standsOf(plan, season).map((stand) => former.find((each) => same(each, stand)) ?? stand);
    return former;
  };
}
