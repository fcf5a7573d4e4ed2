import { plantStates } from '../../core/index.ts';
import type { LotSeason, SeasonResult } from '../../core/index.ts';
import { middleOfWinter, standsOn } from './standing.ts';

/** What a lot lives in through the four weeks around the middle of winter, and the state it is in then. */
export interface MidWinter {
  readonly lot: LotSeason;
  readonly lotName: string;
  /** Where it stands on the middle day: a place or `outdoors`. */
  readonly placeId: string;
  /** Mean of its leaf temperature, by day and night and by night alone [°C], and its daily light [mol m⁻² d⁻¹]. */
  readonly leaf: number;
  readonly night: number;
  readonly light: number;
  /** Mean carbon gain by night temperature, 0–1. */
  readonly carbon: number;
  /** Index into `plantStates` of the state it spends most of those days in. */
  readonly state: number;
  /** The middle day [index into the season]. */
  readonly day: number;
}

const halfSpan = 14;

function meanOver(series: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let day = from; day < to; day++) sum += series[day];
  return sum / (to - from);
}

/** Mid-winter of every lot of a group in the plan that was run, wherever it stands; in the plan's order. */
export function midWinterOf(season: SeasonResult, groupId: string): MidWinter[] {
  const middle = middleOfWinter(season);
  const from = Math.max(0, middle - halfSpan);
  const to = Math.min(season.days, middle + halfSpan);
  return season.lots
    .filter((lot) => lot.groupId === groupId)
    .map((lot) => {
      const days = plantStates.map(() => 0);
      for (let day = from; day < to; day++) days[lot.state[day]] += 1;
      return {
        lot,
        lotName: season.plan.lots.find((one) => one.id === lot.lotId)?.name ?? 'Plants',
        placeId: standsOn(lot.stays, middle),
        leaf: meanOver(lot.lived.leafMean, from, to),
        night: meanOver(lot.lived.leafNight, from, to),
        light: meanOver(lot.lived.dailyLight, from, to),
        carbon: meanOver(lot.carbonIndex, from, to),
        state: days.indexOf(Math.max(...days)),
        day: middle,
      };
    });
}
