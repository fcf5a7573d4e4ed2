/** Light put into a sound place at random: lamps of every kind, hours and control, cloths, shelves, skylines. */
import fc from 'fast-check';
import type { CoveringUse, Lamp, Place, Plan } from '../../core/index.ts';
import { coveringsFor, daylightReaches, holdsAtNoTime, hoursOverlap, parsePlan } from '../../core/index.ts';
import { extentOf, mostHeight } from '../../core/plan/extent.ts';
import { often, seldom } from './equipment-arbitrary.ts';
import { soundPlans } from './plan-arbitrary.ts';
import { between, hours } from './shape-arbitrary.ts';

const ids = (use: CoveringUse) => coveringsFor(use).map(({ id }) => id);
const days = fc.constantFrom('01-01', '03-15', '06-21', '10-01', '12-31');

const lampLightDrawn = fc.record({
  light: fc.oneof(
    fc.constant({ kind: 'efficacy' as const }),
    fc.record({
      kind: fc.constant('lumens' as const),
      lumens: fc.constantFrom(400, 3000, 20000),
      luxPerMicromole: fc.constantFrom(null, 54, 80),
    }),
    fc.record({
      kind: fc.constant('reading' as const),
      value: fc.constantFrom(100, 900, 9000),
      unit: fc.constantFrom('lux' as const, 'ppfd' as const),
      distance: between(0.1, 1),
      luxPerMicromole: fc.constantFrom(null, 70),
    }),
    fc.constant({ kind: 'file' as const, luxPerMicromole: null }),
  ),
  beam: fc.oneof(
    fc.constant({ kind: 'even' as const }),
    fc.record({ kind: fc.constant('cosine-power' as const), power: between(0.5, 40) }),
  ),
  turned: between(-180, 180),
  arrangement: fc.constantFrom('panel' as const, 'bars' as const, 'bulbs' as const),
  upper: fc.boolean(),
  along: between(-1, 1),
  across: between(-1, 1),
  second: seldom(hours),
  control: fc.oneof(
    fc.constant({ kind: 'clock' as const }),
    fc.record({
      kind: fc.constant('extend' as const),
      hours: between(8, 20),
      end: fc.constantFrom('dawn' as const, 'dusk' as const, 'both' as const),
    }),
    fc.record({
      kind: fc.constant('daylight' as const),
      below: between(5, 600),
      deadTime: fc.constantFrom(30, 0, 240),
    }),
  ),
  mostDay: seldom(between(4, 16)),
  half: seldom(between(0.3, 1)),
  burnt: fc.constantFrom(0, 5000, 100000),
  life: seldom(fc.constantFrom(1000, 60000)),
});

const placeLightDrawn = fc.record({
  shade: seldom(fc.record({ covering: fc.constantFrom(...ids('shade')), from: days, to: days })),
  sheer: often(fc.record({ covering: fc.constantFrom(...ids('sheer')), times: hours })),
  cleanedOn: seldom(days),
  horizon: seldom(
    fc.array(fc.record({ azimuth: between(0, 360), elevation: between(0, 60), passes: between(0, 1) }), {
      maxLength: 6,
    }),
  ),
  ceilingReflectance: seldom(between(0, 0.98)),
  benchReflectance: seldom(between(0, 0.98)),
  shelf: seldom(
    fc.record({
      height: between(0.2, 0.8),
      plants: between(0.1, 0.9),
      length: between(0.1, 1),
      width: between(0.1, 1),
      side: fc.constantFrom('middle' as const, 'front' as const, 'back' as const),
    }),
  ),
  distance: between(0, 0.9),
  reveal: between(0, 0.4),
  lamps: fc.tuple(lampLightDrawn, lampLightDrawn),
});

type LampLight = typeof lampLightDrawn extends fc.Arbitrary<infer T> ? T : never;
type PlaceLight = typeof placeLightDrawn extends fc.Arbitrary<infer T> ? T : never;

