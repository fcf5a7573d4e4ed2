import type { BeamShape } from './beam.ts';
import type { BoxShelf } from './box-parts.ts';
import { passes } from './box-shelf.ts';
import type { PatchGrid } from './patch-grid.ts';
import { columnsOf, patchesOf } from './patch-grid.ts';

/** Halvings of a patch near a point of light before it is taken as it is. */
const mostHalvings = 24;

/** Size against its distance down to which a patch is halved along the edge of a shadow, and in search of one. */
const shadowGrain = 0.08;
const searchGrain = 0.05;

/** Distance of the two Gauss points from the middle, as a share of half a side. */
const gauss = 1 / Math.sqrt(3);

/** A point of light of unit flux. */
export interface LightPoint {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/**
 * Share of the light of a point that falls on each patch of a grid, added to `out` times `weight`: intensity ·
 * cos β / r² over the patch by two Gauss points a side. A patch wide against its distance is halved first.
 */
export function addPointFlux(
  point: LightPoint,
  weight: number,
  beam: BeamShape,
  grid: PatchGrid,
  shelf: BoxShelf | null,
  out: Float64Array,
  wanted?: Uint8Array,
): void {
  const distance = coordinate(point, grid.axis) - grid.at;
  const height = grid.facing * distance;
  if (!(height > 0)) return;
  const upright = grid.axis !== 2;
  if (beam.downward && !upright && grid.facing === -1) return;
  const columns = columnsOf(grid);
  const reach = new Reach(point, beam, grid, shelf);
  for (let k = 0; k < patchesOf(grid); k++) {
    if (wanted !== undefined && wanted[k] === 0) continue;
    const i = k % columns;
    const j = (k - i) / columns;
    const top = upright && beam.downward ? Math.min(grid.v[j + 1], point.z) : grid.v[j + 1];
    if (!(top > grid.v[j])) continue;
    const [u1, u2, v1] = [grid.u[i], grid.u[i + 1], grid.v[j]];
    out[k] += weight * (shelf === null ? reach.over(u1, u2, v1, top, 0) : reach.shaded(u1, u2, v1, top, 0));
  }
}

const coordinate = (point: LightPoint, axis: number) =>
  axis === 0 ? point.x : axis === 1 ? point.y : point.z;

/** The integral over a rectangle of one grid's plane as seen from one point. */
class Reach {
  private readonly point: LightPoint;
  private readonly beam: BeamShape;
  private readonly axis: number;
  private readonly at: number;
  private readonly height: number;
  private readonly u: number;
  private readonly v: number;
  private readonly shelf: BoxShelf | null;

  constructor(point: LightPoint, beam: BeamShape, grid: PatchGrid, shelf: BoxShelf | null) {
    this.point = point;
    this.beam = beam;
    this.axis = grid.axis;
    this.at = grid.at;
    this.height = Math.abs(coordinate(point, grid.axis) - grid.at);
    this.u = grid.axis === 0 ? point.y : point.x;
    this.v = grid.axis === 2 ? point.y : point.z;
    this.shelf = shelf;
  }

  over(u1: number, u2: number, v1: number, v2: number, depth: number): number {
    const wide = u2 - u1;
    const deep = v2 - v1;
    const mu = (u1 + u2) / 2;
    const mv = (v1 + v2) / 2;
    const away = (mu - this.u) * (mu - this.u) + (mv - this.v) * (mv - this.v) + this.height * this.height;
    const diagonal = wide * wide + deep * deep;
    const { grain, core, coreGrain, edge } = this.beam;
    if (!this.within(edge, mv, diagonal, away)) return 0;
    const near =
      diagonal > grain * grain * away ||
      (core > 0 && diagonal > coreGrain * coreGrain * away && this.within(core, mv, diagonal, away));
    if (near && depth < mostHalvings) return this.halves(u1, u2, v1, v2, depth);
    const du = (gauss * wide) / 2;
    const dv = (gauss * deep) / 2;
    const sum =
      this.spot(mu - du, mv - dv) +
      this.spot(mu + du, mv - dv) +
      this.spot(mu - du, mv + dv) +
      this.spot(mu + du, mv + dv);
    return (sum * wide * deep) / 4;
  }

  /**
   * The same with the shelf in the way. What it hides from a point is convex: a patch with all corners hidden is
   * hidden, one the shelf cannot reach is clear, and others are halved until they are small.
   */
  shaded(u1: number, u2: number, v1: number, v2: number, depth: number): number {
    const { edge, core, coreGrain } = this.beam;
    const du = (u1 + u2) / 2 - this.u;
    const dv = (v1 + v2) / 2 - this.v;
    const away = du * du + dv * dv + this.height * this.height;
    const diagonal = (u2 - u1) * (u2 - u1) + (v2 - v1) * (v2 - v1);
    if (!this.within(edge, (v1 + v2) / 2, diagonal, away)) return 0;
    const a = this.hides(u1, v1);
    const b = this.hides(u2, v1);
    const c = this.hides(u2, v2);
    const d = this.hides(u1, v2);
    const hidden = Number(a) + Number(b) + Number(c) + Number(d);
    if (hidden === 4) return 0;
    const size = Math.sqrt(diagonal) / Math.sqrt(away);
    const finest = core > 0 && this.within(core, (v1 + v2) / 2, diagonal, away) ? coreGrain : shadowGrain;
    if (hidden === 0 && (size < Math.min(searchGrain, finest) || !this.couldHide(u1, u2, v1, v2)))
      return this.over(u1, u2, v1, v2, depth);
    if (size < Math.min(shadowGrain, finest) || depth >= mostHalvings)
      return (
        this.over(u1, u2, v1, v2, depth) *
        (1 - this.shadowShare([u1, v1, u2, v1, u2, v2, u1, v2], [a, b, c, d]))
      );
    if (u2 - u1 > v2 - v1) {
      const middle = (u1 + u2) / 2;
      return this.shaded(u1, middle, v1, v2, depth + 1) + this.shaded(middle, u2, v1, v2, depth + 1);
    }
    const middle = (v1 + v2) / 2;
    return this.shaded(u1, u2, v1, middle, depth + 1) + this.shaded(u1, u2, middle, v2, depth + 1);
  }

