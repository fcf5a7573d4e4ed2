import type { Place, Section, SectionPoint } from '../../../core/index.ts';

/** From metres in the section to pixels on the paper; everything around the place included. */
export interface SectionView {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly small: boolean;
  /** True where neither measures nor words stand round the place. */
  readonly bare: boolean;
  /** Right end of ground and floor [px]. */
  readonly right: number;
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

/**
 * What else the paper has to hold: snow on the roof [m] and a column of temperatures at the right; a `bare` one
 * has neither measures nor words round the place.
 */
export interface Extras {
  readonly snow: number;
  readonly heights: boolean;
  readonly bare?: boolean;
}

const nothingElse: Extras = { snow: 0, heights: false };

/** Depth of a slab, of the foam under it and of a bed of gravel as drawn [m] (common practice, no source). */
export const floorDepth = 0.1;

/** Most depth of ground drawn, as a share of the place's larger side; deeper edge insulation is broken off there. */
const mostGround = 0.45;

/** Depth of ground that is drawn under the floor [m]. */
export function groundDepth(place: Place, section: Section): number {
  const size = Math.max(section.width, section.height);
  const edge = place.edgeInsulation === null ? 0 : place.edgeInsulation.depth + 0.03 * size;
  const floor = place.floor === 'insulated-slab' ? 2.3 * floorDepth : 1.4 * floorDepth;
  return Math.min(mostGround * size, Math.max(0.1 * size, edge, place.floor === 'soil' ? 0 : floor));
}

const wallBehind = ({ shape }: Place) => (shape.kind === 'lean-to' ? shape.wall.thickness : 0);

/** How far a wall stands over a lean-to's roof, as a share of the lean-to's height (a drawing's choice). */
export const wallOver = 0.14;
/** Least thickness at which the wall round a window is drawn [m]. */
const windowWall = 0.25;

/** The wall round a window across the section [m]: its outer face stands the pane's reveal before the pane. */
export function wallRound({ reveal }: { readonly reveal: number }): { from: number; to: number } {
  return { from: -reveal, to: Math.max(0.03, windowWall - reveal) };
}

/** What is drawn round the place, in shares of its larger side: ground, walls, sky for the sun. */
function margins(place: Place, section: Section, snow: number): Margins {
  const size = Math.max(section.width, section.height);
  const wallWidth = section.edges.reduce(
    (most, edge) => Math.max(most, edge.part === 'wall' ? 0 : edge.thickness),
    0,
  );
  const back = place.shape.kind === 'lean-to' ? wallBehind(place) + 0.08 * size : 0.1 * size + wallWidth;
  if (place.shape.kind === 'window-bay')
    return {
      front: Math.max(0.45 * size, place.shape.reveal + 0.25 * size),
      back: 0.35 * size,
      above: 0.2 * size,
      below: 0.28 * size,
    };
  if (section.indoors)
    return { front: 0.12 * size, back: 0.12 * size, above: 0.1 * size, below: 0.09 * size };
  const wall = place.shape.kind === 'lean-to' ? wallOver * section.height : 0;
  const above = Math.max(0.1 * size + snow, wall);
  return { front: 0.3 * size, back, above, below: groundDepth(place, section) };
}

const thumbnail = { width: 150, height: 110, pad: { left: 2, right: 2, top: 3, bottom: 2 } };
const bare = { width: 520, height: 340, pad: { left: 34, right: 8, top: 30, bottom: 10 } };
const sheet = (heights: boolean) => ({
  width: 640,
  height: 420,
  pad: { left: 62, right: heights ? 116 : 20, top: 18, bottom: 52 },
});

export function viewOf(
  place: Place,
  section: Section,
  small: boolean,
  extras: Extras = nothingElse,
): SectionView {
  const { width, height, pad } = small ? thumbnail : extras.bare ? bare : sheet(extras.heights);
  const around = margins(place, section, extras.snow);
  const wide = around.front + section.width + around.back;
  const tall = around.above + section.height + around.below;
  const scale = Math.min((width - pad.left - pad.right) / wide, (height - pad.top - pad.bottom) / tall);
  const left = pad.left + (width - pad.left - pad.right - wide * scale) / 2 + around.front * scale;
  const floor = height - pad.bottom - around.below * scale;
  const x = (metres: number) => left + metres * scale;
  const z = (metres: number) => floor - metres * scale;
  // With figures of height at the right the ground ends before them.
  const beside = Math.min(around.back, 0.12 * Math.max(section.width, section.height) + wallBehind(place));
  const round = (value: number) => Math.round(value * 100) / 100;
  const path = (points: readonly SectionPoint[]) =>
    points.map(([px, pz], i) => `${i === 0 ? 'M' : 'L'}${round(x(px))} ${round(z(pz))}`).join('');
  const end =
    small || extras.bare ? width - 1 : extras.heights ? x(section.width + beside) : width - pad.right + 8;
  return { width, height, scale, small, bare: extras.bare ?? false, right: end, x, z, path };
}

/**
 * Direction to the noon sun within the section [degrees from the front's horizontal, up]: the profile angle,
 * tan(p) = tan(elevation) / cos(azimuth − front); 90 to 180 where the sun stands behind.
 */
export function profileAngle(elevation: number, azimuth: number, front: number): number {
  const degree = Math.PI / 180;
  return Math.atan2(Math.tan(elevation * degree), Math.cos((azimuth - front) * degree)) / degree;
}
