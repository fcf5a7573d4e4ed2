import type { Covering } from '../plan/coverings.ts';

/**
 * Share of light that drops on the inner face take from glass: three points of the hemispherical transmittance of clear
 * horticultural glass, about 0.83 (Wageningen UR's measuring protocol for covers with condensate, abstract; the same
 * institute's winter-light report of 2015 has 2 % on average); 3 ÷ 83.
 */
const lossOnGlass = 0.036;

/**
 * The same for plastics, on which water stands in drops, 0.05–0.15 (from memory). New anti-drop film gained 4 % when
 * wet and lost 15 % when aged by three months (Geoola et al. 2004, abstract). Low confidence.
 */
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
