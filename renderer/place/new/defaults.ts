import { lampOf, lampTechnology, placeOf, surfacesOf } from '../../../core/index.ts';
import type { Lamp, Place, Room, Shape, ShapeKind, Vent } from '../../../core/index.ts';

/** Where a new place starts. All figures: common practice, no source; each is there to be changed. */
interface Start {
  readonly name: string;
  readonly shape: Shape;
  readonly covering: string;
  readonly leakage: number;
  /** Share of the floor that plants stand on, 0–1. */
  readonly planted: number;
  readonly floor: Place['floor'];
  readonly room: Room | null;
  readonly reflectance: number;
  /** The group of plants it is judged by until others are set there. */
  readonly group: string;
  readonly lit: boolean;
  readonly vented: boolean;
}

const livingRoom: Room = { kind: 'schedule', day: 19, night: 15, dayFrom: '07:00', dayTo: '22:00' };
const outdoors = { room: null, lit: false, vented: true, reflectance: 0.3 } as const;
const indoors = { room: livingRoom, vented: false, floor: 'raised' } as const;

/** A first place of each kind; `sunny` is the azimuth towards the noon sun: 180, south of the equator 0. */
function startOf(kind: ShapeKind, sunny: number): Start {
  const azimuth = sunny;
  switch (kind) {
    case 'even-span':
      return {
        ...outdoors,
        name: 'Glasshouse',
        shape: { kind, length: 3.7, width: 2.5, eavesHeight: 1.5, ridgeHeight: 2.4, azimuth },
        covering: 'glass-3',
        leakage: 1.5,
        planted: 0.6,
        floor: 'slab',
        group: 'pelargonium',
      };
    case 'lean-to':
      return {
        ...outdoors,
        name: 'Lean-to',
        shape: {
          kind,
          length: 3,
          width: 1.8,
          eavesHeight: 1.6,
          ridgeHeight: 2.4,
          azimuth,
          wall: { material: 'brick', thickness: 0.22, behind: 'room' },
        },
        covering: 'glass-3',
        room: { kind: 'constant', temperature: 18 },
        leakage: 1.2,
        planted: 0.55,
        floor: 'slab',
        group: 'pelargonium',
      };
    case 'tunnel':
      return {
        ...outdoors,
        name: 'Tunnel',
        shape: { kind, length: 5, width: 3, height: 2.1, azimuth },
        covering: 'polythene',
        leakage: 1.5,
        planted: 0.5,
        floor: 'soil',
        group: 'sempervivum',
      };
    case 'cold-frame':
      return {
        ...outdoors,
        vented: false,
        name: 'Cold frame',
        shape: { kind, length: 1.2, width: 0.8, frontHeight: 0.3, backHeight: 0.45, azimuth },
        covering: 'glass-4',
        leakage: 2,
        planted: 0.9,
        floor: 'soil',
        group: 'sempervivum',
      };
    case 'tent':
      return {
        ...indoors,
        name: 'Tent',
        shape: { kind, length: 0.8, width: 0.8, height: 1.6 },
        covering: 'tent-fabric',
        leakage: 2,
        planted: 0.85,
        reflectance: 0.85,
        lit: true,
        group: 'echeveria',
      };
    case 'shelf':
      return {
        ...indoors,
        name: 'Lit shelf',
        shape: { kind, length: 1, width: 0.4, height: 0.45 },
        covering: 'open',
        leakage: 20,
        planted: 0.95,
        reflectance: 0.5,
        lit: true,
        group: 'haworthia',
      };
    case 'window-bay':
      return {
        ...indoors,
        name: 'Window',
        shape: { kind, width: 1.2, height: 1.2, depth: 0.3, distance: 0, reveal: 0.1, azimuth },
        covering: 'double-glass',
        leakage: 0.5,
        planted: 0.9,
        reflectance: 0.6,
        lit: false,
        group: 'haworthia',
      };
    case 'listed':
      return {
        ...outdoors,
        name: 'Porch',
        shape: {
          kind,
          floorArea: 4,
          volume: 9,
          surfaces: [
            {
              name: 'Front glass',
              area: 6,
              tilt: 90,
              azimuth,
              covering: 'glass-4',
              build: null,
              behind: 'outdoors',
            },
            {
              name: 'House wall',
              area: 6,
              tilt: 90,
              azimuth: (azimuth + 180) % 360,
              covering: 'brick-215',
              build: null,
              behind: 'room',
            },
          ],
        },
        covering: 'glass-4',
        room: { kind: 'constant', temperature: 18 },
        leakage: 1.5,
        planted: 0.5,
        floor: 'slab',
        group: 'pelargonium',
      };
  }
}

