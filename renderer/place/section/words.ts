import type { Place, PlanSite } from '../../../core/index.ts';
import { formatTemperature } from '../../state/units.ts';
import type { UnitPreferences } from '../../state/units.ts';
import { airWords } from './words-air.ts';
import {
  curtainWords,
  fleeceWords,
  liningWords,
  screenWords,
  shadeWords,
  sheerWords,
  shelfWords,
  skinWords,
} from './words-extras.ts';
import { baseWords, coveringName, edgeWords, shadyWords, snowWords } from './words-fabric.ts';
import { heaterWords, lampWords, waterWords } from './words-things.ts';

export function roomWords(place: Place, units: UnitPreferences): string {
  const { room } = place;
  if (room === null) return '';
  if (room.kind === 'constant') return `room at ${formatTemperature(room.temperature, units)}`;
  if (room.kind === 'schedule')
    return `room ${formatTemperature(room.day, units)} by day, ${formatTemperature(room.night, units)} by night`;
  if (room.kind === 'series') {
    let [least, most] = [Infinity, -Infinity];
    for (const value of room.values) {
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
    return `room as measured, ${formatTemperature(least, units)} to ${formatTemperature(most, units)}`;
  }
  return `room about ${formatTemperature(room.temperature, units)} when it freezes`;
}

/** What the drawing shows, in one sentence for those who do not see it. */
export function drawingWords(place: Place, units: UnitPreferences, snow: PlanSite['snow'] = null): string {
  const { baseWall, edgeInsulation, secondSkin, screen, curtain, fleece } = place;
  const parts = [
    `Section of ${place.name}`,
    coveringName(place.covering),
    baseWall ? baseWords(baseWall, units) : '',
    place.shadySide ? shadyWords(place) : '',
    place.shadeCloth ? shadeWords(place.shadeCloth) : '',
    place.sheer ? sheerWords(place.sheer) : '',
    secondSkin ? skinWords(secondSkin, units) : '',
    place.lining ? liningWords(place.lining) : '',
    screen ? screenWords(screen, units) : '',
    curtain ? curtainWords(curtain, units) : '',
    fleece ? fleeceWords(fleece, units) : '',
    place.upperShelf ? shelfWords(place.upperShelf, units) : '',
    ...place.lamps.map((lamp) => lampWords(lamp, units)),
    ...place.heaters.map((heater) => heaterWords(heater, units)),
    ...place.water.map(waterWords),
    ...airWords(place, units),
    edgeInsulation ? edgeWords(edgeInsulation, units) : '',
    snow && place.snow === 'left' ? snowWords(snow, units) : '',
    roomWords(place, units),
  ];
  return parts.filter((part) => part !== '').join('; ');
}
