import type { Crossing } from '../plants/index.ts';
import { daysBeforeMonth } from '../season/calendar.ts';

const digits: Readonly<Record<string, number>> = { '°C': 1, 'mol/m²': 1, h: 1, share: 2 };
const unitWords: Readonly<Record<string, string>> = { 'K h': 'degree-hours', share: '' };

/** `Mean of day and night, as remembered, fell below 7.0 °C: 6.9 °C.` */
export function crossingWords({ series, value, threshold, unit, way }: Crossing): string {
  const subject = `${series.charAt(0).toUpperCase()}${series.slice(1)}${series.includes(', ') ? ',' : ''}`;
  const name = unitWords[unit] ?? unit;
  const written = (number: number, more: number) =>
    `${number.toFixed((digits[unit] ?? 0) + more).replace('-', '−')}${name === '' ? '' : ` ${name}`}`;
  if (way === 'reached') return `${subject} reached ${written(threshold, 0)}.`;
  const more = [0, 1, 2].find((digit) => written(value, digit) !== written(threshold, digit)) ?? 3;
  return `${subject} ${way} ${written(threshold, more)}: ${written(value, more)}.`;
}

/** A clause of the engine as a sentence of its own. */
export const sentence = (clause: string) => `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;

/** Day of the civil calendar, `MM-DD`, of a day of the season; days beyond its last are the next season's. */
export function monthDayOf(day: number, startDay: number): string {
  const ofYear = (((startDay + day) % 365) + 365) % 365;
  let month = 1;
  while (daysBeforeMonth[month] <= ofYear) month += 1;
  const two = (number: number) => String(number).padStart(2, '0');
  return `${two(month)}-${two(ofYear - daysBeforeMonth[month - 1] + 1)}`;
}

const monthNames = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `25 Apr`, as the sentences write a day of the season. */
export function dayWords(day: number, startDay: number): string {
  const [month, date] = monthDayOf(day, startDay).split('-').map(Number);
  return `${date} ${monthNames[month - 1]}`;
}
