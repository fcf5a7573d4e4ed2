import { assemblyOptics, covering, layersOf } from '../../../core/index.ts';
import type { Covering, Place, Surface } from '../../../core/index.ts';

/** Cloths that take light on a day of the year and a time of the day: shade outside the cover, a sheer curtain inside a pane. */
export interface Cloths {
  readonly shade: Covering | null;
  readonly sheer: Covering | null;
}

/** True from the first to the last of a span that may run over the turn of the year or of the day. */
const within = (at: string, from: string, to: string) =>
  from <= to ? at >= from && at <= to : at >= from || at <= to;

/** `day` as `12-21`, `time` as `12:30`. */
export function clothsOn(place: Place, day: string, time: string): Cloths {
  const { shadeCloth, sheer } = place;
  const shaded = shadeCloth !== null && within(day, shadeCloth.from, shadeCloth.to);
  const drawn = sheer !== null && place.shape.kind === 'window-bay' && within(time, sheer.from, sheer.to);
  return {
    shade: shaded ? covering(shadeCloth.covering) : null,
    sheer: drawn ? covering(sheer.covering) : null,
  };
}

/** What cloths, cover and inner layers pass and throw back of a beam in plant light at an incidence cosine. */
export function lightThrough(place: Place, surface: Surface, cosine: number, { shade, sheer }: Cloths) {
  const layers = [...(shade ? [shade] : []), ...layersOf(place, surface), ...(sheer ? [sheer] : [])];
  return assemblyOptics(cosine, layers, 'par');
}
