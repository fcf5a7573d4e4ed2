import type { Covering } from '../plan/coverings.ts';

/**
 * Share of light that drops on the inner face take from glass: three points of the hemispherical transmittance of
 * horticultural glass, about 0.83 (abstract of a measuring protocol for wet covers; 3 ÷ 83).
 */
const lossOnGlass = 0.036;

/** The same for plastics, on which water stands in drops: film without anti-drop 0.05–0.15 (from memory, low confidence). */
const lossOnPlastic = 0.08;

/** Share of the daylight lost while the cover is wet inside, 0–1; porous cloth and opaque walls lose none. */
export function wetCoverLoss(covering: Covering): number {
  const { optics, use } = covering;
  if (use !== 'glazing' && use !== 'film') return 0;
  if (optics.kind === 'opaque') return 0;
  // Coated glass is measured as a whole but wets as glass does; sheets and films have the index of their plastic.
  const glass = optics.kind === 'slab' || covering.longWaveTransmittance.value === 0;
  return glass ? lossOnGlass : lossOnPlastic;
}
