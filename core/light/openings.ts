import type { Covering } from '../plan/coverings.ts';
import { covering } from '../plan/coverings.ts';
import type { Place } from '../plan/schema.ts';
import type { Enclosure, Point, Polygon, Surface } from '../fabric/index.ts';
import { areaOf, cutAtLevel, toPlace } from '../fabric/index.ts';
import type { Bars } from './bars.ts';
import { barDepth, barsOn, behindBars } from './bars.ts';
import type { TransmittanceCurve } from './curve.ts';
import { transmittanceCurve } from './curve.ts';
import { besideGutter } from './gutter.ts';
import { revealOf } from './window-reveal.ts';

/** A surface daylight comes in by. */
export interface Opening {
  readonly surface: Surface;
  /** Area light can come in by [m²], frame included: the surface less the gutter's strip of it. */
  readonly area: number;
  /** The part above the plants' level, in the place's frame; null for a surface listed by hand. */
  readonly polygon: Polygon | null;
  /** Share of that area below the plants' level: its light falls on the floor under the benches, 0–1. */
  readonly lowShare: number;
  /** Unit outward normal in the place's frame. */
  readonly normal: Point;
  /** How far the surface lies behind an outer opening of its own size [m]; 0 but for a window's pane. */
  readonly reveal: number;
  /** Bars that stand proud of it; null where they lie flat. */
  readonly bars: Bars | null;
  /** Cover and lining by angle; their values for an even sky have the bars taken off. */
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
  const depth = barDepth(place);
  for (const surface of enclosure.surfaces) {
    if (!surface.transparent) continue;
    const clear = besideGutter(surface, place);
    if (clear !== null && clear.length === 0) continue;
    const area = clear === surface.polygon || clear === null ? surface.area : areaOf(clear);
    const key = surface.covering.id;
    const layers = layersOf(place, surface);
    const both = curves.get(key) ?? {
      solar: behindBars(transmittanceCurve(layers, 'solar'), depth),
      par: behindBars(transmittanceCurve(layers, 'par'), depth),
    };
    curves.set(key, both);
    const polygon = clear === null ? null : cutAtLevel(clear, enclosure.plantLevel, 1);
    const lowShare = polygon === null ? 0 : 1 - (polygon.length === 0 ? 0 : areaOf(polygon)) / area;
    openings.push({
      surface,
      area,
      polygon,
      lowShare,
      normal: toPlace(surface.normal, enclosure.azimuth),
      reveal,
      bars: barsOn(place, surface, enclosure.azimuth),
      ...both,
    });
  }
  return openings;
}
