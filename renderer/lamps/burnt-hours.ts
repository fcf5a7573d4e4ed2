import { burningHours, daylightReaches } from '../../core/index.ts';
import type { Lamp, LampChartPoint, LampComparison, Place } from '../../core/index.ts';

/** True where a lamp burns by its clock alone: neither the sun nor a longest day has a say. */
export const byClockAlone = ({ control, mostDay }: Pick<Lamp, 'control' | 'mostDay'>) =>
  control.kind === 'clock' && mostDay === null;

/**
 * Hours a day that an option's lamp burns [h]: its clock hours, out of reach of the day no more than the longest day;
 * else the mean of the winter it was run through. Null while that is not known: before the run, or where other lamps
 * burn beside it.
 */
export function burntHours(
  place: Place,
  lamp: Lamp,
  result: LampComparison | null,
  alone: boolean,
): number | null {
  if (byClockAlone(lamp)) return burningHours(lamp);
  if (lamp.control.kind === 'clock' && lamp.second === null && !daylightReaches(place))
    return Math.min(burningHours(lamp), lamp.mostDay ?? 24);
  return result !== null && alone && result.watts > 0 ? result.hours : null;
}

/** The chart's points, which count clock hours, for the hours that the lamp did burn and at the winter's price. */
export function asBurnt(
  points: readonly LampChartPoint[],
  lamp: Lamp,
  hours: number | null,
  result: LampComparison | null,
): readonly LampChartPoint[] {
  const clock = burningHours(lamp);
  if (byClockAlone(lamp) || hours === null || !(clock > 0)) return points;
  const share = hours / clock;
  const price = result !== null && result.kwhWinter > 0 ? result.costWinter / result.kwhWinter : null;
  return points.map((point) => ({
    ...point,
    dailyLight: point.dailyLight * share,
    kwhMonth: point.kwhMonth * share,
    costMonth: price === null ? point.costMonth * share : point.kwhMonth * share * price,
  }));
}
