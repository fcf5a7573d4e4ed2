import { covering } from '../plan/coverings.ts';
import type { Place } from '../plan/schema.ts';
import type { PlanSite } from '../plan/site.ts';
import type { OutdoorSteps } from '../weather/index.ts';
import type { Enclosure } from '../fabric/index.ts';
import { areaOf, surfacesOf } from '../fabric/index.ts';
import { diffuseTransmittance } from './cover.ts';
import { openingsOf } from './openings.ts';
import { pastSkyline, planesOf, spreadIncident } from './outdoor-planes.ts';
import { benchOf, placeGains } from './place-gains.ts';
import { enter, reach } from './reach.ts';
import { dim } from './shade.ts';
import { sharedSkySeries } from './sky-series.ts';
import { drawSheer, sheerOf } from './window-sheer.ts';

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

/**
 * Daylight at the plants' level and on every surface for each step of a run of weather. `frameShare` is what frame,
 * bars and gutters take of light from anywhere, their depth included: one share for every angle, so that noon sun
 * through a house of deep bars is a little stronger, and sun along the glass a little weaker, than is said here.
 */
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
    const sheer = options.sheerDrawn ? sheerOf(place) : null;
    const plane = planes[enclosure.surfaces.indexOf(openings[0].surface)];
    if (sheer !== null && plane !== null && options.sheerDrawn)
      drawSheer(output, sheer, { plane, opening: openings[0], housing, photons }, sky, options.sheerDrawn);
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
