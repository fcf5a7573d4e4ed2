import type { LotSeason, Plan, SeasonResult } from '../../core/index.ts';

/** What a lot lives in through the four weeks around the middle of winter, and the state it is in then. */
export interface MidWinter {
  readonly lot: LotSeason;
  readonly lotName: string;
  readonly placeName: string;
  /** Mean leaf temperature of its place [°C] and daily light at plant level [mol m⁻² d⁻¹]. */
  readonly leaf: number;
  readonly light: number;
  /** Index into `plantStates` of the state it spends most of those days in. */
  readonly state: number;
  /** The middle day [index into the season]. */
  readonly day: number;
}

function meanOver(series: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let day = from; day < to; day++) sum += series[day];
  return sum / (to - from);
}

/** Mid-winter of every lot of a group in the plan. */
export function midWinterOf(plan: Plan, season: SeasonResult, groupId: string): MidWinter[] {
  const middle = Math.round((season.winterFrom + season.winterTo) / 2);
  const from = Math.max(0, middle - 14);
  const to = Math.min(season.days, middle + 14);
  const found: MidWinter[] = [];
  for (const place of season.places) {
    for (const lot of place.lots) {
      if (lot.groupId !== groupId) continue;
      const days = new Uint16Array(8);
      for (let day = from; day < to; day++) days[lot.state[day]] += 1;
      found.push({
        lot,
        lotName: plan.lots.find((one) => one.id === lot.lotId)?.name ?? 'Plants',
        placeName: plan.places.find((one) => one.id === place.placeId)?.name ?? 'a place',
        leaf: meanOver(place.daily.leafMean, from, to),
        light: meanOver(place.daily.daylight, from, to) + meanOver(place.daily.lampLight, from, to),
        state: days.indexOf(Math.max(...days)),
        day: middle,
      });
    }
  }
  return found;
}
