import { expect } from 'vitest';

/** Limits on the absolute differences of a set of check values, set just above what is reached. */
export interface Limits {
  readonly mean: number;
  readonly max: number;
}

/** Compares `[got, expected]` pairs; SHOW_ERRORS=1 prints what is reached. */
export function expectClose(
  what: string,
  pairs: readonly (readonly [number, number])[],
  limits: Limits,
): void {
  const errors = pairs.map(([got, expected]) => Math.abs(got - expected));
  const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  const max = errors.reduce((most, error) => (error > most || Number.isNaN(error) ? error : most), 0);
  if (process.env.SHOW_ERRORS) console.log(`${what}: mean ${mean.toPrecision(3)}, max ${max.toPrecision(3)}`);
  expect(errors.length, what).toBeGreaterThan(0);
  expect(mean, `${what}: mean difference`).toBeLessThanOrEqual(limits.mean);
  expect(max, `${what}: largest difference`).toBeLessThanOrEqual(limits.max);
}
