import type { Lamp } from '../plan/equipment.ts';
import type { Place } from '../plan/schema.ts';
import { cellsOf, lampUnit } from './field-lamp.ts';
import type { FieldLevel } from './field-level.ts';
import type { PlaceBox } from './field-place.ts';
import { boxOfPlace } from './field-place.ts';
import { lampPhotons } from './lamp-emission.ts';
import { spread } from './lamp-field.ts';
import { columnsOf, rowsOf } from './patch-grid.ts';
import { areaOfRectangle } from './rectangles.ts';

/** Light of all lamps of a place on its levels of plants, and where it ends. */
export interface PlaceField {
  /** The lower level first. */
  readonly levels: readonly FieldLevel[];
  /** Photon flux density, mean of the growing area [µmol m⁻² s⁻¹]. */
  readonly average: number;
  /** Given by the lamps, and where it ends [µmol s⁻¹]: in plants and what they stand on, in opaque walls, in ceiling and boards, past the plants or out. */
  readonly emitted: number;
  readonly absorbed: number;
  readonly inWalls: number;
  readonly inCeiling: number;
  readonly lost: number;
  /** What the ends add up to less `emitted`, as a share of it: error of the integration. */
  readonly closure: number;
}

export interface PlaceFieldOptions {
  /** Other lamps than the place's own. */
  readonly lamps?: readonly Lamp[];
  /** Cells of each level's map along its length and across. */
  readonly cells?: readonly [number, number];
}

/** Cells of a map along length and width where nothing else is asked. */
const usualCells: readonly [number, number] = [16, 16];

/**
 * The light of all lamps of a place together: straight from the lamps and thrown back by walls, ceiling, boards
 * and plants, on each level of plants.
 */
export function placeField(place: Place, options: PlaceFieldOptions = {}): PlaceField {
  const setting = boxOfPlace(place);
  const cells = options.cells ?? usualCells;
  const lamps = options.lamps ?? place.lamps;
  const maps = setting.levels.map(() => new Float64Array(cells[0] * cells[1]));
  const sums = { emitted: 0, absorbed: 0, inWalls: 0, inCeiling: 0, lost: 0, error: 0 };
  for (const lamp of lamps) {
    const photons = lampPhotons(lamp);
    const unit = lampUnit(setting, lamp, cells);
    sums.emitted += photons;
    sums.absorbed += photons * unit.absorbed;
    sums.inWalls += photons * unit.inWalls;
    sums.inCeiling += photons * unit.inCeiling;
    sums.lost += photons * unit.lost;
    sums.error += photons * unit.closure;
    maps.forEach((map, l) => {
      for (let c = 0; c < map.length; c++) map[c] += photons * unit.cells[l][c];
    });
  }
  const levels = maps.map((light, l) => levelOf(setting, l, light, cells));
  const area = levels.reduce((total, level) => total + level.area, 0);
  const { error, ...ends } = sums;
  return {
    levels,
    average: levels.reduce((total, level) => total + level.average * level.area, 0) / area,
    ...ends,
    closure: sums.emitted > 0 ? error / sums.emitted : 0,
  };
}

/** A level from the light on its cells; shared out where more plants stand there than the floor has room for. */
function levelOf(
  { levels }: PlaceBox,
  index: number,
  light: Float64Array,
  cells: readonly [number, number],
): FieldLevel {
  const level = levels[index];
  const { plants } = level;
  const grid = cellsOf(level, cells).cells;
  const size = areaOfRectangle(plants);
  const cell = (size / light.length) * Math.max(1, level.area / size);
  const map = light.map((value) => value / cell);
  return {
    shelf: level.shelf,
    height: level.base,
    area: level.area,
    length: plants.x2 - plants.x1,
    width: plants.y2 - plants.y1,
    along: (plants.x1 + plants.x2) / 2,
    across: (plants.y1 + plants.y2) / 2,
    ...spread(map),
    map,
    columns: columnsOf(grid),
    rows: rowsOf(grid),
  };
}
