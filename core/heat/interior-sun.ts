import type { Enclosure } from '../fabric/index.ts';
import { diffuseTransmittance } from '../light/index.ts';

/** Short-wave absorptance of a place's own floor (soil, paving; building surfaces of middling colour, common practice). */
const floorAbsorptance = 0.7;

/**
 * Where the sun ends that comes into a place of listed surfaces: it falls on the floor first, and what the floor
 * throws back goes round among all inner faces by area and absorptance, some of it out again through the glass.
 */
export interface InteriorSun {
  /** Share kept inside, 0–1. */
  readonly kept: number;
  /** Share of what is kept that each surface takes, in the enclosure's order, and the place's own floor. */
  readonly surfaces: readonly number[];
  readonly floor: number;
}

export function interiorSun(fabric: Enclosure): InteriorSun {
  const { surfaces, ownFloor, floorArea } = fabric;
  const inner = surfaces.map((each) => (each.transparent || each.covering.use === 'open' ? 0 : each.area));
  const weights = surfaces.map((each, i) => inner[i] * each.insideAbsorptance);
  const own = ownFloor ? floorArea * floorAbsorptance : 0;
  const lost = surfaces.reduce(
    (sum, each) => sum + (each.transparent ? each.area * diffuseTransmittance(each.covering) : 0),
    0,
  );
  const all = weights.reduce((sum, weight) => sum + weight, own) + lost;
  const isFloor = surfaces.map((each) => !ownFloor && each.tilt > 150);
  const floors = surfaces.reduce(
    (sum, each, i) => sum + (isFloor[i] ? each.area : 0),
    ownFloor ? floorArea : 0,
  );
  const firstOf = (area: number, absorptance: number) => (floors > 0 ? (area / floors) * absorptance : 0);
  const first = surfaces.map((each, i) => (isFloor[i] ? firstOf(each.area, each.insideAbsorptance) : 0));
  const firstOwn = ownFloor ? firstOf(floorArea, floorAbsorptance) : 0;
  const left = 1 - first.reduce((sum, share) => sum + share, firstOwn);
  const shares = weights.map((weight, i) => first[i] + (left * weight) / all);
  const floor = firstOwn + (left * own) / all;
  const kept = shares.reduce((sum, share) => sum + share, floor);
  return { kept, surfaces: shares.map((share) => share / kept), floor: floor / kept };
}
