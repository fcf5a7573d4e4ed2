/** Normal deviate of a 95 % interval. */
const deviate = 1.959964;

/** Winters that must speak for and against before the spread between winters is trusted to say how sure a share is. */
const trusted = 10;

/** A share over winters of several draws each, as sums over the winters. */
export interface SharedWinters {
  /** Winters, and draws in each. */
  readonly winters: number;
  readonly draws: number;
  /** Sum over the winters of the share of their draws, and of its square. */
  readonly sum: number;
  readonly squares: number;
  /** Winters in which any draw is for it, and any is against. */
  readonly anyFor: number;
  readonly anyAgainst: number;
}

/**
 * Half-width of the 95 % interval of a share, 0–1: the farther side of Wilson's interval (1927, Journal of the
 * American Statistical Association 22, 209), so that what all samples agree on is not called certain.
 *
 * Draws within a winter share its weather, so winters, not draws, are the sample: the number of independent samples
 * is that which gives the variance found between the means of the winters, p(1 − p)/(s²/n) (the effective sample
 * size of survey practice, Korn & Graubard 1998, from memory). With few winters on one side that variance says little,
 * and the number goes back to that of the winters.
 */
export function shareHalfWidth(share: SharedWinters): number {
  const { winters: n } = share;
  if (!(n > 0)) return 1;
  const p = share.sum / n;
  const samples = effectiveSamples(share, p);
  const z2 = deviate * deviate;
  const centre = (p + z2 / (2 * samples)) / (1 + z2 / samples);
  const reach =
    (deviate / (1 + z2 / samples)) * Math.sqrt((p * (1 - p)) / samples + z2 / (4 * samples * samples));
  return Math.min(1, Math.max(centre + reach - p, p - centre + reach));
}

function effectiveSamples(
  { winters: n, draws, squares, anyFor, anyAgainst }: SharedWinters,
  p: number,
): number {
  const spoken = Math.min(1, Math.min(anyFor, anyAgainst) / trusted);
  if (n < 2 || spoken === 0) return n;
  const variance = Math.max(0, squares / n - p * p) / (n - 1);
  const found = variance > 0 ? (p * (1 - p)) / variance : Infinity;
  return n + (Math.min(n * draws, found) - n) * spoken;
}
