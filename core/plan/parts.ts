import * as v from 'valibot';
import { fleeceSchema, heaterSchema, screenSchema, waterSchema } from './equipment.ts';
import type { Fleece, Heater, Screen, WaterStore } from './equipment.ts';
import { lampSchema } from './lamp.ts';
import type { Lamp } from './lamp.ts';
import { lotSchema, placeSchema } from './schema.ts';
import type { Lot, Place } from './schema.ts';

/** A heater with every field it leaves out at its usual value. Throws where a value is out of range. */
export const heaterOf = (part: v.InferInput<typeof heaterSchema>): Heater => v.parse(heaterSchema, part);

/** A fleece with every field it leaves out at its usual value. */
export const fleeceOf = (part: v.InferInput<typeof fleeceSchema>): Fleece => v.parse(fleeceSchema, part);

/** A screen or curtain with every field it leaves out at its usual value. */
export const screenOf = (part: v.InferInput<typeof screenSchema>): Screen => v.parse(screenSchema, part);

/** A kind of water container with every field it leaves out at its usual value. */
export const waterOf = (part: v.InferInput<typeof waterSchema>): WaterStore => v.parse(waterSchema, part);

/** A place with every field it leaves out at its usual value. */
export const placeOf = (part: v.InferInput<typeof placeSchema>): Place => v.parse(placeSchema, part);

/** A lamp with every field it leaves out at its usual value. */
export const lampOf = (part: v.InferInput<typeof lampSchema>): Lamp => v.parse(lampSchema, part);

/** A lot with every field it leaves out at its usual value. */
export const lotOf = (part: v.InferInput<typeof lotSchema>): Lot => v.parse(lotSchema, part);
