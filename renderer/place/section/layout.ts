import type { Lamp, Place, Section } from '../../../core/index.ts';
import { coverHeight, innerRange, outlineOf } from './geometry.ts';
import { flapsOf } from './flaps.ts';
import type { Flap } from './flaps.ts';
import { doorOf, hangingOf } from './hanging.ts';
import type { CirculationPlaced, DoorPlaced, EndVentPlaced, FanPlaced } from './hanging.ts';
import { shelfOf } from './shelf.ts';
import type { ShelfPlaced } from './shelf.ts';
import type { Box } from './sizes.ts';
import { standingOf, widthBeside } from './standing.ts';
import type { Bench, HeaterPlaced, Stretch, WaterPlaced } from './standing.ts';

export interface LampPlaced {
  readonly lamp: Lamp;
  /** Middles of the fittings across, their width and the height of the light-giving face over the floor [m]. */
  readonly middles: readonly number[];
  readonly width: number;
  readonly z: number;
  /** Level its beam is drawn down to [m]. */
  readonly onto: number;
  /** True where the height over the plants would put the lamp above the cover. */
  readonly tooHigh: boolean;
}

export interface Layout {
  readonly benches: readonly Bench[];
  /** Tops of the plants over the floor [m]. */
  readonly plantTop: number;
  /** The upper shelf; null where there is none. */
  readonly shelf: ShelfPlaced | null;
  readonly water: readonly WaterPlaced[];
  readonly heaters: readonly HeaterPlaced[];
  readonly lamps: readonly LampPlaced[];
  readonly flaps: readonly Flap[];
  readonly endVents: readonly EndVentPlaced[];
  readonly door: DoorPlaced | null;
  readonly fan: FanPlaced | null;
  readonly circulation: CirculationPlaced | null;
}

/** What the eye can still tell apart at the drawing's scale [m]. */
export interface Sight {
  /** Least size of a thing. */
  readonly thing: number;
  /** Clear space inside the cover, taken by lining and screens. */
  readonly clear: number;
  /** Height of a lamp's body. */
  readonly lamp: number;
}

const sharp: Sight = { thing: 0, clear: 0, lamp: 0.05 };

/** Pot and plant as drawn [m]: a 10 cm pot with a plant as tall again (common practice, no source). */
const potAndPlant = 0.2;

function benchesOf(place: Place, section: Section, depth: number, inner: Stretch, centred: boolean): Bench[] {
  const level = section.plantLevel;
  const space = inner.to - inner.from;
  const two = (place.shape.kind === 'even-span' || place.shape.kind === 'tunnel') && depth < 0.85 * space;
  if (two) {
    return [
      { from: inner.from, to: inner.from + depth / 2, level },
      { from: inner.to - depth / 2, to: inner.to, level },
    ];
  }
  const taken = Math.min(depth, space);
  const middle = centred && place.shape.kind !== 'lean-to' && place.shape.kind !== 'window-bay';
  const from = inner.from + (middle ? (space - taken) / 2 : 0);
  // Behind a window plants keep their distance from the panes.
  if (place.shape.kind === 'window-bay') {
    const behind = Math.max(inner.from, Math.min(place.shape.distance, inner.to - 0.02));
    return [{ from: behind, to: Math.min(inner.to, behind + taken), level }];
  }
  return [{ from, to: from + taken, level }];
}

