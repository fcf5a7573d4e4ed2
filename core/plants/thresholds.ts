import type { GroupNumbers } from '../plan/groups.ts';
import { temperatureAt } from './response.ts';

/**
 * Temperature responses at which rest begins and ends, and at which slow turns to growing and back. The levels
 * are chosen by test against practice, no source: with 0.45 an echeveria rests below a mean of about 7 °C and
 * starts again at about 8 °C, as growers find at 5–10 °C; 0.35 would keep it slow at 6 °C.
 */
export const restBegins = 0.45;
export const restEnds = 0.55;
export const growingBegins = 0.7;
export const growingEnds = 0.6;
/** Light as a share of its threshold at which a lack begins and ends, and growing begins and ends: wide enough that a
 * few dull or bright days in a window do not turn the state about (chosen by test, no source). */
export const lackBegins = 0.9;
export const lackEnds = 1.1;
/** Light as a share of the hold light below which a plant in want of light rests, and above which it stirs again: wide, for
 * a plant at rest stands unchanged for months in a dim window (chosen by test, no source). */
export const dimBegins = 1;
export const dimEnds = 1.25;
export const goodBegins = 1;
export const goodEnds = 0.75;
/** Share of moisture left in the mix, 0–1, at which the plant begins and ceases to rest dry. Common practice, no source. */
export const dryBegins = 0.3;
export const dryEnds = 2 * dryBegins;
/** Share of its dose at which heat rest begins and ends. */
export const heatDoseBegins = 1;
export const heatDoseEnds = 0.5;
/** Nights must stay above this for a warm day to count towards heat rest [°C] (threshold collection, placeholder). */
export const warmNight = 20;

/**
 * Kelvin under `hotDay` at which days begin to close a plant up, and the fall below that at which it opens again.
 * Common practice, no source: echeverias close up above about 30 °C of daytime air and rest above 35; the 5 K between
 * are taken for every group, and the 1 K for opening is a placeholder.
 */
export const closesUnderHotDay = 5;
export const closedEnds = 1;

/**
 * Kelvin by which remembered days are too hot for a plant to stay open: above 0 it closes up and hardly grows. As with
 * heat rest, hot middays count only where the mean of day and night is above the best band: cool nights make up for them.
 * @param warmth remembered 24-h mean [°C leaf]; `dayHigh` the remembered highest of the day [°C leaf]
 */
export function closingExcess(group: GroupNumbers, warmth: number, dayHigh: number): number {
  return Math.min(dayHigh - (group.hotDay - closesUnderHotDay), warmth - group.optimumHigh);
}

/** The temperatures and slopes that the state machine compares with, computed once a group [°C, 24-h mean]. */
export interface Thresholds {
  readonly coldBegins: number;
  readonly coldEnds: number;
  readonly heatBegins: number;
  readonly heatEnds: number;
  readonly coolSlowBegins: number;
  readonly coolSlowEnds: number;
  readonly warmSlowBegins: number;
  readonly warmSlowEnds: number;
}

const known = new WeakMap<GroupNumbers, Thresholds>();

/** A group's thresholds from its curve; worked out once for each set of numbers, which never change. */
export function thresholdsOf(group: GroupNumbers): Thresholds {
  let thresholds = known.get(group);
  if (thresholds === undefined) {
    thresholds = workOut(group);
    known.set(group, thresholds);
  }
  return thresholds;
}

function workOut(group: GroupNumbers): Thresholds {
  const warmSlow = Math.min(group.slowAbove, temperatureAt(group, growingEnds, 'warm'));
  return {
    coldBegins: temperatureAt(group, restBegins, 'cool'),
    coldEnds: temperatureAt(group, restEnds, 'cool'),
    heatBegins: temperatureAt(group, restBegins, 'warm'),
    heatEnds: temperatureAt(group, restEnds, 'warm'),
    coolSlowBegins: temperatureAt(group, growingEnds, 'cool'),
    coolSlowEnds: temperatureAt(group, growingBegins, 'cool'),
    warmSlowBegins: warmSlow,
    warmSlowEnds: warmSlow - 1,
  };
}

/**
 * Light a plant needs to stay compact at a 24-h mean [mol m⁻² d⁻¹]: the hold light where cold rest begins, rising
 * with warmth to `lightStretch` at the warm end of the best band, and level above it. The same light that holds a
 * plant at 8–10 °C draws it up at 18–22 °C (common practice; direction after a Wageningen trial of Kalanchoe).
 */
export function lightNeeded(group: GroupNumbers, thresholds: Thresholds, meanLeaf: number): number {
  const warmth = (meanLeaf - thresholds.coldBegins) / (group.optimumHigh - thresholds.coldBegins);
  const share = Math.min(1, Math.max(0, warmth));
  return group.lightHold + share * (group.lightStretch - group.lightHold);
}

/**
 * The 24-h mean to which a plant must be cooled for `dailyLight` to keep it compact [°C]; null where the light is
 * below the hold light (only cold rest helps) or already enough at any warmth.
 */
export function coolEnoughFor(
  group: GroupNumbers,
  thresholds: Thresholds,
  dailyLight: number,
): number | null {
  const span = group.lightStretch - group.lightHold;
  if (!(dailyLight > group.lightHold) || !(dailyLight < group.lightStretch)) return null;
  const share = (dailyLight - group.lightHold) / span;
  return thresholds.coldBegins + share * (group.optimumHigh - thresholds.coldBegins);
}