/** What was drawn, as shares of what the place has room for, made into a place that can be. */
export function withLight(place: Place, drawn: PlaceLight): object {
  const { shade, sheer, distance, reveal, lamps: lit, shelf: _shelf, ...rest } = drawn;
  const { shape } = place;
  const upperShelf = shelfOf(place, drawn);
  const room = shape.kind === 'window-bay' ? { ...shape, distance: distance * shape.depth, reveal } : shape;
  return {
    ...place,
    ...rest,
    shape: room,
    shadeCloth: shade === null || shade.from === shade.to ? null : shade,
    sheer:
      sheer === null || shape.kind !== 'window-bay' ? null : { covering: sheer.covering, ...sheer.times },
    upperShelf,
    lamps: place.lamps.map((lamp, index) => lampOf(place, lamp, lit[index % 2], upperShelf)),
  };
}

function shelfOf(place: Place, { shelf }: PlaceLight): Place['upperShelf'] {
  if (shelf === null) return null;
  const extent = extentOf(place.shape);
  const open = place.shape.kind === 'shelf' || place.shape.kind === 'window-bay';
  const high = mostHeight(extent);
  const height = Math.min(4, shelf.height * high);
  const most = open ? 2 : Math.min(2, high - height);
  const plants = shelf.plants * most;
  const [length, width] = [extent.length ?? Math.sqrt(extent.floor), extent.width ?? Math.sqrt(extent.floor)];
  const fitted = { length: Math.min(60, shelf.length * length), width: Math.min(20, shelf.width * width) };
  const share = Math.min(1, (0.8 * place.growingArea) / (fitted.length * fitted.width));
  const size = { length: fitted.length * share, width: fitted.width };
  const small = height < 0.05 || plants < 0.01 || size.length < 0.05 || size.width < 0.05;
  return small ? null : { height, plants, ...size, side: shelf.side };
}

function lampOf(place: Place, lamp: Lamp, drawn: LampLight, upperShelf: Place['upperShelf']): Lamp {
  const { upper, half, turned, along, across, second, control, light, ...rest } = drawn;
  const extent = extentOf(place.shape);
  const top = upperShelf === null ? 0 : upperShelf.height + upperShelf.plants;
  const open = place.shape.kind === 'shelf' || place.shape.kind === 'window-bay';
  const over = upper && upperShelf !== null && (open || top + lamp.height <= mostHeight(extent));
  const by = daylightReaches(place) ? control : { kind: 'clock' as const };
  const block = second === null ? null : { on: second.from, off: second.to };
  const fits = block !== null && !holdsAtNoTime(block.on, block.off) && !hoursOverlap(lamp, block);
  const { mostDay } = rest;
  const photometry = { name: 'Drawn', vertical: [0, 45, 90], planes: [0], candela: [300, 200, 0] };
  const beam = light.kind === 'file' ? { kind: 'file' as const, photometry, turned } : rest.beam;
  return {
    ...lamp,
    ...rest,
    light,
    beam,
    shelf: over ? 'upper' : 'lower',
    along: (along * Math.min(20, extent.length ?? 1)) / 2,
    across: (across * Math.min(20, extent.width ?? 1)) / 2,
    second: fits ? block : null,
    control: by,
    mostDay: by.kind === 'extend' && mostDay !== null ? Math.max(mostDay, by.hours) : mostDay,
    wattsAtHalf: half === null ? null : Math.max(0.1, half * lamp.watts),
  };
}

/** Changes a sound plan into one with light drawn for its places; still to be parsed. */
export const lightFor = (plans: fc.Arbitrary<Plan>): fc.Arbitrary<object> =>
  fc.tuple(plans, placeLightDrawn, placeLightDrawn).map(([plan, ...drawn]) => ({
    ...plan,
    places: plan.places.map((place, index) => withLight(place, drawn[index % 2])),
  }));

/** Sound plans with light's own things in them; one that `parsePlan` refuses is a fault and thrown. */
export const litPlans: fc.Arbitrary<Plan> = lightFor(soundPlans).map((plan) => {
  const reading = parsePlan(plan);
  if (reading.ok) return reading.plan;
  throw new Error(
    `expected a sound plan, got ${reading.problems.map((each) => `${each.path}: ${each.message}`).join('; ')}`,
  );
});
