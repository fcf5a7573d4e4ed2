/** A stream of pseudo-random numbers: the same seed gives the same numbers on every machine. */
export interface RandomStream {
  /** Uniform in 0…1, never 1. */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
}

/**
 * A 32-bit counter whose every state is scrambled by two rounds of multiply and shift (the finaliser of
 * MurmurHash3, Appleby 2011, with a Weyl step of 0x9e3779b9). Good for weather, not for secrets.
 * Normals by the polar method of Marsaglia & Bray 1964 (SIAM Review 6, 260).
 */
export function randomStream(seed: number): RandomStream {
  if (!Number.isInteger(seed)) throw new TypeError(`expected a whole-number seed, got ${seed}`);
  let state = seed | 0;
  let spare: number | null = null;
  const uniform = (): number => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 4294967296;
  };
  const normal = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square >= 1 || square === 0) continue;
      const factor = Math.sqrt((-2 * Math.log(square)) / square);
      spare = y * factor;
      return x * factor;
    }
  };
  return { uniform, normal };
}
