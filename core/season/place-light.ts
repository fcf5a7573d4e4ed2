import type { Place } from '../plan/schema.ts';
import { surfacesOf } from '../fabric/index.ts';
import type { Enclosure } from '../fabric/index.ts';
import { daylightSeries } from '../light/index.ts';
import { coverSurfaces, interiorSun, leafCover } from '../heat/index.ts';
import { placeCover } from './place-cover.ts';
import type { SiteYear } from './site-year.ts';

/** Daylight of a place as the season needs it, a value a step of the weather year. */
export interface PlaceLight {
  /** Daylight photons 400–700 nm at the plants' level [µmol m⁻² s⁻¹], no fleece laid. */
  readonly benchPhotons: Float64Array;
  /** Sun on each cover surface of the thermal network [W m⁻²]. */
  readonly sunOnSurface: readonly Float64Array[];
  /** Sun taken up by leaves, pots, floor and back wall [W]. */
  readonly sunLeaf: Float64Array;
  readonly sunPots: Float64Array;
  readonly sunFloor: Float64Array;
  readonly sunWall: Float64Array;
  /** Share of the daylight that comes in by parts flat enough to hold snow, 0–1. */
  readonly snowShare: number;
  /** Share of light left under the fleece, 0–1. */
  readonly fleeceShare: number;
  /** True where daylight reaches the plants at all. */
  readonly seesDay: boolean;
}

/** Short-wave absorptance of leaves for sunlight (0.85 of light, 0.15 of near infra-red; Campbell & Norman 1998) and of pots and mix. */
const leafAbsorptance = 0.5;
const mixAbsorptance = 0.75;

export function placeLight(place: Place, year: SiteYear): PlaceLight {
  const fabric = surfacesOf(place);
  const light = daylightSeries(place, year.site, year.steps, placeCover(place, year), fabric);
  const covers = coverSurfaces(fabric);
  const n = year.steps.n;
  const sunLeaf = new Float64Array(n);
  const sunPots = new Float64Array(n);
  const sunFloor = new Float64Array(n);
  const sunWall = new Float64Array(n);
  const leaf = place.growingArea * leafCover * leafAbsorptance;
  const pots = place.growingArea * (1 - leafCover * leafAbsorptance) * mixAbsorptance;
  const listed = place.shape.kind === 'listed' ? interiorSun(fabric).kept : null;
  let most = 0;
  for (let k = 0; k < n; k++) {
    const bench = light.benchSolar[k];
    if (bench > most) most = bench;
    const inside = listed === null ? light.insideSolar[k] : listed * light.transmittedSolar[k];
    if (inside <= 0) continue;
    const wall = Math.min(inside, 0.75 * light.wallSolar[k]);
    const rest = inside - wall;
    const wanted = bench * (leaf + pots);
    const share = wanted > rest ? rest / wanted : 1;
    sunWall[k] = wall;
    sunLeaf[k] = bench * leaf * share;
    sunPots[k] = bench * pots * share;
    const left = Math.max(0, rest - wanted);
    if (listed === null) sunFloor[k] = left;
    else sunWall[k] = left;
  }
  return {
    benchPhotons: light.benchPhotons,
    sunOnSurface: covers.map((surface) => light.incident[fabric.surfaces.indexOf(surface)]),
    sunLeaf,
    sunPots,
    sunFloor,
    sunWall,
    snowShare: flatShare(fabric),
    fleeceShare: light.fleeceShare,
    seesDay: most > 0,
  };
}

/** Share of the clear cover that is flatter than 60°, weighted with its view of the sky. */
function flatShare(fabric: Enclosure): number {
  let flat = 0;
  let all = 0;
  for (const { transparent, area, skyView, tilt } of fabric.surfaces) {
    if (!transparent) continue;
    all += area * skyView;
    if (tilt < 60) flat += area * skyView;
  }
  return all > 0 ? flat / all : 0;
}
