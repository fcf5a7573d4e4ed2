import type { Heights, PlaceNight } from '../../core/index.ts';
import { formatHours, formatNumber, formatTemperature } from '../state/units.ts';
import type { UnitPreferences } from '../state/units.ts';

/**
 * Most carbon dioxide a workplace may have over eight hours [ppm]: 5000 by the British EH40 and the American
 * OSHA limits (both from memory).
 */
export const carbonDioxideLimit = 5000;

/** A caution where a burner fills the air with carbon dioxide; null where it stays under the limit. */
export function carbonDioxideCaution(most: number, when = 'tonight'): string | null {
  if (most <= carbonDioxideLimit) return null;
  const figure = formatNumber(Math.round(most / 100) * 100);
  return `The burner brings carbon dioxide to about ${figure} ppm ${when}; workplaces allow ${formatNumber(carbonDioxideLimit)} over eight hours (EH40 and OSHA, from memory). Leave a gap open for fresh air, air the place well before you go in, and keep to the maker’s ventilation and to local codes, which come first.`;
}

/** Water on leaves and cover tonight; null where none forms. */
export function dewWords(place: PlaceNight): string | null {
  const hours = (value: number) => formatHours(Math.round(value * 4) / 4);
  if (place.leafDewHours >= 0.25) return `On the leaves for ${hours(place.leafDewHours)}`;
  if (place.dewHours >= 0.25) return `On the cover for ${hours(place.dewHours)}, the leaves stay dry`;
  return null;
}

/** Differences of height under this are not worth a line [K]. */
const evenWithin = 0.2;

/** `bench 1.2 °C, floor −0.4 °C, edge 0.1 °C`; null where the air is as good as one. */
export function heightWords(heights: Heights, units: UnitPreferences): string | null {
  const names = ['bench', 'floor', 'edge'] as const;
  const values = names.map((name) => heights[name]);
  if (Math.max(...values) - Math.min(...values) < evenWithin) return null;
  return names.map((name) => `${name} ${formatTemperature(heights[name], units, 1)}`).join(', ');
}
