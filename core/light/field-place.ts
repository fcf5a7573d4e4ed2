import type { Place } from '../plan/schema.ts';
import type { Enclosure } from '../fabric/index.ts';
import { surfacesOf } from '../fabric/index.ts';
import type { Box, BoxShelf, BoxSide } from './box-parts.ts';
import { openSide } from './box-parts.ts';
import type { Rectangle } from './rectangles.ts';
import { rectangleAt } from './rectangles.ts';

/** Share of the light pots and leaves throw back (400–700 nm, canopies 0.05–0.1, from memory). */
const plantReflectance = 0.08;

/** Share of the light a pane throws back by night, both faces (two Fresnel faces 0.08, more at a slant; common practice). */
const glassByNight: BoxSide = { reflectance: 0.1, rest: 'out' };

/** Room left over a shelf's plants where the place's mean height does not reach them [m]. */
const overShelf = 0.1;

/** A level of plants in the box round them. */
export interface PlaceLevel {
  readonly shelf: 'lower' | 'upper';
  /** Height of the plants' tops over the lower level's [m]. */
  readonly base: number;
  /** Where its plants stand, and where its lamps are spread. */
  readonly plants: Rectangle;
  readonly lamps: Rectangle;
  /** Area plants stand on [m²]: more than the rectangle's where benches are stacked. */
  readonly area: number;
}

/** The box a place is for its lamps. */
export interface PlaceBox {
  readonly box: Box;
  readonly plantReflectance: number;
  readonly levels: readonly PlaceLevel[];
}

/**
 * A place as a box over its plants. A tent is closed; a shelf is open at its sides, with a board over it that is
 * dark unless the plan says else; houses, tunnels and frames are as high as they are on average, of glass by night
 * all round but for an opaque back; a window bay has its pane before it and is open to the room; a list is open.
 */
export function boxOfPlace(place: Place): PlaceBox {
  const enclosure = surfacesOf(place);
  const { length, width } = enclosure;
  const shelf = shelfIn(place, length, width);
  const height = Math.max(meanHeight(place, enclosure), shelf === null ? 0 : shelf.top + overShelf);
  const box: Box = { length, width, height, ceiling: ceilingOf(place), walls: wallsOf(place), shelf };
  return {
    box,
    plantReflectance: place.benchReflectance ?? plantReflectance,
    levels: levelsOf(place, box),
  };
}

function meanHeight(place: Place, { volume, floorArea, plantLevel }: Enclosure): number {
  const { shape } = place;
  if (shape.kind === 'tent' || shape.kind === 'shelf' || shape.kind === 'window-bay') return shape.height;
  return Math.max(0.1, volume / floorArea - plantLevel);
}

function shelfIn({ upperShelf }: Place, length: number, width: number): BoxShelf | null {
  if (upperShelf === null) return null;
  const long = Math.min(length, upperShelf.length) / 2;
  const deep = Math.min(width, upperShelf.width);
  const middle = { middle: 0, front: (deep - width) / 2, back: (width - deep) / 2 }[upperShelf.side];
  return {
    x1: -long,
    x2: long,
    y1: middle - deep / 2,
    y2: middle + deep / 2,
    under: upperShelf.height,
    top: upperShelf.height + upperShelf.plants,
  };
}

function ceilingOf({ shape, ceilingReflectance, wallReflectance }: Place): BoxSide {
  switch (shape.kind) {
    case 'tent':
      return { reflectance: ceilingReflectance ?? wallReflectance, rest: 'kept' };
    case 'shelf':
      return { reflectance: ceilingReflectance ?? 0, rest: 'kept' };
    case 'window-bay':
    case 'listed':
      return ceilingReflectance === null ? openSide : { reflectance: ceilingReflectance, rest: 'kept' };
    default:
      return ceilingReflectance === null ? glassByNight : { reflectance: ceilingReflectance, rest: 'kept' };
  }
}

function wallsOf({ shape, wallReflectance, shadySide }: Place): Box['walls'] {
  const own: BoxSide = { reflectance: wallReflectance, rest: 'kept' };
  switch (shape.kind) {
    case 'tent':
      return [own, own, own, own];
    case 'shelf':
    case 'listed':
      return [openSide, openSide, openSide, openSide];
    case 'window-bay':
      return [openSide, openSide, glassByNight, openSide];
    case 'lean-to':
      return [glassByNight, glassByNight, glassByNight, own];
    default: {
      const back = shadySide === null || shape.kind === 'tunnel' ? glassByNight : own;
      return [glassByNight, glassByNight, glassByNight, back];
    }
  }
}

function levelsOf(place: Place, { length, width, shelf }: Box): PlaceLevel[] {
  const floor = length * width;
  const above =
    shelf === null ? 0 : Math.min(place.growingArea, (shelf.x2 - shelf.x1) * (shelf.y2 - shelf.y1));
  const below = Math.max(0, place.growingArea - above);
  // Where all plants stand on the shelf the map of the level below shows the whole floor.
  const share = below > 0 ? Math.sqrt(Math.min(1, below / floor)) : 1;
  const plants = rectangleAt(0, 0, length * share, width * share);
  const lower: PlaceLevel = {
    shelf: 'lower',
    base: 0,
    plants,
    lamps: place.shape.kind === 'tent' ? rectangleAt(0, 0, length, width) : plants,
    area: below,
  };
  if (shelf === null) return [lower];
  const board: Rectangle = { x1: shelf.x1, x2: shelf.x2, y1: shelf.y1, y2: shelf.y2 };
  return [lower, { shelf: 'upper', base: shelf.top, plants: board, lamps: board, area: above }];
}
