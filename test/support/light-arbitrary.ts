/** What light adds to a sound plan: cloths, washing, skylines, reveals, lamps of every source, beam and control. */
import fc from 'fast-check';
import { parsePlan } from '../../core/index.ts';
import type { Lamp, Place, Plan } from '../../core/index.ts';
import { daylightReaches } from '../../core/plan/daylit.ts';
import { often, seldom } from './equipment-arbitrary.ts';
import { soundPlans } from './plan-arbitrary.ts';
import { between } from './shape-arbitrary.ts';

const photometry = fc.record({
  name: fc.constant('drawn.ies'),
  vertical: fc.constant<number[]>([0, 30, 60, 90]),
  planes: fc.constant<number[]>([0, 90]),
  candela: fc.array(between(0, 500), { minLength: 8, maxLength: 8 }).map((list) => [100, ...list.slice(1)]),
});

const lampParts = fc.record({
  light: fc.oneof(
    fc.constant({ kind: 'efficacy' as const }),
    fc.record({
      kind: fc.constant('lumens' as const),
      lumens: between(200, 9000),
      luxPerMicromole: often(between(8, 80)),
    }),
    fc.record({
      kind: fc.constant('reading' as const),
      value: between(50, 8000),
      unit: fc.constantFrom('lux' as const, 'ppfd' as const),
      distance: between(0.1, 1),
      luxPerMicromole: fc.constant(null),
    }),
  ),
  beam: fc.oneof(
    fc.constant({ kind: 'even' as const }),
    fc.record({ kind: fc.constant('cosine-power' as const), power: between(0, 20) }),
    fc.record({ kind: fc.constant('file' as const), photometry, turned: between(-90, 90) }),
  ),
  arrangement: fc.constantFrom('panel' as const, 'bars' as const, 'bulbs' as const),
  along: between(-0.09, 0.09),
  across: between(-0.09, 0.09),
  control: fc.oneof(
    fc.constant({ kind: 'clock' as const }),
    fc.record({
      kind: fc.constant('extend' as const),
      hours: between(8, 18),
      end: fc.constantFrom('dawn' as const, 'dusk' as const, 'both' as const),
    }),
    fc.record({
      kind: fc.constant('daylight' as const),
      below: between(20, 600),
      deadTime: fc.constantFrom(0, 30, 120),
    }),
  ),
  mostDay: seldom(between(18, 20)),
  burnt: fc.constantFrom(0, 8000, 90000),
  wattsAtHalf: seldom(between(0.5, 1)),
});

const placeParts = fc.record({
  shadeCloth: seldom(
    fc.record({
      covering: fc.constantFrom('shade-30', 'shade-50'),
      from: fc.constant('05-01'),
      to: fc.constant('09-15'),
    }),
  ),
  sheer: often(
    fc.record({ covering: fc.constant('sheer-voile'), from: fc.constant('09:00'), to: fc.constant('17:00') }),
  ),
  cleanedOn: often(fc.constantFrom('03-01', '10-20')),
  horizon: seldom(
    fc.array(
      fc.record({ azimuth: between(0, 359), elevation: between(0, 50), passes: fc.constantFrom(0, 0.5) }),
      { minLength: 1, maxLength: 5 },
    ),
  ),
  ceilingReflectance: often(between(0, 0.95)),
  benchReflectance: often(between(0, 0.5)),
  reveal: between(0, 0.4),
  distance: between(0, 0.6),
  shelf: seldom(
    fc.record({
      share: between(0.1, 0.9),
      rise: between(0.3, 0.6),
      side: fc.constantFrom('middle' as const, 'front' as const, 'back' as const),
    }),
  ),
  lamps: fc.array(lampParts, { minLength: 2, maxLength: 2 }),
});

type PlaceParts = typeof placeParts extends fc.Arbitrary<infer T> ? T : never;

function lampWith(lamp: Lamp, parts: PlaceParts['lamps'][number], daylit: boolean): Lamp {
  const { control, wattsAtHalf, mostDay, ...rest } = parts;
  return {
    ...lamp,
    ...rest,
    control: daylit ? control : { kind: 'clock' },
    mostDay,
    wattsAtHalf: wattsAtHalf === null ? null : Math.max(0.1, Math.min(lamp.watts, wattsAtHalf * lamp.watts)),
  };
}

/** A place with light's own things added where they have room; an upper shelf over part of the plants of a tent. */
export function litPlace(place: Place, parts: PlaceParts): Place {
  const { lamps, reveal, distance, shelf, sheer, ...rest } = parts;
  const { shape } = place;
  const daylit = daylightReaches(place);
  const window = shape.kind === 'window-bay';
  const tiered = shape.kind === 'tent' && shelf !== null && shape.height > 1;
  const upperShelf = tiered
    ? {
        height: shelf.rise * shape.height,
        plants: 0.1,
        length: shelf.share * shape.length,
        width: shelf.share * shape.width,
        side: shelf.side,
      }
    : null;
  return {
    ...place,
    ...rest,
    shape: window ? { ...shape, reveal, distance: distance * shape.depth } : shape,
    sheer: window ? sheer : null,
    upperShelf,
    growingArea:
      upperShelf === null
        ? place.growingArea
        : Math.max(place.growingArea, upperShelf.length * upperShelf.width * 1.5),
    lamps: place.lamps.map((lamp, index) => lampWith(lamp, lamps[index], daylit)),
  };
}

/** Sound plans with light's own things in them; one that `parsePlan` refuses is a fault and thrown. */
export const litPlans: fc.Arbitrary<Plan> = fc
  .tuple(soundPlans, fc.array(placeParts, { minLength: 2, maxLength: 2 }))
  .map(([plan, parts]) => {
    const reading = parsePlan({
      ...plan,
      places: plan.places.map((place, index) => litPlace(place, parts[index])),
    });
    if (reading.ok) return reading.plan;
    throw new Error(
      `expected a sound plan, got ${reading.problems.map((each) => `${each.path}: ${each.message}`).join('; ')}`,
    );
  });
