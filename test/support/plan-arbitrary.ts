/**
 * Sound plans at random: all eight shapes with whatever can be put into them, in twelve climates. Every plan drawn is
 * one that `parsePlan` takes; one that it refuses is a fault of these lines or of the refusals, and thrown.
 */
import fc from 'fast-check';
import { parsePlan, plantGroups } from '../../core/index.ts';
import type { Plan } from '../../core/index.ts';
import { extentOf } from '../../core/plan/extent.ts';
import { climates } from './climates.ts';
import {
  circulations,
  doorShares,
  fans,
  fleeces,
  heaters,
  lamps,
  often,
  rooms,
  screens,
  seldom,
  ventShares,
  waterShares,
} from './equipment-arbitrary.ts';
import { between, shapes, skins, walls } from './shape-arbitrary.ts';

type Shape = Plan['places'][number]['shape'];

const drawn = fc.record({
  covered: shapes,
  room: rooms,
  lining: seldom(fc.constantFrom('bubble-lining', 'film-lining')),
  secondSkin: seldom(fc.record({ covering: skins, gap: between(0.005, 0.3) })),
  screen: seldom(screens),
  curtain: seldom(screens),
  fleece: seldom(fleeces),
  base: seldom(fc.record({ share: between(0.1, 1), covering: walls })),
  shadySide: seldom(walls),
  edgeInsulation: seldom(fc.record({ thickness: between(0.02, 0.2), depth: between(0.2, 1.2) })),
  frameShare: between(0, 0.4),
  dirtShare: between(0, 0.4),
  leakage: fc.constantFrom(1, 0, 0.2, 3, 10, 60),
  vents: ventShares,
  door: seldom(doorShares),
  fan: seldom(fans),
  circulation: seldom(circulations),
  floor: fc.constantFrom('soil', 'slab', 'insulated-slab', 'gravel', 'raised'),
  ground: fc.constantFrom('moist', 'dry', 'wet'),
  standing: often(fc.constantFrom('bench', 'ground')),
  snow: fc.constantFrom('cleared', 'left'),
  water: waterShares,
  heaters,
  lamps,
  planted: between(0.05, 1.5),
  potMass: between(0, 120),
  wallReflectance: between(0.05, 0.95),
  lots: fc.array(
    fc.record({
      group: fc.constantFrom(...plantGroups.map((group) => group.id)),
      watering: fc.constantFrom('by-season', 'dry', 'watered'),
    }),
    { maxLength: 2 },
  ),
});

type Drawn = typeof drawn extends fc.Arbitrary<infer T> ? T : never;

const has = (shape: Shape, behind: string) =>
  shape.kind === 'listed' && shape.surfaces.some((surface) => surface.behind === behind);

const clamped = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));

/** Makes figures of the shares and leaves out what has no room in the shape. */
function placeFrom(parts: Drawn, id: string): object {
  const {
    covered,
    base,
    circulation,
    door,
    fan,
    lamps: lit,
    lots: _lots,
    planted,
    vents,
    water,
    ...rest
  } = parts;
  const shape = covered.shape as Shape;
  const extent = extentOf(shape);
  const room = covered.indoors === 'always' || has(shape, 'room') ? rest.room : null;
  const opens =
    shape.kind === 'window-bay' ||
    shape.kind === 'shelf' ||
    (shape.kind === 'listed' && shape.surfaces.some(({ covering }) => covering === 'open'));
  const tall =
    'eavesHeight' in shape
      ? shape.eavesHeight
      : 'frontHeight' in shape
        ? shape.frontHeight
        : (extent.height ?? 2) / 2;
  const part = (position: 'roof' | 'side' | 'end') => extent[position] ?? 1;
  return {
    ...rest,
    id,
    name: `Place ${id}`,
    shape,
    covering: covered.covering,
    room,
    curtain: opens ? rest.curtain : null,
    baseWall: base === null ? null : { height: clamped(base.share * tall, 0.05, 3), covering: base.covering },
    vents: vents.map(({ share, ...vent }) => ({
      ...vent,
      area: clamped(share * part(vent.position), 0.001, 100),
    })),
    door:
      door === null
        ? null
        : {
            area: clamped(door.share * (extent.doorway ?? 1), 0.01, 50),
            height: clamped(door.tall * (extent.height ?? 1), 0.1, 5),
            from: door.hours.from,
            to: door.hours.to,
            above: door.above,
          },
    fan: fan === null ? null : fanOf(fan, extent.volume, room !== null),
    circulation: circulation === null ? null : circulationOf(circulation, extent.floor),
    lamps: lit.map(({ density, ...lamp }) => ({
      ...lamp,
      watts: clamped((density * extent.floor) / lamp.count, 0.5, 5000),
    })),
    water: water.map(({ share, ...store }, index) => ({
      name: `Water ${index}`,
      ...store,
      litres: clamped((share * extent.volume * 1000) / store.count, 0.1, 5000),
    })),
    growingArea: Math.max(0.01, planted * extent.floor),
  };
}

function fanOf(fan: NonNullable<Drawn['fan']>, volume: number, inRoom: boolean): object {
  const { changes, effort, ...rest } = fan;
  const flow = clamped(changes * volume, 1, 50000);
  return {
    ...rest,
    flow,
    watts: Math.min(5000, effort * flow),
    draws: rest.draws === 'room' && !inRoom ? 'around' : rest.draws,
  };
}

function circulationOf(fan: NonNullable<Drawn['circulation']>, floor: number): object {
  const { density, ...rest } = fan;
  return { ...rest, watts: Math.min(2000, density * floor) };
}

function planFrom(climate: object, places: readonly Drawn[]): Plan {
  const reading = parsePlan({
    ...climate,
    places: places.map((parts, index) => placeFrom(parts, `p${index}`)),
    lots: places.flatMap(({ lots }, place) =>
      lots.map((lot, index) => ({
        ...lot,
        id: `lot-${place}-${index}`,
        name: lot.group,
        place: `p${place}`,
        area: 0.05,
      })),
    ),
  });
  if (reading.ok) return reading.plan;
  throw new Error(
    `expected a sound plan, got ${reading.problems.map((each) => `${each.path}: ${each.message}`).join('; ')}`,
  );
}

/** One place in three of four plans, two in the fourth. */
const placesOf = fc.oneof(
  { weight: 3, arbitrary: fc.array(drawn, { minLength: 1, maxLength: 1 }) },
  { weight: 1, arbitrary: fc.array(drawn, { minLength: 2, maxLength: 2 }) },
);

export const soundPlans: fc.Arbitrary<Plan> = fc
  .tuple(fc.constantFrom(...climates), placesOf)
  .map(([{ frame }, places]) => planFrom(frame, places));
