import { surfacesOf } from '../../../core/index.ts';
import type { Place, Section, SectionEdge, SectionPoint, Surface } from '../../../core/index.ts';
import { lightThrough } from './cloths.ts';
import type { Cloths } from './cloths.ts';
import type { Layout } from './layout.ts';
import type { ShelfPlaced } from './shelf.ts';

/** Where the sun stands [degrees]: height over the horizon, azimuth clockwise from north. */
export interface SunDirection {
  readonly elevation: number;
  readonly azimuth: number;
}

/** What a beam meets where it strikes the cover, in plant light: shares of what strikes, 0–1. */
export interface Struck {
  readonly surface: string;
  /** Angle between the beam and square on [degrees]. */
  readonly incidence: number;
  readonly comesIn: number;
  readonly thrownBack: number;
  readonly kept: number;
}

/** Spots at the plants' tops that beams are drawn to: one a bench where there are two or the drawing is small, else three. */
export function sunSpots(
  { benches, plantTop }: Pick<Layout, 'benches' | 'plantTop'>,
  small: boolean,
): SectionPoint[] {
  const shares = benches.length > 1 || small ? [0.5] : [0.2, 0.5, 0.8];
  return benches.flatMap(({ from, to }) =>
    shares.map((share): SectionPoint => [from + share * (to - from), plantTop]),
  );
}

/** A beam traced back from a spot at the plants' tops to where it strikes the cover. */
export interface SunRay {
  readonly target: SectionPoint;
  readonly entry: SectionPoint;
  /** Direction of the cover at the entry, a unit vector along it, and whether it lies flatter than 45°. */
  readonly along: SectionPoint;
  readonly flat: boolean;
  readonly struck: Struck;
}

const degree = Math.PI / 180;
const noCloths: Cloths = { shade: null, sheer: null };

/** Unit vector to the sun (east, north, up). */
function toSun({ elevation, azimuth }: SunDirection) {
  const level = Math.cos(elevation * degree);
  return [
    level * Math.sin(azimuth * degree),
    level * Math.cos(azimuth * degree),
    Math.sin(elevation * degree),
  ];
}

/** What a surface does with a beam; null where the sun stands behind it or nothing comes through. */
export function struckOf(place: Place, surface: Surface, sun: SunDirection, cloths: Cloths): Struck | null {
  const [east, north, up] = toSun(sun);
  const cosine = surface.normal[0] * east + surface.normal[1] * north + surface.normal[2] * up;
  if (!(cosine > 0) || !surface.transparent) return null;
  const { transmittance, reflectance } = lightThrough(place, surface, cosine, cloths);
  return {
    surface: surface.name,
    incidence: Math.acos(Math.min(1, cosine)) / degree,
    comesIn: transmittance,
    thrownBack: reflectance,
    kept: Math.max(0, 1 - transmittance - reflectance),
  };
}

interface Meeting {
  readonly edge: SectionEdge;
  readonly at: SectionPoint;
  readonly away: number;
}

/** The first edge of the section that a line from `from` in direction `to` meets. */
function firstMeeting(section: Section, from: SectionPoint, to: SectionPoint): Meeting | null {
  let found: Meeting | null = null;
  for (const edge of section.edges) {
    const [ax, az] = edge.from;
    const [ex, ez] = [edge.to[0] - ax, edge.to[1] - az];
    const cross = to[0] * ez - to[1] * ex;
    if (Math.abs(cross) < 1e-12) continue;
    const away = ((ax - from[0]) * ez - (az - from[1]) * ex) / cross;
    const share = ((ax - from[0]) * to[1] - (az - from[1]) * to[0]) / cross;
    if (!(away > 1e-9 && share >= 0 && share <= 1)) continue;
    if (found === null || away < found.away)
      found = { edge, away, at: [from[0] + away * to[0], from[1] + away * to[1]] };
  }
  return found;
}

/** A window set back in its wall: true where a beam that passes the pane at `z` clears the wall over it. */
function clearsLintel({ shape }: Place, section: Section, z: number, to: SectionPoint): boolean {
  if (shape.kind !== 'window-bay') return true;
  if (!(to[0] < 0)) return false;
  return z + (shape.reveal / -to[0]) * to[1] <= section.height;
}

/** True where the boards of an upper shelf stand between a spot and the sun. */
function underBoards(shelf: ShelfPlaced | null, [x, z]: SectionPoint, to: SectionPoint): boolean {
  if (shelf === null || shelf.z <= z) return false;
  const at = x + ((shelf.z - z) / to[1]) * to[0];
  return at >= shelf.from && at <= shelf.to;
}

/**
 * Beams to spots of the section, traced in its plane at the profile angle `angle` [degrees from the front's
 * horizontal]; spots that walls, boards or a lintel keep in shade have none.
 */
export function raysTo(
  place: Place,
  section: Section,
  sun: SunDirection,
  angle: number,
  targets: readonly SectionPoint[],
  { cloths = noCloths, shelf = null }: { readonly cloths?: Cloths; readonly shelf?: ShelfPlaced | null } = {},
): SunRay[] {
  const surfaces = surfacesOf(place).surfaces;
  const to: SectionPoint = [-Math.cos(angle * degree), Math.sin(angle * degree)];
  return targets.flatMap((target) => {
    const meeting = firstMeeting(section, target, to);
    const surface = surfaces.find(({ name }) => name === meeting?.edge.surface);
    if (meeting === null || surface === undefined || underBoards(shelf, target, to)) return [];
    if (!clearsLintel(place, section, meeting.at[1], to)) return [];
    const struck = struckOf(place, surface, sun, cloths);
    if (struck === null) return [];
    const [dx, dz] = [meeting.edge.to[0] - meeting.edge.from[0], meeting.edge.to[1] - meeting.edge.from[1]];
    const size = Math.hypot(dx, dz);
    return [{ target, entry: meeting.at, along: [dx / size, dz / size], flat: surface.tilt < 45, struck }];
  });
}

/** One beam for each surface struck, the lowest of those that strike it: where a figure is written. */
export function lowestOfEach(rays: readonly SunRay[]): SunRay[] {
  const bySurface = new Map<string, SunRay>();
  for (const ray of rays) {
    const found = bySurface.get(ray.struck.surface);
    if (found === undefined || ray.entry[1] < found.entry[1]) bySurface.set(ray.struck.surface, ray);
  }
  return [...bySurface.values()];
}

/** The direction into which a beam coming from `to` is thrown back by a face that runs along `along`. */
export function mirrored(to: SectionPoint, along: SectionPoint): SectionPoint {
  const dot = to[0] * along[0] + to[1] * along[1];
  return [to[0] - 2 * dot * along[0], to[1] - 2 * dot * along[1]];
}
