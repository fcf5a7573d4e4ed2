import { covering } from '../plan/coverings.ts';
import type { Place } from '../plan/schema.ts';
import type { Enclosure } from '../fabric/index.ts';
import { coverAbsorptance, coverTransmittance } from './cover.ts';
import type { DaylightSeries } from './daylight-series.ts';
import type { Opening } from './openings.ts';
import type { TransmittanceCurve } from './curve.ts';
import { transmittanceCurve } from './curve.ts';
import { keptByBench, placeGains } from './place-gains.ts';
import type { PlaneSeries } from './plane-series.ts';
import { beamThrough } from './reach.ts';
import type { SkySeries } from './sky-series.ts';
import { stripFactor, windowBayOf } from './window-factor.ts';

/**
 * A sheer curtain on a window's pane: what falls between its threads goes straight on, the rest of what it passes is
 * scattered evenly into the half-space behind it, and of that the plants have their configuration factor of the pane.
 * The open share is the cloth's long-wave transmittance, which passes by the same holes.
 */
export interface SheerCurtain {
  /** Share of light it passes; sunlight and 400–700 nm, 0–1. */
  readonly solar: number;
  readonly par: number;
  /** Share of the light that goes straight through its holes, never more than it passes, 0–1. */
  readonly straight: number;
  /** Share of sunlight it takes up; its warmth is the bay's, with what the plants and the sill take up. */
  readonly kept: number;
  /** Mean configuration factor of the pane over the plants' rectangle. */
  readonly factor: number;
}

/** What passes all light at every angle. */
const clear: TransmittanceCurve = transmittanceCurve([], 'solar');

/** Mean configuration factor of an evenly shining pane over the plants, of both levels where there is an upper shelf. */
function paneFactor(place: Place, enclosure: Enclosure, openings: readonly Opening[]): number {
  const { width, height, distance, depth } = windowBayOf(place);
  if (place.upperShelf === null) return stripFactor(width, height, distance, depth);
  const panes = openings.map((each) => ({ ...each, reveal: 0, bars: null, solar: clear, par: clear }));
  return placeGains(place, enclosure, panes, []).bench.skySolar;
}

/** The sheer curtain of a window bay; null where none hangs. */
export function sheerOf(
  place: Place,
  enclosure: Enclosure,
  openings: readonly Opening[],
): SheerCurtain | null {
  if (place.sheer === null || place.shape.kind !== 'window-bay') return null;
  const cloth = covering(place.sheer.covering);
  const [solar, par] = [coverTransmittance(0, cloth, 'solar'), coverTransmittance(0, cloth, 'par')];
  return {
    solar,
    par,
    straight: Math.min(cloth.longWaveTransmittance.value, solar, par),
    kept: coverAbsorptance(0, cloth, 'solar'),
    factor: paneFactor(place, enclosure, openings),
  };
}

/** The pane a sheer curtain hangs before: what falls on it, what it passes, and frame and dirt off it. */
export interface LitWindow {
  readonly plane: PlaneSeries;
  readonly opening: Pick<Opening, 'solar' | 'par' | 'bars'>;
  readonly housing: number;
  /** Photons per joule of sunlight [µmol J⁻¹], one figure or one a daylit step. */
  readonly photons: number | Float64Array;
}

/** Puts the steps with the curtain drawn in place of the sun's own: part of it straight on, the rest shining evenly from the pane. */
export function drawSheer(
  output: DaylightSeries,
  sheer: SheerCurtain,
  { plane, opening, housing, photons }: LitWindow,
  sky: SkySeries,
  drawn: Uint8Array,
): void {
  const { solar, par } = opening;
  const { beam, diffuse } = plane;
  for (let j = 0; j < sky.index.length; j++) {
    const k = sky.index[j];
    if (drawn[k] === 0) continue;
    const bright = beam[j] * beamThrough(opening, solar, plane, sky, j) + diffuse[j] * solar.diffuse;
    const brightPar = beam[j] * beamThrough(opening, par, plane, sky, j) + diffuse[j] * par.diffuse;
    const perJoule = typeof photons === 'number' ? photons : photons[j];
    const { straight, factor } = sheer;
    const spread = housing * bright * (sheer.solar - straight) * factor;
    output.benchSolar[k] = straight * output.benchSolar[k] + spread;
    output.benchPhotons[k] =
      straight * output.benchPhotons[k] + perJoule * housing * brightPar * (sheer.par - straight) * factor;
    const onCloth = output.transmittedSolar[k];
    output.transmittedSolar[k] = onCloth * (sheer.solar + sheer.kept);
    output.insideSolar[k] =
      straight * output.insideSolar[k] + spread * output.benchArea * keptByBench + onCloth * sheer.kept;
  }
}
