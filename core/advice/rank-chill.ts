import { chillRecoveryDays } from '../plants/harm.ts';
import { dayWeight } from '../plants/memory.ts';

/**
 * Chill that a plant carries on each day, from its daily doses [K h]: what is added less what it has got over. It
 * injures from the group's dose on.
 */
export function chillLoads(doses: Float64Array): Float64Array {
  const kept = 1 - dayWeight(chillRecoveryDays);
  const loads = new Float64Array(doses.length);
  let load = 0;
  for (let day = 0; day < doses.length; day += 1) {
    load = load * kept + doses[day];
    loads[day] = load;
  }
  return loads;
}
