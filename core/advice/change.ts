import type { Plan, Place } from '../plan/schema.ts';
import { fleeceOf, heaterOf } from '../plan/parts.ts';
import type { Heater } from '../plan/equipment.ts';
import type { PlanChange } from './result.ts';

/** A heater the program suggests where a place has none: what a hardware shop sells (common practice, no source). */
const suggestedHeater: Heater = heaterOf({
  id: 'suggested',
  name: 'Fan heater',
  kind: 'fan',
  power: 2000,
  setPointDay: 5,
  setPointNight: 5,
});

/** The plan with a change made to one place; the plan given is left as it is. */
export function applyChange(plan: Plan, change: PlanChange): Plan {
  const places = plan.places.map((place) => (place.id === change.placeId ? changed(place, change) : place));
  return { ...plan, places };
}

function changed(place: Place, change: PlanChange): Place {
  const next: Place = { ...place };
  if (change.lamp !== undefined) {
    const at = change.lampIndex ?? 0;
    next.lamps = place.lamps.map((lamp, index) => (index === at ? { ...lamp, ...change.lamp } : lamp));
  }
  if (change.addLamp !== undefined) next.lamps = [...next.lamps, change.addLamp];
  if (change.heaterSetPoint !== undefined) {
    next.heaters = withSetPoint(place.heaters, change.heaterSetPoint, change.heaterPower);
  }
  if (change.lining !== undefined) next.lining = change.lining;
  if (change.fleece !== undefined) {
    next.fleece =
      change.fleece === null
        ? null
        : fleeceOf({ covering: change.fleece.covering, layers: change.fleece.layers, laidWhen: 'night' });
  }
  return next;
}

function suggested(power: number): Heater {
  return power <= 100
    ? { ...suggestedHeater, name: 'Tubular heater', kind: 'tubular', power }
    : { ...suggestedHeater, power };
}

/** Index of the air heater with the highest night set point, the one that holds the place; the first where all are mats. */
export function mainHeater(heaters: readonly Heater[]): number {
  let at = 0;
  heaters.forEach((heater, index) => {
    const better = heaters[at].kind === 'heat-mat' || heater.setPointNight > heaters[at].setPointNight;
    if (heater.kind !== 'heat-mat' && better) at = index;
  });
  return at;
}

/** The main heater set to `setPoint` by night, and by day at least (or at most, going down) that; a suggested one where there is none. */
function withSetPoint(heaters: readonly Heater[], setPoint: number, power = suggestedHeater.power): Heater[] {
  const list = heaters.length > 0 ? [...heaters] : [suggested(power)];
  const at = mainHeater(list);
  const { setPointDay, setPointNight } = list[at];
  const day = setPoint >= setPointNight ? Math.max(setPointDay, setPoint) : Math.min(setPointDay, setPoint);
  list[at] = { ...list[at], setPointDay: day, setPointNight: setPoint };
  return list;
}

/** A clock time `minutes` later, as HH:MM. */
export function shiftClock(time: string, minutes: number): string {
  const total = (Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5)) + minutes + 2880) % 1440;
  const two = (value: number) => String(value).padStart(2, '0');
  return `${two(Math.floor(total / 60))}:${two(Math.round(total % 60))}`;
}
