import * as d3 from 'd3';
import { beamShape, lampPhotons } from '../../core/index.ts';
import type { Lamp } from '../../core/index.ts';
import { halfAngle, strengthOf } from './beam.ts';
import type { Fitting } from './fittings.ts';

const degree = Math.PI / 180;

/** Grid of the drawing: light straight from the lamps on a level face, in the section at half the length. */
export interface LightSection {
  /** Across, from the middle of the area, and height over the plants' tops of the grid's first point [m]. */
  readonly from: number;
  readonly low: number;
  /** Distance of grid points [m], across and up. */
  readonly step: readonly [across: number, up: number];
  readonly columns: number;
  readonly rows: number;
  /** Photon flux density, rows from the bottom up [µmol m⁻² s⁻¹]. */
  readonly values: Float64Array;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Most points of light in a drawing: it is redrawn while a hand moves the lamp. */
const mostSpots = 48;

/** Points that stand for a fitting's face: near enough together to look like a face, few where lamps are many. */
function spotsOf(fitting: Fitting, most: number): Spot[] {
  const side = Math.max(1, Math.floor(Math.sqrt(most)));
  const along = Math.min(side, Math.ceil(fitting.length / 0.12));
  const across = Math.min(Math.floor(most / along), Math.ceil(fitting.width / 0.12));
  return Array.from({ length: along * across }, (_, i) => ({
    x: fitting.x + (((i % along) + 0.5) / along - 0.5) * fitting.length,
    y: fitting.y + ((Math.floor(i / along) + 0.5) / across - 0.5) * fitting.width,
  }));
}

/**
 * Light straight from a lamp in the section across the middle of the area, on level faces: intensity × cos / r² over
 * points of the faces. What walls throw back is left out, so close to reflecting walls there is more than drawn.
 */
export function lightSection(
  lamp: Lamp,
  fittings: readonly Fitting[],
  range: { readonly from: number; readonly to: number; readonly low: number; readonly high: number },
  size: readonly [columns: number, rows: number] = [48, 28],
): LightSection {
  const [columns, rows] = size;
  const step = [(range.to - range.from) / (columns - 1), (range.high - range.low) / (rows - 1)] as const;
  const { intensity } = beamShape(lamp.beam);
  const share = Math.max(1, Math.floor(mostSpots / Math.max(1, fittings.length)));
  const spots = fittings.flatMap((fitting) => spotsOf(fitting, share));
  const photons = lampPhotons(lamp) / Math.max(1, spots.length);
  const values = new Float64Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    const down = lamp.height - (range.low + row * step[1]);
    if (down <= 0.01) continue;
    for (let column = 0; column < columns; column++) {
      const y = range.from + column * step[0];
      let sum = 0;
      for (const spot of spots) {
        const dy = y - spot.y;
        const r = Math.sqrt(spot.x * spot.x + dy * dy + down * down);
        sum += (intensity(-spot.x / r, dy / r, -down / r) * down) / (r * r * r);
      }
      values[row * columns + column] = photons * sum;
    }
  }
  return { from: range.from, low: range.low, step, columns, rows, values };
}

/** Levels at which lines of equal light are drawn: doubling, as the eye and the leaf take them. */
export const lightLines: readonly number[] = [12, 25, 50, 100, 200, 400, 800, 1600];

/** An area brighter than a level, as rings of points [m]: across from the middle, height over the plants' tops. */
export interface LightArea {
  readonly level: number;
  readonly rings: readonly (readonly (readonly [number, number])[])[];
}

/** Nearer to a face than this its points of light show one by one, and no line is drawn [m]. */
const tooNear = 0.08;

export function lightAreas(section: LightSection): LightArea[] {
  const { columns, rows, values, from, low, step } = section;
  const clear = Math.max(1, rows - Math.ceil(tooNear / step[1]));
  const most = values.subarray(0, clear * columns).reduce((a, b) => Math.max(a, b), 0);
  const levels = lightLines.filter((level) => level < most);
  const contours = d3
    .contours()
    .size([columns, rows])
    .smooth(true)
    .thresholds([...levels]);
  return contours(Array.from(values)).map(({ value, coordinates }) => ({
    level: value,
    rings: coordinates.flatMap((polygon) =>
      polygon.map((ring) =>
        ring.map(([i, j]) => [from + (i - 0.5) * step[0], low + (j - 0.5) * step[1]] as const),
      ),
    ),
  }));
}

/** Rays at half of the beam's greatest strength, from the edges of a fitting down to the plants: points [m]. */
export function halfRays(lamp: Lamp, fitting: Fitting): readonly (readonly [number, number])[][] {
  const strength = strengthOf(lamp.beam);
  return ([-1, 1] as const).flatMap((side) => {
    const angle = halfAngle(strength, side * 90);
    if (!(angle > 0 && angle < 89)) return [];
    const edge = fitting.y + (side * fitting.width) / 2;
    return [
      [[edge, lamp.height] as const, [edge + side * lamp.height * Math.tan(angle * degree), 0] as const],
    ];
  });
}
