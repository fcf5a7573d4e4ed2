import { perezFloor } from '../sun/perez.ts';
import type { OutdoorSteps } from '../weather/index.ts';
import type { Enclosure } from '../fabric/index.ts';
import { pastBars } from './bars.ts';
import type { TransmittanceCurve } from './curve.ts';
import { onCurve } from './curve.ts';
import type { DaylightSeries } from './daylight-series.ts';
import type { DirectionalGain, TablePlace } from './gain.ts';
import { locate, readGain } from './gain.ts';
import type { Opening } from './openings.ts';
import { keptByBench, keptByWall } from './place-gains.ts';
import type { PlaceGains } from './place-gains.ts';
import type { PlaneSeries } from './plane-series.ts';
import type { SkySeries } from './sky-series.ts';

/** Adds up what enters [W], and in `low` what of it falls under the plants' level. */
export function enter(
  out: Float64Array,
  low: Float64Array,
  openings: readonly Opening[],
  enclosure: Enclosure,
  planes: readonly (PlaneSeries | null)[],
  sky: SkySeries,
  housing: number,
): void {
  for (const opening of openings) {
    const { solar, lowShare } = opening;
    const plane = planes[enclosure.surfaces.indexOf(opening.surface)];
    if (plane === null) continue;
    const area = opening.area * housing;
    for (let j = 0; j < sky.index.length; j++) {
      const entering =
        area *
        (plane.beam[j] * beamThrough(opening, solar, plane, sky, j) + plane.diffuse[j] * solar.diffuse);
      out[sky.index[j]] += entering;
      low[sky.index[j]] += entering * lowShare;
    }
  }
}

/** Share of the beam at daylit step `j` that comes past an opening's bars and through its cover, 0–1. */
export function beamThrough(
  { bars }: Pick<Opening, 'bars'>,
  curve: TransmittanceCurve,
  { cosIncidence }: PlaneSeries,
  sky: SkySeries,
  j: number,
): number {
  const through = onCurve(curve, cosIncidence[j]);
  if (bars === null) return through;
  const { acrossWorld: across, depth } = bars;
  const side = across[0] * sky.east[j] + across[1] * sky.north[j] + across[2] * sky.up[j];
  return through * pastBars(depth, side, cosIncidence[j]);
}

/** Fills bench, wall and inside from the gains, step by step; `insideSolar` comes in holding what falls under the plants' level. */
export function reach(
  output: DaylightSeries,
  gains: PlaceGains,
  sky: SkySeries,
  steps: OutdoorSteps,
  clear: Float64Array | null,
  albedo: number | Float64Array,
  housing: number,
  photonsPerJoule: number | Float64Array,
): void {
  const at: TablePlace = { index: 0, next: 0, share: 0, rise: 0 };
  const { bench, landed, wall, benchArea } = gains;
  const parToSolar = bench.skySolar > 0 ? bench.skyPar / bench.skySolar : 1;
  for (let j = 0; j < sky.index.length; j++) {
    const k = sky.index[j];
    const round = sky.circumsolar[j] * sky.diffuse[j];
    const even = sky.diffuse[j] - round;
    const past = clear === null ? 1 : clear[j];
    const level = past * (sky.beam[j] * Math.max(0, sky.up[j]) + round);
    locate(at, steps.sunAzimuth[k], steps.sunElevation[k]);
    const onWall =
      wall === null
        ? 0
        : housing * wallLight(gains, wall, sky, j, past, typeof albedo === 'number' ? albedo : albedo[k], at);
    const bounced = (onWall * gains.wallToBench) / benchArea;
    const solar = housing * (level * readGain(bench.solar, at) + even * bench.skySolar) + bounced;
    const photons = housing * (level * readGain(bench.par, at) + even * bench.skyPar) + bounced * parToSolar;
    output.benchSolar[k] = solar;
    output.benchPhotons[k] =
      photons * (typeof photonsPerJoule === 'number' ? photonsPerJoule : photonsPerJoule[j]);
    output.wallSolar[k] = onWall;
    const low = output.insideSolar[k];
    const plants =
      landed === null
        ? solar
        : housing * (level * readGain(landed.solar, at) + even * landed.skySolar) + bounced;
    const onBench = plants * benchArea + low;
    const crossing = Math.max(0, output.transmittedSolar[k] - onBench - onWall);
    const kept = onBench * keptByBench + onWall * keptByWall + crossing * gains.keptCrossing;
    // Under deep bars the table's steps of direction may find a little more on the plants than comes in.
    output.insideSolar[k] = Math.min(kept, output.transmittedSolar[k]);
  }
}

/** Sunlight on the back wall's inner face at daylit step `j` [W], before frame and dirt. */
function wallLight(
  gains: PlaceGains,
  wall: DirectionalGain,
  sky: SkySeries,
  j: number,
  past: number,
  albedo: number,
  at: TablePlace,
): number {
  const [east, north, up] = gains.wallNormal;
  const facing = east * sky.east[j] + north * sky.north[j] + up * sky.up[j];
  const round = sky.circumsolar[j] * sky.diffuse[j];
  const normal = sky.beam[j] + round / Math.max(perezFloor, sky.up[j]);
  const beam = facing > 0 ? past * normal * facing * readGain(wall.solar, at) : 0;
  const even = sky.diffuse[j] - round + sky.global[j] * albedo;
  return gains.wallArea * (beam + even * 0.5 * wall.skySolar);
}
