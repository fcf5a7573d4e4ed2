import type { Crossing } from '../plants/index.ts';
import type { LotSeason } from '../season/result.ts';
import type { GroupNumbers } from '../plan/groups.ts';
import type { Draft, LotInSeason } from './calendar-lot.ts';
import { crossed, reached, trifle } from './calendar-lot.ts';

interface HarmRule {
  readonly words: (lot: LotSeason, day: number, numbers: GroupNumbers) => string;
  /** First day on which it is done; null where it is not. */
  readonly first: (lot: LotSeason, numbers: GroupNumbers) => number | null;
  readonly crossing: (lot: LotSeason, day: number, numbers: GroupNumbers) => Crossing;
}

const firstOver = (doses: Float64Array) => {
  const day = doses.findIndex((dose) => dose > trifle);
  return day === -1 ? null : day;
};

/**
 * Heat over a season that just burns a leaf [K h] (judgement, no source), and days of too much light that bleach one [d]
 * (about a week: Nobel & Hartsock 1983, prickly pear); less of either is not worth a date.
 */
const burningDose = 1;
const bleachingDays = 7;

const sumOf = (doses: Float64Array) => doses.reduce((sum, dose) => sum + dose, 0);
const daysOf = (doses: Float64Array) => doses.filter((dose) => dose > trifle).length;

/** Days of wet cold or of heat counted back from a day on which the harm is done. */
function daysBack(from: number, holds: (day: number) => boolean): number {
  let day = from;
  while (day >= 0 && holds(day)) day -= 1;
  return from - day;
}

const rules: readonly HarmRule[] = [
  {
    words: () => 'This night hurts it: cover it, warm it, or have it elsewhere before.',
    first: (lot) => firstOver(lot.frostDose),
    crossing: (lot, day) => ({
      series: 'least leaf temperature of the day',
      value: lot.lived.leafLeast[day],
      threshold: lot.coldLimit[day],
      unit: '°C',
      way: 'fell below',
    }),
  },
  {
    words: () => 'Chilled for long enough to suffer: keep it warmer, and drier, from well before this.',
    first: (lot) => firstOver(lot.chilled),
    crossing: (lot, day, { chillBelow, chillDose }) => ({
      series: `chill below ${chillBelow} °C that it has not got over`,
      value: lot.chillLoad[day],
      threshold: chillDose ?? 0,
      unit: 'K h',
      way: 'reached',
    }),
  },
  {
    words: () => 'The leaves burn in heat: shade it and open up by midday.',
    first: ({ heatDose }) => (sumOf(heatDose) >= burningDose ? firstOver(heatDose) : null),
    crossing: (lot, day, { damageHot }) => ({
      series: 'highest leaf temperature of the day',
      value: lot.lived.leafMost[day],
      threshold: damageHot,
      unit: '°C',
      way: 'rose above',
    }),
  },
  {
    words: (lot, day, { lightMost }) =>
      lot.lived.dailyLight[day] > lightMost
        ? 'More light than it bears: shade it on bright days.'
        : 'More light than it is used to: shade it for a week or two while it gets used to it.',
    first: ({ scorchDose }) => (daysOf(scorchDose) >= bleachingDays ? firstOver(scorchDose) : null),
    crossing: (lot, day) => ({
      series: 'light of the day',
      value: lot.lived.dailyLight[day],
      threshold: lot.lived.dailyLight[day] - lot.scorchDose[day],
      unit: 'mol/m²',
      way: 'rose above',
    }),
  },
  {
    words: () => 'Wet and cold for too long: roots rot. Stop watering well before, or keep it warmer.',
    first: (lot) => firstOver(lot.wetColdDose),
    crossing: (lot, day, { wetColdBelow }) =>
      reached(
        `days running in wet mix below ${wetColdBelow} °C`,
        daysBack(day, (back) => lot.wet[back] === 1 && lot.lived.leafMean[back] < wetColdBelow),
      ),
  },
  {
    words: () => 'Heat has lasted too long: it declines. Cooler nights, shade and air.',
    first: (lot) => firstOver(lot.declineDose),
    crossing: (_lot, _day, { declineDays }) =>
      reached('days of heat without cool nights', Math.floor(declineDays) + 1),
  },
];

/** The first day of each harm that the season does to a lot, and what to do about it. */
export function harmTasks({ lot, numbers }: LotInSeason): Draft[] {
  return rules.flatMap(({ words, first, crossing: crossingOn }): Draft[] => {
    const day = first(lot, numbers);
    if (day === null) return [];
    const crossing = crossingOn(lot, day, numbers);
    return [{ kind: 'harm', from: day, to: null, words: words(lot, day, numbers), ...crossed(crossing) }];
  });
}
