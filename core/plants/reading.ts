/**
 * What a day's verdict is read from: what the plant remembers, and its switches after they have settled.
 * One object is filled anew for each day.
 */
export interface Reading {
  /** Remembered 24-h mean and highest of the day [°C leaf], daily light [mol m⁻² d⁻¹], moisture and heat dose [0–1]. */
  warmth: number;
  dayHigh: number;
  light: number;
  moisture: number;
  heat: number;
  /** The day's own 24-h mean [°C leaf]. */
  meanLeaf: number;
  /** Switches of the day and of the day before, as bits: see `bit`. */
  flags: number;
  flagsBefore: number;
}

/** Bits of the settled switches: rests and lacks, and the four ways to be slow. */
export const bit = {
  cold: 1,
  hot: 2,
  heatDosed: 4,
  dry: 8,
  short: 16,
  dim: 32,
  dull: 64,
  cool: 128,
  warm: 256,
  closed: 512,
} as const;

/** Any of the switches that make a plant slow. */
export const slowBits = bit.dull | bit.cool | bit.warm | bit.closed;

/** True where one of the switches in `mask` is on. */
export function has(reading: Reading, mask: number): boolean {
  return (reading.flags & mask) !== 0;
}
