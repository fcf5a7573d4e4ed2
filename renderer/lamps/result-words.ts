import type { LampComparison, LampView, Place } from '../../core/index.ts';
import {
  formatEnergy,
  formatLight,
  formatMoney,
  formatNumber,
  formatPhotons,
  formatPower,
  formatTemperature,
  formatTemperatureChange,
} from '../state/units.ts';
import type { UnitPreferences } from '../state/units.ts';

/** All that a winter with an option costs: electricity of lamps, heaters and fans, and the lamps worn off. */
export function costOf(one: LampComparison): number {
  return one.costWinter + one.heaterCostWinter + one.wearWinter;
}

/** What the cost is made of, in words. */
export function costWords(one: LampComparison, currency: string): string {
  const money = (amount: number) => formatMoney(amount, currency);
  const parts = one.watts > 0 ? [`${money(one.costWinter)} lamps`] : [];
  const air = one.heaterKwhWinter < 0.05 ? 'fans' : 'heaters and fans';
  if (one.heaterCostWinter > 0.005) parts.push(`${money(one.heaterCostWinter)} ${air}`);
  if (one.wearWinter > 0.005) parts.push(`${money(one.wearWinter)} wear of the lamps`);
  return parts.join(', ') || 'nothing burns or runs';
}

/** What the view has done to an option: `× 1.4 watts for the same light`; '' as given. */
export function scaleWords(one: LampComparison, view: LampView): string {
  if (view === 'as-given' || one.watts <= 0) return '';
  const same = view === 'equal-light' ? 'for the same light' : 'for the same watts';
  if (Math.abs(one.scale - 1) < 0.005) return 'as given';
  return `× ${formatNumber(one.scale, one.scale < 0.1 ? 3 : 2)} watts ${same}`;
}

export function repayWords(one: LampComparison, index: number): string {
  if (index === 0) return '';
  if (one.price <= 0) return 'nothing to repay';
  if (one.yearsToRepay === null) return 'never';
  if (one.yearsToRepay > 100) return 'over 100 years';
  return one.yearsToRepay < 0.1 ? 'at once' : `${formatNumber(one.yearsToRepay, 1)} years`;
}

export function burnWords(one: LampComparison): string {
  if (one.watts <= 0) return 'no lamp';
  return one.burn.level === 'none' ? 'no risk of burning' : one.burn.words;
}

export interface FigureRow {
  readonly label: string;
  readonly words: (one: LampComparison, index: number) => string;
  /** What stands small below the figure; '' where nothing does. */
  readonly under?: (one: LampComparison, index: number) => string;
  /** Whose working can be opened. */
  readonly working?: boolean;
  /** True where the words warn. */
  readonly warns?: (one: LampComparison) => boolean;
}

const lit = (one: LampComparison) => one.average > 0;

export function lightRows(units: UnitPreferences): readonly FigureRow[] {
  return [
    {
      label: 'Average and least on the area',
      words: (one) =>
        lit(one) ? `${formatPhotons(one.average)}, least ${formatNumber(one.least)}` : 'no light',
      under: (one) => (lit(one) ? `evenness ${formatNumber(one.evenness, 2)}, least over average` : ''),
      working: true,
    },
    {
      label: 'Nearest leaf',
      words: burnWords,
      under: (one) =>
        `hottest leaf of the winter ${formatTemperature(one.leafMost, units)}${lit(one) ? `, strongest light ${formatPhotons(one.most)}` : ''}`,
      warns: (one) => one.burn.level !== 'none' && one.watts > 0,
    },
  ];
}

export function moneyRows(currency: string): readonly FigureRow[] {
  return [
    {
      label: 'Electricity a winter, lamps',
      words: (one) => (one.watts > 0 ? formatEnergy(one.kwhWinter) : 'no lamp'),
      under: (one) => (one.watts > 0 ? `${formatPower(one.watts)} in all` : ''),
    },
    {
      label: 'Cost of 1,000 mol of its light',
      words: (one) => (lit(one) ? formatMoney(one.costPerMole * 1000, currency) : 'no light'),
    },
    { label: 'Years to repay its price', words: repayWords },
  ];
}

export function warmthRows(place: Place, units: UnitPreferences): readonly FigureRow[] {
  const change = (kelvin: number) => formatTemperatureChange(kelvin, units);
  const none = change(0);
  return [
    {
      label: 'Air: mean by day, mean nightly least',
      words: (one, index) =>
        index === 0
          ? 'compared with this'
          : change(one.airDayChange) === none && change(one.airNightChange) === none
            ? 'the same'
            : `${change(one.airDayChange)} by day, ${change(one.airNightChange)} nightly least`,
    },
    {
      label: 'Heat of heaters a winter',
      words: (one) => (place.heaters.length > 0 ? formatEnergy(one.heaterKwhWinter) : 'no heater'),
    },
  ];
}

/** Top of the light scale: the strongest cell rounded up to a figure that is easy to halve [µmol m⁻² s⁻¹]. */
export function scaleTop(most: number): number {
  if (!(most > 0)) return 50;
  const step = most <= 100 ? 20 : most <= 400 ? 40 : most <= 1000 ? 100 : 200;
  return Math.ceil(most / step) * step;
}

/** Daily light in words: from the lamps, and with the day. */
export function dailyWords(one: LampComparison): string {
  return `${formatLight(one.dailyLightWithDay)} with daylight`;
}
