import type { Extent } from './extent.ts';
import { extentOf, listedFaces, roofTilt } from './extent.ts';
import { lampProblems } from './impossible-lamps.ts';
import { upperShelfProblems } from './impossible-shelf.ts';
import type { Problem } from './problem.ts';
import { over, shown } from './problem.ts';
import type { Place } from './schema.ts';
import type { ShapeOf } from './shapes.ts';

/**
 * What no place can be: each thing is in its range, but together they do not go. What could be meant by someone
 * is let pass; the limits are those of geometry, with a rounding's width given [m, m², m³ alike].
 */
export function impossible(place: Place, path: string): Problem[] {
  const extent = extentOf(place.shape);
  const found = [
    ...ventProblems(place, extent),
    ...doorProblems(place, extent),
    ...baseWallProblems(place),
    ...(place.shape.kind === 'listed' ? listProblems(place.shape) : []),
    ...windowProblems(place),
    ...upperShelfProblems(place, extent),
    ...lampProblems(place, extent),
    ...growingProblems(place, extent),
    ...waterProblems(place, extent),
  ];
  return found.map((each) => ({ ...each, path: `${path}.${each.path}` }));
}

const whereVentsSit = {
  roof: 'all of the roof',
  side: 'all of the sides',
  end: 'both ends',
} as const;

/** Vents of one position, together, larger than what they are cut into. */
function ventProblems({ vents }: Place, extent: Extent): Problem[] {
  const open = { roof: 0, side: 0, end: 0 };
  return vents.flatMap(({ position, area }, index) => {
    const before = open[position];
    open[position] += area;
    const limit = extent[position];
    if (!over(open[position], limit) || over(before, limit)) return [];
    const message = `expected vents no larger than what they sit in, ${whereVentsSit[position]} (${shown(limit as number)} m²), got ${shown(open[position])} m²`;
    return [{ path: `vents.${index}.area`, message }];
  });
}

function doorProblems({ door }: Place, { doorway, height }: Extent): Problem[] {
  if (door === null) return [];
  const problems: Problem[] = [];
  if (over(door.area, doorway))
    problems.push({
      path: 'door.area',
      message: `expected a door no larger than the largest face it fits in (${shown(doorway as number)} m²), got ${shown(door.area)} m²`,
    });
  if (over(door.height, height))
    problems.push({
      path: 'door.height',
      message: `expected a door no higher than the place (${shown(height as number)} m), got ${shown(door.height)} m`,
    });
  return problems;
}

/** How high a base wall may be and why; null where the shape has none or a list of surfaces holds it. */
function mostBaseWall({ shape }: Place): readonly [height: number, why: string] | null {
  switch (shape.kind) {
    case 'even-span':
    case 'lean-to':
      return [shape.eavesHeight, 'the eaves'];
    case 'tunnel':
      return [shape.height / 2, 'half of the tunnel'];
    case 'cold-frame':
      return [shape.backHeight, 'the back of the frame'];
    default:
      return null;
  }
}

function baseWallProblems(place: Place): Problem[] {
  const most = mostBaseWall(place);
  if (place.baseWall === null || most === null || !over(place.baseWall.height, most[0])) return [];
  const message = `expected a base wall no higher than ${most[1]} (${shown(most[0])} m), got ${shown(place.baseWall.height)} m`;
  return [{ path: 'baseWall.height', message }];
}

/** Plants that begin behind the back of their own sill. */
function windowProblems({ shape }: Place): Problem[] {
  if (shape.kind !== 'window-bay' || shape.distance < shape.depth) return [];
  const message = `expected plants that begin before the back of the sill (${shown(shape.depth)} m deep), got ${shown(shape.distance)} m from the panes`;
  return [{ path: 'shape.distance', message }];
}

/** Mean heights of a list's air that no place of plants has [m]: lower than a pot, higher than a hall. */
const leastMeanHeight = 0.02;
const mostMeanHeight = 30;

/**
 * Of all bodies of one surface the sphere holds most: V ≤ A^1.5 / (6 √π). A list without anything overhead
 * leaves out what exchanges no heat, so only one with a roof is held to enclose its floor and its air.
 */
function listProblems(shape: ShapeOf<'listed'>): Problem[] {
  const { cover, floor } = listedFaces(shape);
  const path = 'shape.volume';
  const height = shape.volume / shape.floorArea;
  const got = `got ${shown(shape.volume)} m³ over ${shown(shape.floorArea)} m² of floor, ${shown(height)} m high`;
  if (!(height >= leastMeanHeight))
    return [{ path, message: `expected air at least ${leastMeanHeight} m high, ${got}` }];
  if (!(height <= mostMeanHeight))
    return [{ path, message: `expected air at most ${mostMeanHeight} m high, ${got}` }];
  if (!shape.surfaces.some(({ tilt }) => tilt <= roofTilt)) return [];
  if (over(shape.floorArea, cover)) {
    const message = `expected surfaces that cover the floor (${shown(shape.floorArea)} m²), got ${shown(cover)} m² in all; list the rest, with nothing behind it`;
    return [{ path: 'shape.surfaces', message }];
  }
  const most = (cover + floor) ** 1.5 / (6 * Math.sqrt(Math.PI));
  if (!over(shape.volume, most)) return [];
  const message = `expected at most ${shown(most)} m³, what ${shown(cover + floor)} m² of surfaces and floor can enclose, got ${shown(shape.volume)} m³; list the rest of the surfaces, with nothing behind them`;
  return [{ path, message }];
}

/** Shelves over each other: four at least, more where there is 0.25 m of height for each (common practice, no source). */
const fewestTiers = 4;
const tierHeight = 0.25;

function growingProblems({ growingArea }: Place, { floor, volume, height }: Extent): Problem[] {
  const tiers = Math.max(fewestTiers, Math.floor((height ?? volume / floor) / tierHeight));
  if (!over(growingArea, tiers * floor)) return [];
  const message = `expected at most ${tiers} times the floor (${shown(floor)} m²) to grow on, ${shown(tiers * floor)} m², got ${shown(growingArea)} m²`;
  return [{ path: 'growingArea', message }];
}

/** Water that is more than the place holds. */
function waterProblems({ water }: Place, { volume }: Extent): Problem[] {
  let held = 0;
  return water.flatMap(({ litres, count }, index) => {
    const before = held;
    held += (litres * count) / 1000;
    if (!over(held, volume) || over(before, volume)) return [];
    const message = `expected water that fits in the place (${shown(volume)} m³), got ${shown(held * 1000)} litres`;
    return [{ path: `water.${index}.litres`, message }];
  });
}
