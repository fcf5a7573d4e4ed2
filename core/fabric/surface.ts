import type { Covering } from '../plan/coverings.ts';
import type { WallLayer } from './wall-layers.ts';
import type { FacePart } from './faces.ts';
import type { Point, Polygon } from './polygon.ts';

/** What is on the other side of a surface. */
export type Behind = 'outdoors' | 'room' | 'ground' | 'nothing';

/** One surface of a place with everything the heat balance and the light need of it. */
export interface Surface {
  readonly name: string;
  readonly part: FacePart | 'base wall' | 'listed';
  /** Area [m²], frame included. */
  readonly area: number;
  /** Tilt from horizontal and azimuth clockwise from north [degrees]; unit outward normal (east, north, up). */
  readonly tilt: number;
  readonly azimuth: number;
  readonly normal: Point;
  readonly behind: Behind;
  /** Entry of the catalogue, or one made from the build-up of a listed surface. */
  readonly covering: Covering;
  /** Layers of a wall heavy enough to hold a day's warmth, from the inside out; null for glass, film and boards. */
  readonly layers: readonly WallLayer[] | null;
  /** True where daylight comes through: a clear cover with the outdoors behind it. */
  readonly transparent: boolean;
  /** View of the sky and of the ground from the outer face, (1 ± cos tilt) / 2; both 0 where the outdoors is not behind. */
  readonly skyView: number;
  readonly groundView: number;
  /** Inner to outer face [m² K W⁻¹], lining included; with the screen open and closed. */
  readonly resistanceOpen: number;
  readonly resistanceClosed: number;
  readonly longWaveOpen: number;
  readonly longWaveClosed: number;
  readonly emissivityInsideOpen: number;
  readonly emissivityInsideClosed: number;
  readonly emissivityOutside: number;
  /** Short-wave absorptance of the inner face of an opaque surface, 0–1. */
  readonly insideAbsorptance: number;
  /** Heat capacity [J m⁻² K⁻¹]. */
  readonly heatCapacity: number;
  /** Corners in the place's own frame [m]; null for a surface listed by hand. */
  readonly polygon: Polygon | null;
}

/** A place as surfaces round a volume. */
export interface Enclosure {
  readonly surfaces: readonly Surface[];
  /** Floor inside [m²], air enclosed [m³], floor edge exposed to the outdoors [m], area for plants [m²]. */
  readonly floorArea: number;
  readonly volume: number;
  readonly perimeter: number;
  readonly growingArea: number;
  /** What the floor stands on. */
  readonly floorBehind: 'ground' | 'room';
  /** Length along y and width along x of the floor [m]; a square of the floor's area for a hand-made list. */
  readonly length: number;
  readonly width: number;
  /** Height of the plants' level over the floor [m]. */
  readonly plantLevel: number;
  /** True where the place stands on its own ground as the plan's `floor` says; false where a listed surface is the floor. */
  readonly ownFloor: boolean;
  /** Share of the leakage left with the lining on, and with the screen closed too, 0–1. */
  readonly airShareOpen: number;
  readonly airShareClosed: number;
  /** Azimuth of the front [degrees]. */
  readonly azimuth: number;
}
