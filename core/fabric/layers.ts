import type { Covering } from '../plan/coverings.ts';
import { covering } from '../plan/coverings.ts';
import type { SecondSkin } from '../plan/equipment.ts';
import type { Place } from '../plan/schema.ts';

/** A cover with what is added inside it, reduced to the numbers of one surface. */
export interface LayerNumbers {
  /** Resistance from the innermost to the outermost face [m² K W⁻¹]. */
  readonly resistance: number;
  /** Long-wave emissivity of the innermost and the outermost face, 0–1. */
  readonly emissivityInside: number;
  readonly emissivityOutside: number;
  /** Share of long-wave that passes the whole straight through, 0–1. */
  readonly longWaveTransmittance: number;
}

/** Radiative coefficient of black surfaces near 10 °C, 4σT³ [W m⁻² K⁻¹] (ISO 6946 annex A: 5.1). */
const blackCoefficient = 5.1;

export function layerNumbers(covering: Covering): LayerNumbers {
  return {
    resistance: covering.resistance.value,
    emissivityInside: covering.emissivityInside.value,
    emissivityOutside: covering.emissivityOutside.value,
    longWaveTransmittance: covering.longWaveTransmittance.value,
  };
}

/**
 * Adds a layer inside a cover. Transmittances combine with the reflections between (Duffie & Beckman ch. 5
 * for two covers); what passes the inner layer is taken up by the cover, so it both counts as absorbed at the
 * inner face and goes round the inner layer's resistance.
 */
export function withInnerLayer(cover: LayerNumbers, inner: LayerNumbers): LayerNumbers {
  const reflectedCover = Math.max(0, 1 - cover.emissivityInside - cover.longWaveTransmittance);
  const reflectedInner = Math.max(0, 1 - inner.emissivityOutside - inner.longWaveTransmittance);
  const between = 1 / (1 - reflectedCover * reflectedInner);
  const passedToCover = inner.longWaveTransmittance * cover.emissivityInside * between;
  const parallel = inner.resistance === 0 ? 0 : 1 / (1 / inner.resistance + blackCoefficient * passedToCover);
  return {
    resistance: cover.resistance + parallel,
    emissivityInside: Math.min(1, inner.emissivityInside + passedToCover),
    emissivityOutside: cover.emissivityOutside,
    longWaveTransmittance: inner.longWaveTransmittance * cover.longWaveTransmittance * between,
  };
}

/**
 * A second skin with still air between [m² K W⁻¹]: convection max(1.25, 0.025 / d) and long-wave 5.1 E with
 * 1/E = 1/ε₁ + 1/ε₂ − 1 (ISO 6946:2017 annex D, heat going sideways). ISO gives 0.18 for a wide gap of dull faces.
 */
function secondSkinNumbers(cover: LayerNumbers, skin: SecondSkin): LayerNumbers {
  const numbers = layerNumbers(covering(skin.covering));
  const emittance = 1 / (1 / cover.emissivityInside + 1 / numbers.emissivityOutside - 1);
  const gap = 1 / (Math.max(1.25, 0.025 / skin.gap) + emittance * blackCoefficient);
  return { ...numbers, resistance: numbers.resistance + gap };
}

/** A cover with the place's second skin and lining, and with the screen drawn too. */
export function innerLayers(
  cover: LayerNumbers,
  place: Pick<Place, 'secondSkin' | 'lining' | 'screen'>,
): { lined: LayerNumbers; closed: LayerNumbers } {
  const { secondSkin, lining, screen } = place;
  const doubled = secondSkin === null ? cover : withInnerLayer(cover, secondSkinNumbers(cover, secondSkin));
  const lined = lining === null ? doubled : withInnerLayer(doubled, layerNumbers(covering(lining)));
  const closed = screen === null ? lined : withInnerLayer(lined, layerNumbers(covering(screen.covering)));
  return { lined, closed };
}

/** Inside and outside film coefficients [W m⁻² K⁻¹] of EN 673:2011: h_i = 3.6 + 4.4 ε/0.837, h_e = 23. */
export function standardFilms(layers: LayerNumbers): { inside: number; outside: number } {
  return {
    inside: 3.6 + (4.4 * layers.emissivityInside) / 0.837,
    outside: 23 - (4.4 * (0.837 - layers.emissivityOutside)) / 0.837,
  };
}

/**
 * Air-to-air transmittance [W m⁻² K⁻¹] with EN 673 films. Long-wave that passes a film straight through is
 * added at 4σT³ of 10 °C to surroundings at air temperature; under a clear sky it is more.
 */
export function uValue(layers: LayerNumbers): number {
  const films = standardFilms(layers);
  const through = 1 / (1 / films.inside + layers.resistance + 1 / films.outside);
  return through + blackCoefficient * layers.longWaveTransmittance;
}
