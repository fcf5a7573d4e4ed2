import type { UnitPreferences } from './units.ts';
import { formatNumber, temperatureUnit, temperatureValue } from './units.ts';

/** A number as the engine's sentences write it, with its unit of temperature or of a difference of temperatures. */
const temperature = /([-−]?\d+(?:\.\d+)?)(?: to ([-−]?\d+(?:\.\d+)?))?\s(°C|K)(?![\w/])/g;

const read = (text: string) => Number(text.replace('−', '-'));

/** Decimals a figure was written with; °F keeps as many. */
const digitsOf = (text: string) => text.split('.')[1]?.length ?? 0;

/**
 * A sentence of the engine in the user's units: temperatures in °C or °F, differences in the same degrees
 * (growers say degrees, not kelvin). Other figures are left as they stand.
 */
export function inUnits(sentence: string, preferences: UnitPreferences): string {
  return sentence.replace(temperature, (_all, first: string, second: string | undefined, unit: string) => {
    const difference = unit === 'K';
    const one = (text: string) => {
      const value = read(text);
      const shown = difference
        ? value * (preferences.temperature === 'F' ? 1.8 : 1)
        : temperatureValue(value, preferences);
      return formatNumber(shown, digitsOf(text));
    };
    const span = second === undefined ? one(first) : `${one(first)} to ${one(second)}`;
    return `${span}\u00a0${temperatureUnit(preferences)}`;
  });
}
