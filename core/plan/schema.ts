import * as v from 'valibot';
import { clockTime, identifier, monthDay, quantity, words } from './fields.ts';
import { horizonPointSchema, siteSchema } from './site.ts';
import { shapeSchema } from './shapes.ts';
import {
  circulationSchema,
  doorSchema,
  fanSchema,
  fleeceSchema,
  heaterSchema,
  lampSchema,
  roomSchema,
  screenSchema,
  secondSkinSchema,
  shadeClothSchema,
  sheerSchema,
  upperShelfSchema,
  ventSchema,
  waterSchema,
} from './equipment.ts';

/** The version this code writes; older ones are migrated on the way in (`migrate.ts`). */
export const planSchemaVersion = 4;

const celsius = (least: number, most: number) => quantity(least, most, '°C');
const nullable = <T extends v.GenericSchema>(schema: T) => v.optional(v.nullable(schema), null);

/** Monthly normals: mean daily least and most [°C]; the rest may be null and is then estimated. */
export const monthSchema = v.pipe(
  v.strictObject({
    meanMinimum: celsius(-60, 45),
    meanMaximum: celsius(-60, 55),
    /** Mean daily global radiation on the horizontal [MJ m⁻² d⁻¹]. */
    globalRadiation: nullable(quantity(0, 45, 'MJ m⁻² d⁻¹')),
    /** Mean daily bright sunshine [h d⁻¹]. */
    sunshineHours: nullable(quantity(0, 24, 'h')),
    /** Mean wind at 10 m [m s⁻¹]. */
    wind: nullable(quantity(0, 30, 'm/s')),
  }),
  v.check((month) => month.meanMaximum >= month.meanMinimum, 'expected meanMaximum at least meanMinimum'),
);

export const climateSchema = v.variant('kind', [
  v.strictObject({
    kind: v.literal('normals'),
    months: v.pipe(v.array(monthSchema), v.length(12, 'expected twelve months, January first')),
    /** The coldest night of a usual winter, and of one winter in ten [°C]. */
    typicalLow: celsius(-60, 30),
    rareLow: celsius(-70, 30),
    seed: v.optional(v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(2147483647)), 1),
  }),
  /** A weather file kept in the store under `weatherId`. */
  v.strictObject({ kind: v.literal('file'), weatherId: identifier, name: words(200) }),
]);

/** Prices in `currency` (ISO 4217); the night price holds from `nightFrom` to `nightTo` where it is not null. */
export const tariffSchema = v.strictObject({
  currency: v.pipe(v.string(), v.regex(/^[A-Z]{3}$/, 'expected an ISO 4217 code such as EUR')),
  dayPrice: quantity(0, 100, 'per kWh'),
  nightPrice: nullable(quantity(0, 100, 'per kWh')),
  nightFrom: v.optional(clockTime, '23:00'),
  nightTo: v.optional(clockTime, '07:00'),
  propanePrice: v.optional(quantity(0, 1000, 'per kg'), 3),
  paraffinPrice: v.optional(quantity(0, 1000, 'per litre'), 2),
});

export const placeSchema = v.strictObject({
  id: identifier,
  name: words(),
  shape: shapeSchema,
  covering: identifier,
  /** The room around a tent, a shelf, a window bay, or behind a lean-to's wall; null outdoors. */
  room: nullable(roomSchema),
  lining: nullable(identifier),
  secondSkin: nullable(secondSkinSchema),
  screen: nullable(screenSchema),
  /** A curtain or blind between a window bay and its room. */
  curtain: nullable(screenSchema),
  fleece: nullable(fleeceSchema),
  shadeCloth: nullable(shadeClothSchema),
  /** A sheer curtain between a window bay's pane and its plants. */
  sheer: nullable(sheerSchema),
  /** Opaque base wall below the glazing: its height and what it is made of. */
  baseWall: nullable(v.strictObject({ height: quantity(0.05, 3, 'm'), covering: identifier })),
  /** Opaque covering of the side that faces away from the front, such as an insulated north wall. */
  shadySide: nullable(identifier),
  /** Boards of foam down the floor's edge: thickness and how deep they go [m]. */
  edgeInsulation: nullable(
    v.strictObject({ thickness: quantity(0.01, 0.3, 'm'), depth: quantity(0.1, 2, 'm') }),
  ),
  /** Share of the cover taken by frame and gutters, and share of light lost to dirt. */
  frameShare: v.optional(quantity(0, 0.6, ''), 0.1),
  dirtShare: v.optional(quantity(0, 0.6, ''), 0.05),
  /**
   * Bars that stand proud of the cover and shade aslant: how far apart and how deep [m]; their width is in
   * `frameShare`. Null: flat.
   */
  bars: nullable(v.strictObject({ spacing: quantity(0.05, 10, 'm'), depth: quantity(0.001, 0.5, 'm') })),
  /**
   * Gutter along the eaves that no light passes, half over the roof and half over the side: its width [m]. Null: it is
   * counted in `frameShare`.
   */
  gutter: nullable(quantity(0.01, 1, 'm')),
  /** Day of the year the cover is washed; dirt then builds up again to `dirtShare`. Null: as dirty all year. */
  cleanedOn: nullable(monthDay),
  /** What stands around this place, seen from its plants; null takes the site's skyline. */
  horizon: nullable(v.pipe(v.array(horizonPointSchema), v.maxLength(72))),
  /** Air changes an hour at 20 K and 3 m/s; scaled with wind and temperature difference. */
  leakage: quantity(0, 60, 'air changes/h'),
  vents: v.optional(v.pipe(v.array(ventSchema), v.maxLength(4, 'expected at most 4 kinds of vents')), []),
  door: nullable(doorSchema),
  fan: nullable(fanSchema),
  circulation: nullable(circulationSchema),
  floor: v.optional(v.picklist(['soil', 'slab', 'insulated-slab', 'gravel', 'raised']), 'soil'),
  /** Moisture of the soil under the place. */
  ground: v.optional(v.picklist(['dry', 'moist', 'wet']), 'moist'),
  /** What the plants stand on; null as is usual in such a place. */
  standing: nullable(v.picklist(['bench', 'ground'])),
  /** Whether snow is left to lie on the roof. */
  snow: v.optional(v.picklist(['cleared', 'left']), 'cleared'),
  water: v.optional(v.pipe(v.array(waterSchema), v.maxLength(20)), []),
  heaters: v.optional(v.pipe(v.array(heaterSchema), v.maxLength(6)), []),
  lamps: v.optional(v.pipe(v.array(lampSchema), v.maxLength(8)), []),
  /** Area plants stand on [m²]; its share of the floor is checked by eye, not by the schema (benches stack). */
  growingArea: quantity(0.01, 10000, 'm²'),
  /** Mean mass of moist mix and pots a square metre of growing area [kg m⁻²]. */
  potMass: v.optional(quantity(0, 400, 'kg/m²'), 30),
  /** Reflectance of the inner walls for plant light, 0–1 (white 0.8, silver film 0.9, glass by night 0.1). */
  wallReflectance: v.optional(quantity(0, 0.98, ''), 0.5),
  /** The same of what is over the lamps, and of plants and bench under them; null takes what is usual there. */
  ceilingReflectance: nullable(quantity(0, 0.98, '')),
  benchReflectance: nullable(quantity(0, 0.98, '')),
  /** A second level of plants over part of the first; `growingArea` counts both. */
  upperShelf: nullable(upperShelfSchema),
});

