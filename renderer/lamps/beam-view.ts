import type { FieldLevel, Lamp, Place, Section } from '../../core/index.ts';

/** Pot and plant as drawn [m]: a 10 cm pot with a plant as tall again (common practice, no source). */
const potAndPlant = 0.2;

/** From metres in the section to pixels: the part of the place in which the lamp's light matters. */
export interface DrawnSection {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  /** Across the place from its front [m]: ends of what is drawn, and the middle of the lit level. */
  readonly least: number;
  readonly most: number;
  readonly middle: number;
  /** Over the floor [m]: what the plants stand on, and their tops. */
  readonly board: number;
  readonly tops: number;
  /** Where the height is written [px]. */
  readonly edge: number;
  readonly x: (metres: number) => number;
  readonly z: (metres: number) => number;
  /** Middles of the pots [px]. */
  readonly pots: readonly number[];
  readonly pot: (middle: number) => string;
  readonly plant: (middle: number) => string;
}

const pad = { left: 64, right: 12, top: 12, bottom: 10 };

/** Least size of paper for a place of any shape [px]. */
const paper = { width: 520, height: 340 };

export function drawnSection(place: Place, section: Section, level: FieldLevel, lamp: Lamp): DrawnSection {
  const middle = section.width / 2 + level.across;
  const plants = Math.min(potAndPlant, 0.3 * section.height);
  const tops = section.plantLevel + plants + level.height;
  const board = level.shelf === 'upper' ? tops - (place.upperShelf?.plants ?? plants) : section.plantLevel;
  const aside = 0.06 * Math.max(section.width, section.height);
  const least = Math.min(0, middle - level.width / 2) - aside;
  const most = Math.max(section.width, middle + level.width / 2) + aside;
  const high = Math.max(section.height, tops + lamp.height + 0.05);
  const scale = Math.min(
    (paper.width - pad.left - pad.right) / (most - least),
    (paper.height - pad.top - pad.bottom) / high,
  );
  const height = pad.top + high * scale + pad.bottom;
  const left = pad.left + (paper.width - pad.left - pad.right - (most - least) * scale) / 2;
  const x = (metres: number) => left + (metres - least) * scale;
  const z = (metres: number) => height - pad.bottom - metres * scale;
  const foot = z(board);
  const tall = (tops - board) * scale;
  const step = Math.max(18, 0.15 * scale);
  const span = level.width * scale;
  const count = Math.max(1, Math.floor(span / step));
  const pots = Array.from(
    { length: count },
    (_, i) => x(middle - level.width / 2) + ((i + 0.5) * span) / count,
  );
  const half = Math.min(tall * 0.24, step * 0.42);
  return {
    width: paper.width,
    height,
    scale,
    least,
    most,
    middle,
    board,
    tops,
    edge: x(least) - 8,
    x,
    z,
    pots,
    pot: (at) =>
      `M${at - half} ${foot - tall / 2}H${at + half}L${at + half * 0.7} ${foot}H${at - half * 0.7}Z`,
    plant: (at) =>
      [-1, -0.5, 0, 0.5, 1]
        .map(
          (lean) =>
            `M${at} ${foot - tall / 2}q${lean * half * 0.4} ${-tall * 0.4} ${lean * half * 1.3} ${-tall * (0.5 - 0.2 * Math.abs(lean))}`,
        )
        .join(''),
  };
}
