import type { FieldLevel, Lamp, Place, Section } from '../../core/index.ts';

/** Pot and plant as drawn [m]: a 10 cm pot with a plant as tall again (common practice, no source). */
const potAndPlant = 0.2;

/** Plants of one level as drawn: what they stand on and their tops over the floor, their ends across the place [m]. */
export interface PlantRow {
  readonly shelf: FieldLevel['shelf'];
  readonly board: number;
  readonly tops: number;
  readonly from: number;
  readonly to: number;
}

/** From metres in the section to pixels. */
export interface DrawnSection {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  /** Across the place from its front [m]: ends of what is drawn, and the middle of the place. */
  readonly least: number;
  readonly most: number;
  readonly middle: number;
  readonly rows: readonly PlantRow[];
  /** Where the lamp's height is written [px]. */
  readonly edge: number;
  readonly x: (metres: number) => number;
  readonly z: (metres: number) => number;
}

const pad = { left: 64, right: 36, top: 12, bottom: 10 };

/** Size of the paper at most [px]. */
const paper = { width: 520, height: 420 };

function rowOf(place: Place, section: Section, level: FieldLevel): PlantRow {
  const plants = Math.min(potAndPlant, 0.3 * section.height);
  const tops = section.plantLevel + plants + level.height;
  const board = level.shelf === 'upper' ? tops - (place.upperShelf?.plants ?? plants) : section.plantLevel;
  const from = section.width / 2 + level.across - level.width / 2;
  return { shelf: level.shelf, board, tops, from, to: from + level.width };
}

export function drawnSection(
  place: Place,
  section: Section,
  levels: readonly FieldLevel[],
  lamp: Lamp,
): DrawnSection {
  const rows = levels.map((level) => rowOf(place, section, level));
  const aside = 0.06 * Math.max(section.width, section.height);
  const least = Math.min(0, ...rows.map((row) => row.from)) - aside;
  const most = Math.max(section.width, ...rows.map((row) => row.to)) + aside;
  const over = rows.find((row) => row.shelf === lamp.shelf) ?? rows[0];
  const high = Math.max(section.height, over.tops + lamp.height + 0.05);
  const scale = Math.min(
    (paper.width - pad.left - pad.right) / (most - least),
    (paper.height - pad.top - pad.bottom) / high,
  );
  const height = pad.top + high * scale + pad.bottom;
  const margin = pad.left + (paper.width - pad.left - pad.right - (most - least) * scale) / 2;
  const x = (metres: number) => margin + (metres - least) * scale;
  const z = (metres: number) => height - pad.bottom - metres * scale;
  const middle = section.width / 2;
  return { width: paper.width, height, scale, least, most, middle, rows, edge: x(least) - 8, x, z };
}

/** Pots and plants of a row as two paths. */
export function plantPaths(row: PlantRow, view: DrawnSection): { pots: string; leaves: string } {
  const foot = view.z(row.board);
  const tall = (row.tops - row.board) * view.scale;
  const step = Math.max(18, 0.15 * view.scale);
  const span = (row.to - row.from) * view.scale;
  const count = Math.max(1, Math.floor(span / step));
  const half = Math.min(tall * 0.24, step * 0.42);
  const spots = Array.from({ length: count }, (_, i) => view.x(row.from) + ((i + 0.5) * span) / count);
  const pot = (at: number) =>
    `M${at - half} ${foot - tall / 2}H${at + half}L${at + half * 0.7} ${foot}H${at - half * 0.7}Z`;
  const leaf = (at: number, lean: number) =>
    `M${at} ${foot - tall / 2}q${lean * half * 0.4} ${-tall * 0.4} ${lean * half * 1.3} ${-tall * (0.5 - 0.2 * Math.abs(lean))}`;
  return {
    pots: spots.map(pot).join(''),
    leaves: spots.flatMap((at) => [-1, -0.5, 0, 0.5, 1].map((lean) => leaf(at, lean))).join(''),
  };
}
