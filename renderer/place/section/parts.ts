import { coverings } from '../../../core/index.ts';
import type { Place } from '../../../core/index.ts';
import { formatLength, formatNumber, formatPower, formatTemperature } from '../../state/units.ts';
import type { UnitPreferences } from '../../state/units.ts';

/** Parts of the drawing that can be picked; each leads to the part of the form that holds its numbers. */
export const sectionParts = ['shape', 'cover', 'extras', 'air', 'heat', 'lamps', 'water', 'plants'] as const;
export type SectionPart = (typeof sectionParts)[number];

export const partNames: Record<SectionPart, string> = {
  shape: 'Shape and size',
  cover: 'Cover and base',
  extras: 'Lining, screen and fleece',
  air: 'Air and surroundings',
  heat: 'Heaters',
  lamps: 'Lamps',
  water: 'Water',
  plants: 'Plants and bench',
};

export function coveringName(id: string | null | undefined): string {
  return coverings.find((each) => each.id === id)?.name ?? 'none';
}

export function lampWords(lamp: Place['lamps'][number], units: UnitPreferences): string {
  const count = lamp.count > 1 ? `${lamp.count} × ` : '';
  return `${lamp.name}: ${count}${formatPower(lamp.watts)}, ${formatLength(lamp.height, units)} over the plants, ${lamp.on} to ${lamp.off}`;
}

export function heaterWords(heater: Place['heaters'][number], units: UnitPreferences): string {
  return `${heater.name}: ${formatPower(heater.power)}, holds ${formatTemperature(heater.setPointNight, units)} by night`;
}

export function waterWords(store: Place['water'][number]): string {
  const count = store.count > 1 ? `${store.count} × ` : '';
  return `${store.name}: ${count}${formatNumber(store.litres)} litres of water`;
}

export function roomWords(place: Place, units: UnitPreferences): string {
  const { room } = place;
  if (room === null) return '';
  if (room.kind === 'constant') return `room at ${formatTemperature(room.temperature, units)}`;
  if (room.kind === 'schedule')
    return `room ${formatTemperature(room.day, units)} by day, ${formatTemperature(room.night, units)} by night`;
  return `room about ${formatTemperature(room.temperature, units)} when it freezes`;
}

/** What the drawing shows, in one sentence for those who do not see it. */
export function drawingWords(place: Place, units: UnitPreferences): string {
  const parts = [
    `Section of ${place.name}`,
    coveringName(place.covering),
    place.lining ? `lined with ${coveringName(place.lining)}` : '',
    place.fleece ? `fleece over the plants` : '',
    ...place.lamps.map((lamp) => lampWords(lamp, units)),
    ...place.heaters.map((heater) => heaterWords(heater, units)),
    ...place.water.map(waterWords),
    roomWords(place, units),
  ];
  return parts.filter((part) => part !== '').join('; ');
}
