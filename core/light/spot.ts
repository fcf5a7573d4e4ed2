import type { Lamp } from '../plan/equipment.ts';
import type { Place, Spot } from '../plan/schema.ts';
import type { PlanSite } from '../plan/site.ts';
import type { OutdoorSteps } from '../weather/index.ts';
import { daylightSeries } from './daylight.ts';
import type { DaylightOptions } from './daylight-series.ts';
import { placeField } from './field-all.ts';
import type { FieldLevel } from './field-level.ts';

/** True where cell `at` of `count` lies in a third: the first, the middle or the last. */
const third = (at: number, count: number) => Math.min(2, Math.floor((3 * (at + 0.5)) / count));

/** Whether a cell of a level's map belongs to a spot; rows run from the front to the back, columns along the length. */
function belongs(spot: Spot, { columns, rows }: FieldLevel, column: number, row: number): boolean {
  const across =
    spot.across === 'all' || ['front', 'middle', 'back'].indexOf(spot.across) === third(row, rows);
  const middle = third(column, columns) === 1;
  return across && (spot.along === 'all' || (spot.along === 'middle') === middle);
}

/** Light of a lamp at a spot of the growing area as a share of its mean over all of it, 0 or more. */
export function spotLampShare(place: Place, lamp: Lamp, spot: Spot): number {
  const field = placeField(place, { lamps: [lamp], cells: [15, 15] });
  const levels = field.levels.filter(
    ({ shelf, area }) => area > 0 && (spot.level === 'all' || spot.level === shelf),
  );
  let [sum, weight] = [0, 0];
  for (const level of levels) {
    let [light, cells] = [0, 0];
    level.map.forEach((value, at) => {
      if (!belongs(spot, level, at % level.columns, Math.floor(at / level.columns))) return;
      light += value;
      cells += 1;
    });
    sum += (light / cells) * level.area;
    weight += level.area;
  }
  // A level that the place does not have is the one it has.
  if (weight === 0) return spot.level === 'all' ? 0 : spotLampShare(place, lamp, { ...spot, level: 'all' });
  return field.average > 0 ? sum / weight / field.average : 0;
}

/** Daylight photons at a spot of the growing area, a value a step [µmol m⁻² s⁻¹]; no fleece laid, cover dry. */
export function spotDaylight(
  place: Place,
  site: Pick<PlanSite, 'albedo' | 'horizon'>,
  steps: OutdoorSteps,
  options: DaylightOptions,
  spot: Spot,
): Float64Array {
  return daylightSeries(place, site, steps, { ...options, spot }).benchPhotons;
}
