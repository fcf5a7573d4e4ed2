import type { Place, Section, SectionPoint } from '../../../core/index.ts';
import { chained, inset } from './geometry.ts';
import type { SectionView } from './view.ts';

/** Layers inside the cover in their order from the cover inwards, with their distance from it as drawn [m]. */
export interface InnerLayers {
  readonly skin: number;
  readonly lining: number;
  readonly screen: number;
  /** Clear of all of them. */
  readonly clear: number;
}

/** A second skin lies at its own gap, lining and screen within; none closer than the eye can part. */
export function innerLayersOf(place: Place, section: Section, view: SectionView): InnerLayers {
  if (linedLines(section).length === 0) return { skin: 0, lining: 0, screen: 0, clear: 0 };
  const least = (view.small ? 2.8 : 6) / view.scale;
  // Glass and fabric are drawn thicker than they are.
  const first = least * 1.1;
  let at = 0;
  const next = (wanted: number, there: boolean) => {
    if (there) at += Math.max(at === 0 ? first : least, wanted);
    return at;
  };
  const skin = next(place.secondSkin?.gap ?? 0, place.secondSkin !== null);
  const lining = next(0, place.lining !== null);
  const screen = next(0, place.screen !== null);
  return { skin, lining, screen, clear: at + least };
}

/** Lines of the cover that carry layers inside, each from one end to the other. */
export function linedLines(section: Section): SectionPoint[][] {
  return chained(section.edges.filter((edge) => edge.lined));
}

/** The lined cover moved inwards by a distance. */
export function innerPath(section: Section, view: SectionView, distance: number): string {
  const inside: SectionPoint = [section.width / 2, section.height * 0.45];
  return linedLines(section)
    .map((line) =>
      view.path(inset(line, distance, inside).map(([x, z]): SectionPoint => [x, Math.max(0, z)])),
    )
    .join('');
}
