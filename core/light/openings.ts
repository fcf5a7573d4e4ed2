import type { Covering } from '../plan/coverings.ts';
import { covering } from '../plan/coverings.ts';
import type { Place } from '../plan/schema.ts';
import type { Enclosure, Point, Polygon, Surface } from '../fabric/index.ts';
import { areaOf, cutAtLevel, toPlace } from '../fabric/index.ts';
import type { TransmittanceCurve } from './curve.ts';
import { transmittanceCurve } from './curve.ts';
import { revealOf } from './window-reveal.ts';

/** A surface daylight comes in by. */
export interface Opening {
  readonly surface: Surface;
  /** The part above the plants' level, in the place's frame; null for a surface listed by hand. */
  readonly polygon: Polygon | null;
  /** Share of the surface below the plants' level: its light falls on the floor under the benches, 0–1. */
  readonly lowShare: number;
  /** Unit outward normal in the place's frame. */
  readonly normal: Point;
  /** How far the surface lies behind an outer opening of its own size [m]; 0 but for a window's pane. */
  readonly reveal: number;
  readonly solar: TransmittanceCurve;
  readonly par: TransmittanceCurve;
}

/** Cover and, inside it, the lining: what daylight passes by day, when screens are open. */
export function layersOf(place: Place, surface: Surface): readonly Covering[] {
  const cover = surface.covering;
  if (cover.optics.kind === 'opaque' || surface.behind !== 'outdoors') return [cover];
  return [cover, place.secondSkin?.covering, place.lining].flatMap((layer) =>
    layer === null || layer === undefined ? [] : typeof layer === 'string' ? [covering(layer)] : [layer],
  );
}

/** Every opening of a place; empty for a tent and a shelf, which daylight does not reach. */
export function openingsOf(place: Place, enclosure: Enclosure): Opening[] {
  const curves = new Map<string, { solar: TransmittanceCurve; par: TransmittanceCurve }>();
  const openings: Opening[] = [];
  const reveal = revealOf(place);
  for (const surface of enclosure.surfaces) {
    if (!surface.transparent) continue;
    const key = surface.covering.id;
    const layers = layersOf(place, surface);
    const both = curves.get(key) ?? {
      solar: transmittanceCurve(layers, 'solar'),
      par: transmittanceCurve(layers, 'par'),
    };
    curves.set(key, both);
    const polygon = surface.polygon === null ? null : cutAtLevel(surface.polygon, enclosure.plantLevel, 1);
    const lowShare = polygon === null ? 0 : 1 - (polygon.length === 0 ? 0 : areaOf(polygon)) / surface.area;
    openings.push({
      surface,
      polygon,
      lowShare,
      normal: toPlace(surface.normal, enclosure.azimuth),
      reveal,
      ...both,
    });
  }
  return openings;
}