/** Part of the growing area: across it from the front, along it, and on which level; `all` takes the mean of it. */
export const spotSchema = v.strictObject({
  across: v.optional(v.picklist(['all', 'front', 'middle', 'back']), 'all'),
  along: v.optional(v.picklist(['all', 'middle', 'ends']), 'all'),
  level: v.optional(v.picklist(['all', 'lower', 'upper']), 'all'),
});

/** A day on which plants are carried `to` another place, or `outdoors`. */
export const moveSchema = v.strictObject({ on: monthDay, to: identifier });

/** A plant group of the user's own: a group of the catalogue, copied and changed. */
export const ownGroupSchema = v.strictObject({
  id: identifier,
  name: words(),
  /** What belongs to it, in the user's words. */
  examples: v.optional(v.pipe(v.string(), v.maxLength(400)), ''),
  /** The group of the catalogue it was copied from. */
  from: identifier,
  /** The numbers that differ: number name → value. */
  numbers: v.optional(v.record(v.pipe(v.string(), v.maxLength(40)), quantity(-80, 5000, '')), {}),
});

/** Named lot or single plant of one group: where it stands, and when it is carried elsewhere. */
export const lotSchema = v.strictObject({
  id: identifier,
  name: words(),
  /** A group of the catalogue or one of `ownGroups`. */
  group: identifier,
  /** Where it stands on the season's first day: a place, or `outdoors`. */
  place: identifier,
  /** Bench area these plants take [m²]. */
  area: quantity(0.001, 10000, 'm²'),
  /** How many plants; null where they are not counted. */
  plants: nullable(v.pipe(quantity(1, 100000, ''), v.integer('expected a whole number'))),
  /** Where on the growing area, for their light. */
  spot: v.optional(spotSchema, {}),
  /** Carried on a date to another place, in any order; on the season's first day all are back in `place`. */
  moves: v.optional(v.pipe(v.array(moveSchema), v.maxLength(12, 'expected at most 12 moves a year')), []),
  /** By the season (the program says when to stop), kept dry all winter, or watered whatever the state. */
  watering: v.optional(v.picklist(['by-season', 'dry', 'watered']), 'by-season'),
});

export const planSchema = v.strictObject({
  schemaVersion: v.literal(planSchemaVersion, `expected schemaVersion ${planSchemaVersion}`),
  name: words(),
  site: siteSchema,
  climate: climateSchema,
  tariff: tariffSchema,
  places: v.pipe(v.array(placeSchema), v.maxLength(24, 'expected at most 24 places')),
  lots: v.optional(v.pipe(v.array(lotSchema), v.maxLength(200)), []),
  /** Which published threshold counts the hours at risk of grey mould (`mouldRules`). */
  mouldRule: v.optional(v.picklist(['wet-93', 'wet-85', 'wet-night']), 'wet-93'),
  ownGroups: v.optional(v.pipe(v.array(ownGroupSchema), v.maxLength(100)), []),
  /** The user's own numbers for a group of the catalogue: group id → number name → value. */
  groupEdits: v.optional(
    v.record(identifier, v.record(v.pipe(v.string(), v.maxLength(40)), quantity(-80, 5000, ''))),
    {},
  ),
});

export type Plan = v.InferOutput<typeof planSchema>;
export type Place = Plan['places'][number];
export type Lot = Plan['lots'][number];
export type Spot = Lot['spot'];
export type Move = Lot['moves'][number];
export type OwnGroup = Plan['ownGroups'][number];

/** The id that stands for the open air where a lot's place is asked for. */
export const outdoors = 'outdoors';
export type Climate = Plan['climate'];
export type MonthNormals = v.InferOutput<typeof monthSchema>;
export type Tariff = Plan['tariff'];
