import { outdoors } from '../../../core/index.ts';
import type { LotSeason, SeasonResult } from '../../../core/index.ts';
import { formatNumber } from '../../state/units.ts';

/** Daily light of a lot at its spot and of its place over the winter days it stands there [mol m⁻² d⁻¹]. */
export interface SpotLight {
  readonly spot: number;
  readonly place: number;
}

/** Light of a lot and of its place on the days of the winter half-year on which it stands there; null on none. */
export function spotLight(lot: LotSeason, season: SeasonResult, placeId: string): SpotLight | null {
  const daily = season.places.find((place) => place.placeId === placeId)?.daily;
  if (placeId === outdoors || daily === undefined) return null;
  let [spot, place, days] = [0, 0, 0];
  for (const stay of lot.stays) {
    if (stay.placeId !== placeId) continue;
    for (
      let day = Math.max(stay.from, season.winterFrom);
      day <= Math.min(stay.to, season.winterTo);
      day += 1
    ) {
      spot += lot.lived.dailyLight[day];
      place += daily.daylight[day] + daily.lampLight[day];
      days += 1;
    }
  }
  return days === 0 ? null : { spot: spot / days, place: place / days };
}

/** `gets 8 % more light in winter than the bench’s mean of 5.1 mol a day`; for less than 1 % says as much as. */
export function spotLightWords({ spot, place }: SpotLight): string {
  const mean = `${formatNumber(place, 1)} mol a day`;
  if (!(place > 0)) return `gets ${formatNumber(spot, 1)} mol a day in winter; the bench has none on average`;
  const percent = Math.round(100 * (spot / place - 1));
  if (percent === 0) return `gets as much light in winter as the bench’s mean, ${mean}`;
  return `gets ${Math.abs(percent)} % ${percent > 0 ? 'more' : 'less'} light in winter than the bench’s mean of ${mean}`;
}
