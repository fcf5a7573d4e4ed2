import type { Spot } from '../plan/schema.ts';

/** Daylight of a place, one value a step of the weather; screens and fleece not drawn. */
export interface DaylightSeries {
  /** Sunlight at the plants' level, averaged over it [W m⁻²], and its photons 400–700 nm [µmol m⁻² s⁻¹]. */
  readonly benchSolar: Float64Array;
  readonly benchPhotons: Float64Array;
  /** Sunlight that enters through all covers together [W], less what a drawn sheer curtain throws back out. */
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
  /** Part of the growing area to look at; all of it where not given. */
  readonly spot?: Spot;
}
