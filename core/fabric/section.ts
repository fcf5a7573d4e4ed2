import { covering } from '../plan/coverings.ts';
import type { CoveringUse } from '../plan/coverings.ts';
import type { Place } from '../plan/schema.ts';
import { windOf } from './orientation.ts';
import type { SectionItem } from './section-items.ts';
import { sectionItems } from './section-items.ts';
import type { Enclosure, Surface } from './surface.ts';
import { surfacesOf } from './surfaces.ts';

export type SectionRole =
  'glass' | 'film' | 'fabric' | 'wall' | 'open' | 'floor' | 'bench' | 'lining' | 'screen' | 'fleece';

export type SectionPoint = readonly [x: number, y: number];

/** A line of the cross-section [m]; `surface` names the surface it stands for, null where it stands for none. */
export interface SectionLine {
  readonly role: SectionRole;
  readonly points: readonly SectionPoint[];
  readonly surface: string | null;
  /** Thickness to draw [m]; 0 for glass, film and cloth. */
  readonly thickness: number;
}

/** A place cut across its width, x from the front (left) to the back, y up from the floor [m]. */
export interface Section {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly SectionLine[];
  readonly items: readonly SectionItem[];
  /** Level of the plants and the stretch of it they stand on. */
  readonly plantLevel: number;
  readonly plantsFrom: number;
  readonly plantsTo: number;
  /** The wind the front (left) faces, null where the place has no front. */
  readonly front: string | null;
  /** Where a heated room lies. */
  readonly room: 'right' | 'around' | null;
}

/** Distance of a lining from the cover, and of a fleece over the plants' level, as drawn [m]. */
const liningGap = 0.05;
const plantHeight = 0.2;

const roles: Readonly<Record<CoveringUse, SectionRole>> = {
  glazing: 'glass',
  film: 'film',
  lining: 'lining',
  screen: 'screen',
  fleece: 'fleece',
  fabric: 'fabric',
  wall: 'wall',
  open: 'open',
};

/** Geometry of a place's cross-section for drawing: the same surfaces the engine reckons with. */
export function sectionOf(place: Place, enclosure: Enclosure = surfacesOf(place)): Section {
  const { shape } = place;
  const cover =
    shape.kind === 'listed'
      ? listedBox(place, enclosure)
      : enclosure.surfaces.flatMap((each) => coverLine(place, each));
  const { width } = enclosure;
  const height = cover.reduce(
    (most, line) => line.points.reduce((m, point) => Math.max(m, point[1]), most),
    0,
  );
  const level = enclosure.plantLevel;
  const [from, to] = plantStretch(enclosure, cover);
  const lines: SectionLine[] = [
    ...cover,
    {
      role: 'floor',
      points: [
        [0, 0],
        [width, 0],
      ],
      surface: null,
      thickness: 0,
    },
  ];
  if (level > 0)
    lines.push({
      role: 'bench',
      points: [
        [from, level],
        [to, level],
      ],
      surface: null,
      thickness: 0.03,
    });
  if (place.lining !== null) lines.push(...inner(cover, 'lining', liningGap, width, height));
  if (place.screen !== null) lines.push(...inner(cover, 'screen', 2 * liningGap, width, height));
  if (place.fleece !== null) {
    const top = level + Math.min(plantHeight, 0.8 * (height - level));
    lines.push({
      role: 'fleece',
      points: [
        [from, level],
        [from, top],
        [to, top],
        [to, level],
      ],
      surface: null,
      thickness: 0,
    });
  }
  return {
    width,
    height,
    lines,
    items: sectionItems(place, { width, height, level, from, to }),
    plantLevel: level,
    plantsFrom: from,
    plantsTo: to,
    front: 'azimuth' in shape ? windOf(shape.azimuth) : null,
    room: roomSide(place),
  };
}

function roomSide(place: Place): Section['room'] {
  const { shape } = place;
  if (shape.kind === 'tent' || shape.kind === 'shelf') return 'around';
  if (shape.kind === 'window-bay') return 'right';
  return shape.kind === 'lean-to' && shape.wall.behind === 'room' ? 'right' : null;
}

/** The edge of a surface on the near end; end faces have none. */
function coverLine(place: Place, surface: Surface): SectionLine[] {
  if (surface.polygon === null) return [];
  const edge = surface.polygon.filter((point) => Math.abs(point[1]) < 1e-9);
  if (edge.length !== 2) return [];
  const points = edge.map((point): SectionPoint => [point[0], point[2]]);
  points.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const role = roles[surface.covering.use];
  const wall = place.shape.kind === 'lean-to' && surface.part === 'wall' ? place.shape.wall.thickness : 0.1;
  return [{ role, points, surface: surface.name, thickness: role === 'wall' ? wall : 0 }];
}

/** A hand-made list has no positions: it is drawn as a box of its floor and volume. */
function listedBox(place: Place, enclosure: Enclosure): SectionLine[] {
  const height = enclosure.volume / enclosure.floorArea;
  const role = roles[covering(place.covering).use];
  const line = (points: SectionPoint[]): SectionLine => ({ role, points, surface: null, thickness: 0 });
  return [
    line([
      [0, 0],
      [0, height],
    ]),
    line([
      [0, height],
      [enclosure.width, height],
    ]),
    line([
      [enclosure.width, 0],
      [enclosure.width, height],
    ]),
  ];
}

/** Clear covers drawn again a little smaller about the floor's middle. */
function inner(
  cover: readonly SectionLine[],
  role: SectionRole,
  gap: number,
  width: number,
  height: number,
): SectionLine[] {
  const sx = 1 - (2 * gap) / width;
  const sy = 1 - gap / height;
  return cover
    .filter((line) => line.role === 'glass' || line.role === 'film')
    .map((line) => ({
      ...line,
      role,
      points: line.points.map(([x, y]): SectionPoint => [width / 2 + (x - width / 2) * sx, y * sy]),
    }));
}

/** Plants stand on the growing area's share of the width between the covers at their level, at most 0.96 of it. */
function plantStretch(enclosure: Enclosure, cover: readonly SectionLine[]): [number, number] {
  const { width, plantLevel } = enclosure;
  let left = 0;
  let right = width;
  for (const { points } of cover) {
    const [a, b] = points;
    const low = Math.min(a[1], b[1]);
    const high = Math.max(a[1], b[1]);
    if (!(high > low) || plantLevel < low || plantLevel > high) continue;
    const x = a[0] + ((plantLevel - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
    if (x < width / 2) left = Math.max(left, x);
    else right = Math.min(right, x);
  }
  const share = Math.min(0.96, enclosure.growingArea / enclosure.floorArea);
  const middle = (left + right) / 2;
  return [middle - ((right - left) * share) / 2, middle + ((right - left) * share) / 2];
}
