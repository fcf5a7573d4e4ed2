import type { MeterBand } from '../../core/index.ts';
import { formatLight, formatNumber } from '../state/units.ts';

/** Daily light with as many places as its size bears: `0.14 mol`, `2.7 mol`, `20 mol`. */
export const mol = (value: number): string => formatLight(value, value < 0.995 ? 2 : value < 9.95 ? 1 : 0);

/** `0.05 and 0.42 mol`. */
export const between = ({ low, high }: MeterBand): string =>
  `${mol(low).replace(/\u00a0mol$/, '')} and ${mol(high)}`;

/** `0.05 to 0.42 mol`. */
export const range = (band: MeterBand): string => between(band).replace(' and ', ' to ');

/** A wish of plants, which carries no place it does not need: `8`, `4.5`. */
const round = (value: number): string =>
  formatNumber(value, Number.isInteger(Number(value.toFixed(1))) ? 0 : 1);
export const wish = (value: number): string => `${round(value)}\u00a0mol`;
export const wishes = (low: number, high: number): string => `${round(low)} to ${wish(high)}`;

/** How far off a figure may be, as a factor over one: `15 % more or less`, `3 times more or less`. */
export function sureness(share: number): string {
  if (share < 1) return `${formatNumber(100 * share)}\u00a0% more or less`;
  const times = 1 + share;
  return `${formatNumber(times, Math.abs(times - Math.round(times)) < 0.05 ? 0 : 1)} times more or less`;
}
