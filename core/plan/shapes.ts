import * as v from 'valibot';
import { azimuth, quantity, words, identifier } from './fields.ts';

const metres = (least: number, most: number) => quantity(least, most, 'm');

/** Two equal roof slopes on low walls; the ridge runs along `length`, one long side faces `azimuth`. */
export const evenSpanSchema = v.strictObject({
  kind: v.literal('even-span'),
  length: metres(0.5, 60),
  width: metres(0.5, 20),
  eavesHeight: metres(0.3, 6),
  ridgeHeight: metres(0.5, 10),
  azimuth,
});

/** One slope against a wall; the low side faces `azimuth`, the wall stands behind along `length`. */
export const leanToSchema = v.strictObject({
  kind: v.literal('lean-to'),
  length: metres(0.5, 60),
  width: metres(0.4, 10),
  eavesHeight: metres(0.3, 6),
  ridgeHeight: metres(0.5, 10),
  azimuth,
  wall: v.strictObject({
    material: v.picklist(['brick', 'stone', 'insulated', 'timber']),
    thickness: metres(0.01, 1),
    /** What is behind the wall: a heated room or the open air. */
    behind: v.picklist(['room', 'outdoors']),
  }),
});

/** Half an ellipse of film on hoops along `length`; one long side faces `azimuth`. */
export const tunnelSchema = v.strictObject({
  kind: v.literal('tunnel'),
  length: metres(0.5, 100),
  width: metres(0.4, 12),
  height: metres(0.3, 6),
  azimuth,
});

/** A low box with a sloping light on top; the low front faces `azimuth`. */
export const coldFrameSchema = v.strictObject({
  kind: v.literal('cold-frame'),
  length: metres(0.3, 10),
  width: metres(0.3, 3),
  frontHeight: metres(0.05, 2),
  backHeight: metres(0.05, 2),
  azimuth,
});

/** A closed fabric box inside a room. */
export const tentSchema = v.strictObject({
  kind: v.literal('tent'),
  length: metres(0.2, 10),
  width: metres(0.2, 10),
  height: metres(0.2, 4),
});

/** An open lit shelf in a room. */
export const shelfSchema = v.strictObject({
  kind: v.literal('shelf'),
  length: metres(0.2, 10),
  width: metres(0.1, 3),
  height: metres(0.1, 3),
});

/**
 * The bay before a window: pane `width` × `height` facing `azimuth`, plants from `distance` to `depth` behind it.
 * The pane sits `reveal` behind the wall's outer face, in an opening of its own size.
 */
export const windowBaySchema = v.strictObject({
  kind: v.literal('window-bay'),
  width: metres(0.2, 8),
  height: metres(0.2, 4),
  depth: metres(0.1, 3),
  distance: v.optional(metres(0, 2.9), 0),
  reveal: v.optional(metres(0, 1), 0),
  azimuth,
});

/** One layer of an opaque build-up; a density of 0 makes it massless. */
export const layerSchema = v.strictObject({
  thickness: quantity(0.0001, 5, 'm'),
  conductivity: quantity(0.001, 400, 'W/mK'),
  density: quantity(0, 12000, 'kg/m³'),
  specificHeat: quantity(0, 5000, 'J/kgK'),
});

const share = quantity(0, 1, '');

/** What a listed surface is built of: opaque layers from the inside out, or one or two clear panes. */
export const buildSchema = v.variant('kind', [
  v.strictObject({
    kind: v.literal('layers'),
    layers: v.pipe(v.array(layerSchema), v.minLength(1, 'expected at least one layer'), v.maxLength(8)),
    /** Share of the sun each face takes up, and its long-wave emissivity. */
    absorptance: v.optional(share, 0.6),
    absorptanceInside: v.optional(share, 0.6),
    emissivity: v.optional(share, 0.9),
    emissivityInside: v.optional(share, 0.9),
  }),
  v.strictObject({
    kind: v.literal('panes'),
    panes: v.picklist([1, 2]),
    thickness: quantity(0.0001, 0.05, 'm'),
    conductivity: v.optional(quantity(0.01, 5, 'W/mK'), 1),
    refractiveIndex: v.optional(quantity(1, 2.5, ''), 1.526),
    /** Extinction for the whole solar spectrum [m⁻¹]. */
    extinction: quantity(0, 300, 'per m'),
    /** Resistance of the gap between two panes [m² K W⁻¹]. */
    gapResistance: v.optional(quantity(0, 2, 'm²K/W'), 0.17),
    emissivity: v.optional(share, 0.84),
  }),
]);

/** A surface of the user's own: an entry of the catalogue, or a build-up of its own. */
export const listedSurfaceSchema = v.pipe(
  v.strictObject({
    name: words(60),
    area: quantity(0.001, 10000, 'm²'),
    tilt: quantity(0, 180, 'degrees from horizontal'),
    azimuth,
    covering: v.optional(v.nullable(identifier), null),
    build: v.optional(v.nullable(buildSchema), null),
    behind: v.picklist(['outdoors', 'room', 'ground', 'nothing']),
  }),
  v.check(
    (surface) => (surface.covering === null) !== (surface.build === null),
    'expected a covering of the catalogue or a build-up of its own, not both',
  ),
  v.check(
    (surface) =>
      surface.build?.kind !== 'panes' || surface.behind === 'outdoors' || surface.behind === 'room',
    'expected panes to have the open air or a room behind them',
  ),
);

/**
 * Surfaces listed by hand, with the floor and the air they enclose. Where a surface faces down (tilt over
 * 150°) it is the floor; else the place stands on the ground as its `floor` says.
 */
export const listedSchema = v.strictObject({
  kind: v.literal('listed'),
  floorArea: quantity(0.01, 10000, 'm²'),
  volume: quantity(0.001, 100000, 'm³'),
  surfaces: v.pipe(
    v.array(listedSurfaceSchema),
    v.minLength(1, 'expected at least one surface'),
    v.maxLength(60),
  ),
});

export const shapeSchema = v.variant('kind', [
  v.pipe(
    evenSpanSchema,
    v.check((shape) => shape.ridgeHeight > shape.eavesHeight, 'expected ridgeHeight above eavesHeight'),
  ),
  v.pipe(
    leanToSchema,
    v.check((shape) => shape.ridgeHeight > shape.eavesHeight, 'expected ridgeHeight above eavesHeight'),
  ),
  tunnelSchema,
  v.pipe(
    coldFrameSchema,
    v.check((shape) => shape.backHeight >= shape.frontHeight, 'expected backHeight at least frontHeight'),
  ),
  tentSchema,
  shelfSchema,
  windowBaySchema,
  listedSchema,
]);

export type Shape = v.InferOutput<typeof shapeSchema>;
export type ShapeKind = Shape['kind'];
export type ShapeOf<K extends ShapeKind> = Extract<Shape, { kind: K }>;
