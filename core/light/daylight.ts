import { covering } from '../plan/coverings.ts';
import type { Place } from '../plan/schema.ts';
import type { PlanSite } from '../plan/site.ts';
import { skyViewCut, sunClearsHorizon } from '../sun/index.ts';
import { perezFloor } from '../sun/perez.ts';
import type { OutdoorSteps } from '../weather/index.ts';
import type { Enclosure } from '../fabric/index.ts';
import { areaOf, surfacesOf } from '../fabric/index.ts';
import { diffuseTransmittance } from './cover.ts';
import { onCurve } from './curve.ts';
import { photonsPerSolarJoule } from './daily-light.ts';
import type { DirectionalGain, TablePlace } from './gain.ts';
import { locate, readGain } from './gain.ts';
import { openingsOf } from './openings.ts';
import type { Opening } from './openings.ts';
import type { PlaneSeries } from './plane-series.ts';
import { planeSeries } from './plane-series.ts';
import type { PlaceGains } from './place-gains.ts';
import { benchOf, placeGains } from './place-gains.ts';
import type { SkySeries } from './sky-series.ts';
import { sharedSkySeries } from './sky-series.ts';

/** Daylight of a place, one value a step of the weather; screens and fleece not drawn. */
export interface DaylightSeries {
  /** Sunlight at the plants' level, averaged over it [W m⁻²], and its photons 400–700 nm [µmol m⁻² s⁻¹]. */
  readonly benchSolar: Float64Array;
  readonly benchPhotons: Float64Array;
  /** Sunlight that enters through all covers together [W]. */
  readonly transmittedSolar: Float64Array;
  /** Of it what falls on an opaque back wall [W], and what is taken up inside by plants, floor and wall [W]. */
  readonly wallSolar: Float64Array;
  readonly insideSolar: Float64Array;
  /** Sunlight on the outer face of each surface [W m⁻²], in the order of the enclosure's surfaces; zero where no outdoors is behind. */
  readonly incident: readonly Float64Array[];
  /** Area of the plants' level [m²]. */
  readonly benchArea: number;
  /** Share of an even sky's light that reaches the plants' level, sunlight and photons, 0–1. */
  readonly skySolar: number;
  readonly skyPhotons: number;
  /** Share of light left under the screen when closed and under the fleece when laid, 0–1. */
  readonly screenShare: number;
  readonly fleeceShare: number;
}

/** Share of the sunlight falling on them that plants and floor, and a back wall, keep (estimate: reflectance 0.2 and 0.4, part of which is caught again). */
const keptByBench = 0.85;
const keptByWall = 0.75;

/** Options of a daylight run. */
export interface DaylightOptions {
  /** Photons 400–700 nm per joule of sunlight outdoors [µmol J⁻¹]. */
  readonly photonsPerJoule?: number;
}

/** Daylight at the plants' level and on every surface for each step of a run of weather. */
export function daylightSeries(
  place: Place,
  site: Pick<PlanSite, 'albedo' | 'horizon'>,
  steps: OutdoorSteps,
  options: DaylightOptions = {},
  enclosure: Enclosure = surfacesOf(place),
): DaylightSeries {
  const photonsPerJoule = options.photonsPerJoule ?? photonsPerSolarJoule;
  const sky = sharedSkySeries(steps);
  const clear = clearOfSkyline(site, steps, sky);
  const planes = planesOf(enclosure, site, sky, clear);
  const openings = openingsOf(place, enclosure);
  const output = emptySeries(place, enclosure, steps.n);
  spreadIncident(output.incident, planes, sky);
  if (openings.length === 0) return output;
  const housing = (1 - place.frameShare) * (1 - place.dirtShare);
  enter(output.transmittedSolar, output.insideSolar, openings, enclosure, planes, sky, housing);
  const gains = placeGains(place, enclosure, openings, site);
  reach(output, gains, sky, steps, clear, housing, photonsPerJoule);
  return { ...output, skySolar: gains.bench.skySolar * housing, skyPhotons: gains.bench.skyPar * housing };
}

function emptySeries(place: Place, enclosure: Enclosure, n: number): DaylightSeries {
  const zeros = () => new Float64Array(n);
  const layerShare = (id: string | undefined, layers: number) =>
    id === undefined ? 1 : diffuseTransmittance(covering(id), 'par') ** layers;
  return {
    benchSolar: zeros(),
    benchPhotons: zeros(),
    transmittedSolar: zeros(),
    wallSolar: zeros(),
    insideSolar: zeros(),
    incident: enclosure.surfaces.map(zeros),
    benchArea: areaOf(benchOf(place, enclosure)),
    skySolar: 0,
    skyPhotons: 0,
    screenShare: layerShare(place.screen?.covering, 1),
    fleeceShare: layerShare(place.fleece?.covering, place.fleece?.layers ?? 1),
  };
}

