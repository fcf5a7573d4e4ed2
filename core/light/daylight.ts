import { covering } from '../plan/coverings.ts';
import type { Place } from '../plan/schema.ts';
import type { PlanSite } from '../plan/site.ts';
import type { OutdoorSteps } from '../weather/index.ts';
import type { Enclosure } from '../fabric/index.ts';
import { areaOf, surfacesOf } from '../fabric/index.ts';
import { diffuseTransmittance } from './cover.ts';
import type { DaylightOptions, DaylightSeries } from './daylight-series.ts';
import { openingsOf } from './openings.ts';
import { pastSkyline, planesOf, spreadIncident } from './outdoor-planes.ts';
import { benchOf, placeGains } from './place-gains.ts';
import { enter, reach } from './reach.ts';
import { dim } from './shade.ts';
import { sharedSkySeries } from './sky-series.ts';
import { sidesOfEvenSky, throwOffSides } from './window-sides.ts';
import { drawSheer, sheerOf } from './window-sheer.ts';

/**
 * Daylight at the plants' level and on every surface for each step of a run of weather. `frameShare` is what frame
 * and bars take of light from anywhere; what bars that stand proud and gutters take more comes by their geometry.
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
    const gains = placeGains(place, enclosure, openings, horizon, options.spot);
    reach(output, gains, sky, steps, clear, albedo, housing, photons);
    output.skySolar = gains.bench.skySolar * housing;
    output.skyPhotons = gains.bench.skyPar * housing;
    const plane = planes[enclosure.surfaces.indexOf(openings[0].surface)];
    const window = plane === null ? null : { plane, opening: openings[0], housing, photons };
    if (window !== null) throwOffSides(output, window, sky);
    output.skySolar += housing * openings[0].solar.diffuse * sidesOfEvenSky(place, openings[0], horizon);
    output.skyPhotons += housing * openings[0].par.diffuse * sidesOfEvenSky(place, openings[0], horizon);
    const sheer = options.sheerDrawn ? sheerOf(place, enclosure, openings) : null;
    if (sheer !== null && window !== null && options.sheerDrawn)
      drawSheer(output, sheer, window, sky, options.sheerDrawn);
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
