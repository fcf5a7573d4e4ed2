import type { Enclosure } from '../fabric/index.ts';
import type { Place } from '../plan/schema.ts';
import type { DaylightOptions, DaylightSeries } from './daylight-series.ts';

/** Takes off what shade cloth and dirt take: cloth from the cover's own sun too, dirt from what comes in alone. */
export function dim(
  output: DaylightSeries,
  place: Place,
  enclosure: Enclosure,
  options: Pick<DaylightOptions, 'shade' | 'dirt'>,
): void {
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
