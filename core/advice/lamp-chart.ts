import type { Lamp } from '../plan/lamp.ts';
import type { Place, Tariff } from '../plan/schema.ts';
import { dailyCost } from '../cost/index.ts';
import { dailyLight, lampWatts, placeField } from '../light/index.ts';
import { burningHours } from './lamp-hours.ts';
import type { LampChartPoint } from './result.ts';

/** What the chart is drawn for. */
export interface ChartRange {
  /** Heights over the plants [m], and outputs as a share of full, 0.1–1. */
  readonly heights?: readonly number[];
  readonly dimmings?: readonly number[];
}

const daysOfMonth = 30;
const usualDimmings = [0.25, 0.5, 0.75, 1];
/** Heights drawn where none are asked for, as multiples of the lamp's own. */
const usualHeights = [0.6, 0.8, 1, 1.3, 1.7];

/**
 * Daily light on a place's growing area against the lamp's running cost, for heights and dimmings, at the lamp's
 * own clock hours. By the light field alone: light is proportional to output at a height, so each height is
 * worked out once. A lamp not switched by the clock counts the hours of its clock times, an upper end.
 */
export function lampChart(
  place: Place,
  lamp: Lamp,
  tariff: Tariff,
  range: ChartRange = {},
): LampChartPoint[] {
  const heights = range.heights ?? usualHeights.map((share) => share * lamp.height);
  const dimmings = range.dimmings ?? usualDimmings;
  const hours = burningHours(lamp);
  return heights.flatMap((height) => {
    const full = placeField(place, { lamps: [{ ...lamp, height, dimming: 1 }] });
    const least = Math.min(...full.levels.map((level) => level.least));
    return dimmings.map((dimming) => {
      const dimmed = { ...lamp, height, dimming };
      const watts = lampWatts(dimmed);
      const daily =
        dailyCost(watts, lamp.on, lamp.off, tariff) +
        (lamp.second === null ? 0 : dailyCost(watts, lamp.second.on, lamp.second.off, tariff));
      return {
        height,
        dimming,
        dailyLight: dailyLight(full.average * dimming, hours),
        evenness: full.average > 0 ? least / full.average : 0,
        kwhMonth: (watts * hours * daysOfMonth) / 1000,
        costMonth: daily * daysOfMonth,
      };
    });
  });
}
