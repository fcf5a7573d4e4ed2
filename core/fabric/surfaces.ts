import type { Covering } from '../plan/coverings.ts';
import { covering } from '../plan/coverings.ts';
import { wallMaterials, wallNumbers } from '../plan/coverings-walls.ts';
import type { Place } from '../plan/schema.ts';
import type { ShapeOf } from '../plan/shapes.ts';
import type { Face, SolidShape } from './faces.ts';
import { facesOf, footprint, frontAzimuth } from './faces.ts';
import { innerLayers, layerNumbers } from './layers.ts';
import {
  coveringOfBuild,
  layersOfBuild,
  layersOfCovering,
  oneLayer,
  usualInsideAbsorptance,
} from './wall-layers.ts';
import type { WallLayer } from './wall-layers.ts';
import { normalOf, orientationOf, windOf } from './orientation.ts';
import type { Orientation } from './orientation.ts';
import { areaOf, areaVector, cutAtLevel, volumeOf } from './polygon.ts';
import type { Polygon } from './polygon.ts';
import { plantLevel } from './level.ts';
import type { Behind, Enclosure, Surface } from './surface.ts';

/** Surfaces, volume and floor of a place. */
export function surfacesOf(place: Place): Enclosure {
  const { shape } = place;
  return shape.kind === 'listed' ? listedEnclosure(place, shape) : solidEnclosure(place, shape);
}

function solidEnclosure(place: Place, shape: SolidShape): Enclosure {
  const faces = facesOf(shape);
  const azimuth = frontAzimuth(shape);
  const walls = faces.filter((face) => face.part !== 'floor');
  const surfaces = named(walls.flatMap((face) => faceSurfaces(place, shape, face, azimuth)));
  const { length, width } = footprint(shape);
  return {
    surfaces,
    floorArea: length * width,
    volume: volumeOf(faces.map((face) => face.polygon)),
    perimeter: exposedPerimeter(shape),
    growingArea: place.growingArea,
    floorBehind: indoors(shape) ? 'room' : 'ground',
    length,
    width,
    plantLevel: plantLevel(place),
    ownFloor: true,
    ...airShares(place),
    azimuth,
  };
}

const indoors = (shape: SolidShape) =>
  shape.kind === 'tent' || shape.kind === 'shelf' || shape.kind === 'window-bay';

/** Floor edge that meets the outdoors [m]: not along a lean-to's wall to a room, none indoors. */
function exposedPerimeter(shape: SolidShape): number {
  if (indoors(shape)) return 0;
  const { length, width } = footprint(shape);
  const all = 2 * (length + width);
  return shape.kind === 'lean-to' && shape.wall.behind === 'room' ? all - length : all;
}

/** Share of the leakage a second skin leaves (estimate, no source: it closes laps and joints but not the doors). */
const leftBySecondSkin = 0.6;

function airShares(place: Place): { airShareOpen: number; airShareClosed: number } {
  const lined = place.lining === null ? 1 : covering(place.lining).airShare.value;
  const open = place.secondSkin === null ? lined : lined * leftBySecondSkin;
  const closed = place.screen === null ? open : open * covering(place.screen.covering).airShare.value;
  return { airShareOpen: open, airShareClosed: closed };
}

/** A face split at the base wall's height, each part with its covering. */
function faceSurfaces(place: Place, shape: SolidShape, face: Face, azimuth: number): Surface[] {
  const orientation = orientationOf(areaVector(face.polygon), azimuth);
  const base = place.baseWall;
  const covered = ['side', 'gable', 'end', 'roof'].includes(face.part) && !indoors(shape);
  if (base === null || !covered) return [oneSurface(place, shape, face, face.polygon, orientation, null)];
  const below = cutAtLevel(face.polygon, base.height, -1);
  const above = cutAtLevel(face.polygon, base.height, 1);
  const parts: Surface[] = [];
  if (above.length > 0) parts.push(oneSurface(place, shape, face, above, orientation, null));
  if (below.length > 0)
    parts.push(oneSurface(place, shape, face, below, orientation, covering(base.covering)));
  return parts;
}

function oneSurface(
  place: Place,
  shape: SolidShape,
  face: Face,
  polygon: Polygon,
  orientation: Orientation,
  base: Covering | null,
): Surface {
  const common = { polygon, area: areaOf(polygon), orientation };
  if (base !== null)
    return surface(place, { ...common, part: 'base wall', cover: base, behind: 'outdoors', bare: true });
  if (face.part === 'wall' && shape.kind === 'lean-to') return backWall(place, shape, common);
  if (face.part === 'opening' || face.part === 'reveal') {
    const cover = covering(face.part === 'opening' ? 'open' : 'insulated-panel');
    return surface(place, { ...common, part: face.part, cover, behind: 'room', bare: true });
  }
  const behind: Behind = shape.kind === 'tent' ? 'room' : 'outdoors';
  if (place.shadySide !== null && behind === 'outdoors' && facesAway(face, orientation, shape)) {
    return surface(place, {
      ...common,
      part: face.part,
      cover: covering(place.shadySide),
      behind,
      bare: true,
    });
  }
  return surface(place, { ...common, part: face.part, cover: covering(place.covering), behind, bare: false });
}

/** True for the upright side of a house or frame that faces away from its front. */
function facesAway(face: Face, orientation: Orientation, shape: SolidShape): boolean {
  if (face.part !== 'side') return false;
  return Math.cos(((orientation.azimuth - frontAzimuth(shape)) * Math.PI) / 180) < -0.9;
}

