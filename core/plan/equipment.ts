import * as v from 'valibot';
import { clockTime, identifier, quantity, words } from './fields.ts';

const celsius = (least = -40, most = 60) => quantity(least, most, '°C');

/** A heater and its thermostat. Power is heat given at full output [W]. */
export const heaterSchema = v.strictObject({
  id: identifier,
  name: words(60),
  kind: v.picklist(['fan', 'tubular', 'oil-filled', 'propane', 'paraffin', 'heat-mat']),
  power: quantity(1, 100000, 'W'),
  setPointDay: celsius(-20, 40),
  setPointNight: celsius(-20, 40),
  /** Switching differential of the thermostat [K]; the mean sits half of it above the set point. */
  differential: v.optional(quantity(0, 6, 'K'), 1),
});

/** A lamp over the growing area. Watts are at the plug for one lamp at full output. */
export const lampSchema = v.strictObject({
  id: identifier,
  name: words(60),
  technology: identifier,
  watts: quantity(0.5, 5000, 'W'),
  /** Photon efficacy of the whole fitting [µmol J⁻¹], 400–700 nm. */
  efficacy: quantity(0.05, 4.2, 'µmol/J'),
  count: quantity(1, 100, ''),
  /** Height of the light-giving face over the plants' tops [m]. */
  height: quantity(0.02, 5, 'm'),
  /** Size of the light-giving face of one lamp [m]. */
  length: quantity(0.01, 3, 'm'),
  width: quantity(0.01, 3, 'm'),
  on: clockTime,
  off: clockTime,
  /** Output as a share of full, 0.1–1. */
  dimming: v.optional(quantity(0.1, 1, ''), 1),
  driver: v.optional(v.picklist(['inside', 'outside']), 'inside'),
  /** Purchase price of all `count` lamps, in the plan's currency. */
  price: v.optional(quantity(0, 100000, ''), 0),
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
]);

export const waterSchema = v.strictObject({
  name: words(60),
  litres: quantity(0.1, 5000, 'litres'),
  count: quantity(1, 500, ''),
});

export const ventSchema = v.strictObject({
  /** Opening area fully open [m²] and the height between inlet and outlet [m]. */
  area: quantity(0.001, 100, 'm²'),
  height: quantity(0.05, 5, 'm'),
  openAt: celsius(-10, 50),
  /** From closed to fully open over this many kelvin. */
  band: quantity(0.5, 20, 'K'),
});

export const fanSchema = v.strictObject({
  flow: quantity(1, 50000, 'm³/h'),
  watts: quantity(0, 5000, 'W'),
  onAt: celsius(-10, 60),
  band: quantity(0.5, 20, 'K'),
});

/** A night screen drawn inside the cover between dusk and dawn, or when it is colder than `below`. */
export const screenSchema = v.strictObject({
  covering: identifier,
  closedWhen: v.picklist(['night', 'cold-night']),
  below: v.optional(celsius(-30, 30), 5),
});

/** Frost fleece directly over the plants. */
export const fleeceSchema = v.strictObject({
  covering: identifier,
  layers: quantity(1, 4, 'layers'),
  /** Laid every night, only on nights forecast colder than `below`, or all winter. */
  laidWhen: v.picklist(['cold-night', 'night', 'always']),
  below: v.optional(celsius(-30, 15), 2),
});

export type Heater = v.InferOutput<typeof heaterSchema>;
export type Lamp = v.InferOutput<typeof lampSchema>;
export type Room = v.InferOutput<typeof roomSchema>;
export type WaterStore = v.InferOutput<typeof waterSchema>;
export type Vent = v.InferOutput<typeof ventSchema>;
export type Fan = v.InferOutput<typeof fanSchema>;
export type Screen = v.InferOutput<typeof screenSchema>;
export type Fleece = v.InferOutput<typeof fleeceSchema>;
