import * as v from 'valibot';
import { clockTime, identifier, monthDay, quantity, words } from './fields.ts';

export { lampSchema } from './lamp.ts';
export type { Lamp } from './lamp.ts';

const celsius = (least = -40, most = 60) => quantity(least, most, '°C');

const hoursSchema = v.strictObject({ from: clockTime, to: clockTime });

/**
 * A heater and its thermostat. Power is heat given at full output [W]. Where several heaters want to run, the
 * one with the higher set point goes first; of equals, the one that stands first in the list.
 */
export const heaterSchema = v.strictObject({
  id: identifier,
  name: words(60),
  kind: v.picklist(['fan', 'tubular', 'oil-filled', 'propane', 'paraffin', 'heat-mat', 'heat-pump']),
  power: quantity(1, 100000, 'W'),
  setPointDay: celsius(-20, 40),
  setPointNight: celsius(-20, 40),
  /** Switching differential of the thermostat [K]; the mean sits half of it above the set point. */
  differential: v.optional(quantity(0, 6, 'K'), 1),
  /** Hours in which the set points hold; null holds them all day. */
  hours: v.optional(v.nullable(hoursSchema), null),
  /** Outside its hours the heater only keeps this temperature [°C]; null leaves it off then. */
  frostWatch: v.optional(v.nullable(celsius(-20, 30)), null),
  /** Full bottle [kg of propane] or tank [litres of paraffin]; null where it is not reckoned with. */
  tank: v.optional(v.nullable(quantity(0.1, 5000, 'kg or litres')), null),
  /** Burnt gases go out through a flue: no vapour and no carbon dioxide inside, less of the fuel as heat. */
  flued: v.optional(v.boolean(), false),
  /** Heat given per electricity taken by a heat pump at 7 °C and at −7 °C outdoors (rating points of EN 14511). */
  coefficientAt7: v.optional(quantity(1, 8, ''), 3.6),
  coefficientAtMinus7: v.optional(quantity(1, 8, ''), 2.4),
});

export const roomSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('constant'), temperature: celsius() }),
  v.strictObject({
    kind: v.literal('schedule'),
    day: celsius(),
    night: celsius(),
    dayFrom: clockTime,
    dayTo: clockTime,
  }),
  /** Follows the outdoor day: `temperature` when it is 0 °C outdoors, plus `factor` times the outdoor 24-h mean. */
  v.strictObject({ kind: v.literal('following'), temperature: celsius(), factor: quantity(0, 1, '') }),
  /**
   * Measured temperatures, one every `stepHours` from 00:00 standard time of the day `from`; days the series
   * does not reach are at `otherwise`.
   */
  v.strictObject({
    kind: v.literal('series'),
    from: monthDay,
    stepHours: quantity(0.25, 24, 'h'),
    values: v.pipe(v.array(celsius()), v.minLength(1), v.maxLength(35136)),
    otherwise: celsius(),
  }),
]);

/** Containers of one kind. The form decides the face through which they take and give heat. */
export const waterSchema = v.strictObject({
  name: words(60),
  litres: quantity(0.1, 5000, 'litres'),
  count: quantity(1, 500, ''),
  form: v.optional(v.picklist(['drum', 'canister', 'bottle', 'trough']), 'drum'),
});

export const ventSchema = v.strictObject({
  position: v.optional(v.picklist(['roof', 'side', 'end']), 'roof'),
  /** Opening area fully open [m²] and the height between inlet and outlet [m]. */
  area: quantity(0.001, 100, 'm²'),
  height: quantity(0.05, 5, 'm'),
  /** Temperature at which they begin to open [°C]; −60 stands open always. */
  openAt: celsius(-60, 50),
  /** From closed to fully open over this many kelvin. */
  band: quantity(0.5, 20, 'K'),
});

export const fanSchema = v.strictObject({
  flow: quantity(1, 50000, 'm³/h'),
  watts: quantity(0, 5000, 'W'),
  onAt: celsius(-10, 60),
  band: quantity(0.5, 20, 'K'),
  /** Share of full speed it never falls below. */
  leastSpeed: v.optional(quantity(0, 1, ''), 0),
  /** Where its air comes from: what lies around the place, the room, or outdoors. */
  draws: v.optional(v.picklist(['around', 'room', 'outdoors']), 'around'),
});

