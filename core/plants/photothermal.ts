import type { GroupNumbers } from '../plan/groups.ts';

/** Least warmth above the base by which light is divided [K]: nearer to the base the ratio says nothing. */
const leastWarmth = 1;

/**
 * Daily light for each degree of warmth above the base [mol m⁻² d⁻¹ K⁻¹], 0 at and below the base: the light that a
 * plant has for the leaves that warmth makes it grow.
 */
export function photothermalRatio(group: GroupNumbers, light: number, warmth: number): number {
  const above = warmth - group.baseTemperature;
  return above > 0 ? light / Math.max(leastWarmth, above) : 0;
}

/**
 * Ratios at which a group stays compact and below which stretching is severe [mol m⁻² d⁻¹ K⁻¹]. Compact is the group's
 * own: the light that keeps it compact at the warm end of its best band, over that warmth, so that it agrees with
 * `lightNeeded`; severe is half of it. For groups of full sun this gives about 0.3–0.6 and 0.15–0.3, where common
 * practice has compact from about 0.5 and severe below 0.25; shade plants need a quarter of that.
 */
export function photothermalLimits(group: GroupNumbers): {
  readonly compact: number;
  readonly severe: number;
} {
  const compact = group.lightStretch / (group.optimumHigh - group.baseTemperature);
  return { compact, severe: 0.5 * compact };
}

export type StretchDegree = 'none' | 'slight' | 'severe';

/** How badly a plant that stretches is drawn up, by its ratio; 'none' from the compact ratio on. */
export function stretchDegree(group: GroupNumbers, ratio: number): StretchDegree {
  const { compact, severe } = photothermalLimits(group);
  if (!(ratio < compact)) return 'none';
  return ratio < severe ? 'severe' : 'slight';
}
