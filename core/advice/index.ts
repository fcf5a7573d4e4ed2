export { applyChange } from './change.ts';
export { compareLamps } from './lamps.ts';
export { findWays, onlyPlace, shiftsOf } from './ways.ts';
export type { WaysOptions } from './ways.ts';
export { fulfilment } from './wish.ts';
export type * from './result.ts';
