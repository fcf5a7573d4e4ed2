import * as v from 'valibot';
import { clockTime, identifier, quantity, words } from './fields.ts';

const nullable = <T extends v.GenericSchema>(schema: T) => v.optional(v.nullable(schema), null);

/** Most numbers of a light distribution a plan keeps. */
export const mostCandela = 20000;

const rising = (values: readonly number[]) => values.every((value, i) => i === 0 || value > values[i - 1]);

/**
 * How a fitting throws its light, as a photometric file (IES LM-63) gives it, brought to type C: vertical angles
 * from straight down, planes round the vertical axis [degrees], and candela plane by plane with all multipliers
 * applied. Planes end at 0 (the same all round), 90 (four equal quarters), 180 (two equal halves) or 360.
 */
export const photometrySchema = v.pipe(
  v.strictObject({
    name: words(200),
    vertical: v.pipe(v.array(quantity(0, 180, 'degrees')), v.minLength(2), v.maxLength(361)),
    planes: v.pipe(v.array(quantity(0, 360, 'degrees')), v.minLength(1), v.maxLength(361)),
    candela: v.pipe(v.array(quantity(0, 1e8, 'candela')), v.minLength(2), v.maxLength(mostCandela)),
  }),
  v.check(
    ({ vertical, planes, candela }) => candela.length === vertical.length * planes.length,
    'expected one candela for each vertical angle of each plane',
  ),
  v.check(({ vertical, planes }) => rising(vertical) && rising(planes), 'expected rising angles'),
  v.check(
    ({ planes }) => planes[0] === 0 && [0, 90, 180, 360].includes(planes[planes.length - 1]),
    'expected planes from 0 to 0, 90, 180 or 360 degrees',
  ),
);

/** Lux for one µmol m⁻² s⁻¹ of this lamp's light; null takes the technology's own. */
const luxPerMicromole = nullable(quantity(1, 150, 'lux per µmol'));

/** Where the photon flux of one lamp at full output comes from. */
export const lightSourceSchema = v.variant('kind', [
  /** Watts times the photon efficacy. */
  v.strictObject({ kind: v.literal('efficacy') }),
  /** Lumens of one fitting and the lux for a micromole of its spectrum. */
  v.strictObject({ kind: v.literal('lumens'), lumens: quantity(1, 1e6, 'lm'), luxPerMicromole }),
  /** A reading straight under the middle of one lamp, `distance` below its face, with no other light. */
  v.strictObject({
    kind: v.literal('reading'),
    value: quantity(0.1, 1e6, ''),
    unit: v.picklist(['lux', 'ppfd']),
    distance: quantity(0.05, 10, 'm'),
    luxPerMicromole,
  }),
  /** Lumens summed from the beam's photometric file. */
  v.strictObject({ kind: v.literal('file'), luxPerMicromole }),
]);

/** How the light of one fitting is thrown. */
export const beamSchema = v.variant('kind', [
  /** An evenly bright flat face (Lambert's cosine law). */
  v.strictObject({ kind: v.literal('even') }),
  /** Intensity falling with a power of the cosine: 0.5 a wide lens, 1 the even face, 10 a narrow reflector. */
  v.strictObject({ kind: v.literal('cosine-power'), power: quantity(0.5, 80, '') }),
  v.strictObject({
    kind: v.literal('file'),
    photometry: photometrySchema,
    /** Turned about the vertical, anticlockwise seen from above, from plane 0 along the area's length [degrees]. */
    turned: v.optional(quantity(-180, 180, 'degrees'), 0),
  }),
]);

/** What switches a lamp. */
export const lampControlSchema = v.variant('kind', [
  /** From `on` to `off`, and in the second block where there is one. */
  v.strictObject({ kind: v.literal('clock') }),
  /** Lengthens the natural day (civil twilight counts) to `hours`, before dawn, after dusk or half and half; the clock times are not read. */
  v.strictObject({
    kind: v.literal('extend'),
    hours: quantity(1, 24, 'h'),
    end: v.picklist(['dawn', 'dusk', 'both']),
  }),
  /**
   * Within its clock times only while daylight at the plants is under `below` [µmol m⁻² s⁻¹]; once switched it
   * stays so for `deadTime` [min].
   */
  v.strictObject({
    kind: v.literal('daylight'),
    below: quantity(1, 2000, 'µmol m⁻² s⁻¹'),
    deadTime: v.optional(quantity(0, 240, 'min'), 30),
  }),
]);

/** A lamp over the growing area. Watts are at the plug for one lamp at full output. */
export const lampSchema = v.strictObject({
  id: identifier,
  name: words(60),
  technology: identifier,
  watts: quantity(0.5, 5000, 'W'),
  /** Photon efficacy of the whole fitting [µmol J⁻¹], 400–700 nm; read where `light` is by efficacy. */
  efficacy: quantity(0.05, 4.2, 'µmol/J'),
  light: v.optional(lightSourceSchema, { kind: 'efficacy' }),
  beam: v.optional(beamSchema, { kind: 'even' }),
  count: quantity(1, 100, ''),
  /** A grid of panels, a rank of bars side by side across the area, or a grid of bulbs (round, `length` across). */
  arrangement: v.optional(v.picklist(['panel', 'bars', 'bulbs']), 'panel'),
  /** Height of the light-giving face over the plants' tops [m], and the shelf those plants stand on. */
  height: quantity(0.02, 5, 'm'),
  shelf: v.optional(v.picklist(['lower', 'upper']), 'lower'),
  /** How far the middle of all of them hangs off the middle of the area, along its length and across [m]. */
  along: v.optional(quantity(-10, 10, 'm'), 0),
  across: v.optional(quantity(-10, 10, 'm'), 0),
  /** Size of the light-giving face of one lamp [m]. */
  length: quantity(0.01, 3, 'm'),
  width: quantity(0.01, 3, 'm'),
  on: clockTime,
  off: clockTime,
  /** A second block of hours in the day. */
  second: nullable(v.strictObject({ on: clockTime, off: clockTime })),
  control: v.optional(lampControlSchema, { kind: 'clock' }),
  /** The lamp never makes the day of the plants longer than this [h]: for plants that flower in short days. */
  mostDay: nullable(quantity(4, 24, 'h')),
  /** Output as a share of full, 0.1–1. */
  dimming: v.optional(quantity(0.1, 1, ''), 1),
  /** Watts of one lamp at half its light; null takes the technology's dimmer curve. */
  wattsAtHalf: nullable(quantity(0.1, 5000, 'W')),
  driver: v.optional(v.picklist(['inside', 'outside']), 'inside'),
  /** Hours burnt so far, and hours until it is replaced; null takes the technology's life. */
  burnt: v.optional(quantity(0, 500000, 'h'), 0),
  life: nullable(quantity(100, 500000, 'h')),
  /** Purchase price of all `count` lamps, in the plan's currency. */
  price: v.optional(quantity(0, 100000, ''), 0),
});

export type Lamp = v.InferOutput<typeof lampSchema>;
export type LightSource = Lamp['light'];
export type Beam = Lamp['beam'];
export type LampControl = Lamp['control'];
export type Photometry = v.InferOutput<typeof photometrySchema>;
