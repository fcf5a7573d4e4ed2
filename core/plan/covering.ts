/** How sure a number is: high (standard or measured), medium (handbook from memory or a spread), low (estimate). */
export type Confidence = 'high' | 'medium' | 'low';

/** One number of a catalogue with where it comes from. */
export interface Figure {
  readonly value: number;
  readonly source: string;
  readonly confidence: Confidence;
}

/** What a covering is put to: the plan's fields accept only the fitting uses (see `coveringsFor`). */
export type CoveringUse =
  'glazing' | 'film' | 'lining' | 'screen' | 'fleece' | 'fabric' | 'wall' | 'open' | 'shade' | 'sheer';

/**
 * How a covering treats the sun.
 * - `slab`: clear plates by Fresnel and Bouguer (Duffie & Beckman ch. 5); extinctions [m⁻¹] for the whole
 *   solar spectrum and for 400–700 nm, thickness of one plate [m];
 * - `measured`: normal transmittance and reflectance 0–1; the fall with angle follows a clear slab of
 *   `curveLayers` plates of the refractive index, and none at all where `curveLayers` is 0 (porous cloth);
 * - `opaque`: solar absorptance of the outer face 0–1.
 */
export type Optics =
  | {
      readonly kind: 'slab';
      readonly layers: 1 | 2;
      readonly refractiveIndex: Figure;
      readonly extinction: Figure;
      readonly parExtinction: Figure;
      readonly thickness: Figure;
    }
  | {
      readonly kind: 'measured';
      readonly normalTransmittance: Figure;
      readonly parTransmittance: Figure;
      readonly reflectance: Figure;
      readonly refractiveIndex: Figure;
      readonly curveLayers: 0 | 1 | 2;
    }
  | { readonly kind: 'opaque'; readonly absorptance: Figure };

/** A covering, lining, screen, fleece, fabric or wall as the catalogue holds it. */
export interface Covering {
  readonly id: string;
  readonly name: string;
  readonly use: CoveringUse;
  /** Thermal resistance between the two faces, films excluded; for linings and screens the caught air included [m² K W⁻¹]. */
  readonly resistance: Figure;
  /** Long-wave emissivity of the face to the plants and of the face away from them, 0–1. */
  readonly emissivityInside: Figure;
  readonly emissivityOutside: Figure;
  /** Share of long-wave radiation that passes straight through, 0–1. */
  readonly longWaveTransmittance: Figure;
  readonly optics: Optics;
  /** Heat capacity a square metre [J m⁻² K⁻¹]; 0 where it is too light to matter. */
  readonly heatCapacity: Figure;
  /** Share of the free exchange of air that is left once this layer closes it off, 0–1 (screens and fleeces; 1 otherwise). */
  readonly airShare: Figure;
  /** Purchase price a square metre, in the plan's currency; the user's own price comes first. */
  readonly price: Figure;
  /** Life until it is replaced [years]. */
  readonly life: Figure;
}

/** Writes a figure of a catalogue. */
export function figure(value: number, source: string, confidence: Confidence): Figure {
  return { value, source, confidence };
}

/** Prices and lives carry no source: they are rounded from common practice and meant to be replaced by the user's own. */
export const practice = (value: number): Figure => figure(value, 'common practice, no source', 'low');

/** A number that is nought by its nature, such as the heat capacity of a film as thin as paper. */
export const negligible = figure(0, 'too small to matter', 'high');

/** A number that does not bind, such as the air share of a layer that is not drawn over anything. */
export const whole = figure(1, 'does not apply: nothing is closed off', 'high');
