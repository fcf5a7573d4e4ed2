import type { GroupNumbers } from '../plan/groups.ts';
import type { PlantDays } from './day.ts';
import { hardenedBy, hardeningTarget, hardenFeltDays } from './hardening.ts';
import { dayWeight, switchedBelow } from './memory.ts';
import { bit } from './reading.ts';
import type { SinceTurn, Switch } from './settle.ts';
import { rankCold, rankDry, rankHeat, rankRest, rankShort, settleBelow, settleDays } from './settle.ts';
import type { Thresholds } from './thresholds.ts';
import * as level from './thresholds.ts';

export type Watering = 'by-season' | 'dry' | 'watered';

/** What a plant remembers from day to day, and the switches that its state is read from. Changed in place. */
export interface Mind {
  /** Exponential means of 24-h leaf temperature [°C] and of daily light [mol m⁻² d⁻¹]. */
  warmth: number;
  light: number;
  /** Exponential mean of the day's highest leaf temperature [°C]. */
  dayHigh: number;
  /** Mean of recent days to which it hardens [°C leaf], and its hardening, 0–1. */
  felt: number;
  hardening: number;
  /** Share of moisture left in the mix, 0–1; 1 on a watered day. */
  moisture: number;
  /** Share of the dose that brings heat rest, 0–1, and days towards decline and death [d]. */
  heat: number;
  warmDays: number;
  /** Dead of heat: nothing brings it back. */
  dead: boolean;
  heatDosed: boolean;
  watered: boolean;
  /** Weight of a new day in its memory, and days that a crossing must hold. */
  readonly weight: number;
  readonly settle: number;
  readonly since: SinceTurn;
  readonly cold: Switch;
  readonly hot: Switch;
  readonly dry: Switch;
  readonly short: Switch;
  readonly dim: Switch;
  readonly dull: Switch;
  readonly cool: Switch;
  readonly warm: Switch;
  /** Closed up against hot days: alive, little growth. */
  readonly closed: Switch;
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
  const under = (value: number, begins: number, ends: number): Switch => ({
    on: value < (begins + ends) / 2,
    turning: 0,
  });
  const share = light / level.lightNeeded(group, at, warmth);
  return {
    warmth,
    light,
    dayHigh,
    felt: warmth,
    hardening: hardeningTarget(group, warmth),
    moisture: 1,
    heat: 0,
    warmDays: 0,
    dead: false,
    heatDosed: false,
    watered: true,
    weight: dayWeight(group.inertiaDays),
    settle: settleDays(group),
    since: new Float64Array(rankRest).fill(1000),
    cold: under(warmth, at.coldBegins, at.coldEnds),
    hot: under(-warmth, -at.heatBegins, -at.heatEnds),
    dry: { on: false, turning: 0 },
    short: under(share, level.lackBegins, level.lackEnds),
    dim: under(light / group.lightHold, level.dimBegins, level.dimEnds),
    dull: under(light / group.lightGood, level.goodEnds, level.goodBegins),
    cool: under(warmth, at.coolSlowBegins, at.coolSlowEnds),
    warm: under(-warmth, -at.warmSlowBegins, -at.warmSlowEnds),
    closed: under(-level.closingExcess(group, warmth, dayHigh), 0, level.closedEnds),
  };
}

const feltWeight = dayWeight(hardenFeltDays);

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
  const { since, settle } = mind;
  mind.warmth += mind.weight * (meanLeaf - mind.warmth);
  mind.dayHigh += mind.weight * (mostLeaf - mind.dayHigh);
  mind.felt += feltWeight * (meanLeaf - mind.felt);
  mind.hardening = hardenedBy(group, mind.hardening, mind.felt);
  const freezes = meanLeaf <= 0;
  if (freezes) mind.warmth = Math.min(mind.warmth, at.coldBegins - 1e-6);
  settleBelow(mind.cold, mind.warmth, at.coldBegins, at.coldEnds, rankCold, since, freezes ? 1 : settle);
  settleBelow(mind.hot, -mind.warmth, -at.heatBegins, -at.heatEnds, rankHeat, since, settle);
  settleBelow(mind.cool, mind.warmth, at.coolSlowBegins, at.coolSlowEnds, rankRest, since, settle);
  settleBelow(mind.warm, -mind.warmth, -at.warmSlowBegins, -at.warmSlowEnds, rankRest, since, settle);
  const excess = level.closingExcess(group, mind.warmth, mind.dayHigh);
  settleBelow(mind.closed, -excess, 0, level.closedEnds, rankRest, since, settle);
}