function clearOfSkyline(
  site: Pick<PlanSite, 'horizon'>,
  steps: OutdoorSteps,
  sky: SkySeries,
): Uint8Array | null {
  if (site.horizon.length === 0) return null;
  const clear = new Uint8Array(sky.index.length);
  for (let j = 0; j < clear.length; j++) {
    const k = sky.index[j];
    clear[j] = sunClearsHorizon(site.horizon, steps.sunElevation[k], steps.sunAzimuth[k]) ? 1 : 0;
  }
  return clear;
}

/** Irradiance series of every surface with the outdoors behind; surfaces of one orientation share theirs. */
function planesOf(
  enclosure: Enclosure,
  site: Pick<PlanSite, 'albedo' | 'horizon'>,
  sky: SkySeries,
  clear: Uint8Array | null,
): (PlaneSeries | null)[] {
  const made = new Map<string, PlaneSeries>();
  return enclosure.surfaces.map((surface) => {
    if (surface.behind !== 'outdoors') return null;
    const key = `${surface.tilt.toFixed(6)} ${surface.azimuth.toFixed(6)}`;
    const found = made.get(key);
    if (found !== undefined) return found;
    const skyLeft = 1 - skyViewCut(site.horizon, surface);
    const series = planeSeries(surface.normal, sky, site.albedo, { clear, skyLeft });
    made.set(key, series);
    return series;
  });
}

function spreadIncident(
  incident: readonly Float64Array[],
  planes: readonly (PlaneSeries | null)[],
  sky: SkySeries,
): void {
  planes.forEach((plane, i) => {
    if (plane === null) return;
    const out = incident[i];
    for (let j = 0; j < sky.index.length; j++) out[sky.index[j]] = plane.beam[j] + plane.diffuse[j];
  });
}

/** Adds up what enters [W], and in `low` what of it falls under the plants' level. */
function enter(
  out: Float64Array,
  low: Float64Array,
  openings: readonly Opening[],
  enclosure: Enclosure,
  planes: readonly (PlaneSeries | null)[],
  sky: SkySeries,
  housing: number,
): void {
  for (const { surface, solar, lowShare } of openings) {
    const plane = planes[enclosure.surfaces.indexOf(surface)];
    if (plane === null) continue;
    const area = surface.area * housing;
    for (let j = 0; j < sky.index.length; j++) {
      const entering =
        area * (plane.beam[j] * onCurve(solar, plane.cosIncidence[j]) + plane.diffuse[j] * solar.diffuse);
      out[sky.index[j]] += entering;
      low[sky.index[j]] += entering * lowShare;
    }
  }
}

/** Fills bench, wall and inside from the gains, step by step; `insideSolar` comes in holding what falls under the plants' level. */
function reach(
  output: DaylightSeries,
  gains: PlaceGains,
  sky: SkySeries,
  steps: OutdoorSteps,
  clear: Uint8Array | null,
  housing: number,
  photonsPerJoule: number,
): void {
  const at: TablePlace = { index: 0, next: 0, share: 0, rise: 0 };
  const { bench, wall, benchArea } = gains;
  const parToSolar = bench.skySolar > 0 ? bench.skyPar / bench.skySolar : 1;
  for (let j = 0; j < sky.index.length; j++) {
    const k = sky.index[j];
    const round = sky.circumsolar[j] * sky.diffuse[j];
    const even = sky.diffuse[j] - round;
    const direct = clear === null || clear[j] === 1;
    const level = direct ? sky.beam[j] * Math.max(0, sky.up[j]) + round : 0;
    locate(at, steps.sunAzimuth[k], steps.sunElevation[k]);
    const onWall = wall === null ? 0 : housing * wallLight(gains, wall, sky, j, direct, at);
    const bounced = (onWall * gains.wallToBench) / benchArea;
    const solar = housing * (level * readGain(bench.solar, at) + even * bench.skySolar) + bounced;
    const photons = housing * (level * readGain(bench.par, at) + even * bench.skyPar) + bounced * parToSolar;
    output.benchSolar[k] = solar;
    output.benchPhotons[k] = photonsPerJoule * photons;
    output.wallSolar[k] = onWall;
    const low = output.insideSolar[k];
    const onBench = solar * benchArea + low;
    const crossing = Math.max(0, output.transmittedSolar[k] - onBench - onWall);
    output.insideSolar[k] = onBench * keptByBench + onWall * keptByWall + crossing * gains.keptCrossing;
  }
}

/** Sunlight on the back wall's inner face at daylit step `j` [W], before frame and dirt. */
function wallLight(
  gains: PlaceGains,
  wall: DirectionalGain,
  sky: SkySeries,
  j: number,
  direct: boolean,
  at: TablePlace,
): number {
  const [east, north, up] = gains.wallNormal;
  const facing = east * sky.east[j] + north * sky.north[j] + up * sky.up[j];
  const round = sky.circumsolar[j] * sky.diffuse[j];
  const normal = sky.beam[j] + round / Math.max(perezFloor, sky.up[j]);
  const beam = direct && facing > 0 ? normal * facing * readGain(wall.solar, at) : 0;
  const even = sky.diffuse[j] - round + sky.global[j] * gains.albedo;
  return gains.wallArea * (beam + even * 0.5 * wall.skySolar);
}
