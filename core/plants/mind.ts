import type { GroupNumbers } from '../plan/groups.ts';
import type { PlantDays } from './day.ts';
import { seasonMonth } from './day.ts';
import { dayWeight, switchedBelow } from './memory.ts';
import type { Thresholds } from './thresholds.ts';
import * as level from './thresholds.ts';
import { growing, restingCold, restingDim, restingDry, restingHeat, slow, stretching } from './words.ts';

export type Watering = 'by-season' | 'dry' | 'watered';

/** What a plant remembers from day to day, and the switches that its state is read from. Changed in place. */
export interface Mind {
  /** Exponential means of 24-h leaf temperature [°C] and of daily light [mol m⁻² d⁻¹]. */
  warmth: number;
  light: number;
  /** Exponential mean of the day's highest leaf temperature [°C]. */
  dayHigh: number;
  /** Share of moisture left in the mix, 0–1; 1 on a watered day. */
  moisture: number;
  /** Share of the dose that brings heat rest, 0–1, and days towards decline [d]. */
  heat: number;
  warmDays: number;
  cold: boolean;
  hot: boolean;
  heatDosed: boolean;
  dry: boolean;
  short: boolean;
  dim: boolean;
  dull: boolean;
  cool: boolean;
  warm: boolean;
  /** Closed up against hot days: alive, little growth. */
  closed: boolean;
  watered: boolean;
}

/**
 * A mind that has known nothing but `warmth` and days up to `dayHigh` [°C] and `light` [mol m⁻² d⁻¹], with moist
 * mix. Between its two thresholds a switch stands on the side of the nearer one.
 */
export function newMind(
  group: GroupNumbers,
  at: Thresholds,
  warmth: number,
  light: number,
  dayHigh: number,
): Mind {
  const under = (value: number, begins: number, ends: number) => value < (begins + ends) / 2;
  const share = light / level.lightNeeded(group, at, warmth);
  return {
    warmth,
    light,
    dayHigh,
    moisture: 1,
    heat: 0,
    warmDays: 0,
    cold: under(warmth, at.coldBegins, at.coldEnds),
    hot: under(-warmth, -at.heatBegins, -at.heatEnds),
    heatDosed: false,
    dry: false,
    short: under(share, level.lackBegins, level.lackEnds),
    dim: under(light / group.lightHold, level.lackBegins, level.lackEnds),
    dull: under(light / group.lightGood, level.goodEnds, level.goodBegins),
    cool: under(warmth, at.coolSlowBegins, at.coolSlowEnds),
    warm: under(-warmth, -at.warmSlowBegins, -at.warmSlowEnds),
    closed: under(-level.closingExcess(group, warmth, dayHigh), 0, level.closedEnds),
    watered: true,
  };
}

/** True in the months in which the group is kept dry whatever the weather; a span may pass over the new year. */
export function isDryMonth(group: GroupNumbers, month: number): boolean {
  const { dryFromMonth: from, dryToMonth: to } = group;
  if (from === null || to === null) return false;
  return from <= to ? month >= from && month <= to : month >= from || month <= to;
}

/** Temperature memory and its switches. A day at or below freezing counts as cold at once, whatever went before. */
function liveWarmth(
  mind: Mind,
  group: GroupNumbers,
  at: Thresholds,
  meanLeaf: number,
  mostLeaf: number,
): void {
  mind.warmth += dayWeight(group.inertiaDays) * (meanLeaf - mind.warmth);
  mind.dayHigh += dayWeight(group.inertiaDays) * (mostLeaf - mind.dayHigh);
  if (meanLeaf <= 0) mind.warmth = Math.min(mind.warmth, at.coldBegins - 1e-6);
  mind.cold = switchedBelow(mind.cold, mind.warmth, at.coldBegins, at.coldEnds);
  mind.hot = switchedBelow(mind.hot, -mind.warmth, -at.heatBegins, -at.heatEnds);
  mind.cool = switchedBelow(mind.cool, mind.warmth, at.coolSlowBegins, at.coolSlowEnds);
  mind.warm = switchedBelow(mind.warm, -mind.warmth, -at.warmSlowBegins, -at.warmSlowEnds);
  const excess = level.closingExcess(group, mind.warmth, mind.dayHigh);
  mind.closed = switchedBelow(mind.closed, -excess, 0, level.closedEnds);
}

