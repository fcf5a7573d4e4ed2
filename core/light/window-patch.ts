import type { Place } from '../plan/schema.ts';
import type { PlanSite } from '../plan/site.ts';
import { skylineShare } from '../sun/index.ts';
import type { Enclosure, Point } from '../fabric/index.ts';
import { surfacesOf, toPlace } from '../fabric/index.ts';
import { assemblyTransmittance } from './cover.ts';
import type { Opening } from './openings.ts';
import { layersOf, openingsOf } from './openings.ts';
import { benchOf } from './place-gains.ts';
import type { Receiver } from './shadow.ts';
import { litPolygon, receiverOf } from './shadow.ts';
import { litPane } from './window-reveal.ts';

const degree = Math.PI / 180;

/** Where the sun stands [degrees]: azimuth clockwise from north, elevation over the level. */
export interface SunAt {
  readonly azimuth: number;
  readonly elevation: number;
}

/** Sun that comes through one opening on to the plants' level. */
export interface BeamPatch {
  /** Name of the opening as the fabric names its surfaces, such as `south roof`. */
  readonly surface: string;
  /** Corners on the plants' level in the place's frame [m]: x from the front (the pane) to the back, y along the length. */
  readonly polygon: readonly { readonly x: number; readonly y: number }[];
  /** Area of it [m²]. */
  readonly area: number;
  /** Angle between the sun and the pane's normal [degrees]. */
  readonly incidence: number;
  /** Share of the beam the opening's layers pass at that angle, all of the sun's spectrum and 400–700 nm, 0–1; frame, bars and dirt not taken off. */
  readonly transmittance: number;
  readonly parTransmittance: number;
  /** Share of the beam that reaches the opening past the skyline, 0–1: less than 1 behind bare trees. */
  readonly past: number;
}

/**
 * The sun's patches on the plants' level of a place, one for each opening it comes through; none with the sun down,
 * behind the skyline, or by openings it does not reach, and none where surfaces are listed without their positions.
 */
export function beamPatches(
  place: Place,
  site: Pick<PlanSite, 'horizon'>,
  sun: SunAt,
  enclosure: Enclosure = surfacesOf(place),
): BeamPatch[] {
  if (!(sun.elevation <= 90 && Number.isFinite(sun.azimuth)))
    throw new Error(`expected a sun of azimuth and elevation, got ${sun.azimuth}, ${sun.elevation}`);
  const past = skylineShare(place.horizon ?? site.horizon, sun.elevation, sun.azimuth);
  if (!(past > 0)) return [];
  const bench = receiverOf(benchOf(place, enclosure));
  const toSun = toPlace(towards(sun), enclosure.azimuth);
  return openingsOf(place, enclosure).flatMap((opening) => {
    const patch = patchOf(place, opening, bench, toSun);
    return patch === null ? [] : [{ ...patch, past }];
  });
}

/** The sun's patch behind the pane of a window bay; null with the sun down, behind the skyline or the wall. */
export function beamPatch(place: Place, site: Pick<PlanSite, 'horizon'>, sun: SunAt): BeamPatch | null {
  if (place.shape.kind !== 'window-bay') throw new Error(`expected a window bay, got ${place.shape.kind}`);
  return beamPatches(place, site, sun)[0] ?? null;
}

function patchOf(
  place: Place,
  opening: Opening,
  bench: Receiver,
  toSun: Point,
): Omit<BeamPatch, 'past'> | null {
  const { polygon, normal, reveal, surface } = opening;
  const cosine = normal[0] * toSun[0] + normal[1] * toSun[1] + normal[2] * toSun[2];
  if (!(cosine > 0) || polygon === null || polygon.length === 0) return null;
  const lit = litPane(polygon, reveal, toSun);
  const patch = lit.length === 0 ? [] : litPolygon(bench, lit, toSun);
  if (patch.length === 0) return null;
  const incidence = Math.acos(Math.min(1, cosine)) / degree;
  const layers = layersOf(place, surface);
  const flat = patch.map(([x, y]) => ({ x, y }));
  return {
    surface: surface.name,
    polygon: flat,
    area: areaOfFlat(flat),
    incidence,
    transmittance: assemblyTransmittance(incidence, layers, 'solar'),
    parTransmittance: assemblyTransmittance(incidence, layers, 'par'),
  };
}

function towards({ azimuth, elevation }: SunAt): Point {
  const level = Math.cos(elevation * degree);
  return [
    level * Math.sin(azimuth * degree),
    level * Math.cos(azimuth * degree),
    Math.sin(elevation * degree),
  ];
}

function areaOfFlat(polygon: BeamPatch['polygon']): number {
  let twice = 0;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length];
    twice += a.x * b.y - b.x * a.y;
  });
  return Math.abs(twice) / 2;
}
