import type { Place, PlanSite, Section, SectionEdge } from '../../../core/index.ts';

/** Snow slides off slopes steeper than this [degrees] (EN 1991-1-3: none is reckoned from 60°). */
const slides = 60;

const slopeOf = ({ from, to }: SectionEdge) =>
  (Math.atan2(Math.abs(to[1] - from[1]), Math.abs(to[0] - from[0])) * 180) / Math.PI;

/** True for the parts of a roof in the open on which snow lies. */
export function carriesSnow(section: Section, edge: SectionEdge): boolean {
  return !section.indoors && ['roof', 'light', 'listed'].includes(edge.part) && slopeOf(edge) < slides;
}

/** Snow on this place's roof; null where none lies or it is cleared. */
export function snowOn(place: Place, section: Section, site: Pick<PlanSite, 'snow'>): PlanSite['snow'] {
  if (place.snow !== 'left' || site.snow === null) return null;
  if (place.shape.kind === 'listed') {
    const roofed = place.shape.surfaces.some((each) => each.behind === 'outdoors' && each.tilt < slides);
    return roofed && !section.indoors ? site.snow : null;
  }
  return section.edges.some((edge) => carriesSnow(section, edge)) ? site.snow : null;
}
