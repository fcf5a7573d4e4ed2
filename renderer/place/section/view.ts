import type { Place } from '../../../core/index.ts';
import type { Section, SectionPoint } from './geometry.ts';

/** From metres in the section to pixels on the paper; everything around the place included. */
export interface SectionView {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly small: boolean;
  readonly x: (metres: number) => number;
  readonly z: (metres: number) => number;
  readonly path: (points: readonly SectionPoint[]) => string;
}

interface Margins {
  readonly front: number;
  readonly back: number;
  readonly above: number;
  readonly below: number;
}

/** What is drawn round the place, in shares of its larger side: ground, walls, sky for the sun. */
function margins(place: Place, section: Section): Margins {
  const size = Math.max(section.width, section.height);
  const back = place.shape.kind === 'lean-to' ? place.shape.wall.thickness + 0.08 * size : 0.1 * size;
  if (place.shape.kind === 'window-bay')
    return { front: 0.45 * size, back: 0.35 * size, above: 0.2 * size, below: 0.28 * size };
  if (section.indoors)
    return { front: 0.12 * size, back: 0.12 * size, above: 0.08 * size, below: 0.09 * size };
  return { front: 0.3 * size, back, above: 0.1 * size, below: 0.1 * size };
}

export function viewOf(place: Place, section: Section, small: boolean): SectionView {
  const width = small ? 150 : 640;
  const height = small ? 110 : 420;
  const pad = small ? { left: 2, right: 2, top: 3, bottom: 2 } : { left: 62, right: 20, top: 18, bottom: 52 };
  const around = margins(place, section);
  const wide = around.front + section.width + around.back;
  const tall = around.above + section.height + around.below;
  const scale = Math.min((width - pad.left - pad.right) / wide, (height - pad.top - pad.bottom) / tall);
  const left = pad.left + (width - pad.left - pad.right - wide * scale) / 2 + around.front * scale;
  const floor = height - pad.bottom - around.below * scale;
  const x = (metres: number) => left + metres * scale;
  const z = (metres: number) => floor - metres * scale;
  const round = (value: number) => Math.round(value * 100) / 100;
  const path = (points: readonly SectionPoint[]) =>
    points.map(([px, pz], i) => `${i === 0 ? 'M' : 'L'}${round(x(px))} ${round(z(pz))}`).join('');
  return { width, height, scale, small, x, z, path };
}

/**
 * Direction to the noon sun within the section [degrees from the front's horizontal, up]: the profile angle,
 * tan(p) = tan(elevation) / cos(azimuth − front); 90 to 180 where the sun stands behind.
 */
export function profileAngle(elevation: number, azimuth: number, front: number): number {
  const degree = Math.PI / 180;
  return Math.atan2(Math.tan(elevation * degree), Math.cos((azimuth - front) * degree)) / degree;
}
