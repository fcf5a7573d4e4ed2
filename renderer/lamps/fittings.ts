import { boxOfPlace, lampFaces } from '../../core/index.ts';
import type { Lamp, Place } from '../../core/index.ts';

/** Where one fitting hangs: its middle off the middle of the place, along and across, and its face [m]. */
export interface Fitting {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** Height from which a round face is one square to the field solver, as it is for the drawing [m]. */
const farOff = 1000;

/** The fittings of a lamp as the light field has them. */
export function fittingsOf(place: Place, lamp: Lamp): Fitting[] {
  const { levels } = boxOfPlace(place);
  const level = levels.find(({ shelf }) => shelf === lamp.shelf) ?? levels[0];
  const rank = { ...lamp, count: Math.max(1, Math.round(lamp.count)), height: farOff };
  return lampFaces(level.lamps, rank).map(({ face: { x1, x2, y1, y2 } }) => ({
    x: (x1 + x2) / 2 + lamp.along,
    y: (y1 + y2) / 2 + lamp.across,
    length: x2 - x1,
    width: y2 - y1,
  }));
}
