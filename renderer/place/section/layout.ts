import type { Heater, Lamp, Place } from '../../../core/index.ts';
import type { Section } from './geometry.ts';
import { coverHeight, innerRange } from './geometry.ts';

/** A stretch of the section across [m]. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface Bench extends Stretch {
  readonly level: number;
}

export interface Standing extends Stretch {
  readonly height: number;
  readonly name: string;
  readonly count: number;
}

export interface HeaterPlaced extends Stretch {
  readonly heater: Heater;
  readonly bottom: number;
  readonly height: number;
}

export interface LampPlaced {
  readonly lamp: Lamp;
  /** Middles of the fittings across, their width and the height of the light-giving face over the floor [m]. */
  readonly middles: readonly number[];
  readonly width: number;
  readonly z: number;
  /** True where the height over the plants would put the lamp above the cover. */
  readonly tooHigh: boolean;
}

export interface Layout {
  readonly benches: readonly Bench[];
  /** Tops of the plants over the floor [m]. */
  readonly plantTop: number;
  readonly water: readonly Standing[];
  readonly heaters: readonly HeaterPlaced[];
  readonly lamps: readonly LampPlaced[];
}

/** Pot and plant as drawn [m]: a 10 cm pot with a plant as tall again (common practice, no source). */
const potAndPlant = 0.2;
/** Height of a water container for its diameter: a barrel's (common practice, no source). */
const barrelSlenderness = 1.4;
/** Sizes at which heaters are drawn [m]: width across, height (common practice, no source). */
const heaterSizes: Record<Heater['kind'], readonly [number, number]> = {
  fan: [0.26, 0.3],
  tubular: [0.1, 0.16],
  'oil-filled': [0.3, 0.5],
  propane: [0.32, 0.42],
  paraffin: [0.22, 0.3],
  'heat-mat': [0, 0.02],
};

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
  return [{ from, to: from + taken, level }];
}

function barrelSize(litres: number): { diameter: number; height: number } {
  const diameter = Math.cbrt((4 * litres) / 1000 / (Math.PI * barrelSlenderness));
  return { diameter, height: diameter * barrelSlenderness };
}

/** Stands things side by side on the floor from the back of a free stretch forwards. */
function standBackwards(widths: readonly number[], free: Stretch): Stretch[] {
  const total = widths.reduce((sum, width) => sum + width, 0);
  const space = free.to - free.from;
  const gap = Math.max(0, Math.min(0.08, (space - total) / (widths.length + 1)));
  const squeeze = total > space ? space / total : 1;
  let back = free.to - gap;
  return widths.map((width) => {
    const stretch = { from: back - width * squeeze, to: back };
    back = stretch.from - gap;
    return stretch;
  });
}

function freeFloor(benches: readonly Bench[], section: Section): Stretch {
  const inner = innerRange(section, 0.05);
  if (benches.length === 2) return { from: benches[0].to, to: benches[1].from };
  const behind = { from: benches[0].to, to: inner.to };
  if (behind.to - behind.from > 0.25 || benches[0].level < 0.35) return behind;
  return inner;
}

/** Where plants, water, heaters and lamps stand in the section. */
export function layoutOf(place: Place, section: Section): Layout {
  const plantTop = section.plantLevel + Math.min(potAndPlant, 0.3 * section.height);
  const floorHeaters = place.heaters.filter((heater) => heater.kind !== 'heat-mat');
  const widths = [
    ...place.water.map((store) => barrelSize(store.litres).diameter),
    ...floorHeaters.map((heater) => heaterSizes[heater.kind][0]),
  ];
  const inner = innerRange(section, section.plantLevel + 0.12);
  const depth = place.growingArea / section.length;
  const needed =
    section.plantLevel < 0.35
      ? Math.min(
          widths.reduce((sum, width) => sum + width + 0.04, 0),
          0.4 * section.width,
        )
      : 0;
  const benches = benchesOf(
    place,
    section,
    Math.min(depth, inner.to - inner.from - needed),
    inner,
    needed === 0,
  );
  const stretches = standBackwards(widths, freeFloor(benches, section));
  const water = place.water.map((store, i): Standing => {
    const height = Math.min(barrelSize(store.litres).height, 0.8 * section.height);
    return { ...stretches[i], height, name: store.name, count: store.count };
  });
  const heaters = place.heaters.map((heater): HeaterPlaced => {
    const at = floorHeaters.indexOf(heater);
    if (at < 0)
      return { from: benches[0].from, to: benches[0].to, heater, bottom: section.plantLevel, height: 0.02 };
    return {
      ...stretches[place.water.length + at],
      heater,
      bottom: 0,
      height: Math.min(heaterSizes[heater.kind][1], 0.5 * section.height),
    };
  });
  const lamps = place.lamps.map((lamp) => placeLamp(lamp, section, benches, plantTop));
  return { benches, plantTop, water, heaters, lamps };
}

function placeLamp(lamp: Lamp, section: Section, benches: readonly Bench[], plantTop: number): LampPlaced {
  const from = benches[0].from;
  const to = benches[benches.length - 1].to;
  const across = Math.min(
    lamp.count,
    Math.max(1, Math.round(Math.sqrt((lamp.count * (to - from)) / section.length))),
  );
  const middles = Array.from({ length: across }, (_, i) => from + ((i + 0.5) * (to - from)) / across);
  const wanted = plantTop + lamp.height;
  const ceiling = Math.min(...middles.map((x) => coverHeight(section, x))) - 0.03;
  const width = Math.min(lamp.width, (to - from) / across);
  return { lamp, middles, width, z: Math.min(wanted, ceiling), tooHigh: wanted > ceiling };
}
