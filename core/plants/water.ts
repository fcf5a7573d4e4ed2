import type { GroupNumbers, PlantGroup } from '../plan/groups.ts';
import { thresholdsOf } from './thresholds.ts';
import * as code from './words.ts';

/** Watering advice in the order of its codes 0–2. */
export const waterings = ['water', 'sparingly', 'hold'] as const;
export type WaterAdvice = (typeof waterings)[number];

export interface WaterAnswer {
  readonly advice: WaterAdvice;
  /** Index into `waterings`. */
  readonly code: number;
  readonly reason: string;
}

const answer = (advice: WaterAdvice, reason: string): WaterAnswer => ({
  advice,
  code: waterings.indexOf(advice),
  reason,
});

/** True where the catalogue's word on the group's rest asks for moisture, as for evergreens such as citrus. */
export function restsMoist({ rest }: Pick<PlantGroup, 'rest'>): boolean {
  return rest !== null && /\b(moist|damp)\b/.test(rest.water);
}

/**
 * Whether to water in a week, from the state and what comes. Common practice, no source: no water to a plant at
 * rest from cold, or that the coming week will send to rest while the mix is still wet; sparingly where growth is slow.
 * One that keeps its leaves and rests moist (`restsMoist`) is watered sparingly through a cold rest, and not at all only
 * while the week ahead is so cold that wet roots would rot.
 * @param state index into `plantStates`
 * @param meanNext mean leaf temperature of the coming week, day and night [°C]
 * @param moist whether the group rests moist
 */
export function waterAdvice(
  state: number,
  group: GroupNumbers,
  meanNext: number,
  moist = false,
): WaterAnswer {
  if (!(state >= 0 && state <= 6)) throw new RangeError(`expected a state from 0 to 6, got ${state}`);
  if (!Number.isFinite(meanNext)) throw new RangeError(`expected a finite temperature, got ${meanNext}`);
  if (moist && meanNext < group.wetColdBelow)
    return answer('hold', 'Too cold for wet roots: let the mix dry, and water when it is milder.');
  if (moist && state === code.restingCold)
    return answer(
      'sparingly',
      'At rest from cold, but it keeps its leaves: just enough to keep the mix moist.',
    );
  if (state === code.restingCold)
    return answer('hold', 'At rest from cold: a wet mix invites rot and frost damage.');
  if (!moist && meanNext < Math.max(thresholdsOf(group).coldBegins, group.wetColdBelow)) {
    return answer('hold', 'The week ahead is too cold: let the mix dry before it comes.');
  }
  if (state === code.restingDry) return answer('hold', 'Held dry on purpose; water again to start it.');
  if (state === code.restingHeat)
    return answer('sparingly', 'At rest from heat: a little in the evening, never soaking.');
  if (state === code.restingDim)
    return answer('sparingly', 'Standing still in the dark: just enough to keep the roots.');
  if (state === code.stretching) return answer('sparingly', 'Water drives stretching while light is short.');
  if (state === code.slow)
    return answer('sparingly', 'Growth is slow: let the mix dry out for a week between waterings.');
  return answer('water', 'Growing: water when the mix has dried.');
}
