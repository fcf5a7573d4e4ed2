import { formatNumber, temperatureUnit } from '../state/units.ts';
import type { UnitPreferences } from '../state/units.ts';

const fixedSpace = '\u00a0';

/** A difference of temperatures as growers say it, `2.5 °C warmer`; '' where it is less than a tenth. */
export function warmer(kelvin: number, units: UnitPreferences): string {
  if (Math.abs(kelvin) < 0.1) return '';
  const degrees = units.temperature === 'F' ? kelvin * 1.8 : kelvin;
  return `${formatNumber(Math.abs(degrees), 1)}${fixedSpace}${temperatureUnit(units)} ${kelvin > 0 ? 'warmer' : 'cooler'}`;
}

/** A difference of daily light, `0.6 mol more light a day`; '' where it is less than a twentieth. */
export function brighter(mol: number): string {
  if (Math.abs(mol) < 0.05) return '';
  return `${formatNumber(Math.abs(mol), 1)}${fixedSpace}mol ${mol > 0 ? 'more' : 'less'} light a day`;
}

/** What it would take for the next better state; '' where nothing. */
export function marginWords(kelvin: number, mol: number, units: UnitPreferences): string {
  const parts = [warmer(kelvin, units), brighter(Math.max(0, mol))].filter((part) => part !== '');
  return parts.length === 0 ? '' : `To do better it needs ${parts.join(' and ')}.`;
}

/** What it can bear before the next worse state; '' where no such change makes it worse. */
export function spareWords(kelvin: number, mol: number, units: UnitPreferences): string {
  const parts = [warmer(kelvin, units), brighter(Math.min(0, mol))].filter((part) => part !== '');
  return parts.length === 0 ? '' : `It does worse once it is ${parts.join(', or has ')}.`;
}

/** The part of what holds it that the factor named has: `80 % of what holds it`; '' where it is not known. */
export function shareWords(share: number): string {
  return share > 0 ? `${Math.round(share * 100)}${fixedSpace}% of what holds it` : '';
}
