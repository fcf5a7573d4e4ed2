import type { PatchGrid } from './patch-grid.ts';
import { crowdedLines, patchAreas, patchesOf } from './patch-grid.ts';

/** One side of a box: share of the light thrown back, 0–1, and whether the rest stays in it or goes out. */
export interface BoxSide {
  readonly reflectance: number;
  readonly rest: 'kept' | 'out';
}

/** An open side: nothing comes back. */
export const openSide: BoxSide = { reflectance: 0, rest: 'out' };

/** An opaque board with its plants on it, from `under` to `top` over the floor of the box [m]. */
export interface BoxShelf {
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
  readonly under: number;
  readonly top: number;
}

/** An upright box over the plants: floor at their tops, its middle at 0, 0; length along x, front to back along y. */
export interface Box {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly ceiling: BoxSide;
  /** Left, right, front, back. */
  readonly walls: readonly [BoxSide, BoxSide, BoxSide, BoxSide];
  readonly shelf: BoxShelf | null;
  /** Patches along a side of usual length; 7 where not given. */
  readonly fineness?: number;
}

export type PartRole = 'floor' | 'ceiling' | 'left' | 'right' | 'front' | 'back' | 'top' | 'board' | 'edge';

/** One face of the box or of the shelf in it. */
export interface BoxPart {
  readonly role: PartRole;
  readonly grid: PatchGrid;
  /** Number of its first patch among all patches of the box. */
  readonly first: number;
}

export interface BoxMesh {
  readonly parts: readonly BoxPart[];
  readonly patches: number;
  /** Area of each patch [m²]. */
  readonly areas: Float64Array;
}

/** Faces of a box divided into patches, finer along its longer sides; an open side is one patch where no shelf needs more. */
export function meshOf(box: Box): BoxMesh {
  const { length, width, height, shelf } = box;
  const mean = Math.cbrt(length * width * height);
  const fineness = box.fineness ?? 7;
  const parts = (side: number) =>
    Math.max(1, Math.min(2 * fineness, Math.round(fineness * Math.sqrt(side / mean))));
  const xs = crowdedLines(-length / 2, length / 2, parts(length), shelf === null ? [] : [shelf.x1, shelf.x2]);
  const ys = crowdedLines(-width / 2, width / 2, parts(width), shelf === null ? [] : [shelf.y1, shelf.y2]);
  const zs = crowdedLines(0, height, parts(height), shelf === null ? [] : [shelf.under, shelf.top]);
  const whole = (side: BoxSide, all: Float64Array) =>
    side.reflectance > 0 || shelf !== null ? all : Float64Array.of(all[0], all[all.length - 1]);
  const [left, right, front, back] = box.walls;
  const face = (
    role: PartRole,
    axis: 0 | 1 | 2,
    facing: 1 | -1,
    at: number,
    u: Float64Array,
    v: Float64Array,
  ) => ({
    role,
    grid: { axis, facing, at, u, v },
  });
  const faces: { role: PartRole; grid: PatchGrid }[] = [
    face('floor', 2, 1, 0, xs, ys),
    face('ceiling', 2, -1, height, whole(box.ceiling, xs), whole(box.ceiling, ys)),
    face('left', 0, 1, -length / 2, whole(left, ys), whole(left, zs)),
    face('right', 0, -1, length / 2, whole(right, ys), whole(right, zs)),
    face('front', 1, 1, -width / 2, whole(front, xs), whole(front, zs)),
    face('back', 1, -1, width / 2, whole(back, xs), whole(back, zs)),
  ];
  if (shelf !== null) {
    const between = (all: Float64Array, low: number, high: number) =>
      all.filter((at) => at >= low - 1e-9 && at <= high + 1e-9);
    const sx = between(xs, shelf.x1, shelf.x2);
    const sy = between(ys, shelf.y1, shelf.y2);
    const sz = between(zs, shelf.under, shelf.top);
    faces.push(face('board', 2, -1, shelf.under, sx, sy), face('top', 2, 1, shelf.top, sx, sy));
    // An end flush with a side of the box sees nothing.
    if (shelf.x1 > -length / 2 + 1e-9) faces.push(face('edge', 0, -1, shelf.x1, sy, sz));
    if (shelf.x2 < length / 2 - 1e-9) faces.push(face('edge', 0, 1, shelf.x2, sy, sz));
    if (shelf.y1 > -width / 2 + 1e-9) faces.push(face('edge', 1, -1, shelf.y1, sx, sz));
    if (shelf.y2 < width / 2 - 1e-9) faces.push(face('edge', 1, 1, shelf.y2, sx, sz));
  }
  return numbered(faces);
}

function numbered(faces: readonly { role: PartRole; grid: PatchGrid }[]): BoxMesh {
  let patches = 0;
  const parts = faces.map(({ role, grid }) => {
    const first = patches;
    patches += patchesOf(grid);
    return { role, grid, first };
  });
  const areas = new Float64Array(patches);
  for (const part of parts) areas.set(patchAreas(part.grid), part.first);
  return { parts, patches, areas };
}

/** Reflectance of a part and where the light ends that it keeps. */
export function sideOf(box: Box, role: PartRole, floor: number): BoxSide {
  switch (role) {
    case 'left':
      return box.walls[0];
    case 'right':
      return box.walls[1];
    case 'front':
      return box.walls[2];
    case 'back':
      return box.walls[3];
    case 'ceiling':
      return box.ceiling;
    case 'board':
      return { reflectance: box.ceiling.rest === 'kept' ? box.ceiling.reflectance : 0, rest: 'kept' };
    default:
      return { reflectance: floor, rest: 'kept' };
  }
}
