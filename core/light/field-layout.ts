import type { Rectangle } from './rectangles.ts';
import { rectangleAt } from './rectangles.ts';

/** Lamps of one kind over an area. */
export interface LampRank {
  readonly count: number;
  readonly arrangement: 'panel' | 'bars' | 'bulbs';
  /** Size of the light-giving face of one lamp; of bulbs its width across is `length` [m]. */
  readonly length: number;
  readonly width: number;
  /** Height of the faces over the plants [m]. */
  readonly height: number;
}

/** One face, or a part of one: where it is and its share of the light of all. */
export interface LampFace {
  readonly face: Rectangle;
  readonly share: number;
}

/** Strips that stand for a round face near by: their light under the middle is within 0.5 % of a disc's at a fifth of its width (tested). */
const strips = 6;

/**
 * From this many widths away a square does for a round face: with the same mean square distance from its middle,
 * R² / 2 = side² / 6, its light falls off alike (within 0.1 %, tested).
 */
const farAway = 1.5;

/**
 * Faces of lamps spread evenly over the area: panels and bulbs in rows along its length, bars side by side across
 * it. A lamp's long side lies along the area's long side.
 */
export function lampFaces(area: Rectangle, lamps: LampRank): LampFace[] {
  const length = area.x2 - area.x1;
  const width = area.y2 - area.y1;
  const middle = { x: (area.x1 + area.x2) / 2, y: (area.y1 + area.y2) / 2 };
  return middles(length, width, lamps).flatMap(([x, y]) =>
    lamps.arrangement === 'bulbs'
      ? roundFace(middle.x + x, middle.y + y, lamps)
      : [{ face: flatFace(middle.x + x, middle.y + y, length >= width, lamps), share: 1 / lamps.count }],
  );
}

function flatFace(x: number, y: number, longAlongX: boolean, { length, width }: LampRank): Rectangle {
  const long = Math.max(length, width);
  const short = Math.min(length, width);
  return longAlongX ? rectangleAt(x, y, long, short) : rectangleAt(x, y, short, long);
}

function roundFace(x: number, y: number, { length, height, count }: LampRank): LampFace[] {
  const radius = length / 2;
  if (height >= farAway * length) {
    const side = radius * Math.sqrt(3);
    return [{ face: rectangleAt(x, y, side, side), share: 1 / count }];
  }
  const deep = length / strips;
  const areaTo = (t: number) =>
    radius * radius * Math.asin(t / radius) + t * Math.sqrt(Math.max(0, radius * radius - t * t));
  return Array.from({ length: strips }, (_, k) => {
    const from = -radius + k * deep;
    const area = areaTo(Math.min(radius, from + deep)) - areaTo(from);
    return {
      face: rectangleAt(x, y + from + deep / 2, area / deep, deep),
      share: area / (Math.PI * radius * radius * count),
    };
  });
}

function middles(length: number, width: number, lamps: LampRank): [number, number][] {
  const { count, arrangement } = lamps;
  const places: [number, number][] = [];
  if (arrangement === 'bars') {
    for (let k = 0; k < count; k++) {
      const across = (k + 0.5) / count - 0.5;
      places.push(length >= width ? [0, width * across] : [length * across, 0]);
    }
    return places;
  }
  const rows = rowsOf(length, width, lamps);
  for (let r = 0; r < rows; r++) {
    const inRow = Math.floor(count / rows) + (r < count % rows ? 1 : 0);
    const y = width * ((r + 0.5) / rows - 0.5);
    for (let c = 0; c < inRow; c++) places.push([length * ((c + 0.5) / inRow - 0.5), y]);
  }
  return places;
}

/**
 * Rows of a grid of lamps: as many as spread them alike along and across, or the number next to that with which no
 * lamp hangs over another. Where they do not fit at all it is the first.
 */
function rowsOf(length: number, width: number, { count, arrangement, ...face }: LampRank): number {
  const even = Math.max(1, Math.min(count, Math.round(Math.sqrt((count * width) / length))));
  const long = arrangement === 'bulbs' ? face.length : Math.max(face.length, face.width);
  const short = arrangement === 'bulbs' ? face.length : Math.min(face.length, face.width);
  const [along, across] = length >= width ? [long, short] : [short, long];
  const room = 1 + 1e-9;
  const fits = (rows: number) =>
    rows >= 1 &&
    rows <= count &&
    Math.ceil(count / rows) * along <= length * room &&
    rows * across <= width * room;
  for (let off = 0; off < count; off++) {
    if (fits(even + off)) return even + off;
    if (fits(even - off)) return even - off;
  }
  return even;
}