/**
 * Heat dose: a day whose mean passes `slowAbove` with a night above 20 °C adds 1/heatDays; a day whose highest
 * leaf temperature passes `hotDay`, unless the mean stays in the best band (short peaks are borne where nights
 * cool), adds 1/hotDays; any other day takes 1/heatDays away. Rest begins at 1 and ends at 0.5.
 */
function liveHeat(mind: Mind, group: GroupNumbers, days: PlantDays, day: number): void {
  const mean = days.meanLeaf[day] as number;
  const warmDay = mean > group.slowAbove && (days.meanNightLeaf[day] as number) > level.warmNight;
  const hotDay = (days.mostLeaf[day] as number) > group.hotDay && mean > group.optimumHigh;
  const gain = hotDay
    ? 1 / Math.min(group.hotDays, group.heatDays)
    : warmDay
      ? 1 / group.heatDays
      : -1 / group.heatDays;
  mind.heat = Math.min(1, Math.max(0, mind.heat + gain));
  mind.heatDosed = switchedBelow(mind.heatDosed, -mind.heat, -1 + 1e-9, -0.5);
  mind.warmDays = Math.max(0, mind.warmDays + (warmDay ? 1 : -1));
}

/** Water: as recorded, or by option. By season the plant is held dry in rest from cold or heat and in its dry months. */
function liveWater(
  mind: Mind,
  group: GroupNumbers,
  recorded: number | undefined,
  watering: Watering,
  month: number,
): void {
  const resting = mind.cold || mind.hot || mind.heatDosed || isDryMonth(group, month);
  mind.watered =
    recorded !== undefined ? recorded !== 0 : watering === 'by-season' ? !resting : watering === 'watered';
  mind.moisture = mind.watered ? 1 : mind.moisture * (1 - dayWeight(group.waterDays));
  mind.dry = switchedBelow(mind.dry, mind.moisture, level.dryBegins, 2 * level.dryBegins);
}

/** Light memory and its switches, each against its own threshold. */
function liveLight(mind: Mind, group: GroupNumbers, at: Thresholds, dailyLight: number): void {
  mind.light += dayWeight(group.inertiaDays) * (dailyLight - mind.light);
  const needed = level.lightNeeded(group, at, mind.warmth);
  mind.short = switchedBelow(mind.short, mind.light / needed, level.lackBegins, level.lackEnds);
  mind.dim = switchedBelow(mind.dim, mind.light / group.lightHold, level.lackBegins, level.lackEnds);
  mind.dull = switchedBelow(mind.dull, mind.light / group.lightGood, level.goodEnds, level.goodBegins);
}

/**
 * Lives through one day. Switches on temperature and water know nothing of light, so that more light can only
 * turn lack into plenty: it never lengthens resting dim and stretching together.
 */
export function liveDay(
  mind: Mind,
  group: GroupNumbers,
  at: Thresholds,
  days: PlantDays,
  day: number,
  watering: Watering,
  firstSeasonDay: number,
): void {
  liveWarmth(mind, group, at, days.meanLeaf[day] as number, days.mostLeaf[day] as number);
  liveHeat(mind, group, days, day);
  liveWater(mind, group, days.watered?.[day], watering, seasonMonth(firstSeasonDay + day));
  liveLight(mind, group, at, days.dailyLight[day] as number);
}

/** The state that the switches give: cold or heat whatever the light; then dry; then lack of light; then growth. */
export function stateOf(mind: Mind, group: GroupNumbers): number {
  if (mind.cold) return restingCold;
  if (mind.hot || mind.heatDosed) return restingHeat;
  if (mind.dry) return restingDry;
  if (mind.short) return mind.dim && group.canRestDim > 0.5 ? restingDim : stretching;
  return mind.dull || mind.cool || mind.warm || mind.closed ? slow : growing;
}
