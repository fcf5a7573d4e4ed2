import { sectionOf } from '../../core/index.ts';
import type { Lamp, Place, Section } from '../../core/index.ts';
import { formatLength } from '../state/units.ts';
import type { UnitPreferences } from '../state/units.ts';

/** Room that pots and plants take over what they stand on [m] (common practice, no source). */
const plants = 0.2;

/** Room over the plants of a lamp's level: to the boards of a shelf above it, else to the top of the place [m]. */
function roomOver({ upperShelf }: Place, section: Section, lamp: Lamp): number {
  const under = section.height - section.plantLevel - Math.min(plants, 0.3 * section.height);
  if (upperShelf === null) return under;
  return lamp.shelf === 'lower' ? upperShelf.height : under - upperShelf.height - upperShelf.plants;
}

/** That a lamp hangs higher than what is above its plants, in words; '' where it does not. */
export function tooHigh(place: Place, lamp: Lamp, units: UnitPreferences): string {
  const room = roomOver(place, sectionOf(place), lamp);
  if (lamp.height <= room + 0.005) return '';
  const boards = place.shape.kind === 'shelf' || (place.upperShelf !== null && lamp.shelf === 'lower');
  const above = boards ? 'the boards above, which are' : 'the cover, which is';
  return `Higher than ${above} ${formatLength(Math.max(0, room), units)} over the plants’ tops.`;
}

/** Heights over the plants that a lamp can be given by hand: up to what is above it, and to where it hangs now [m]. */
export function heightRange(place: Place, lamp: Lamp): { least: number; most: number } {
  const most = Math.min(5, Math.max(0.2, roomOver(place, sectionOf(place), lamp), lamp.height));
  return { least: 0.05, most: Math.floor(most * 100 + 1e-9) / 100 };
}

const ladder = [0.1, 0.15, 0.2, 0.3, 0.4, 0.6, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4, 5];

/** Heights that the chart has a line for: round ones spread over what the place allows [m]. */
export function chartHeights(place: Place, lamp: Lamp, lines = 5): number[] {
  const { most } = heightRange(place, lamp);
  const fit = ladder.filter((height) => height <= most + 1e-9);
  const least = Math.min(lines, fit.length);
  const picked = Array.from(
    { length: least },
    (_, i) => fit[Math.round((i * (fit.length - 1)) / Math.max(1, least - 1))],
  );
  return [...new Set(picked)];
}
