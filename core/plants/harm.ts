import type { GroupNumbers } from '../plan/groups.ts';
import { dayWeight } from './memory.ts';

/** Harms by day. Doses count hours and depth beyond a limit of leaf temperature. */
export interface HarmDays {
  /** Degree-hours below the cold the plant bears, wet or dry [K h], and the hours of it [h]. */
  readonly frost: Float64Array;
  readonly frostHours: Float64Array;
  /** How far the coldest leaf was below that limit [K]: see `frostInjury`. */
  readonly frostDepth: Float64Array;
  /** Degree-hours below the chilling limit of tropical groups [K h]; nil for groups without one. */
  readonly chill: Float64Array;
  /** Chill it still carries after what it has got over [K h], and 1 on days on which that load injures [d]. */
  readonly chillLoad: Float64Array;
  readonly chilled: Float64Array;
  /** Degree-hours above the heat that tissue bears [K h]. */
  readonly heat: Float64Array;
  /** Daily light beyond what it bears or is used to [mol m⁻² d⁻¹]. */
  readonly scorch: Float64Array;
  /** 1 on days after the fifth running day of wet mix colder than the group's limit [d]. */
  readonly wetCold: Float64Array;
  /** 1 on days on which heat has lasted so long that the plant declines [d]. */
  readonly decline: Float64Array;
}

/** A harm over a season: its sum, how many days, the first and the worst day (null where there was none). */
export interface HarmSummary {
  readonly total: number;
  readonly days: number;
  readonly firstDay: number | null;
  readonly peakDay: number | null;
  readonly peak: number;
}

/** Days of wet cold borne before rot sets in (threshold collection, placeholder) [d]. */
const wetColdBorne = 5;
/**
 * Days over which a plant becomes used to more light (bleaching and its repair take about a week, Nobel & Hartsock
 * 1983), the share of its limit borne before, and how many times its habit it bears at once (placeholders).
 */
const lightHabitDays = 7;
const unusedShare = 0.6;
const timesHabit = 2.5;

/**
 * Time constant in which a plant gets over chill [d]; placeholder. Some foliage plants showed nothing after 5 days of chill
 * and were injured after 2 weeks (University of Florida extension): with 10 days, cold 5 K under the limit injures
 * within the first week, cold 2 K under it only after seven weeks, and 1 K never.
 */
const chillRecoveryDays = 10;

/**
 * Chill that a plant carries at the end of each day [K h]: the day's own and what it has not got over of the days before.
 * @param chill degree-hours of each day [K h]; the first day finds a plant without chill
 */
export function chillLoads(
  chill: Float64Array,
  loads: Float64Array = new Float64Array(chill.length),
): Float64Array {
  const kept = 1 - dayWeight(chillRecoveryDays);
  let load = 0;
  for (let day = 0; day < chill.length; day += 1) {
    load = load * kept + (chill[day] as number);
    loads[day] = load;
  }
  return loads;
}

interface HarmLimits {
  readonly cold: number;
  readonly chill: number;
  readonly hot: number;
}

/** Adds up one day's leaf temperatures against the limits. */
function doseDay(
  harms: HarmDays,
  day: number,
  leaf: Float64Array,
  from: number,
  to: number,
  hours: number,
  limits: HarmLimits,
) {
  let frost = 0;
  let depth = 0;
  let below = 0;
  let chill = 0;
  let heat = 0;
  let sum = 0;
  for (let step = from; step < to; step += 1) {
    const temperature = leaf[step] as number;
    sum += temperature;
    if (temperature < limits.cold) {
      frost += limits.cold - temperature;
      if (limits.cold - temperature > depth) depth = limits.cold - temperature;
      below += 1;
    }
    if (temperature < limits.chill) chill += limits.chill - temperature;
    if (temperature > limits.hot) heat += temperature - limits.hot;
  }
  harms.frost[day] = frost * hours;
  harms.frostHours[day] = below * hours;
  harms.frostDepth[day] = depth;
  harms.chill[day] = chill * hours;
  harms.heat[day] = heat * hours;
  return sum / (to - from);
}

/**
 * Scorch: daily light beyond the most the group bears. A plant not used to light bears about three fifths of
 * that (placeholder); one used to it two and a half times what it has had over a week, up to the full limit.
 */
function scorchDays(group: GroupNumbers, dailyLight: Float64Array, scorch: Float64Array): void {
  let habit = dailyLight[0] as number;
  for (let day = 0; day < dailyLight.length; day += 1) {
    const light = dailyLight[day] as number;
    const borne = Math.min(group.lightMost, Math.max(unusedShare * group.lightMost, timesHabit * habit));
    scorch[day] = Math.max(0, light - borne);
    habit += dayWeight(lightHabitDays) * (light - habit);
  }
}

