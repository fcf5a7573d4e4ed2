import type { GroupNumbers } from '../plan/groups.ts';

/**
 * Beta response of development to temperature (Yan & Hunt 1999, Annals of Botany 84:607–614; published with a
 * base of 0 °C, the general form with a base from memory):
 *
 *   r = (Tmax − T)/(Tmax − Topt) · ((T − Tb)/(Topt − Tb))^((Topt − Tb)/(Tmax − Topt))
 *
 * @param temperature 24-h mean [°C]
 * @param base, optimum, ceiling cardinal temperatures [°C], base < optimum < ceiling
 * @returns 0–1, 1 at the optimum, 0 at and outside base and ceiling
 */
export function yanHunt(temperature: number, base: number, optimum: number, ceiling: number): number {
  if (!(temperature > base && temperature < ceiling)) return 0;
  const fall = (ceiling - temperature) / (ceiling - optimum);
  return fall * ((temperature - base) / (optimum - base)) ** ((optimum - base) / (ceiling - optimum));
}

/**
 * Response of development to temperature after Wang & Engel (1998, Agricultural Systems 58:1–24):
 *
 *   a = ln 2 / ln((Tmax − Tb)/(Topt − Tb)),  r = (2 (T − Tb)^a (Topt − Tb)^a − (T − Tb)^2a) / (Topt − Tb)^2a
 *
 * Kept beside the beta response as its check: for cardinals of plants the two differ by 0.02 at most.
 */
export function wangEngel(temperature: number, base: number, optimum: number, ceiling: number): number {
  if (!(temperature > base && temperature < ceiling)) return 0;
  const power = Math.LN2 / Math.log((ceiling - base) / (optimum - base));
  const share = ((temperature - base) / (optimum - base)) ** power;
  return 2 * share - share * share;
}

/** The single optimum of a group's curve: the middle of its best band [°C, 24-h mean]. */
export function optimumOf(group: GroupNumbers): number {
  return (group.optimumLow + group.optimumHigh) / 2;
}

/**
 * Temperature index of a group, 0–1, by the beta response with its optimum in the middle of the best band.
 * @param meanLeaf leaf temperature, mean of 24 h [°C]; applied hour by hour it would be off by up to 0.3
 */
export function temperatureResponse(group: GroupNumbers, meanLeaf: number): number {
  return yanHunt(meanLeaf, group.baseTemperature, optimumOf(group), group.ceiling);
}

/**
 * Light index of a group, 0–1: saturating from its compensation (the hold light), 0.9 at the good light:
 *
 *   I = 1 − exp(−k (DLI − hold)),  k = ln 10 / (good − hold)
 *
 * The form fits Opuntia ficus-indica: nil at 4, 0.9 at 22 mol m⁻² d⁻¹, k = 0.128 (Nobel & Hartsock 1983), and
 * Agave lechuguilla within 25 %. Those figures hold on the plane of the cladode, which gets less than the bench.
 * @param dailyLight at the plant [mol m⁻² d⁻¹]
 */
export function lightResponse(group: GroupNumbers, dailyLight: number): number {
  if (!(dailyLight > group.lightHold)) return 0;
  return 1 - Math.exp((-Math.LN10 * (dailyLight - group.lightHold)) / (group.lightGood - group.lightHold));
}

/** 24-h mean of growth at which a group's `carbonNight` stands [°C]: Ferocactus' own in Nobel's (1986) trial. */
const growthMeanOfTrial = 18.5;

/**
 * Carbon gain by night temperature, 0–1, of a group with a curve of its own; null for one without. Falls as a parabola
 * from its best night to half at `carbonCool` and `carbonWarm` to either side and ends at √2 times that:
 *
 *   r = 1 − ½ (d / half)²
 *
 * For equal halves this is the beta response (Yan & Hunt 1999) through the same points. Ferocactus takes up most at
 * 23/14 °C day/night, half at 11/5 and at 32/23 (Nobel 1986); the best night moves with growth temperature by 0.34 K a
 * kelvin in Opuntia ficus-indica (Nobel & Hartsock 1984, computed).
 * @param nightLeaf mean leaf temperature of the dark hours [°C]
 * @param growthMean 24-h mean to which the plant is used [°C]
 */
export function carbonNightResponse(
  group: GroupNumbers,
  nightLeaf: number,
  growthMean = growthMeanOfTrial,
): number | null {
  const { carbonNight, carbonCool, carbonWarm, carbonShift } = group;
  if (carbonNight === null || carbonCool === null || carbonWarm === null) return null;
  const off = nightLeaf - carbonNight - (carbonShift ?? 0) * (growthMean - growthMeanOfTrial);
  return Math.max(0, 1 - 0.5 * (off / (off < 0 ? carbonCool : carbonWarm)) ** 2);
}

/**
 * Carbon index of a day, 0–1: by night temperature where the group has a curve of its own. For a group without one no
 * second curve is made up: carbon is taken to keep step with development, and no softness is claimed.
 */
export function carbonResponse(
  group: GroupNumbers,
  nightLeaf: number,
  growthMean: number,
  meanLeaf: number,
): number {
  return carbonNightResponse(group, nightLeaf, growthMean) ?? temperatureResponse(group, meanLeaf);
}

/**
 * How far development runs ahead of carbon gain, 0–1: a warm plant on warm nights makes more tissue than it has sugar for,
 * so its growth is soft. It is shown, and does not enter the verdict of stretching: cacti develop fastest at 28 °C and
 * stay compact in full sun there, so it is want of light that draws a plant up; and no trial tells the two apart.
 */
export function softnessOf(development: number, carbon: number): number {
  return Math.max(0, development - carbon);
}

/**
 * The temperature at which a group's response passes `level`, on the cool or the warm side of its optimum [°C].
 * Found by bisection: the response rises below the optimum and falls above it.
 */
export function temperatureAt(group: GroupNumbers, level: number, side: 'cool' | 'warm'): number {
  let outer = side === 'cool' ? group.baseTemperature : group.ceiling;
  let inner = optimumOf(group);
  for (let step = 0; step < 50; step += 1) {
    const middle = (outer + inner) / 2;
    if (temperatureResponse(group, middle) < level) outer = middle;
    else inner = middle;
  }
  return (outer + inner) / 2;
}
