import { covering } from '../plan/coverings.ts';
import type { Place } from '../plan/schema.ts';
import { coverTransmittance } from './cover.ts';
import { stripFactor, windowBayOf } from './window-factor.ts';

/**
 * A sheer curtain on a window's pane: all that comes through the pane is scattered evenly into the half-space behind
 * it, and the plants have their configuration factor of the pane's share of it. What a net lets through unscattered
 * is counted as scattered too (estimate: the schema knows one share for a cloth).
 */
export interface SheerCurtain {
  /** Share of light it passes; sunlight and 400–700 nm, 0–1. */
  readonly solar: number;
  readonly par: number;
  /** Mean configuration factor of the pane over the plants' rectangle. */
  readonly factor: number;
}

/** The sheer curtain of a window bay; null where none hangs. */
export function sheerOf(place: Place): SheerCurtain | null {
  if (place.sheer === null || place.shape.kind !== 'window-bay') return null;
  const { width, height, distance, depth } = windowBayOf(place);
  const cloth = covering(place.sheer.covering);
  return {
    solar: coverTransmittance(0, cloth, 'solar'),
    par: coverTransmittance(0, cloth, 'par'),
    factor: stripFactor(width, height, distance, depth),
  };
}
