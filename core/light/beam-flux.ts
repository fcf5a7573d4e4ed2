import type { BeamShape } from './beam.ts';
import type { BoxShelf } from './box-parts.ts';
import { passes } from './box-shelf.ts';
import type { PatchGrid } from './patch-grid.ts';
import { columnsOf, patchesOf } from './patch-grid.ts';

/** Halvings of a patch near a point of light, and along the edge of a shadow, before it is taken as it is. */
const mostHalvings = 14;
const shadowHalvings = 5;

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
 * cos β / r² over the patch by two Gauss points a side. A patch wide against its distance is halved first, and so
 * is one with the edge of the shelf's shadow in it.
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
    if (top > grid.v[j]) out[k] += weight * reach.over(grid.u[i], grid.u[i + 1], grid.v[j], top, 0);
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
  private hidden = 0;

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
    const near = diagonal > this.beam.grain * this.beam.grain * away && depth < mostHalvings;
    if (near && this.lit(mv, diagonal, away)) return this.halves(u1, u2, v1, v2, depth);
    const du = (gauss * wide) / 2;
    const dv = (gauss * deep) / 2;
    this.hidden = 0;
    const sum =
      this.at2(mu - du, mv - dv) +
      this.at2(mu + du, mv - dv) +
      this.at2(mu - du, mv + dv) +
      this.at2(mu + du, mv + dv);
    if (this.hidden > 0 && this.hidden < 4 && depth < shadowHalvings)
      return this.halves(u1, u2, v1, v2, depth);
    return (sum * wide * deep) / 4;
  }

  /** False where a patch lies wholly outside the beam: its middle is further off than the edge and half its own angle. */
  private lit(v: number, diagonal: number, away: number): boolean {
    const { edge } = this.beam;
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

  private at2(u: number, v: number): number {
    const { point, axis, at } = this;
    const x = axis === 0 ? at : u;
    const y = axis === 0 ? u : axis === 1 ? at : v;
    const z = axis === 2 ? at : v;
    if (this.shelf !== null && !passes(this.shelf, point.x, point.y, point.z, x, y, z)) {
      this.hidden++;
      return 0;
    }
    const dx = x - point.x;
    const dy = y - point.y;
    const dz = z - point.z;
    const squared = dx * dx + dy * dy + dz * dz;
    const r = Math.sqrt(squared);
    return (this.beam.intensity(dx / r, dy / r, dz / r) * this.height) / (squared * r);
  }
}
