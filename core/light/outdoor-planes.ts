import type { Place } from '../plan/schema.ts';
import { skyViewCut, skylineShare } from '../sun/index.ts';
import type { HorizonPoint } from '../sun/index.ts';
import type { OutdoorSteps } from '../weather/index.ts';
import type { Enclosure } from '../fabric/index.ts';
import type { PlaneSeries } from './plane-series.ts';
import { planeSeries } from './plane-series.ts';
import type { SkySeries } from './sky-series.ts';
import { behindReveal } from './window-reveal.ts';

/** Share of the beam past the skyline in every daylit step; null where nothing stands above the level. */
export function pastSkyline(
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
export function planesOf(
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
    const series = surface.part === 'pane' ? behindReveal(free, place, sky, albedo) : free;
    made.set(key, series);
    return series;
  });
}

/** Sun on the outer face of each surface [W m⁻²], step by step. */
export function spreadIncident(
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
