/** One thing wrong with a plan. */
export interface Problem {
  /** Dotted path into the plan, such as `places.2.shape.length`; empty for the plan as a whole. */
  readonly path: string;
  readonly message: string;
}

/** A figure as it stands in a message: three digits, `0.0312`, `8.94`, `1230`. */
export function shown(value: number): string {
  return String(Math.abs(value) >= 1000 ? Math.round(value) : Number(value.toPrecision(3)));
}

const rounding = 1e-6;

/** True where a value exceeds a limit that is known; a value that is no number exceeds it too. */
export const over = (value: number, limit: number | null): boolean =>
  limit !== null && !(value <= limit + rounding);
