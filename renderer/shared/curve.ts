/** What a small curve draws: responses from 0 to 1 over a quantity, points on them, thresholds across them. */
export interface DrawnCurve {
  /** The first is drawn full, a second dashed. */
  readonly id: string;
  readonly words: string;
  readonly response: (at: number) => number;
}

export interface CurvePoint {
  /** `day` is a full dot, `remembered` a ring, `night` a diamond. */
  readonly id: 'day' | 'remembered' | 'night';
  readonly at: number;
  /** The response there, 0–1. */
  readonly value: number;
  readonly words: string;
}

export interface CurveMark {
  readonly at: number;
  readonly words: string;
  /** A threshold that was crossed. */
  readonly strong: boolean;
}

/** A stretch of the quantity in which a state lasts, tinted with the state's colour. */
export interface CurveZone {
  readonly from: number;
  readonly to: number;
  /** Index into `plantStates`. */
  readonly state: number;
}