/** What the days before have made of a plant, a day an entry. */
export interface HarmPast {
  /** Leaf temperature at which cold damage begins, by its hardening and its mix [°C]; the group's limits where not given. */
  readonly coldLimit?: Float64Array;
  /** 1 on days of decline from lasting heat; none where not given. */
  readonly decline?: Uint8Array;
}

/**
 * Harms of a group from its leaf temperature through the day; harm alone goes by the hour, state by the day's mean.
 * @param leafTemperature means over steps of `stepMinutes` [°C], whole days
 * @param wet whether the mix is wet: for all days, or a day an entry (1 wet)
 * @param dailyLight at the plant [mol m⁻² d⁻¹], a day an entry; null where scorch is not asked for
 */
export function harmDoses(
  group: GroupNumbers,
  leafTemperature: Float64Array,
  stepMinutes: number,
  wet: boolean | Uint8Array,
  dailyLight: Float64Array | null = null,
  past: HarmPast = {},
): HarmDays {
  const perDay = 1440 / stepMinutes;
  const count = leafTemperature.length / perDay;
  if (!(Number.isInteger(perDay) && Number.isInteger(count) && count > 0)) {
    throw new RangeError(
      `expected whole days of ${stepMinutes}-minute steps, got ${leafTemperature.length} steps`,
    );
  }
  if (typeof wet !== 'boolean' && wet.length !== count)
    throw new RangeError(`expected ${count} days of wet, got ${wet.length}`);
  if (dailyLight !== null && dailyLight.length !== count) {
    throw new RangeError(`expected ${count} days of light, got ${dailyLight.length}`);
  }
  const numbers = () => new Float64Array(count);
  const harms: HarmDays = {
    frost: numbers(),
    frostHours: numbers(),
    frostDepth: numbers(),
    chill: numbers(),
    chillLoad: numbers(),
    chilled: numbers(),
    heat: numbers(),
    scorch: numbers(),
    wetCold: numbers(),
    decline: past.decline === undefined ? numbers() : Float64Array.from(past.decline),
  };
  const hours = stepMinutes / 60;
  let wetColdRun = 0;
  for (let day = 0; day < count; day += 1) {
    const isWet = typeof wet === 'boolean' ? wet : wet[day] === 1;
    const limits = {
      cold:
        past.coldLimit !== undefined
          ? (past.coldLimit[day] as number)
          : isWet
            ? group.damageColdWet
            : group.damageColdDry,
      chill: group.chillBelow ?? Number.NEGATIVE_INFINITY,
      hot: group.damageHot,
    };
    const mean = doseDay(harms, day, leafTemperature, day * perDay, (day + 1) * perDay, hours, limits);
    wetColdRun = isWet && mean < group.wetColdBelow ? wetColdRun + 1 : 0;
    harms.wetCold[day] = wetColdRun > wetColdBorne ? 1 : 0;
  }
  chillLoads(harms.chill, harms.chillLoad);
  for (let day = 0; day < count; day += 1) {
    const injures = group.chillDose !== null && (harms.chillLoad[day] as number) >= group.chillDose;
    harms.chilled[day] = injures ? 1 : 0;
  }
  if (dailyLight !== null) scorchDays(group, dailyLight, harms.scorch);
  return harms;
}

/** Sum, days, first and worst day of one harm. */
export function summariseHarm(doses: Float64Array): HarmSummary {
  let [total, days, peak] = [0, 0, 0];
  let firstDay: number | null = null;
  let peakDay: number | null = null;
  for (let day = 0; day < doses.length; day += 1) {
    const dose = doses[day] as number;
    if (!(dose > 0)) continue;
    total += dose;
    days += 1;
    firstDay ??= day;
    if (dose > peak) [peak, peakDay] = [dose, day];
  }
  return { total, days, firstDay, peakDay, peak };
}

/**
 * Season's totals: degree-hours for frost, chill and heat [K h], days for scorch, wet cold and decline [d], hours of frost
 * [h]; the deepest frost [K], the most chill carried at once [K h] and the days on which it injured [d].
 */
export function harmTotals(harms: HarmDays) {
  return {
    frost: summariseHarm(harms.frost).total,
    chill: summariseHarm(harms.chill).total,
    heat: summariseHarm(harms.heat).total,
    scorch: summariseHarm(harms.scorch).days,
    wetCold: summariseHarm(harms.wetCold).days,
    decline: summariseHarm(harms.decline).days,
    frostHours: summariseHarm(harms.frostHours).total,
    frostDepth: summariseHarm(harms.frostDepth).peak,
    chillLoad: summariseHarm(harms.chillLoad).peak,
    chilled: summariseHarm(harms.chilled).days,
  };
}
