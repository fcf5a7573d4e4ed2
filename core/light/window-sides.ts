import type { Place } from '../plan/schema.ts';
import { skyViewCut } from '../sun/index.ts';
import type { HorizonPoint } from '../sun/index.ts';
import type { DaylightSeries } from './daylight-series.ts';
import type { Opening } from './openings.ts';
import { keptByBench } from './place-gains.ts';
import type { SkySeries } from './sky-series.ts';
import { revealBounce } from './window-bounce.ts';
import type { LitWindow } from './window-sheer.ts';

/**
 * Adds what the sides of a window's reveal throw to the plants. It comes through the pane from all manner of angles and
 * is given the pane's hemispherical share (estimate: most of it comes more squarely, so this errs to the dark side).
 */
export function throwOffSides(output: DaylightSeries, window: LitWindow, sky: SkySeries): void {
  const { plane, opening, housing, photons } = window;
  const { offSides } = plane;
  if (offSides === null) return;
  for (let j = 0; j < sky.index.length; j++) {
    const k = sky.index[j];
    const solar = housing * offSides[j] * opening.solar.diffuse;
    const perJoule = typeof photons === 'number' ? photons : photons[j];
    output.benchSolar[k] += solar;
    output.benchPhotons[k] += perJoule * housing * offSides[j] * opening.par.diffuse;
    output.insideSolar[k] += solar * output.benchArea * keptByBench;
  }
}

/** The same of an even sky alone, as a share of its light on the level; 0 where nothing is set back. */
export function sidesOfEvenSky(
  { shape }: Place,
  { surface }: Opening,
  horizon: readonly HorizonPoint[],
): number {
  if (shape.kind !== 'window-bay' || shape.reveal === 0) return 0;
  return surface.skyView * (1 - skyViewCut(horizon, surface)) * revealBounce(shape).plants;
}
