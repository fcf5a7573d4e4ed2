import type { Circulation, Door, Fan, Place, Section, SectionPoint, Vent } from '../../../core/index.ts';
import { isWithin } from './geometry.ts';
import { circulationSize, fanSize, overlaps } from './sizes.ts';
import type { Box, Size } from './sizes.ts';

/** A door or an opening in the far end, seen beyond the cut. */
export interface DoorPlaced extends Box {
  readonly door: Door;
}

export interface FanPlaced extends Box {
  readonly fan: Fan;
}

export interface CirculationPlaced extends Box {
  readonly circulation: Circulation;
}

export interface EndVentPlaced extends Box {
  readonly vent: Vent;
}

const boxAt = ([x, z]: SectionPoint, { width, height }: Size): Box => ({
  from: x - width / 2,
  to: x + width / 2,
  bottom: z - height / 2,
  top: z + height / 2,
});

const fits = (outline: readonly SectionPoint[], box: Box, clear: number) =>
  isWithin(outline, [box.from, box.bottom], clear) &&
  isWithin(outline, [box.to, box.bottom], clear) &&
  isWithin(outline, [box.from, box.top], clear) &&
  isWithin(outline, [box.to, box.top], clear);

const steps = 28;

/**
 * Room for a thing nearest to where it is wanted, within the cover and clear of what is there already. Where
 * there is none the thing is drawn smaller; at a quarter of its size it may lie over others.
 */
export function findRoom(
  section: Section,
  outline: readonly SectionPoint[],
  size: Size,
  wanted: SectionPoint,
  taken: readonly Box[],
  clear: number,
): Box {
  for (const [share, crowded, near] of tries) {
    const asked = { width: size.width * share, height: size.height * share };
    let best: Box | null = null;
    let least = Infinity;
    for (let i = 0; i <= steps; i += 1) {
      for (let j = 0; j <= steps; j += 1) {
        const point: SectionPoint = [(i / steps) * section.width, (j / steps) * section.height];
        const distance = Math.hypot(point[0] - wanted[0], point[1] - wanted[1]);
        if (distance >= least) continue;
        const box = boxAt(point, asked);
        if (!fits(outline, box, near ? 0 : clear)) continue;
        if (!crowded && taken.some((other) => overlaps(box, other))) continue;
        best = box;
        least = distance;
      }
    }
    if (best !== null) return best;
  }
  return boxAt([section.width / 2, section.height / 2], { width: size.width / 8, height: size.height / 8 });
}

const tries: readonly (readonly [share: number, crowded: boolean, near: boolean])[] = [
  [1, false, false],
  [0.7, false, false],
  [0.5, false, false],
  [0.4, false, false],
  [0.5, false, true],
  [0.5, true, false],
  [0.3, true, true],
  [0.15, true, true],
];

/** A door stands on the floor, as tall and wide as the plan says where the end is tall and wide enough. */
export function doorOf(
  section: Section,
  outline: readonly SectionPoint[],
  door: Door,
  middle: number,
  clear: number,
): DoorPlaced {
  for (let share = 1; ; share *= 0.94) {
    const height = door.height * share;
    const width = Math.min(door.area / door.height, 0.7 * section.width, 1.4 * door.height) * share;
    const half = width / 2 + clear;
    const x = Math.min(Math.max(middle, half), section.width - half);
    const box = { from: x - width / 2, to: x + width / 2, bottom: 0, top: height };
    const inside =
      isWithin(outline, [box.from - clear, height + clear]) &&
      isWithin(outline, [box.to + clear, height + clear]);
    if (inside || share < 0.05) return { ...box, door };
  }
}

/** Openings in the far end are as large as the plan says, where the end is large enough. */
function endVentSize(vent: Vent, section: Section, least: number): Size {
  const width = Math.min(Math.sqrt(1.5 * vent.area), 0.3 * section.width);
  const height = Math.min(vent.area / width, 0.2 * section.height);
  return { width: Math.max(width, least), height: Math.max(height, 0.6 * least) };
}

/** Fans and openings in the far end. */
export function hangingOf(
  place: Place,
  section: Section,
  outline: readonly SectionPoint[],
  taken: readonly Box[],
  clear: number,
  least: number,
) {
  const used = [...taken];
  const put = (size: Size, wanted: SectionPoint): Box => {
    const box = findRoom(section, outline, size, wanted, used, clear);
    used.push(box);
    return box;
  };
  const { width, height } = section;
  const most = 0.28 * Math.min(width, height);
  const square = (size: number): Size => {
    const side = Math.max(least, Math.min(size, most));
    return { width: side, height: side };
  };
  const { fan, circulation } = place;
  const fanPlaced: FanPlaced | null =
    fan === null ? null : { fan, ...put(square(fanSize(fan.flow)), [0.8 * width, 0.86 * height]) };
  const circulationPlaced: CirculationPlaced | null =
    circulation === null
      ? null
      : { circulation, ...put(square(circulationSize), [0.34 * width, 0.72 * height]) };
  const endVents = place.vents
    .filter((vent) => vent.position === 'end')
    .map((vent): EndVentPlaced => ({
      vent,
      ...put(endVentSize(vent, section, least), [0.5 * width, 0.84 * height]),
    }));
  return { fan: fanPlaced, circulation: circulationPlaced, endVents };
}
