/** One thing wrong with a plan. */
export interface Problem {
  /** Dotted path into the plan, such as `places.2.shape.length`; empty for the plan as a whole. */
  readonly path: string;
  readonly message: string;
}