/** Where everything stands and hangs in the section: the engine's geometry, with the drawing's choice of spots. */
export function layoutOf(place: Place, section: Section, sight: Sight = sharp): Layout {
  const plantTop = section.plantLevel + Math.min(potAndPlant, 0.3 * section.height);
  const inner = innerRange(section, section.plantLevel + 0.12);
  const space = inner.to - inner.from;
  const needed = widthBeside(place, section, sight.thing);
  // Benches and plants stand clear of the lining and screens, as far as the place is wide enough.
  const near = Math.min(sight.clear, 0.25 * space);
  const clear = { from: near, to: keepsBack(place) ? 0 : near };
  const within = { from: inner.from + clear.from, to: inner.to - clear.to };
  const depth = Math.min(place.growingArea / section.length, within.to - within.from - needed);
  const benches = benchesOf(place, section, depth, within, needed === 0);
  const shelf = shelfOf(place, section, plantTop);
  const lower: LampLevel = { ...across(benches), top: plantTop, onto: section.plantLevel };
  const upper = shelf === null ? lower : { ...shelf, onto: shelf.z };
  const lamps = place.lamps.map((lamp) => {
    // Lamps of several kinds over one level hang beside one another.
    const beside = place.lamps.filter((each) => each.shelf === lamp.shelf);
    const lane = { index: beside.indexOf(lamp), of: beside.length };
    return placeLamp(lamp, section, lamp.shelf === 'upper' ? upper : lower, sight, lane);
  });
  const standing = standingOf(place, section, benches, sight.thing, clear);
  const outline = outlineOf(section);
  const { door } = place;
  const doorPlaced =
    door === null ? null : doorOf(section, outline, door, doorMiddle(section, benches), sight.clear);
  const taken: Box[] = [
    ...benches.map((bench) => ({ ...bench, bottom: 0, top: plantTop + fleeceRise(place, sight) })),
    ...standing.water.flatMap((placed) => placed.boxes),
    ...standing.heaters,
    ...lamps.flatMap((lamp) => lampBoxes(lamp, sight)),
    ...(doorPlaced === null ? [] : [doorPlaced]),
    ...(shelf === null ? [] : [{ from: shelf.from, to: shelf.to, bottom: shelf.z - 0.02, top: shelf.top }]),
  ];
  const hanging = hangingOf(place, section, outline, taken, sight.clear, sight.thing);
  const mats = place.heaters
    .filter((heater) => heater.kind === 'heat-mat')
    .map((heater): HeaterPlaced => {
      const { level } = benches[0];
      return { heater, from: benches[0].from, to: benches[0].to, bottom: level, top: level + 0.02 };
    });
  return {
    benches,
    plantTop,
    shelf,
    water: standing.water,
    heaters: [...standing.heaters, ...mats],
    lamps,
    flaps: flapsOf(place, section, sight.thing),
    ...hanging,
    door: doorPlaced,
  };
}

/** Benches reach to the wall where the back has neither lining nor screen. */
const keepsBack = (place: Place) => place.shape.kind === 'lean-to' || place.shape.kind === 'window-bay';

/** A door opens on the way between the benches, else behind or beside the plants. */
function doorMiddle(section: Section, benches: readonly Bench[]): number {
  if (benches.length === 2) return (benches[0].to + benches[1].from) / 2;
  const [{ from, to }] = benches;
  const behind = section.width - to;
  return behind >= from ? to + behind / 2 : from / 2;
}

/** Height that the fleece, its layers drawn apart, stands over the plants; without one a little air. */
function fleeceRise({ fleece }: Place, sight: Sight): number {
  return fleece === null ? 0.04 : 0.05 + fleece.layers * Math.max(0.02, 0.2 * sight.thing);
}

function lampBoxes(placed: LampPlaced, sight: Sight): Box[] {
  const half = Math.max(placed.width, sight.thing) / 2;
  return placed.middles.map((x) => ({
    from: x - half,
    to: x + half,
    bottom: placed.z - 0.01,
    top: placed.z + sight.lamp,
  }));
}

/** A level of plants that lamps hang over: its stretch, the tops of its plants and what they stand on [m]. */
interface LampLevel extends Stretch {
  readonly top: number;
  readonly onto: number;
}

const across = (benches: readonly Bench[]): Stretch => ({
  from: benches[0].from,
  to: benches[benches.length - 1].to,
});

function placeLamp(
  lamp: Lamp,
  section: Section,
  { from, to, top, onto }: LampLevel,
  sight: Sight,
  lane: { index: number; of: number },
): LampPlaced {
  const ranks = Math.min(
    lamp.count,
    Math.max(1, Math.round(Math.sqrt((lamp.count * (to - from)) / section.length))),
  );
  const step = (to - from) / ranks;
  const hung = (x: number) => Math.min(Math.max(x + lamp.across, 0.02 * section.width), 0.98 * section.width);
  const middles = Array.from({ length: ranks }, (_, i) =>
    hung(from + (i + (lane.index + 0.5) / lane.of) * step),
  );
  const wanted = top + lamp.height;
  const ceiling = Math.min(...middles.map((x) => coverHeight(section, x))) - 0.03;
  const width = Math.min(lamp.width, (0.96 * step) / lane.of);
  const lowered = Math.max(top, Math.min(wanted, ceiling - sight.clear - sight.lamp));
  return { lamp, middles, width, z: Math.min(lowered, ceiling), onto, tooHigh: wanted > ceiling };
}
