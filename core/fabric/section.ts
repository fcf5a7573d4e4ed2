import type { Covering, CoveringUse } from '../plan/coverings.ts';
import { covering } from '../plan/coverings.ts';
import type { WallMaterial } from '../plan/coverings-walls.ts';
import { wallMaterials } from '../plan/coverings-walls.ts';
import type { Place } from '../plan/schema.ts';
import type { Point, Polygon } from './polygon.ts';
import type { Enclosure, Surface } from './surface.ts';
import { surfacesOf } from './surfaces.ts';

/** A point of the cross-section [m]: x from the front to the back, z up from the floor. */
export type SectionPoint = readonly [x: number, z: number];

/** A surface where the section cuts it. */
export interface SectionEdge {
  readonly part: Surface['part'];
  /** Name of the surface it is cut from; null for the box that stands for a hand-made list. */
  readonly surface: string | null;
  readonly from: SectionPoint;
  readonly to: SectionPoint;
  readonly covering: Covering;
  readonly use: CoveringUse;
  /** Panes or walls of the sheet: 2 for double glazing and cellular sheet, else 1. */
  readonly skins: 1 | 2;
  /** What an opaque wall is made of and how thick it is [m]; null and 0 for glass, film and cloth. */
  readonly material: WallMaterial['id'] | null;
  readonly thickness: number;
  /** True where lining, second skin and screen are fixed. */
  readonly lined: boolean;
}

/**
 * The middle cross-section of a place [m]: x from the front (the side that faces the shape's azimuth) to the
 * back, z up from the floor. Cut from the very surfaces the heat balance is made of.
 */
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

/** The cross-section of a place at half its length. */
export function sectionOf(place: Place, enclosure: Enclosure = surfacesOf(place)): Section {
  const { length, width, plantLevel } = enclosure;
  const indoors = enclosure.floorBehind === 'room';
  const common = { width, length, plantLevel, indoors };
  if (place.shape.kind === 'listed') {
    const height = enclosure.volume / enclosure.floorArea;
    return { ...common, edges: boxEdges(place, width, height), height, listed: true };
  }
  const edges = enclosure.surfaces.flatMap((surface) => {
    const points = surface.polygon === null ? [] : crossing(surface.polygon, length / 2);
    return points.length === 2 ? [edgeOf(place, surface, points[0], points[1])] : [];
  });
  const height = edges.reduce((most, { from, to }) => Math.max(most, from[1], to[1]), 0);
  return { ...common, edges, height, listed: false };
}

/** Where a flat polygon crosses the plane at `y` across the length. */
function crossing(polygon: Polygon, y: number): SectionPoint[] {
  const points: SectionPoint[] = [];
  for (let i = 0; i < polygon.length; i += 1) {
    const a: Point = polygon[i];
    const b: Point = polygon[(i + 1) % polygon.length];
    if ((a[1] - y) * (b[1] - y) >= 0) continue;
    const t = (y - a[1]) / (b[1] - a[1]);
    points.push([a[0] + t * (b[0] - a[0]), a[2] + t * (b[2] - a[2])]);
  }
  return points;
}

function edgeOf(place: Place, surface: Surface, from: SectionPoint, to: SectionPoint): SectionEdge {
  const { part, covering: cover } = surface;
  const wall = part === 'wall' && place.shape.kind === 'lean-to' ? place.shape.wall : null;
  const material = wall?.material ?? materials[cover.id] ?? null;
  const thickness = wall?.thickness ?? (material === null ? 0 : thicknessOf(cover, material));
  const lined = !notLined.has(part) && cover.id === place.covering && cover.use !== 'open';
  return { part, surface: surface.name, from, to, ...coverNumbers(cover), material, thickness, lined };
}

const notLined: ReadonlySet<Surface['part']> = new Set(['wall', 'base wall', 'opening', 'reveal']);

/** Materials of the catalogue's walls. */
const materials: Readonly<Record<string, WallMaterial['id'] | undefined>> = {
  'brick-102': 'brick',
  'brick-215': 'brick',
  'stone-400': 'stone',
  'timber-board': 'timber',
  'insulated-panel': 'insulated',
};

/** Thickness of a wall of one material [m], from its resistance. */
function thicknessOf(cover: Covering, material: WallMaterial['id']): number {
  return cover.resistance.value * wallMaterials[material].conductivity.value;
}

/** A sheet of more than this resistance [m² K W⁻¹] has air between two walls: 4 mm of solid glass has 0.004. */
const hollow = 0.05;

function coverNumbers(cover: Covering): Pick<SectionEdge, 'covering' | 'use' | 'skins'> {
  const skins = cover.use === 'glazing' && cover.resistance.value > hollow ? 2 : 1;
  return { covering: cover, use: cover.use, skins };
}

/** A hand-made list has no positions: it is a box of its floor and volume, covered as the place is. */
function boxEdges(place: Place, width: number, height: number): SectionEdge[] {
  const corners: SectionPoint[] = [
    [0, 0],
    [0, height],
    [width, height],
    [width, 0],
  ];
  const cover = coverNumbers(covering(place.covering));
  return [0, 1, 2].map((i) => ({
    part: 'listed',
    surface: null,
    from: corners[i],
    to: corners[i + 1],
    ...cover,
    material: null,
    thickness: 0,
    lined: true,
  }));
}