/** A fan that stirs the inside air: it mixes heights and moves air over every face. */
export const circulationSchema = v.strictObject({
  watts: quantity(0, 2000, 'W'),
  /** Air speed it keeps among the plants [m s⁻¹]. */
  airSpeed: quantity(0.05, 3, 'm/s'),
  runs: v.optional(v.picklist(['always', 'day', 'night']), 'always'),
});

/** A door that stands open from one hour to another, on days at least as warm as `above` at that time. */
export const doorSchema = v.strictObject({
  area: quantity(0.01, 50, 'm²'),
  height: quantity(0.1, 5, 'm'),
  from: clockTime,
  to: clockTime,
  above: v.optional(v.nullable(celsius(-30, 40)), null),
});

/** A screen inside the cover or a curtain before a room: drawn from dusk to dawn, on cold nights, or by the clock. */
export const screenSchema = v.strictObject({
  covering: identifier,
  closedWhen: v.picklist(['night', 'cold-night', 'hours']),
  /** Drawn on nights with a forecast low under this [°C]; read for `cold-night` only. */
  below: v.optional(celsius(-30, 30), 5),
  /** Drawn from and to; read for `hours` only. */
  from: v.optional(clockTime, '17:00'),
  to: v.optional(clockTime, '08:00'),
});

/** Shade cloth laid over the cover outside, from one day of the year to another. */
export const shadeClothSchema = v.strictObject({ covering: identifier, from: monthDay, to: monthDay });

/** A sheer curtain between a window's pane and the plants, drawn from one hour to another; 00:00 to 24:00 always. */
export const sheerSchema = v.strictObject({ covering: identifier, from: clockTime, to: clockTime });

/**
 * A shelf over part of the plants: its boards stand `height` over the tops of the plants below, and its own
 * plants reach `plants` above it [m]. It lies in the middle or along one long side.
 */
export const upperShelfSchema = v.strictObject({
  height: quantity(0.05, 4, 'm'),
  plants: v.optional(quantity(0.01, 2, 'm'), 0.1),
  length: quantity(0.05, 60, 'm'),
  width: quantity(0.05, 20, 'm'),
  side: v.optional(v.picklist(['middle', 'front', 'back']), 'middle'),
});

/** A second skin inside the cover, with the air between them [m]. */
export const secondSkinSchema = v.strictObject({
  covering: identifier,
  gap: quantity(0.003, 0.5, 'm'),
});

/** Frost fleece directly over the plants. */
export const fleeceSchema = v.strictObject({
  covering: identifier,
  layers: quantity(1, 4, 'layers'),
  /** How far it comes down where plants stand on a bench: to the floor, closing in the floor's warmth, or to the bench. */
  hangs: v.optional(v.picklist(['floor', 'bench']), 'floor'),
  /** Laid every night, only on nights forecast colder than `below`, or all winter. */
  laidWhen: v.picklist(['cold-night', 'night', 'always']),
  below: v.optional(celsius(-30, 15), 2),
});

export type Heater = v.InferOutput<typeof heaterSchema>;
export type Room = v.InferOutput<typeof roomSchema>;
export type WaterStore = v.InferOutput<typeof waterSchema>;
export type Vent = v.InferOutput<typeof ventSchema>;
export type Fan = v.InferOutput<typeof fanSchema>;
export type Screen = v.InferOutput<typeof screenSchema>;
export type Fleece = v.InferOutput<typeof fleeceSchema>;
export type Circulation = v.InferOutput<typeof circulationSchema>;
export type Door = v.InferOutput<typeof doorSchema>;
export type ShadeCloth = v.InferOutput<typeof shadeClothSchema>;
export type Sheer = v.InferOutput<typeof sheerSchema>;
export type UpperShelf = v.InferOutput<typeof upperShelfSchema>;
export type SecondSkin = v.InferOutput<typeof secondSkinSchema>;