interface SurfaceParts {
  readonly part: Surface['part'];
  readonly polygon: Polygon | null;
  readonly area: number;
  readonly orientation: Orientation;
  readonly cover: Covering;
  readonly behind: Behind;
  /** True where neither lining nor screen is fixed to it. */
  readonly bare: boolean;
  readonly name?: string;
  readonly layers?: readonly WallLayer[] | null;
  readonly insideAbsorptance?: number;
}

function surface(place: Place, parts: SurfaceParts): Surface {
  const { cover, behind, orientation } = parts;
  const own = layerNumbers(cover);
  const { lined, closed } = parts.bare ? { lined: own, closed: own } : innerLayers(own, place);
  const outdoors = behind === 'outdoors';
  const level = Math.cos((orientation.tilt * Math.PI) / 180);
  return {
    name: parts.name ?? nameOf(parts.part, orientation, behind),
    part: parts.part,
    area: parts.area,
    tilt: orientation.tilt,
    azimuth: orientation.azimuth,
    normal: orientation.normal,
    behind,
    covering: cover,
    layers: parts.layers !== undefined ? parts.layers : layersOfCovering(cover),
    transparent: outdoors && cover.optics.kind !== 'opaque',
    skyView: outdoors ? (1 + level) / 2 : 0,
    groundView: outdoors ? (1 - level) / 2 : 0,
    resistanceOpen: lined.resistance,
    resistanceClosed: closed.resistance,
    longWaveOpen: lined.longWaveTransmittance,
    longWaveClosed: closed.longWaveTransmittance,
    emissivityInsideOpen: lined.emissivityInside,
    emissivityInsideClosed: closed.emissivityInside,
    emissivityOutside: own.emissivityOutside,
    insideAbsorptance: parts.insideAbsorptance ?? usualInsideAbsorptance,
    heatCapacity: cover.heatCapacity.value,
    polygon: parts.polygon,
  };
}

/** Catalogue entry whose faces (colour, emissivity) stand for a lean-to's wall of the plan's own thickness. */
const wallFaces = {
  brick: 'brick-215',
  stone: 'stone-400',
  insulated: 'insulated-panel',
  timber: 'timber-board',
} as const;

function backWall(
  place: Place,
  shape: ShapeOf<'lean-to'>,
  common: { polygon: Polygon; area: number; orientation: Orientation },
): Surface {
  const { material, thickness, behind } = shape.wall;
  const cover = covering(wallFaces[material]);
  const numbers = wallNumbers(wallMaterials[material], thickness);
  return {
    ...surface(place, {
      ...common,
      part: 'wall',
      cover,
      behind,
      bare: true,
      layers: oneLayer(numbers.resistance, numbers.heatCapacity),
    }),
    resistanceOpen: numbers.resistance,
    resistanceClosed: numbers.resistance,
    heatCapacity: numbers.heatCapacity,
  };
}

function nameOf(part: Surface['part'], orientation: Orientation, behind: Behind): string {
  if (part === 'opening') return orientation.tilt < 1 ? 'open top' : 'open side';
  if (part === 'reveal') return 'reveal';
  if (orientation.tilt < 1) return part === 'roof' ? 'top' : part;
  return behind === 'room' ? part : `${windOf(orientation.azimuth)} ${part}`;
}

/** Makes names unique by numbering those used more than once. */
function named(surfaces: readonly Surface[]): Surface[] {
  const seen = new Map<string, number>();
  const total = new Map<string, number>();
  for (const { name } of surfaces) total.set(name, (total.get(name) ?? 0) + 1);
  return surfaces.map((each) => {
    if (total.get(each.name) === 1) return each;
    const number = (seen.get(each.name) ?? 0) + 1;
    seen.set(each.name, number);
    return { ...each, name: `${each.name} ${number}` };
  });
}

function listedSurface(place: Place, each: ShapeOf<'listed'>['surfaces'][number]): Surface {
  const { build } = each;
  const cover = build === null ? covering(each.covering as string) : coveringOfBuild(each.name, build);
  return surface(place, {
    part: 'listed',
    name: each.name,
    polygon: null,
    area: each.area,
    orientation: { tilt: each.tilt, azimuth: each.azimuth, normal: normalOf(each.tilt, each.azimuth) },
    cover,
    behind: each.behind,
    bare: cover.optics.kind === 'opaque' || each.behind !== 'outdoors' || build !== null,
    ...(build === null ? {} : { layers: layersOfBuild(build) }),
    ...(build?.kind === 'layers' ? { insideAbsorptance: build.absorptanceInside } : {}),
  });
}

/** Tilt from which a listed surface faces down and so is the floor [degrees]. */
const facesDown = 150;

function listedEnclosure(place: Place, shape: ShapeOf<'listed'>): Enclosure {
  const surfaces = shape.surfaces.map((each) => listedSurface(place, each));
  const side = Math.sqrt(shape.floorArea);
  const outdoors = surfaces.some((each) => each.behind === 'outdoors');
  return {
    surfaces: named(surfaces),
    floorArea: shape.floorArea,
    volume: shape.volume,
    perimeter: outdoors ? 4 * side : 0,
    growingArea: place.growingArea,
    floorBehind: outdoors ? 'ground' : 'room',
    length: side,
    width: side,
    plantLevel: 0,
    ownFloor: !surfaces.some((each) => each.tilt > facesDown),
    ...airShares(place),
    azimuth: 0,
  };
}
