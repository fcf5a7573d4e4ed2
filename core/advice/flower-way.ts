import type { Lot, Place, Plan } from '../plan/schema.ts';
import type { FlowerWay } from './flower-result.ts';

/** What a way changes in a plan. */
export type FlowerChange = Pick<FlowerWay, 'warmth'> & {
  readonly [Which in 'one' | 'other']: Pick<FlowerWay['one'], 'lotId' | 'placeId' | 'moves'>;
};

/** True where a place has a heater that warms its air; heat mats warm the bench alone. */
export const isHeated = (place: Place) => place.heaters.some(({ kind }) => kind !== 'heat-mat');

/** The place with the set points of its air heaters raised by `kelvin` [K]; the hours of frost watch stay as they are. */
function warmed(place: Place, kelvin: number): Place {
  const heaters = place.heaters.map((heater) =>
    heater.kind === 'heat-mat'
      ? heater
      : {
          ...heater,
          setPointDay: heater.setPointDay + kelvin,
          setPointNight: heater.setPointNight + kelvin,
        },
  );
  return { ...place, heaters };
}

/** The plan with one place kept warmer (or cooler); the plan given is left as it is. */
export function withWarmth(plan: Plan, placeId: string, kelvin: number): Plan {
  const places = plan.places.map((place) => (place.id === placeId ? warmed(place, kelvin) : place));
  return { ...plan, places };
}

/** The plan with both lots kept as a way has it, and its place warmed; the plan given is left as it is. */
export function applyFlowerWay(plan: Plan, { one, other, warmth }: FlowerChange): Plan {
  const kept = (lot: Lot): Lot => {
    const keeping = [one, other].find(({ lotId }) => lotId === lot.id);
    return keeping === undefined ? lot : { ...lot, place: keeping.placeId, moves: [...keeping.moves] };
  };
  const heated = warmth === null ? plan : withWarmth(plan, warmth.placeId, warmth.kelvin);
  return { ...heated, lots: plan.lots.map(kept) };
}
