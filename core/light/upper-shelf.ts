import type { Place } from '../plan/schema.ts';
import type { Enclosure, Point, Polygon } from '../fabric/index.ts';
import { cutAtLevel, facesOf } from '../fabric/index.ts';
import type { HorizonPoint } from '../sun/index.ts';
import type { DirectionalGain } from './gain.ts';
import { directionalGain } from './gain.ts';
import type { Opening } from './openings.ts';
import type { Receiver } from './shadow.ts';
import { receiverOf } from './shadow.ts';

/** An upper shelf where it stands in a place, in the place's frame. */
export interface ShelfOver {
  /** Its boards, and the level of its own plants' tops, both facing up. */
  readonly boards: Polygon;
  readonly level: Polygon;
  /** Area plants have on it, and under it [m²]. */
  readonly above: number;
  readonly below: number;
}

/** Highest boards and plants under a cover, as shares of its height (as the section is drawn; estimate, no source). */
const highestBoards = 0.92;
const highestPlants = 0.97;

/** Where the upper shelf of a place stands: over the middle of the length, in the middle or along one long side. */
export function shelfOver(place: Place, enclosure: Enclosure): ShelfOver | null {
  const { upperShelf: shelf, shape, growingArea } = place;
  if (shelf === null || shape.kind === 'listed') return null;
  const { length, plantLevel } = enclosure;
  const most = shape.kind === 'window-bay' ? Infinity : heightOf(enclosure);
  const z = Math.min(plantLevel + shelf.height, highestBoards * most);
  const top = Math.min(z + shelf.plants, highestPlants * most);
  const [from, to] = spanAt(place, enclosure, z);
  const wide = Math.min(shelf.width, to - from);
  const long = Math.min(shelf.length, length);
  const front = { front: from, middle: (from + to - wide) / 2, back: to - wide }[shelf.side];
  const at = (height: number): Polygon =>
    level(front, front + wide, (length - long) / 2, (length + long) / 2, height);
  const above = Math.min(growingArea, wide * long);
  return { boards: at(z), level: at(top), above, below: growingArea - above };
}

const heightOf = ({ surfaces }: Enclosure) =>
  Math.max(...surfaces.flatMap(({ polygon }) => (polygon ?? []).map((point) => point[2])));

/** Width of a place at a height, from and to [m]: that of its ends. */
function spanAt({ shape }: Place, { width }: Enclosure, z: number): readonly [from: number, to: number] {
  const end =
    shape.kind === 'listed' ? undefined : facesOf(shape).find((face) => ['gable', 'end'].includes(face.part));
  const xs = end === undefined ? [] : cutAtLevel(end.polygon, z, 1).map((point) => point[0]);
  return xs.length === 0 ? [0, width] : [Math.min(...xs), Math.max(...xs)];
}

function level(x1: number, x2: number, y1: number, y2: number, z: number): Polygon {
  const corners: Point[] = [
    [x1, y1, z],
    [x2, y1, z],
    [x2, y2, z],
    [x1, y2, z],
  ];
  return corners;
}

/** Gains of the plants' level, or of both levels. */
export function levelGains(
  bench: Receiver,
  shelf: ShelfOver | null,
  openings: readonly Opening[],
  front: number,
  horizon: readonly HorizonPoint[],
): { bench: DirectionalGain; landed: DirectionalGain | null } {
  if (shelf !== null) return bothLevels(bench, shelf, openings, front, horizon);
  return { bench: directionalGain(bench, openings, front, horizon), landed: null };
}

/** Two gains added with their weights. */
export function weighed(a: DirectionalGain, ofA: number, b: DirectionalGain, ofB: number): DirectionalGain {
  const both = (x: Float64Array, y: Float64Array) => x.map((value, i) => ofA * value + ofB * y[i]);
  return {
    solar: both(a.solar, b.solar),
    par: both(a.par, b.par),
    skySolar: ofA * a.skySolar + ofB * b.skySolar,
    skyPar: ofA * a.skyPar + ofB * b.skyPar,
  };
}

/** Gains of the plants of both levels: their mean by area, and all that lands on both a square metre of the lower. */
export function bothLevels(
  bench: Receiver,
  { boards, level, above, below }: ShelfOver,
  openings: readonly Opening[],
  front: number,
  horizon: readonly HorizonPoint[],
): { bench: DirectionalGain; landed: DirectionalGain } {
  const shelf = receiverOf(level);
  const lower = directionalGain(bench, openings, front, horizon, { boards });
  const upper = directionalGain(shelf, openings, front, horizon, { above: level[0][2] });
  const share = above / (above + below);
  return {
    bench: weighed(lower, 1 - share, upper, share),
    landed: weighed(lower, 1, upper, shelf.area / bench.area),
  };
}
