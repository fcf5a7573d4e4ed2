/** Share of the way that an exponential mean with time constant `days` [d] moves in one day. */
export function dayWeight(days: number): number {
  return 1 - Math.exp(-1 / days);
}

/**
 * A two-threshold switch (Schmitt trigger): on once `value` falls below `begins`, off once it rises above `ends`,
 * else as it was. For a switch that comes on when a value rises, pass the negatives.
 */
export function switchedBelow(was: boolean, value: number, begins: number, ends: number): boolean {
  return was ? !(value > ends) : value < begins;
}
