import type { GroupNumbers } from '../plan/groups.ts';
import type { Lot } from '../plan/schema.ts';
import type { LotSeason, PlantClimate } from '../season/index.ts';

/** Days of a season on which a lot takes harm [d]. */
export interface HarmDays {
  /** Cold damage, burning heat, and chill on days on which it carries its dose: harms that kill. */
  readonly grave: number;
  /** These and scorch, wet cold and decline. */
  readonly all: number;
}

/** Days of harm of a lot that was judged. */
export function harmDaysOf(lot: LotSeason): HarmDays {
  let [grave, all] = [0, 0];
  for (let day = 0; day < lot.state.length; day += 1) {
    const kills = lot.chilled[day] > 0 || lot.frostDose[day] > 0 || lot.heatDose[day] > 0;
    const marks = [lot.scorchDose, lot.wetColdDose, lot.declineDose].some((dose) => dose[day] > 0);
    if (kills) grave += 1;
    if (kills || marks) all += 1;
  }
  return { grave, all };
}

/**
 * Days on which a place is beyond what a group bears however hardened or used to light it is, summed up to each day:
 * no lot takes less harm there. A stay from `from` to `to` has `sums[to + 1] - sums[from]` of them [d].
 */
export function unbearableDays(
  climate: PlantClimate,
  lot: Lot,
  numbers: GroupNumbers,
): { readonly grave: Int32Array; readonly all: Int32Array } {
  const { leafLeast, leafMost } = climate.daily;
  const light = climate.lightAt(lot.spot);
  const cold = Math.min(numbers.damageColdDry, numbers.damageColdWet);
  const [grave, all] = [new Int32Array(light.length + 1), new Int32Array(light.length + 1)];
  for (let day = 0; day < light.length; day += 1) {
    const kills = leafLeast[day] < cold || leafMost[day] > numbers.damageHot;
    grave[day + 1] = grave[day] + (kills ? 1 : 0);
    all[day + 1] = all[day] + (kills || light[day] > numbers.lightMost ? 1 : 0);
  }
  return { grave, all };
}
