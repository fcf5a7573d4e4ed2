/**
 * Hardiness zone of the US Department of Agriculture: bands of 10 °F of the mean yearly minimum from −60 °F (zone 1) to
 * 70 °F (zone 13), in halves a and b of 5 °F (USDA Plant Hardiness Zone Map 2012 and 2023, legend). What is colder
 * than the first band or warmer than the last is counted to it.
 * @param meanMinimum mean of the yearly minima [°C]
 */
export function hardinessZone(meanMinimum: number): string {
  if (!Number.isFinite(meanMinimum)) throw new TypeError(`expected a temperature, got ${meanMinimum}`);
  // To a thousandth: −12.2222… °C is 10 °F and belongs to the warmer band.
  const fahrenheit = Math.round((meanMinimum * 1.8 + 32) * 1000) / 1000;
  const half = Math.max(0, Math.min(25, Math.floor((fahrenheit + 60) / 5)));
  return `${Math.floor(half / 2) + 1}${half % 2 === 0 ? 'a' : 'b'}`;
}

/** A rating and the temperature [°C] that its plants stand down to and not below; null for the hardiest. */
export interface HardinessRating {
  readonly id: string;
  readonly least: number | null;
  /** Where such plants live, in words. */
  readonly words: string;
}

/**
 * Ratings of the Royal Horticultural Society, from the tenderest on, by the temperature plants stand (RHS hardiness
 * rating 2012, as printed in its Plant Finder). The words are ours.
 */
export const hardinessRatings: readonly HardinessRating[] = [
  { id: 'H1a', least: 15, words: 'plants of a warm house' },
  { id: 'H1b', least: 10, words: 'plants of warm, frost-free ground or a temperate house' },
  { id: 'H1c', least: 5, words: 'plants that want warmth but may summer outdoors' },
  { id: 'H2', least: 1, words: 'tender plants that stand cool air but no frost' },
  { id: 'H3', least: -5, words: 'half-hardy plants that stand a light frost' },
  { id: 'H4', least: -10, words: 'plants hardy in an average winter' },
  { id: 'H5', least: -15, words: 'plants hardy in a cold winter' },
  { id: 'H6', least: -20, words: 'plants hardy in a very cold winter' },
  { id: 'H7', least: null, words: 'plants of the hardiest kind' },
];

/** Rating plants need to stand a temperature [°C]: the tenderest whose band holds it. */
export function ratingFor(temperature: number): HardinessRating {
  if (!Number.isFinite(temperature)) throw new TypeError(`expected a temperature, got ${temperature}`);
  const found = hardinessRatings.find(({ id, least }) => {
    if (least === null) return true;
    // The first band is above 15 °C, the others hold their lower edge.
    return id === 'H1a' ? temperature > least : temperature >= least;
  });
  return found as HardinessRating;
}
