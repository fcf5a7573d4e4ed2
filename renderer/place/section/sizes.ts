import type { Heater, WaterStore } from '../../../core/index.ts';

/** Width across and height of a thing as drawn [m]. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A rectangle of the section [m]: across from the front, up from the floor. */
export interface Box {
  readonly from: number;
  readonly to: number;
  readonly bottom: number;
  readonly top: number;
}

export const overlaps = (a: Box, b: Box) =>
  a.from < b.to - 1e-9 && b.from < a.to - 1e-9 && a.bottom < b.top - 1e-9 && b.bottom < a.top - 1e-9;

/** Sizes at which heaters are drawn [m] (common practice, no source); a heat mat takes its width from the bench. */
const heaterSizes: Record<Heater['kind'], Size> = {
  fan: { width: 0.26, height: 0.3 },
  tubular: { width: 0.3, height: 0.12 },
  'oil-filled': { width: 0.34, height: 0.5 },
  propane: { width: 0.46, height: 0.46 },
  paraffin: { width: 0.24, height: 0.34 },
  'heat-mat': { width: 0, height: 0.02 },
  'heat-pump': { width: 0.6, height: 0.3 },
};

export const heaterSize = (heater: Heater): Size => heaterSizes[heater.kind];

/** Depth of water in a trough as the heat balance has it, and its width across as drawn at most [m]. */
const troughDepth = 0.25;
const troughWidth = 0.8;

/**
 * Width and height of one container, of the forms the heat balance reckons with: a drum half as high again as
 * wide, a bottle three times as high, a canister 1 × 1.3 × 1.5, a trough 0.25 m deep.
 */
export function waterSize({ litres, form }: WaterStore): Size {
  const volume = litres / 1000;
  if (form === 'trough') {
    const width = Math.min(troughWidth, Math.sqrt(volume / troughDepth));
    return { width, height: troughDepth };
  }
  if (form === 'canister') {
    const edge = Math.cbrt(volume / 1.95);
    return { width: edge, height: 1.5 * edge };
  }
  const slender = form === 'drum' ? 1.5 : 3;
  const width = Math.cbrt((4 * volume) / (Math.PI * slender));
  return { width, height: slender * width };
}

/** Face of an extract fan across [m] for its flow: 6 m/s through a round opening (common practice, no source). */
export function fanSize(flow: number): number {
  return Math.min(0.6, Math.max(0.1, Math.sqrt((4 * flow) / 3600 / 6 / Math.PI)));
}

/** Face of a circulation fan across [m] (common practice, no source). */
export const circulationSize = 0.32;
