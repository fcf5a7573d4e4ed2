import { burningHours } from '../../core/index.ts';
import type { Lamp, LampChartPoint, LampComparison } from '../../core/index.ts';

/** True where a lamp burns by its clock alone: neither the sun nor a longest day has a say. */
export const byClockAlone = ({ control, mostDay }: Pick<Lamp, 'control' | 'mostDay'>) =>
  control.kind === 'clock' && mostDay === null;

/**
 * Hours a day that an option's lamp burns [h]: its clock hours, or the mean of the winter it was run through where
 * something else switches it too. Null while that is not known: before the run, or where other lamps burn beside it.
 */
export function burntHours(lamp: Lamp, result: LampComparison | null, alone: boolean): number | null {
  if (byClockAlone(lamp)) return burningHours(lamp);
  return result !== null && alone && result.watts > 0 ? result.hours : null;
}

/** The chart's points, which count clock hours, for the hours that the lamp did burn and at the price it then paid. */
export function asBurnt(
  points: readonly LampChartPoint[],
  lamp: Lamp,
  hours: number | null,
  result: LampComparison | null,
): readonly LampChartPoint[] {
  const clock = burningHours(lamp);
  if (byClockAlone(lamp) || hours === null || result === null || !(clock > 0)) return points;
  const price = result.kwhWinter > 0 ? result.costWinter / result.kwhWinter : 0;
  return points.map((point) => {
    const kwhMonth = (point.kwhMonth * hours) / clock;
    return {
      ...point,
      dailyLight: (point.dailyLight * hours) / clock,
      kwhMonth,
      costMonth: kwhMonth * price,
    };
  });
}
