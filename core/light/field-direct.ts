import type { BeamShape } from './beam.ts';
import { addPointFlux } from './beam-flux.ts';
import type { Box } from './box-parts.ts';
import { boundsOf, clearOf } from './box-shelf.ts';
import { exchangeBlock } from './patch-exchange.ts';
import type { PatchGrid } from './patch-grid.ts';
import { patchesOf } from './patch-grid.ts';
import type { Rectangle } from './rectangles.ts';
import { areaOfRectangle, rectangleAt } from './rectangles.ts';

/** A light-giving face hung in a box, level, facing down, and its share of the light of all. */
export interface HungFace {
  readonly face: Rectangle;
  readonly z: number;
  readonly share: number;
  /** Height over the plants it lights [m]; sets how finely the face is divided. */
  readonly height: number;
}

/** Pieces of a face that stand for points of light: at most this many a side. */
const mostPieces = 8;

/** A side up to this share of the widest piece is taken as one point. */
const smallFace = 0.25;

/** Light of a face that falls straight on each patch of a grid, added to `out`, of 1 µmol s⁻¹ given by all faces. */
export function addDirect(
  hung: HungFace,
  beam: BeamShape,
  box: Box,
  grid: PatchGrid,
  out: Float64Array,
): void {
  if (!beam.even) {
    addByPoints(hung, beam, box, grid, out);
    return;
  }
  const { face, z, share } = hung;
  const source: PatchGrid = {
    axis: 2,
    facing: -1,
    at: z,
    u: Float64Array.of(face.x1, face.x2),
    v: Float64Array.of(face.y1, face.y2),
  };
  const block = exchangeBlock(source, grid);
  const scale = share / areaOfRectangle(face);
  if (box.shelf === null) {
    for (let k = 0; k < block.length; k++) out[k] += scale * block[k];
    return;
  }
  const from = boundsOf(source, 0);
  const shaded = new Uint8Array(patchesOf(grid));
  let any = false;
  for (let k = 0; k < block.length; k++) {
    if (block[k] === 0) continue;
    if (clearOf(box.shelf, from, boundsOf(grid, k))) out[k] += scale * block[k];
    else {
      shaded[k] = 1;
      any = true;
    }
  }
  if (any) addByPoints(hung, beam, box, grid, out, shaded);
}

function addByPoints(
  { face, z, share, height }: HungFace,
  beam: BeamShape,
  box: Box,
  grid: PatchGrid,
  out: Float64Array,
  wanted?: Uint8Array,
): void {
  const xs = places(face.x1, face.x2, beam.grain * height);
  const ys = places(face.y1, face.y2, beam.grain * height);
  const weight = share / (xs.length * ys.length);
  for (const y of ys) {
    for (const x of xs) addPointFlux({ x, y, z }, weight, beam, grid, box.shelf, out, wanted);
  }
}

/**
 * Where the points of a face lie along one side: two Gauss points to each piece, none wider than `widest`; the
 * middle where the face is small against that.
 */
function places(low: number, high: number, widest: number): number[] {
  const side = high - low;
  if (side < smallFace * widest) return [(low + high) / 2];
  const count = Math.min(mostPieces, Math.ceil(side / widest));
  const half = side / count / 2;
  return Array.from({ length: 2 * count }, (_, k) => {
    const middle = low + half * (2 * Math.floor(k / 2) + 1);
    return middle + (k % 2 === 0 ? -half : half) / Math.sqrt(3);
  });
}

/** Keeps a face between closed sides: moved in, and cut to the box where it is larger; over an open side it may hang out. */
export function hungInside(face: Rectangle, box: Box): Rectangle {
  const [left, right, front, back] = box.walls.map((side) => side.reflectance > 0 || side.rest === 'kept');
  const [x1, x2] = between(face.x1, face.x2, box.length / 2, left, right);
  const [y1, y2] = between(face.y1, face.y2, box.width / 2, front, back);
  return rectangleAt((x1 + x2) / 2, (y1 + y2) / 2, x2 - x1, y2 - y1);
}

function between(
  low: number,
  high: number,
  half: number,
  shutLow: boolean,
  shutHigh: boolean,
): [number, number] {
  let shift = 0;
  if (shutLow && low < -half) shift = -half - low;
  if (shutHigh && high + shift > half) shift = half - high;
  const from = low + shift;
  const to = high + shift;
  return [shutLow ? Math.max(-half, from) : from, shutHigh ? Math.min(half, to) : to];
}

/** True where a face hangs out over an open side. */
export function hangsOut(face: Rectangle, box: Box): boolean {
  const over = 1e-9;
  return (
    face.x1 < -box.length / 2 - over ||
    face.x2 > box.length / 2 + over ||
    face.y1 < -box.width / 2 - over ||
    face.y2 > box.width / 2 + over
  );
}
