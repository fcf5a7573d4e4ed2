import type { Lot, Place, Plan } from '../plan/schema.ts';
import { visits } from '../plan/visits.ts';
import type { Vent } from '../plan/equipment.ts';
import { mainHeater } from './change.ts';

export type DampChangeId = 'warmer' | 'more-air' | 'vent-ajar' | 'fan-slow' | 'stirred' | 'drier';

/** A change against damp that a place can take, before its season is run. */
export interface DampChange {
  readonly id: DampChangeId;
  readonly words: string;
  readonly caution: string;
}

/** How much warmer the heater is set [K]. */
const degree = 1;
const moreAir = 1.5;
/** Most leakage a plan takes [air changes/h]. */
const mostLeakage = 60;

/** A vent left open a hand's breadth: it stands open always (common practice, no source). */
const ajar: Vent = { position: 'roof', area: 0.02, height: 0.3, openAt: -60, band: 0.5 };

const slowShare = 0.2;

/** Watts of a stirring fan a square metre of growing area, at least 5 W, and the air speed it keeps [m s⁻¹] (common practice, no source). */
const stirringWatts = (place: Place) => Math.min(2000, Math.max(5, Math.round(5 * place.growingArea)));
const stirringSpeed = 0.3;

const lessWater: Record<Lot['watering'], Lot['watering']> = {
  watered: 'by-season',
  'by-season': 'dry',
  dry: 'dry',
};

/** One decimal, below one two. */
const round = (value: number) => {
  const scale = Math.abs(value) < 1 ? 100 : 10;
  return String(Math.round(value * scale) / scale);
};

/** The changes that make sense in a place, in words with their figures. */
export function dampChanges(plan: Plan, place: Place): DampChange[] {
  const changes: DampChange[] = [];
  const heater = airHeater(place);
  if (heater !== null)
    changes.push({
      id: 'warmer',
      words: `${heater.name} one degree warmer: ${round(heater.setPointNight + degree)} °C by night instead of ${round(heater.setPointNight)} °C`,
      caution: '',
    });
  if (place.leakage > 0 && place.leakage * moreAir <= mostLeakage)
    changes.push({
      id: 'more-air',
      words: `Half as much air again through the gaps: ${round(place.leakage * moreAir)} air changes an hour instead of ${round(place.leakage)}`,
      caution: '',
    });
  if (place.vents.length < 4)
    changes.push({
      id: 'vent-ajar',
      words: `A vent left ajar day and night, ${Math.round(ajar.area * 10000)} cm²`,
      caution: 'Close it in hard frost.',
    });
  if (place.fan !== null && place.fan.leastSpeed < slowShare)
    changes.push({ id: 'fan-slow', words: 'The fan never below a fifth of its speed', caution: '' });
  if (place.circulation === null)
    changes.push({
      id: 'stirred',
      words: `A fan of ${stirringWatts(place)} W that stirs the air day and night`,
      caution:
        'Damp air and mains: an outdoor-rated socket behind a residual-current device; local codes come first.',
    });
  const drier = plan.lots.filter((lot) => visits(lot, place.id) && lessWater[lot.watering] !== lot.watering);
  if (drier.length > 0)
    changes.push({
      id: 'drier',
      words: `Water less: ${drier.map(drierWords).join(', ')}`,
      caution: 'Only for plants that can rest dry.',
    });
  return changes;
}

const drierWords = (lot: Lot) =>
  lessWater[lot.watering] === 'dry' ? `${lot.name} kept dry` : `${lot.name} only by the season`;

function airHeater(place: Place) {
  const heater = place.heaters[mainHeater(place.heaters)];
  return heater === undefined || heater.kind === 'heat-mat' ? null : heater;
}

/** The plan with one change against damp made to a place; the plan given is left as it is. */
export function applyDampChange(plan: Plan, placeId: string, id: DampChangeId): Plan {
  const place = plan.places.find((each) => each.id === placeId);
  if (place === undefined) throw new RangeError(`expected a place of the plan, got ${placeId}`);
  if (!dampChanges(plan, place).some((change) => change.id === id))
    throw new RangeError(`expected a change that ${place.name} can take, got ${id}`);
  const withPart = (part: Partial<Place>): Plan => ({
    ...plan,
    places: plan.places.map((each) => (each.id === placeId ? { ...each, ...part } : each)),
  });
  switch (id) {
    case 'warmer':
      return withPart({ heaters: warmer(place) });
    case 'more-air':
      return withPart({ leakage: place.leakage * moreAir });
    case 'vent-ajar':
      return withPart({ vents: [...place.vents, ajar] });
    case 'fan-slow':
      return withPart({ fan: place.fan === null ? null : { ...place.fan, leastSpeed: slowShare } });
    case 'stirred':
      return withPart({
        circulation: { watts: stirringWatts(place), airSpeed: stirringSpeed, runs: 'always' },
      });
    case 'drier':
      return {
        ...plan,
        lots: plan.lots.map((lot) =>
          visits(lot, placeId) ? { ...lot, watering: lessWater[lot.watering] } : lot,
        ),
      };
  }
}

/** Every heater of the air that is set as high as the main one goes with it, so that none holds the other off. */
function warmer(place: Place): Place['heaters'] {
  const main = place.heaters[mainHeater(place.heaters)];
  return place.heaters.map((heater) =>
    heater.kind !== 'heat-mat' && heater.setPointNight === main.setPointNight
      ? {
          ...heater,
          setPointDay: Math.min(40, heater.setPointDay + degree),
          setPointNight: Math.min(40, heater.setPointNight + degree),
        }
      : heater,
  );
}