/** Watts of recent white LED a square metre of plants for a bright winter day of 12 h (common practice, no source). */
const ledWattsPerArea = 130;

const twoFigures = (value: number) => Number(value.toPrecision(2));

/** A first lamp for a place: white LED over the whole growing area, on 7:00 to 19:00. */
export function firstLamp(place: Place): Lamp {
  const technology = lampTechnology('led-white');
  const enclosure = surfacesOf(place);
  /** The growing area lies in the middle of the floor with sides in proportion, as the lamp light takes it. */
  const side = Math.sqrt(Math.min(1, place.growingArea / enclosure.floorArea));
  const length = enclosure.length * side;
  const width = enclosure.width * side;
  const { shape } = place;
  const low = shape.kind === 'shelf';
  const within = shape.kind === 'tent' || shape.kind === 'shelf' ? twoFigures(0.8 * shape.height) : Infinity;
  const watts = Math.min(600, Math.max(8, twoFigures(ledWattsPerArea * place.growingArea)));
  return lampOf({
    id: 'lamp',
    name: low ? 'LED bar' : 'LED panel',
    technology: technology.id,
    watts,
    efficacy: technology.efficacy.typical,
    count: 1,
    height: Math.min(low ? 0.25 : 0.4, within),
    length: Math.min(3, twoFigures(length * (low ? 0.9 : 0.6))),
    width: Math.min(3, twoFigures(width * (low ? 0.15 : 0.6))),
    on: '07:00',
    off: '19:00',
    price: Math.round(watts * technology.pricePerWatt.value),
  });
}

/** Largest first vent that fits where it sits [m²]: half of both ends, of two walls, or of the panes. */
function ventRoom(shape: Shape): number {
  if (shape.kind === 'tunnel') return (Math.PI / 4) * shape.width * shape.height;
  if (shape.kind === 'tent' || shape.kind === 'shelf')
    return (shape.length + shape.width) * shape.height * 0.5;
  return shape.kind === 'window-bay' ? shape.width * shape.height * 0.5 : Infinity;
}

/**
 * A first vent: a sixth of the growing area, opening at 18 °C (common practice, no source). Houses have it in the
 * roof, a frame lifts its light, a tunnel opens its ends, whatever else a side.
 */
export function firstVent(shape: Shape, growingArea: number): Vent {
  const { kind } = shape;
  const wanted = Math.min(100, Math.max(0.05, Number((growingArea / 6).toFixed(2))));
  const roofed = kind === 'even-span' || kind === 'lean-to' || kind === 'cold-frame';
  return {
    position: roofed ? 'roof' : kind === 'tunnel' ? 'end' : 'side',
    area: Math.max(0.001, Math.min(wanted, Number(ventRoom(shape).toPrecision(2)))),
    height: kind === 'cold-frame' ? 0.2 : kind === 'shelf' || kind === 'tent' ? Math.min(1, shape.height) : 1,
    openAt: 18,
    band: 5,
  };
}

/** Area for plants [m²]: the usual share of the floor for the shape. */
export function usualGrowingArea(place: Place, planted: number): number {
  return Math.max(0.01, Number((surfacesOf(place).floorArea * planted).toFixed(2)));
}

/** A new place of a kind with usual equipment, and the group it is first judged by. */
export function newPlace(
  kind: ShapeKind,
  latitude: number,
): { place: Place; group: string; planted: number } {
  const start = startOf(kind, latitude >= 0 ? 180 : 0);
  const bare = placeOf({
    id: 'new-place',
    name: start.name,
    shape: start.shape,
    covering: start.covering,
    room: start.room,
    dirtShare: kind === 'tent' || kind === 'shelf' ? 0 : 0.05,
    leakage: start.leakage,
    floor: start.floor,
    growingArea: 1,
    wallReflectance: start.reflectance,
  });
  const sized = resized(bare, start.shape, start.planted, start.vented);
  return {
    place: start.lit ? { ...sized, lamps: [firstLamp(sized)] } : sized,
    group: start.group,
    planted: start.planted,
  };
}

/** A place with another size; what follows from the size (growing area, vents, first lamp) follows. */
export function resized(place: Place, shape: Shape, planted: number, vented = place.vents.length > 0): Place {
  const sized = { ...place, shape };
  const growingArea = usualGrowingArea(sized, planted);
  const grown: Place = {
    ...sized,
    growingArea,
    vents: vented ? [firstVent(shape, growingArea)] : [],
  };
  return place.lamps.length > 0 ? { ...grown, lamps: [firstLamp(grown)] } : grown;
}
