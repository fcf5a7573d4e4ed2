import type { GroupNumbers } from '../plan/groups.ts';

export type InjuryDegree = 'none' | 'slight' | 'marked' | 'serious' | 'dead';

/** How bad a harm is, in one word and in a sentence. */
export interface Injury {
  readonly degree: InjuryDegree;
  readonly words: string;
}

/**
 * Kelvin beyond the limit from which frost marks leaves, and from which it is serious: a garden of tender rosettes was
 * fine at −1 °C, marked at −2.2 and badly hurt at −4 (private freeze notes, Davis, California, 2016 and 2022).
 */
export const frostMarks = 1.2;
export const frostSerious = 3;

/** Injury by a frost whose coldest leaf was `depth` under the limit of the day [K]. */
export function frostInjury(depth: number): Injury {
  if (!Number.isFinite(depth)) throw new RangeError(`expected a finite depth, got ${depth}`);
  if (depth <= 0) return { degree: 'none', words: 'Above its limit: no injury.' };
  if (depth < frostMarks) return { degree: 'slight', words: 'At its limit: a few soft tips may mark.' };
  if (depth < frostSerious)
    return { degree: 'marked', words: 'Leaves marked or glassy; it grows out of it.' };
  return { degree: 'serious', words: 'Leaves and crown frozen: rotten patches, plants lost.' };
}

/** Share of the chilling dose at which to warn: 100 of 500 K h (placeholders). */
const chillWarns = 0.2;

/** Injury by chill above freezing, from the load it carries [K h]; shows days to weeks later, when it is warm again. */
export function chillInjury(group: GroupNumbers, load: number): Injury {
  if (!Number.isFinite(load)) throw new RangeError(`expected a finite load, got ${load}`);
  const dose = group.chillDose;
  if (dose === null || load < chillWarns * dose)
    return { degree: 'none', words: 'No chill that it does not get over.' };
  if (load < dose)
    return { degree: 'slight', words: 'Chilled, not yet injured: warmth for some days makes up for it.' };
  return {
    degree: 'serious',
    words: 'Chilled for too long: sunken, glassy patches and fallen leaves follow within two weeks.',
  };
}

/** Share of the way from decline to death, 0–1, after `warmDays` days of heat above its limit by day and night. */
export function declineShare(group: GroupNumbers, warmDays: number): number {
  const span = group.killDays - group.declineDays;
  if (warmDays >= group.killDays) return 1;
  return span > 0 ? Math.min(1, Math.max(0, (warmDays - group.declineDays) / span)) : 0;
}

/** Injury by heat that lasts, from the share of the way to death. */
export function heatInjury(share: number): Injury {
  if (!Number.isFinite(share)) throw new RangeError(`expected a finite share, got ${share}`);
  if (share <= 0) return { degree: 'none', words: 'Heat has not lasted long enough to weaken it.' };
  if (share < 0.5) return { degree: 'marked', words: 'It declines: leaves shrink and fall, tips die.' };
  if (share < 1) return { degree: 'serious', words: 'It is dying of heat that does not let up at night.' };
  return { degree: 'dead', words: 'Dead of heat.' };
}

/** Injury by wet cold, from the days of it beyond the five it bears; a fortnight of them is taken as serious (placeholder). */
export function wetColdInjury(days: number): Injury {
  if (!Number.isFinite(days)) throw new RangeError(`expected a finite number of days, got ${days}`);
  if (days <= 0) return { degree: 'none', words: 'Its roots have not stood wet and cold for long.' };
  if (days < 14) return { degree: 'marked', words: 'Roots begin to rot: let the mix dry.' };
  return { degree: 'serious', words: 'Roots and neck rot.' };
}
