import type { Shape, ShapeOf } from '../plan/shapes.ts';
import type { Point, Polygon } from './polygon.ts';
import { facingAwayFrom, middleOf } from './polygon.ts';

/** What part of a place a face is. */
export type FacePart =
  'roof' | 'side' | 'gable' | 'end' | 'light' | 'wall' | 'pane' | 'opening' | 'reveal' | 'floor';

/** One flat face of a shape, corners in the place's own frame, outward normal. */
export interface Face {
  readonly part: FacePart;
  readonly polygon: Polygon;
}

/** A shape with geometry: all but the hand-made list. */
export type SolidShape = Exclude<Shape, ShapeOf<'listed'>>;

/** Facets of a tunnel's arc. */
export const tunnelFacets = 10;

type Profile = readonly (readonly [x: number, z: number])[];

/** A prism of a cross-section along the length; `parts` names the face over each edge of the profile. */
function prism(profile: Profile, length: number, parts: readonly FacePart[], end: FacePart): Face[] {
  const faces: Face[] = profile.map(([x, z], i) => {
    const [nx, nz] = profile[(i + 1) % profile.length];
    return {
      part: parts[i],
      polygon: [
        [x, 0, z],
        [nx, 0, nz],
        [nx, length, nz],
        [x, length, z],
      ],
    };
  });
  const near: Polygon = profile.map(([x, z]): Point => [x, 0, z]);
  const far: Polygon = profile.map(([x, z]): Point => [x, length, z]);
  return [...faces, { part: end, polygon: near }, { part: end, polygon: far }];
}

function box(length: number, width: number, height: number, side: FacePart, top: FacePart): Face[] {
  const profile: Profile = [
    [0, 0],
    [0, height],
    [width, height],
    [width, 0],
  ];
  return prism(profile, length, [side, top, side, 'floor'], side);
}

/** Corners of a half ellipse from the front foot over the top to the back foot. */
export function arch(width: number, height: number, facets: number): Profile {
  return Array.from({ length: facets + 1 }, (_, i) => {
    const angle = Math.PI * (1 - i / facets);
    const x = (width / 2) * (1 + Math.cos(angle));
    return [x, i === 0 || i === facets ? 0 : height * Math.sin(angle)] as const;
  });
}

function rawFaces(shape: SolidShape): Face[] {
  switch (shape.kind) {
    case 'even-span': {
      const { width, eavesHeight: e, ridgeHeight: r } = shape;
      const profile: Profile = [
        [0, 0],
        [0, e],
        [width / 2, r],
        [width, e],
        [width, 0],
      ];
      return prism(profile, shape.length, ['side', 'roof', 'roof', 'side', 'floor'], 'gable');
    }
    case 'lean-to': {
      const { width, eavesHeight: e, ridgeHeight: r } = shape;
      const profile: Profile = [
        [0, 0],
        [0, e],
        [width, r],
        [width, 0],
      ];
      return prism(profile, shape.length, ['side', 'roof', 'wall', 'floor'], 'gable');
    }
    case 'tunnel': {
      const parts = Array<FacePart>(tunnelFacets).fill('roof');
      return prism(arch(shape.width, shape.height, tunnelFacets), shape.length, [...parts, 'floor'], 'end');
    }
    case 'cold-frame': {
      const { width, frontHeight: f, backHeight: b } = shape;
      const profile: Profile = [
        [0, 0],
        [0, f],
        [width, b],
        [width, 0],
      ];
      return prism(profile, shape.length, ['side', 'light', 'side', 'floor'], 'end');
    }
    case 'tent':
      return box(shape.length, shape.width, shape.height, 'side', 'roof');
    case 'shelf':
      return box(shape.length, shape.width, shape.height, 'opening', 'opening');
    case 'window-bay': {
      const profile: Profile = [
        [0, 0],
        [0, shape.height],
        [shape.depth, shape.height],
        [shape.depth, 0],
      ];
      return prism(profile, shape.width, ['pane', 'reveal', 'opening', 'floor'], 'reveal');
    }
  }
}

/** Faces of a shape, floor included, closed and with outward normals. */
export function facesOf(shape: SolidShape): Face[] {
  const faces = rawFaces(shape);
  const inside = middleOf(faces.flatMap((face) => [...face.polygon]));
  return faces.map(({ part, polygon }) => ({ part, polygon: facingAwayFrom(polygon, inside) }));
}

/** Length along y and width along x of the floor [m]. */
export function footprint(shape: SolidShape): { length: number; width: number } {
  if (shape.kind === 'window-bay') return { length: shape.width, width: shape.depth };
  return { length: shape.length, width: shape.width };
}

/** Azimuth the front faces [degrees]; shapes without one face north, which nothing depends on. */
export function frontAzimuth(shape: SolidShape): number {
  return 'azimuth' in shape ? shape.azimuth : 0;
}
