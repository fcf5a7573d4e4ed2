import type { GroupNumbers } from '../plan/groups.ts';
import type { PlantResult } from './state.ts';

/** Leaf temperature at which cold damage begins on each day [°C], by hardening and moisture. */
export function coldLimits(group: GroupNumbers, result: PlantResult): Float64Array {
  return Float64Array.from(result.wet, (wet) => (wet === 1 ? group.damageColdWet : group.damageColdDry));
}
