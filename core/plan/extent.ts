import type { Shape, ShapeOf } from './shapes.ts';

/**
 * What a shape has room for, from its own measures: floor and faces [m²], volume [m³], height [m].
 * `roof`, `side` and `end` are what vents of that position can be cut into, both sides and both ends together;
 * `doorway` is the largest face a door fits in. Null where a list of surfaces does not tell.
 */
export interface Extent {
  readonly floor: number;
  /** Sides of the floor: along the front or the hoops, and away from it. */
  readonly length: number | null;
  readonly width: number | null;
  readonly volume: number;
  /** Highest point inside. */
  readonly height: number | null;
  readonly roof: number | null;
  readonly side: number | null;
  readonly end: number | null;
  readonly doorway: number | null;
}

export function extentOf(shape: Shape): Extent {
  switch (shape.kind) {
    case 'even-span':
      return spanExtent(shape, 2);
    case 'lean-to':
      return spanExtent(shape, 1);
    case 'tunnel':
      return tunnelExtent(shape);
    case 'cold-frame':
      return frameExtent(shape);
    case 'tent':
    case 'shelf':
      return boxExtent(shape.length, shape.width, shape.height);
    case 'window-bay': {
      const pane = shape.width * shape.height;
      const box = boxExtent(shape.width, shape.depth, shape.height);
      return { ...box, roof: pane, side: pane, end: pane, doorway: pane };
    }
    case 'listed':
      return listedExtent(shape);
  }
}

/** One slope against a wall or two over low walls. */
function spanExtent(shape: ShapeOf<'even-span'> | ShapeOf<'lean-to'>, slopes: 1 | 2): Extent {
  const { length, width, eavesHeight, ridgeHeight } = shape;
  const gable = (width * (eavesHeight + ridgeHeight)) / 2;
  const upright = length * (slopes === 1 ? ridgeHeight : eavesHeight);
  return {
    floor: length * width,
    length,
    width,
    volume: length * gable,
    height: ridgeHeight,
    roof: slopes * length * Math.hypot(width / slopes, ridgeHeight - eavesHeight),
    side: slopes * length * eavesHeight,
    end: 2 * gable,
    doorway: Math.max(gable, upright),
  };
}

/** Half an ellipse; the arc by Ramanujan's first formula for the perimeter (within 0.5 % here). */
function tunnelExtent({ length, width, height }: ShapeOf<'tunnel'>): Extent {
  const a = width / 2;
  const arc = (Math.PI / 2) * (3 * (a + height) - Math.sqrt((3 * a + height) * (a + 3 * height)));
  const end = (Math.PI / 2) * a * height;
  const cover = arc * length;
  return {
    floor: length * width,
    length,
    width,
    volume: end * length,
    height,
    roof: cover,
    side: cover,
    end: 2 * end,
    doorway: end,
  };
}

/** The light of a frame is its door as well. */
function frameExtent({ length, width, frontHeight, backHeight }: ShapeOf<'cold-frame'>): Extent {
  const end = (width * (frontHeight + backHeight)) / 2;
  const slope = Math.hypot(width, backHeight - frontHeight);
  return {
    floor: length * width,
    length,
    width,
    volume: length * end,
    height: Math.max(backHeight, slope),
    roof: length * slope,
    side: length * (frontHeight + backHeight),
    end: 2 * end,
    doorway: Math.max(length * slope, length * backHeight),
  };
}

function boxExtent(length: number, width: number, height: number): Extent {
  return {
    floor: length * width,
    length,
    width,
    volume: length * width * height,
    height,
    roof: length * width,
    side: 2 * length * height,
    end: 2 * width * height,
    doorway: Math.max(length, width) * height,
  };
}

/** Tilts up to which a listed surface counts as roof, and from which it faces down [degrees]. */
export const roofTilt = 60;
const facesDown = 150;

function listedExtent({ floorArea, volume, surfaces }: ShapeOf<'listed'>): Extent {
  const open = surfaces.filter(({ behind }) => behind === 'outdoors' || behind === 'room');
  const roof = sum(open.filter(({ tilt }) => tilt <= roofTilt));
  const upright = open.filter(({ tilt }) => tilt > roofTilt && tilt < facesDown);
  const side = sum(upright);
  const doorway = Math.max(0, ...upright.map(({ area }) => area));
  return {
    floor: floorArea,
    length: null,
    width: null,
    volume,
    height: null,
    roof,
    side,
    end: side,
    doorway: doorway || null,
  };
}

/** Area of surfaces taken together [m²]; null where there are none. */
function sum(surfaces: readonly { readonly area: number }[]): number | null {
  return surfaces.length === 0 ? null : surfaces.reduce((total, { area }) => total + area, 0);
}

/** Area of a list's surfaces without those that are its floor [m²], and the floor's. */
export function listedFaces({ floorArea, surfaces }: ShapeOf<'listed'>): { cover: number; floor: number } {
  const down = sum(surfaces.filter(({ tilt }) => tilt >= facesDown)) ?? 0;
  const all = sum(surfaces) ?? 0;
  return { cover: all - down, floor: Math.max(floorArea, down) };
}

/** A list's highest point is at most three times its mean height (a pyramid). */
const pyramid = 3;

/** Highest point inside that there can be [m]. */
export const mostHeight = ({ height, volume, floor }: Extent): number => height ?? (pyramid * volume) / floor;
