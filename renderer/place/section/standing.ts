import type { Heater, Place, Section, WaterStore } from '../../../core/index.ts';
import { coverHeight, innerRange } from './geometry.ts';
import { heaterSize, waterSize } from './sizes.ts';
import type { Box, Size } from './sizes.ts';

/** A stretch of the section across [m]. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface Bench extends Stretch {
  readonly level: number;
}

export interface WaterPlaced {
  readonly store: WaterStore;
  /** As many containers as the section has room for side by side, at most three. */
  readonly boxes: readonly Box[];
}

export interface HeaterPlaced extends Box {
  readonly heater: Heater;
}

interface Zone extends Stretch {
  /** Most height of a thing that stands here [m]. */
  readonly tall: number;
}

interface Group {
  readonly size: Size;
  readonly count: number;
}

/** Containers of one kind drawn side by side, and the most of them. */
const mostDrawn = 3;
const drawnCount = (count: number, most: number) => Math.min(most, Math.max(1, Math.round(count)));

const air = 0.03;
/** Share of a low place's width that things beside the plants take at most. */
const besidePlants = 0.4;
/** Least height under a bench for things to stand there [m]. */
const underBench = 0.3;

function groupsOf(
  place: Place,
  least: number,
  most: number,
): { group: Group; heater: Heater | null; store: WaterStore | null }[] {
  const seen = ({ width, height }: Size): Size => {
    const grow = Math.max(1, least / Math.max(width, height), (0.6 * least) / Math.min(width, height));
    return { width: width * grow, height: height * grow };
  };
  return [
    ...place.water.map((store) => ({
      group: { size: seen(waterSize(store)), count: drawnCount(store.count, most) },
      heater: null,
      store,
    })),
    ...place.heaters
      .filter((heater) => heater.kind !== 'heat-mat')
      .map((heater) => ({ group: { size: seen(heaterSize(heater)), count: 1 }, heater, store: null })),
  ];
}

/** Width of the floor that things beside the plants need in a place without benches [m]. */
export function widthBeside(place: Place, section: Section, least: number): number {
  if (section.plantLevel >= underBench) return 0;
  const wanted = groupsOf(place, least, mostDrawn).reduce((sum, { group }) => sum + widthOf(group), 0);
  return Math.min(wanted + (wanted > 0 ? 2 * air : 0), besidePlants * section.width);
}

const widthOf = ({ size, count }: Group) => count * size.width + count * air;

function zonesOf(section: Section, benches: readonly Bench[], clear: Stretch): Zone[] {
  const range = innerRange(section, Math.min(0.3, 0.25 * section.height));
  const inner = { from: range.from + clear.from, to: range.to - clear.to };
  const margin = Math.min(air, 0.02 * section.width);
  const under: Zone[] = [];
  const open: Zone[] = [];
  let edge = inner.from;
  for (const { from, to, level } of benches) {
    if (from - edge > 0.1 * section.width) open.push({ from: edge, to: from, tall: 0 });
    if (level >= underBench)
      under.push({ from: from + 0.1 * (to - from), to: to - 0.1 * (to - from), tall: level - 0.05 });
    edge = to;
  }
  if (inner.to - edge > 1e-6) open.push({ from: edge, to: inner.to, tall: 0 });
  const tall = open.map((zone) => {
    const height = Math.min(coverHeight(section, zone.from + margin), coverHeight(section, zone.to - margin));
    return { from: zone.from + margin, to: zone.to - margin, tall: 0.8 * height };
  });
  return [...under, ...tall].filter((zone) => zone.to > zone.from);
}

/** Puts every group into the first zone that holds it, the widest where none does; a crowded zone is drawn closer. */
function sharedOut(groups: readonly Group[], zones: readonly Zone[]) {
  const left = zones.map((zone) => zone.to - zone.from - air);
  let crowded = false;
  const zoneOf = groups.map((group) => {
    const width = widthOf(group);
    let index = zones.findIndex((zone, i) => zone.tall >= group.size.height && left[i] >= width);
    if (index < 0) {
      crowded = true;
      index = left.indexOf(Math.max(...left));
    }
    left[index] -= width;
    return index;
  });
  return { zoneOf, crowded };
}

/** Fewer containers of a kind are drawn where the floor is crowded. */
function thinnedOut(place: Place, zones: readonly Zone[], least: number) {
  for (let most = mostDrawn; ; most -= 1) {
    const things = groupsOf(place, least, most);
    const { zoneOf, crowded } = sharedOut(
      things.map((thing) => thing.group),
      zones,
    );
    if (!crowded || most === 1) return { things, zoneOf };
  }
}

/** Where water and heaters stand: under benches where they fit, else on the free floor, from the back forwards. */
export function standingOf(
  place: Place,
  section: Section,
  benches: readonly Bench[],
  least: number,
  clear: Stretch,
): { water: WaterPlaced[]; heaters: HeaterPlaced[] } {
  const zones = zonesOf(section, benches, clear);
  const { things, zoneOf } = thinnedOut(place, zones, least);
  const boxes: Box[][] = things.map(() => []);
  zones.forEach((zone, index) => {
    const here = things.map((_, i) => i).filter((i) => zoneOf[i] === index);
    const total = here.reduce((sum, i) => sum + widthOf(things[i].group), 0);
    const squeeze = Math.min(1, (zone.to - zone.from) / (total + air));
    let back = zone.to - Math.min(air, (zone.to - zone.from) * 0.05) * squeeze;
    for (const i of here) {
      const { size, count } = things[i].group;
      const shrink = Math.min(squeeze, zone.tall / size.height);
      for (let one = 0; one < count; one += 1) {
        const from = back - size.width * shrink;
        boxes[i].push({ from, to: back, bottom: 0, top: size.height * shrink });
        back = from - air * squeeze;
      }
    }
  });
  const water = things.flatMap(({ store }, i) => (store === null ? [] : [{ store, boxes: boxes[i] }]));
  const heaters = things.flatMap(({ heater }, i) => (heater === null ? [] : [{ heater, ...boxes[i][0] }]));
  return { water, heaters };
}
