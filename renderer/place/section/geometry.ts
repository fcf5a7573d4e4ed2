import { surfacesOf } from '../../../core/index.ts';
import type { Covering, CoveringUse, Place } from '../../../core/index.ts';

/**
 * The middle cross-section of a place [m]: x from the front (the side that faces the shape's azimuth) to the
 * back, z up from the floor. Cut from the very surfaces the heat balance is made of.
 */
export type SectionPoint = readonly [x: number, z: number];

export interface SectionEdge {
  readonly part: string;
  readonly from: SectionPoint;
  readonly to: SectionPoint;
  readonly use: CoveringUse;
  /** Panes or walls of the sheet: 2 for double glazing and cellular sheet, else 1. */
  readonly skins: 1 | 2;
}

export interface Section {
  readonly edges: readonly SectionEdge[];
  readonly width: number;
  readonly height: number;
  readonly length: number;
  /** Height of the plants' level over the floor [m]. */
  readonly plantLevel: number;
  readonly indoors: boolean;
  /** True where surfaces are listed by hand and the outline is only a box of the same floor and volume. */
  readonly listed: boolean;
}

interface Surfaces {
  readonly part: string;
  readonly covering: Covering;
  readonly polygon: readonly (readonly [number, number, number])[] | null;
}

const closed = (points: readonly SectionPoint[]) => points.length === 2;

/** Where a flat polygon crosses the plane at `y` across the length. */
function crossing(polygon: readonly (readonly [number, number, number])[], y: number): SectionPoint[] {
  const points: SectionPoint[] = [];
  for (let i = 0; i < polygon.length; i += 1) {
    const a = polygon[i];
    const b = polygon[(i + 1) % polygon.length];
    if ((a[1] - y) * (b[1] - y) >= 0) continue;
    const t = (y - a[1]) / (b[1] - a[1]);
    points.push([a[0] + t * (b[0] - a[0]), a[2] + t * (b[2] - a[2])]);
  }
  return points;
}

function edgeOf(surface: Surfaces, points: readonly SectionPoint[]): SectionEdge {
  const cover = surface.covering;
  const skins = cover.use === 'glazing' && cover.resistance.value > 0.05 ? 2 : 1;
  return { part: surface.part, from: points[0], to: points[1], use: cover.use, skins };
}

/** The cross-section of a place at half its length. */
export function sectionThrough(place: Place): Section {
  const enclosure = surfacesOf(place);
  const { length, width, plantLevel } = enclosure;
  const indoors = enclosure.floorBehind === 'room';
  if (place.shape.kind === 'listed') {
    const height = enclosure.volume / enclosure.floorArea;
    return { edges: boxEdges(width, height), width, height, length, plantLevel, indoors, listed: true };
  }
  const edges = enclosure.surfaces.flatMap((surface: Surfaces) => {
    const points = surface.polygon ? crossing(surface.polygon, length / 2) : [];
    return closed(points) ? [edgeOf(surface, points)] : [];
  });
  const height = Math.max(...edges.flatMap((edge) => [edge.from[1], edge.to[1]]));
  return { edges, width, height, length, plantLevel, indoors, listed: false };
}

function boxEdges(width: number, height: number): SectionEdge[] {
  const corners: SectionPoint[] = [
    [0, 0],
    [0, height],
    [width, height],
    [width, 0],
  ];
  return [0, 1, 2].map((i) => ({
    part: 'listed',
    from: corners[i],
    to: corners[i + 1],
    use: 'film',
    skins: 1,
  }));
}

/** Inner space at a height: least and most x between the edges; the whole width where nothing is cut. */
export function innerRange(section: Section, z: number): { from: number; to: number } {
  const cuts: number[] = [];
  for (const { from, to } of section.edges) {
    if ((from[1] - z) * (to[1] - z) > 0 || from[1] === to[1]) continue;
    cuts.push(from[0] + ((z - from[1]) / (to[1] - from[1])) * (to[0] - from[0]));
  }
  if (cuts.length < 2) return { from: 0, to: section.width };
  return { from: Math.min(...cuts), to: Math.max(...cuts) };
}

/** Height of the cover over the floor at x; the ridge where x lies outside. */
export function coverHeight(section: Section, x: number): number {
  let top = 0;
  for (const { from, to } of section.edges) {
    const [low, high] = from[0] < to[0] ? [from, to] : [to, from];
    if (x < low[0] || x > high[0] || low[0] === high[0]) continue;
    top = Math.max(top, low[1] + ((x - low[0]) / (high[0] - low[0])) * (high[1] - low[1]));
  }
  return top === 0 ? section.height : top;
}

/** Edges joined end to end into lines. */
export function chained(edges: readonly SectionEdge[]): SectionPoint[][] {
  const left = edges.map((edge) => [edge.from, edge.to]);
  const lines: SectionPoint[][] = [];
  while (left.length > 0) {
    const line = [...(left.shift() as SectionPoint[])];
    for (let found = true; found;) {
      found = false;
      for (let i = 0; i < left.length; i += 1) {
        if (!join(line, left[i])) continue;
        left.splice(i, 1);
        found = true;
        break;
      }
    }
    lines.push(line);
  }
  return lines;
}

const same = (a: SectionPoint, b: SectionPoint) => Math.hypot(a[0] - b[0], a[1] - b[1]) < 1e-6;

function join(line: SectionPoint[], [a, b]: readonly SectionPoint[]): boolean {
  const first = line[0];
  const last = line[line.length - 1];
  if (same(last, a)) line.push(b);
  else if (same(last, b)) line.push(a);
  else if (same(first, a)) line.unshift(b);
  else if (same(first, b)) line.unshift(a);
  else return false;
  return true;
}

/** A line moved by `distance` towards `inside`, its corners mitred. */
export function inset(line: readonly SectionPoint[], distance: number, inside: SectionPoint): SectionPoint[] {
  const normals = line.slice(1).map((point, i) => inwardNormal(line[i], point, inside));
  return line.map((point, i): SectionPoint => {
    const a = normals[Math.max(0, i - 1)];
    const b = normals[Math.min(normals.length - 1, i)];
    const sum: SectionPoint = [a[0] + b[0], a[1] + b[1]];
    const size = (sum[0] * sum[0] + sum[1] * sum[1]) / 2;
    const reach = size < 0.2 ? distance : distance / size;
    return [point[0] + sum[0] * reach, point[1] + sum[1] * reach];
  });
}

function inwardNormal(a: SectionPoint, b: SectionPoint, inside: SectionPoint): SectionPoint {
  const size = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const normal: SectionPoint = [(a[1] - b[1]) / size, (b[0] - a[0]) / size];
  const towards = normal[0] * (inside[0] - a[0]) + normal[1] * (inside[1] - a[1]);
  return towards >= 0 ? normal : [-normal[0], -normal[1]];
}