  /**
   * Share of a small patch that lies in a shadow whose edge runs straight across it: the area of the corners hidden
   * and the places on the sides where the shadow begins.
   */
  private shadowShare(corners: readonly number[], hidden: readonly boolean[]): number {
    const outline: number[] = [];
    for (let k = 0; k < 4; k++) {
      const n = (k + 1) % 4;
      const [u, v, un, vn] = [corners[2 * k], corners[2 * k + 1], corners[2 * n], corners[2 * n + 1]];
      if (hidden[k]) outline.push(u, v);
      if (hidden[k] === hidden[n]) continue;
      let [low, high] = [0, 1];
      for (let step = 0; step < 7; step++) {
        const middle = (low + high) / 2;
        if (this.hides(u + middle * (un - u), v + middle * (vn - v)) === hidden[k]) low = middle;
        else high = middle;
      }
      outline.push(u + low * (un - u), v + low * (vn - v));
    }
    return areaInside(outline) / areaInside(corners);
  }

  /** True where the shelf stands between the point and a spot of the plane. */
  private hides(u: number, v: number): boolean {
    const { point, axis, at, shelf } = this;
    if (shelf === null) return false;
    const x = axis === 0 ? at : u;
    const y = axis === 0 ? u : axis === 1 ? at : v;
    const z = axis === 2 ? at : v;
    return !passes(shelf, point.x, point.y, point.z, x, y, z);
  }

  /** False where the smallest box round point and patch does not meet the shelf. */
  private couldHide(u1: number, u2: number, v1: number, v2: number): boolean {
    const { point, axis, at, shelf } = this;
    if (shelf === null) return false;
    const [x1, x2] = axis === 0 ? [at, at] : [u1, u2];
    const [y1, y2] = axis === 0 ? [u1, u2] : axis === 1 ? [at, at] : [v1, v2];
    const [z1, z2] = axis === 2 ? [at, at] : [v1, v2];
    return (
      Math.min(x1, point.x) < shelf.x2 &&
      Math.max(x2, point.x) > shelf.x1 &&
      Math.min(y1, point.y) < shelf.y2 &&
      Math.max(y2, point.y) > shelf.y1 &&
      Math.min(z1, point.z) < shelf.top &&
      Math.max(z2, point.z) > shelf.under
    );
  }

  /** False where a patch lies wholly more than `edge` [radians] from straight down: its middle is further off than that and half its own angle. */
  private within(edge: number, v: number, diagonal: number, away: number): boolean {
    if (edge >= Math.PI / 2 || diagonal > 4 * away) return true;
    const down = this.axis === 2 ? this.point.z - this.at : this.point.z - v;
    const r = Math.sqrt(away);
    return Math.acos(Math.max(-1, Math.min(1, down / r))) < edge + Math.asin(Math.sqrt(diagonal) / 2 / r);
  }

  private halves(u1: number, u2: number, v1: number, v2: number, depth: number): number {
    if (u2 - u1 > v2 - v1) {
      const middle = (u1 + u2) / 2;
      return this.over(u1, middle, v1, v2, depth + 1) + this.over(middle, u2, v1, v2, depth + 1);
    }
    const middle = (v1 + v2) / 2;
    return this.over(u1, u2, v1, middle, depth + 1) + this.over(u1, u2, middle, v2, depth + 1);
  }

  private spot(u: number, v: number): number {
    const { point, axis, at } = this;
    const x = axis === 0 ? at : u;
    const y = axis === 0 ? u : axis === 1 ? at : v;
    const z = axis === 2 ? at : v;
    const dx = x - point.x;
    const dy = y - point.y;
    const dz = z - point.z;
    const squared = dx * dx + dy * dy + dz * dz;
    const r = Math.sqrt(squared);
    return (this.beam.intensity(dx / r, dy / r, dz / r) * this.height) / (squared * r);
  }
}

/** Area inside an outline of points u, v, one after another (Gauss's formula). */
function areaInside(outline: readonly number[]): number {
  let sum = 0;
  for (let k = 0; k < outline.length; k += 2) {
    const n = (k + 2) % outline.length;
    sum += outline[k] * outline[n + 1] - outline[n] * outline[k + 1];
  }
  return Math.abs(sum) / 2;
}
