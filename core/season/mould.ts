import type { MouldRule } from '../plan/mould.ts';

/** Counts the hours in which grey mould may take hold: wet and within the rule's warmth for long enough on end. */
export class MouldCount {
  readonly #rule: MouldRule;
  readonly #hours: number;
  #wetFor = 0;

  /** @param stepHours length of a step [h] */
  constructor(rule: MouldRule, stepHours: number) {
    this.#rule = rule;
    this.#hours = stepHours;
  }

  /** Takes a step; returns true where it counts. @param air [°C] @param humidity 0–1 @param leafWet dew on the leaves */
  step(air: number, humidity: number, leafWet: boolean): boolean {
    const { humidity: least, from, to, after } = this.#rule;
    const wet = leafWet || humidity >= least;
    if (!wet || air < from || air > to) {
      this.#wetFor = 0;
      return false;
    }
    this.#wetFor += this.#hours;
    return this.#wetFor > after;
  }
}
