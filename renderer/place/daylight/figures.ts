import { formatNumber } from '../../state/units.ts';

export const percent = (share: number) => `${formatNumber(100 * share)}\u00a0%`;

/** `09:20` of minutes after midnight. */
export function clock(minutes: number): string {
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
  return `${two(minutes / 60)}:${two(minutes % 60)}`;
}