/**
 * Heat dose: a day whose mean passes `slowAbove` with a night above 20 °C adds 1/heatDays; a day whose highest
 * leaf temperature passes `hotDay`, unless the mean stays in the best band (short peaks are borne where nights
 * cool), adds 1/hotDays; any other day takes 1/heatDays away. Rest begins at 1 and ends at 0.5: a dose has its
 * days in it and turns at once.
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
  const dosed = switchedBelow(mind.heatDosed, -mind.heat, -level.heatDoseBegins + 1e-9, -level.heatDoseEnds);
  if (dosed !== mind.heatDosed) mind.since[rankHeat] = 0;
  mind.heatDosed = dosed;
  mind.warmDays = Math.max(0, mind.warmDays + (warmDay ? 1 : -1));
  mind.dead ||= mind.warmDays >= group.killDays;
}

/**
 * Water: as recorded, or by option. By season the plant is held dry in rest from cold or heat and in its dry months.
 * While it rests, and on the day it wakes, dryness follows the mix at once; else it settles like the other switches.
 */
function liveWater(
  mind: Mind,
  group: GroupNumbers,
  recorded: number | undefined,
  watering: Watering,
  month: number,
): void {
  const rests = mind.cold.on || mind.hot.on || mind.heatDosed;
  mind.watered =
    recorded !== undefined
      ? recorded !== 0
      : watering === 'by-season'
        ? !(rests || isDryMonth(group, month))
        : watering === 'watered';
  mind.moisture = mind.watered ? 1 : mind.moisture * (1 - dayWeight(group.waterDays));
  const [begins, ends] = [level.dryBegins, level.dryEnds];
  const { dry, since } = mind;
  if (rests || since[rankCold] === 0 || since[rankHeat] === 0) {
    dry.on = switchedBelow(dry.on, mind.moisture, begins, ends);
    dry.turning = 0;
  } else settleBelow(dry, mind.moisture, begins, ends, rankDry, since, mind.settle);
}

/** Whether lack of light lets it rest or draws it up: known on the day the lack begins, and settling after that. */
function liveDim({ dim, short, since, settle }: Mind, held: number): void {
  const [begins, ends] = [level.dimBegins, level.dimEnds];
  if (short.on && since[rankShort] !== 0) settleBelow(dim, held, begins, ends, rankRest, since, settle);
  else dim.on = switchedBelow(dim.on, held, begins, ends);
}

/** Light memory and its switches, each against its own threshold. */
function liveLight(mind: Mind, group: GroupNumbers, at: Thresholds, dailyLight: number): void {
  const { since, settle } = mind;
  mind.light += mind.weight * (dailyLight - mind.light);
  const share = mind.light / level.lightNeeded(group, at, mind.warmth);
  settleBelow(mind.short, share, level.lackBegins, level.lackEnds, rankShort, since, settle);
  liveDim(mind, mind.light / group.lightHold);
  const good = mind.light / group.lightGood;
  settleBelow(mind.dull, good, level.goodEnds, level.goodBegins, rankRest, since, settle);
}

/**
 * Lives through one day, in a `month` as a northern grower counts (`seasonMonth`). Switches on temperature and water know nothing of light, so that more light can only
 * turn lack into plenty: it never lengthens resting dim and stretching together.
 */
export function liveDay(
  mind: Mind,
  group: GroupNumbers,
  at: Thresholds,
  days: PlantDays,
  day: number,
  watering: Watering,
  month: number,
): void {
  for (let rank = 0; rank < rankRest; rank += 1) mind.since[rank] = (mind.since[rank] as number) + 1;
  liveWarmth(mind, group, at, days.meanLeaf[day] as number, days.mostLeaf[day] as number);
  liveHeat(mind, group, days, day);
  liveWater(mind, group, days.watered?.[day], watering, month);
  liveLight(mind, group, at, days.dailyLight[day] as number);
}

/** The settled switches as bits. */
export function flagsOf(mind: Mind): number {
  return (
    (mind.cold.on ? bit.cold : 0) |
    (mind.hot.on ? bit.hot : 0) |
    (mind.heatDosed ? bit.heatDosed : 0) |
    (mind.dry.on ? bit.dry : 0) |
    (mind.short.on ? bit.short : 0) |
    (mind.dim.on ? bit.dim : 0) |
    (mind.dull.on ? bit.dull : 0) |
    (mind.cool.on ? bit.cool : 0) |
    (mind.warm.on ? bit.warm : 0) |
    (mind.closed.on ? bit.closed : 0)
  );
}
