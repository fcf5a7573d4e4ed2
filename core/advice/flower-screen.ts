import type { GroupNumbers, PlantGroup } from '../plan/groups.ts';
import type { Lot } from '../plan/schema.ts';
import { flowerOutlook, runPlants } from '../plants/index.ts';
import type { FlowerOutlook, PlantDays } from '../plants/index.ts';
import type { PlantClimate, SeasonSetting, Stay } from '../season/index.ts';

const named = {
  meanLeaf: 'leafMean',
  leastLeaf: 'leafLeast',
  mostLeaf: 'leafMost',
  meanNightLeaf: 'leafNight',
  photoperiod: 'photoperiod',
} as const;

/** The days that a lot lives through that stands through `stays`. */
export function daysThrough(setting: SeasonSetting, lot: Lot, stays: readonly Stay[]): PlantDays {
  const count = setting.outdoor.mean.length;
  const days = Object.fromEntries(
    [...Object.keys(named), 'dailyLight'].map((name) => [name, new Float64Array(count)]),
  ) as unknown as PlantDays;
  for (const { placeId, from, to } of stays) {
    const climate = setting.climates.get(placeId) as PlantClimate;
    for (const [name, theirs] of Object.entries(named)) {
      days[name as keyof typeof named].set(climate.daily[theirs].subarray(from, to + 1), from);
    }
    days.dailyLight.set(climate.lightAt(lot.spot).subarray(from, to + 1), from);
  }
  return days;
}

/**
 * Flowering alone of a lot that is to be looked through in hundreds of keepings; what is kept of them is judged in full.
 * @param startDay the season's first day as day of a common year
 */
export function screenFlowers(
  { lot, group, numbers }: { readonly lot: Lot; readonly group: PlantGroup; readonly numbers: GroupNumbers },
  days: PlantDays,
  startDay: number,
): FlowerOutlook {
  return flowerOutlook(group, numbers, days, runPlants(numbers, days, { watering: lot.watering, startDay }));
}
