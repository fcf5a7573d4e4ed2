import { covering } from '../plan/coverings.ts';
import type { Place } from '../plan/schema.ts';
import type { PlanSite } from '../plan/site.ts';
import { skyViewCut, skylineShare } from '../sun/index.ts';
import type { HorizonPoint } from '../sun/index.ts';
import type { OutdoorSteps } from '../weather/index.ts';
import type { Enclosure } from '../fabric/index.ts';
import { areaOf, surfacesOf } from '../fabric/index.ts';
import { diffuseTransmittance } from './cover.ts';
import { onCurve } from './curve.ts';
import { openingsOf } from './openings.ts';
import type { Opening } from './openings.ts';
import type { PlaneSeries } from './plane-series.ts';
import { planeSeries } from './plane-series.ts';
import { benchOf, keptByBench, placeGains } from './place-gains.ts';
import { reach } from './reach.ts';
import type { SkySeries } from './sky-series.ts';
import { sharedSkySeries } from './sky-series.ts';
import { behindReveal } from './window-reveal.ts';
import { sheerOf } from './window-sheer.ts';

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

/** Options of a daylight run; each series has a value a step of the weather. */
export interface DaylightOptions {
  /** Photons 400–700 nm per joule of sunlight outdoors [µmol J⁻¹]; by the clearness of the sky where not given. */
  readonly photonsPerJoule?: number;
  /** Reflectance of the ground where snow comes and goes, 0–1; the site's where null. */
  readonly groundAlbedo?: Float64Array | null;
  /** Share of light left under the shade cloth over the cover, 0–1; no cloth laid where null. */
  readonly shade?: Float64Array | null;
  /** Share of light lost to dirt, 0–1; the place's `dirtShare` all year where null. */
  readonly dirt?: Float64Array | null;
  /** 1 where a window's sheer curtain is drawn; open all day where null. */
  readonly sheerDrawn?: Uint8Array | null;
}

/** Daylight at the plants' level and on every surface for each step of a run of weather. */
export function daylightSeries(
  place: Place,
  site: Pick<PlanSite, 'albedo' | 'horizon'>,
  steps: OutdoorSteps,
  options: DaylightOptions = {},
  enclosure: Enclosure = surfacesOf(place),
): DaylightSeries {
  const albedo = options.groundAlbedo ?? site.albedo;
  const horizon = place.horizon ?? site.horizon;
  const sky = sharedSkySeries(steps);
  const clear = pastSkyline(horizon, steps, sky);
  const planes = planesOf(place, enclosure, horizon, albedo, sky, clear);
  const openings = openingsOf(place, enclosure);
  const output = emptySeries(place, enclosure, steps.n);
  spreadIncident(output.incident, planes, sky);
  if (openings.length > 0) {
    const housing = (1 - place.frameShare) * (1 - place.dirtShare);
    const photons = options.photonsPerJoule ?? sky.photonsPerJoule;
    enter(output.transmittedSolar, output.insideSolar, openings, enclosure, planes, sky, housing);
    const gains = placeGains(place, enclosure, openings, horizon);
    reach(output, gains, sky, steps, clear, albedo, housing, photons);
    output.skySolar = gains.bench.skySolar * housing;
    output.skyPhotons = gains.bench.skyPar * housing;
    if (options.sheerDrawn)
      scatter(output, place, openings[0], planes, enclosure, sky, housing, photons, options.sheerDrawn);
  }
  dim(output, place, enclosure, options);
  return output;
}

type Filled = { -readonly [K in keyof DaylightSeries]: DaylightSeries[K] };

function emptySeries(place: Place, enclosure: Enclosure, n: number): Filled {
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

/** Share of the beam past the skyline in every daylit step; null where nothing stands above the level. */
function pastSkyline(
  horizon: readonly HorizonPoint[],
  steps: OutdoorSteps,
  sky: SkySeries,
): Float64Array | null {
  if (horizon.length === 0) return null;
  const clear = new Float64Array(sky.index.length);
  for (let j = 0; j < clear.length; j++) {
    const k = sky.index[j];
    clear[j] = skylineShare(horizon, steps.sunElevation[k], steps.sunAzimuth[k]);
  }
  return clear;
}

/** Irradiance series of every surface with the outdoors behind; surfaces of one orientation share theirs. */
function planesOf(
  place: Place,
  enclosure: Enclosure,
  horizon: readonly HorizonPoint[],
  albedo: number | Float64Array,
  sky: SkySeries,
  clear: Float64Array | null,
): (PlaneSeries | null)[] {
  const made = new Map<string, PlaneSeries>();
  return enclosure.surfaces.map((surface) => {
    if (surface.behind !== 'outdoors') return null;
    const key = `${surface.tilt.toFixed(6)} ${surface.azimuth.toFixed(6)}`;
    const found = made.get(key);
    if (found !== undefined) return found;
    const skyLeft = 1 - skyViewCut(horizon, surface);
    const free = planeSeries(surface.normal, sky, albedo, { clear, skyLeft });
    const series = surface.part === 'pane' ? behindReveal(free, place, sky) : free;
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

/** Puts the steps with the sheer curtain drawn in place of the sun's own: the pane shines evenly on the plants. */
function scatter(
  output: DaylightSeries,
  place: Place,
  { solar, par }: Opening,
  planes: readonly (PlaneSeries | null)[],
  enclosure: Enclosure,
  sky: SkySeries,
  housing: number,
  photons: number | Float64Array,
  drawn: Uint8Array,
): void {
  const sheer = sheerOf(place);
  const plane = planes[enclosure.surfaces.findIndex((surface) => surface.part === 'pane')];
  if (sheer === null || plane === null || plane === undefined) return;
  for (let j = 0; j < sky.index.length; j++) {
    const k = sky.index[j];
    if (drawn[k] === 0) continue;
    const { beam, diffuse, cosIncidence } = plane;
    const bright = beam[j] * onCurve(solar, cosIncidence[j]) + diffuse[j] * solar.diffuse;
    const brightPar = beam[j] * onCurve(par, cosIncidence[j]) + diffuse[j] * par.diffuse;
    const perJoule = typeof photons === 'number' ? photons : photons[j];
    output.benchSolar[k] = housing * bright * sheer.solar * sheer.factor;
    output.benchPhotons[k] = perJoule * housing * brightPar * sheer.par * sheer.factor;
    output.transmittedSolar[k] *= sheer.solar;
    output.insideSolar[k] = output.benchSolar[k] * output.benchArea * keptByBench;
  }
}

/** Takes off what shade cloth and dirt take: cloth from the cover's own sun too, dirt from what comes in alone. */
function dim(output: DaylightSeries, place: Place, enclosure: Enclosure, options: DaylightOptions): void {
  const { shade = null, dirt = null } = options;
  if (shade === null && dirt === null) return;
  const { benchSolar, benchPhotons, transmittedSolar, wallSolar, insideSolar, incident } = output;
  const inside = [benchSolar, benchPhotons, transmittedSolar, wallSolar, insideSolar];
  const shaded = shade === null ? [] : incident.filter((_, i) => enclosure.surfaces[i].transparent);
  for (let k = 0; k < benchSolar.length; k++) {
    const cloth = shade === null ? 1 : shade[k];
    const clean = dirt === null ? 1 : (1 - dirt[k]) / (1 - place.dirtShare);
    for (const series of inside) series[k] *= cloth * clean;
    for (const series of shaded) series[k] *= cloth;
  }
}
